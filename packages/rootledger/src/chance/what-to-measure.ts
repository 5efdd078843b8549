import type { UnknownId } from "./prior.js";

/** What to measure to know an unknown better, and how. Common practice, no source. */
export interface ToMeasure {
  readonly name: string;
  readonly how: string;
}

/** One row for each unknown. */
export const whatToMeasure: Readonly<Record<UnknownId, ToMeasure>> = {
  "root-depth": {
    name: "rooted depth",
    how: "dig a pit beside an emitter and note where the fine roots thin out and where the last one is",
  },
  "root-top-share": {
    name: "share of roots in the top 20 cm",
    how: "in the same pit, count fine roots by 10 cm in a frame",
  },
  "root-width": {
    name: "width of the rooted strip",
    how: "scrape across the line, 10 cm deep, and tape the distance from the line to the last fine roots",
  },
  "compensation-onset": {
    name: "how far wet roots make up for dry ones",
    how: "two tensiometers, in the wet and in the dry part: which one falls while the tree keeps drinking",
  },
  "pull-limit": {
    name: "tension at which the tree begins to suffer",
    how: "let a few trees dry with a tensiometer at 20 cm and a pressure chamber or trunk gauge beside it",
  },
  "dry-limb": {
    name: "tension at which nothing more is drawn",
    how: "watch a sensor that reaches beyond 100 kPa in soil left dry: where its daily steps end",
  },
  "air-limit": {
    name: "air that roots need",
    how: "cores of the root mat at field capacity, weighed wet and dry; look at root colour and smell beside them",
  },
  "air-return": {
    name: "tension at which air comes back",
    how: "tensiometer and oxygen probe at 20 cm after a long run: the tension when oxygen rises",
  },
  "field-capacity": {
    name: "water at field capacity",
    how: "two days after a covered soaking, push a ring into the root mat, weigh it wet and dry: m3 of water per m3 of soil",
  },
  "k-sat": {
    name: "conductivity at saturation",
    how: "an infiltration ring under an emitter's place, three times; or time how long ponded water takes to go",
  },
  structure: { name: "structure of the soil", how: "a spade: does a clod crumble in the hand, or stay as one block" },
  kcb: {
    name: "crop coefficient",
    how: "water meter and two tensiometers over a dry fortnight: water that kept the deep one steady, over ET0",
  },
  uniformity: {
    name: "uniformity of the emitters",
    how: "catch cups under 16 emitters or more along the lines: mean of the lowest quarter over the mean",
  },
  "weather-year": {
    name: "the year's weather",
    how: "a rain gauge and the station's ET0, week by week; no year is known ahead",
  },
};
