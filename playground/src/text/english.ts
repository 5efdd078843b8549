import type { Badge, Difference, Question } from "rootledger/compare";
import type { FaultLine } from "../worker/protocol.js";
import { check } from "./english/check.js";
import { draws } from "./english/draws.js";
import { pages } from "./english/pages.js";
import { programmes } from "./english/programmes.js";
import { measures, questions, shortMeasures, units } from "./english/terms.js";
import { amount, clock, listed, percent, signedAmount, whole } from "./number-format.js";
import { depthText, measured, measuredUnit, tensionText, unitText, waterText } from "./quantity.js";

const counts = ["no", "one", "two", "three", "four"];

export const english = {
  appName: "Rootledger",
  tagline: "the water and air account of a shallow root zone",
  headline: (sameWater: boolean, programmes: number): string =>
    sameWater
      ? `The same water, ${counts[programmes]} ways to give it`
      : `${capital(counts[programmes]!)} programmes, not the same water`,
  skipToPictures: "Skip to the pictures",
  language: { label: "Language", en: "English", es: "español" },

  theme: { label: "Colours", auto: "as the device", light: "light", dark: "dark" },
  number: (least: string, most: string): string => `A number from ${least} to ${most}`,
  units: { label: "Units", water: "Water", depth: "Depth", tension: "Tension", salt: "Salt", area: "Area" },
  wall: { on: "Show on a wall", off: "Back to the desk" },

  programmes,
  amount: {
    lock: "Same litres for all:",
    unlocked: "Same litres for all",
    unit: (): string => `${unitText("water")} per tree a day`,
    label: "Litres per tree and day, for every programme",
    free: "each programme brings what its minutes say",
  },
  shared: (locked: boolean, litresPerDay: number, tree: string): string =>
    `${locked ? `Same litres for all, ${waterText(litresPerDay)} a day` : "Each its own litres"}; ${tree} tree`,
  start: {
    label: "Start",
    settled: "each settled in its own way",
    "same-state": "all from the same ground",
  },
  tree: {
    label: "Tree",
    mean: "average",
    "under-fed": "lowest quarter",
    "over-fed": "low end of the line",
    sectionIsMean: "The picture shows the average tree.",
  },
  span: { label: "Days shown", "3": "3 days", "14": "2 weeks", season: "season" },

  soil: {
    row: (index: number): string => `Soil ${index + 1}`,
    textureLabel: "Texture",
    structureLabel: "Structure",
    structures: { tight: "tight", ordinary: "ordinary", crumbly: "crumbly" },
    name: (texture: string, structure: string): string =>
      capital(structure === "ordinary" ? texture : `${structure} ${texture}`),
    window: (mm: number, litres: number, airKPa: number, pullKPa: number): string =>
      `It lends ${depthText(mm)}, ${waterText(litres)} a tree, between ${tensionText(airKPa)} (air is back) and ${tensionText(pullKPa)} (roots cannot pull).`,
  },

  section: {
    title: (soil: string, when: string, airless: readonly number[], thirsty: readonly number[]): string =>
      `${soil}, ${when}: ${shares(airless, "of roots airless")}; ${shares(thirsty, "thirsty")}`,
    summary: (programme: string, airless: number, thirsty: number, wettest: number, driest: number): string =>
      `Soil seen along the row under ${programme}: ${percent(airless)} of the roots airless, ${percent(thirsty)} thirsty; water from ${percent(driest)} to ${percent(wettest)} of the volume.`,
    rootsTo: (cm: number): string => `roots to ${amount(cm)} cm`,
    tableCaption: "Water by cell, percent of the soil's volume; * airless roots, ° thirsty roots",
    layer: "Depth, cm",
    lane: (from: number, to: number): string => `${amount(from)}–${amount(to)} cm from the row`,
    smoothed: "Drawn smoothly between cell centres; the table has each cell's own number.",
  },
  key: {
    airless: "roots without air",
    thirsty: "roots too dry to drink",
    water: (low: number, high: number): string => `water, ${percent(low)} to ${percent(high)} of the soil`,
  },
  below: {
    title: (litres: readonly number[], share: readonly number[]): string =>
      `Below the roots over the season: ${listed(litres.map((l) => `${waterText(l)}`))} a tree, ${listed(share.map(percent))} of what came in`,
    sofar: (litres: number): string => `${waterText(litres)} below the roots so far`,
    inDays: (litres: number): string => `${waterText(litres)} below the roots in these days`,
    total: (litres: number): string => `${waterText(litres)} by the season’s end`,
    none: "none leaves below the roots",
    quantity: "Below the roots",
    until: "So far",
    whole: "Season",
    share: "Of what came in",
  },
  storage: {
    title: (soil: string, above: readonly number[], beneath: readonly number[]): string => {
      const inside = above.every((x) => x < 0.01) && beneath.every((x) => x < 0.01);
      if (inside) return `${soil} stays between its two limits under every programme`;
      return `${soil}'s root zone is above the air line ${listed(above.map(percent))} of the season, below the pull line ${listed(beneath.map(percent))}`;
    },
    summary: (programme: string, low: number, high: number, air: number, pull: number): string =>
      `Root-zone water by hour under ${programme}: from ${amount(low)} to ${depthText(high)} in the days shown; air is back below ${depthText(air)}, roots cannot pull below ${depthText(pull)}.`,
    air: "air is back below this",
    pull: "roots cannot pull beyond this",
    runs: "runs",
    rain: "rain",
    noRain: "none in these days",
    axis: "mm of water in the root zone",
    day: "Day",
    tableCaption: "Root-zone water at the end of each day; runs in hours of open valve; rain",
  },
  hours: {
    title: (total: number, thirsty: readonly number[], airless: readonly number[]): string =>
      `Of ${whole(total)} hours, roots were thirsty ${listed(thirsty.map(whole))}, airless ${listed(airless.map(whole))}`,
    summary: (programme: string, thirsty: number, fine: number, airless: number): string =>
      `Root-hours under ${programme}: ${whole(thirsty)} thirsty, ${whole(fine)} fine, ${whole(airless)} airless.`,
    thirsty: "thirsty",
    fine: "fine",
    airless: "airless",
    unit: "Root-hours",
    summaryOfAll: "Hours weighted by the share of the roots, over the season",
  },
  ledger: {
    heading: (soil: string): string => `${soil}: the ledger`,
    unit: (): string => `${unitText("water")} per tree over the season`,
    emitters: "Emitters gave",
    rain: "Rain brought",
    heldByLeaves: "Leaves held of it",
    heldByLayer: "Litter or mulch held of it",
    drank: "Tree drank",
    evaporated: "Evaporated",
    runoff: "Ran off",
    bottom: "Left at the bottom",
    store: "Soil gained",
    residual: "Unexplained",
    wanted: "Tree wanted",
    residualNote: (fraction: number): string =>
      `Unexplained: ${fraction < 1e-9 ? "less than a billionth" : `at most ${fraction.toExponential(0)}`} of what came in.`,
  },
  verdict: {
    heading: "What changed",
    pair: (from: string, to: string, asked: readonly Question[]): string =>
      asked.length === 0
        ? `${from} to ${to}: nothing changes`
        : `${from} to ${to}: the ${listed(asked.map((q) => questions[q]))}`,
    mixed: (from: string, to: string, asked: readonly Question[]): string =>
      `${from} to ${to} changes ${listed(asked.map((q) => questions[q]))} at once: no one of them can be given the credit.`,
    clear: (
      id: string,
      unit: string,
      verdict: "rises" | "falls",
      difference: number,
      fromValue: number,
      toValue: number,
      floor: number,
    ): string =>
      `${measures[id] ?? id} ${verb(id, verdict)} by ${valueText(Math.abs(difference), unit)}, from ${amount(measured(fromValue, unit))} to ${valueText(toValue, unit)} (floor ${valueText(floor, unit)}).`,
    measure: (id: string, unit: string): string => `${measures[id] ?? id}, ${unitName(unit)}`,
    floorReason: ({ floorReason }: Pick<Difference, "floorBasis" | "floorReason">): string => floorReason,
    unclear: (id: string, unit: string, difference: number, floor: number): string =>
      `${measures[id] ?? id}: no clear difference (${signedAmount(measured(difference, unit))} ${unitName(unit)}, floor ${valueText(floor, unit)}).`,
    unsure: (
      id: string,
      unit: string,
      difference: number,
      band: { readonly low: number; readonly high: number },
    ): string =>
      `${measures[id] ?? id}: ${signedAmount(measured(difference, unit))} ${unitName(unit)} in the one run, but the draws do not agree: ${signedAmount(measured(band.low, unit))} to ${signedAmount(measured(band.high, unit))} in nine of ten.`,
    brief: (
      from: string,
      to: string,
      asked: readonly Question[],
      clear: readonly { id: string; unit: string; difference: number }[],
    ): string => {
      const what = asked.length === 1 ? ` (${questions[asked[0]!]})` : "";
      const items = clear.map(
        (d) => `${shortMeasures[d.id] ?? d.id} ${signedAmount(measured(d.difference, d.unit))} ${unitName(d.unit)}`,
      );
      return `${from} to ${to}${what}: ${items.length === 0 ? "no clear difference" : items.join(", ")}.`;
    },
  },
  badgesLabel: "What is equal",
  /** Each badge where it holds and where it does not. */
  badges: {
    "same-water": ["Same water", "Not the same water"],
    "same-weather": ["Same weather", "Not the same weather"],
    "same-start": ["Same start", "Not the same start"],
    settled: ["Settled", "Not settled"],
    "one-question": ["One question at a time", "More than one question at once"],
  } satisfies Readonly<Record<Badge["id"], readonly [string, string]>>,
  badgeDetail: ({ detail }: Badge): string => detail,

  time: {
    label: "Hour shown in every picture",
    play: "Play",
    pause: "Pause",
    fourHours: "Four hours",
    oneHour: "One hour",
    keys: "Arrow keys: an hour. Page up and down: a day. Home and End: the season's ends.",
    at: (day: string, hour: number): string => `${day}, ${clock(hour)}`,
    wanted: "line: water the tree wants; hollow: rain",
  },
  states: {
    computing: (days: number, arms: number): string => `Computing ${days} days of ${arms} programmes and soils`,
    progress: (done: number, all: number): string => `${percent(done / all)} done`,
    preview: (days: number): string =>
      `Pictures: a preview of ${days} days from the soil as it was; the season follows`,
    stale: "From before your change",
    failed: "This could not be computed",
    kept: "What you set is kept, and the pictures are from before your change.",
    undo: "Undo the last change",
    retry: "Try again",
    fault: ({ path, received, rule }: FaultLine): string => `${placeText(path)} ${rule}; it is ${received}.`,
    linkFaults: "Part of the link could not be used; the rest of it is shown.",
    linkFault: (key: string, received: string, rule: string | undefined): string =>
      rule === undefined
        ? `“${key}” is not a setting of this page.`
        : rule === "weather"
          ? `It was made under other weather, “${received}”, which is not on this device: litres and hours differ from what its sender saw. Ask for the file and open it on Block.`
          : `“${key}” was “${received}”; it must be ${rule}.`,
    dismiss: "Close",
  },
  tools: {
    need: "What the tree needs",
    limits: "Power, rain and the longest run",
    unsure: "What am I least sure of?",
    further: (soil: string): string => `${soil}: air after a run, hours by depth, litres by day, the season’s openings`,
  },
  check,
  pages,
  draws,
  table: "The numbers",
  about: {
    example: "Valley, block and weather of the example are invented; what you change or bring is yours.",
    note: "The model notes:",
    never: "It counts water and hours. It does not predict yield or money, and it does not replace a spade.",
    defaults: "Values used where nothing was given",
    computedHere: (version: string, seconds: number): string =>
      `Computed on this device in ${amount(seconds, 2)} s by rootledger ${version}. Nothing leaves it.`,
  },
};

/** Another language is another object of this type. */
export type Words = typeof english;

/** @example placeText("programmes[1].runs[0].start") // "Programme B, start" */
function placeText(path: string): string {
  return path
    .replace(/^programmes\[(\d+)\](\.runs\[0\])?/, (_, i: string) => `Programme ${"ABCD"[Number(i)]}`)
    .replace(/^soils\[(\d+)\](\.horizons\[0\])?/, (_, i: string) => `Soil ${Number(i) + 1}`)
    .replace(/\./g, ", ");
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** @example shares([0.3, 0.1], "thirsty") // "30% and 10% thirsty" */
function shares(fractions: readonly number[], what: string): string {
  if (fractions.every((f) => f < 0.005)) return `none ${what}`;
  return `${listed(fractions.map(percent))} ${what}`;
}

const plural = new Set(["thirsty", "airless"]);
function verb(id: string, verdict: "rises" | "falls"): string {
  if (plural.has(id)) return verdict === "rises" ? "rise" : "fall";
  return verdict;
}

const unitName = (unit: string): string => measuredUnit(unit, units);
const valueText = (value: number, unit: string): string => `${amount(measured(value, unit))} ${unitName(unit)}`;
