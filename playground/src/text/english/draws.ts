import type { StripRow } from "../../charts/strip-row.js";
import { amount, signedAmount } from "../number-format.js";
import { measured, measuredUnit } from "../quantity.js";
import { measures, units } from "./terms.js";

const unitText = (unit: string): string => measuredUnit(unit, units);
const signed = (value: number, unit: string): string => signedAmount(measured(value, unit));

/** Words of the difference strip and of the draws behind it. */
export const draws = {
  heading: "Draw what is unknown",
  start: "Draw what is unknown",
  again: "Draw again",
  what: "A hundred times over, roots, limits, soil, coefficient and emitters are drawn about what you said, the same for every programme.",
  cancel: "Stop drawing",
  running: (done: number, all: number): string => `${done} of ${all} draws`,
  stopped: "Stopped. What was drawn is shown.",
  failed: "The draws ended early",
  stale: "From before your change; draw again.",
  took: (finished: number, failed: number, seconds: number): string =>
    `${finished} draws in ${amount(seconds, 2)} s${failed > 0 ? `; ${failed} failed and are left out` : ""}.`,
  badge: (badge: string, held: number, all: number): string => `${badge}: in ${held} of ${all} draws`,
  title: (soil: string, clear: number, all: number, drawn: number | undefined): string =>
    `${soil}: ${clear === 0 ? "no clear difference" : `a clear difference in ${clear} of ${all} figures`}, ${drawn === undefined ? "from one run each" : `over ${drawn} draws`}`,
  key: "Dashed posts: the floor, below which nothing is claimed. Hollow: no clear difference. Bar: nine draws of ten.",
  pair: (from: string, to: string): string => `${from} to ${to}`,
  less: "less",
  more: "more",
  zero: "no difference",
  /** Name and size, then band and floor. */
  rowLabel: ({ measureId, unit, value, band, floor }: StripRow): readonly [string, string] => [
    `${measures[measureId] ?? measureId}: ${signed(value, unit)} ${unitText(unit)}`,
    `${band ? ` (${signed(band.low, unit)} to ${signed(band.high, unit)})` : ""}, floor ${amount(measured(floor, unit))}`,
  ],
  rowSummary: ({ measureId, unit, value, band, floor, verdict }: StripRow): string =>
    `${measures[measureId] ?? measureId}: ${signed(value, unit)} ${unitText(unit)}${band ? `, from ${signed(band.low, unit)} to ${signed(band.high, unit)} in nine draws of ten` : ""}; floor ${amount(measured(floor, unit))}: ${verdict}.`,
  measure: "Measure",
  low: "5 %",
  middle: "median or run",
  high: "95 %",
  floor: "floor",
  verdict: "verdict",
  verdicts: { rises: "rises", falls: "falls", "no clear difference": "no clear difference" } as Readonly<
    Record<StripRow["verdict"], string>
  >,
};
