import { amount } from "../number-format.js";

/** Words of the section's page and of the charts that it brings. */
export const sectionPage = {
  soil: "Soil",
  programme: "Programme",
  waiting: "The season is being computed; the pictures follow.",
  storage: (mm: string, air: string, pull: string): string =>
    `${mm} in the root zone now; air is back below ${air}, roots cannot pull below ${pull}`,
  traces: (depths: string, fromRowCm: number): string =>
    `What tensiometers at ${depths} cm, ${amount(fromRowCm)} cm from the row, should read`,
  traceSummary: (depthCm: number, low: string, high: string): string =>
    `At ${depthCm} cm from ${low} to ${high} in the days shown.`,
  airKey: (kPa: string): string => `air is back above ${kPa}`,
  pullKey: (kPa: string): string => `roots cannot pull beyond ${kPa}`,
  depthsLabel: "Depths, cm",
  distanceLabel: "Distance from the row, cm",
  depthsRule: "Up to three depths such as 20 50, in cm",
  table: "Tension at each midday",
  readings: "Your own readings",
  readingsHint: "Type what the instrument said; it becomes a dot on the lines.",
  date: "Day",
  time: "Time",
  depth: "Depth, cm",
  tension: "Reading",
  add: "Add the reading",
  remove: (what: string): string => `Remove ${what}`,
  against: (when: string, depthCm: number, read: string, model: string): string =>
    `${when}, ${depthCm} cm: read ${read}; the model says ${model}.`,
  outside: (when: string, depthCm: number, read: string): string =>
    `${when}, ${depthCm} cm: read ${read}; the model has nothing there.`,
  verdict: {
    "no-air": "The readings agree with soil that lacks air; they would disagree with a dry case.",
    dry: "The readings agree with soil that is too dry to pull from; they would disagree with a wet case.",
    between: "The readings lie between the limits.",
    mixed: "The readings lie on both sides of a limit.",
  },
  miss: (times: string): string => `The model is off by a factor of ${times} at the middle reading.`,
  window: (soil: string): string => `What ${soil} can lend, and what the tree wants that day`,
  windowNote: "Same width, so height is litres. Dotted end: roots cannot pull. Hatched end: no air.",
  tubeSummary: (name: string, lends: string): string => `${name} lends ${lends} between its limits.`,
  bottle: "wanted",
  bottleSummary: (litres: string): string => ` The tree wants ${litres} that day.`,
  translator: (depthCm: number): string => `The same state in four ways, ${amount(depthCm)} cm deep`,
  translatorNote: (full: string, available: string): string =>
    `Depletion counts from ${full} (full) to 1500 kPa (wilting): ${available}. Litres on the rooted ground of one tree.`,
  full: "Full at",
  depleted: "depleted",
  perTree: "per tree",
  missing: "missing",
  impossible: "No such state: wetter than saturated, or drier than the curve reaches.",
  rule: (kPa: string, percent: string): string => `${percent} depleted is ${kPa} in this soil.`,
  pullRule: (kPa: string, percent: string): string => `The pull limit, ${kPa}, is ${percent} depleted.`,
  save: { label: "Take away", svg: "SVG", png: "PNG", csv: "CSV", json: "JSON" },
};

export type SectionPageWords = typeof sectionPage;
