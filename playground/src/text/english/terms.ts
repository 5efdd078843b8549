import type { Question } from "rootledger/compare";

export const questions: Readonly<Record<Question, string>> = {
  interval: "interval",
  pulses: "pulses",
  gap: "gap between pulses",
  "emitter-flow": "emitter flow",
  lines: "lines",
  amount: "amount of water",
  "start-time": "start time",
  nitrogen: "nitrogen",
  rule: "rule",
  limits: "pump limits",
};

export const measures: Readonly<Record<string, string>> = {
  thirsty: "Thirsty root-hours",
  airless: "Airless root-hours",
  "below-roots": "Water lost below the roots",
  transpiration: "Water the tree drank",
  evaporation: "Water evaporated",
  runoff: "Water run off",
  "longest-thirsty": "Longest thirsty spell",
  "longest-airless": "Longest airless spell",
};

/** The same in a few letters, for a line of many numbers. */
export const shortMeasures: Readonly<Record<string, string>> = {
  thirsty: "thirsty",
  airless: "airless",
  transpiration: "drunk",
  "below-roots": "lost below",
  evaporation: "evaporated",
};

/** Unit of a measure as it stands behind a number. */
export const units: Readonly<Record<string, string>> = { "root-h": "h", L: "L", h: "h", mm: "mm" };
