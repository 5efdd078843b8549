import type { DayBlock } from "rootledger/calibrate";
import { blocksOf } from "./blocks.js";
import { meanTheta, measuredCm } from "./mean-depth.js";
import type { StationRecord } from "./station-record.js";

/** Which readings count, in the fit as in the scores, and what was left out. */
export interface ScoredDays {
  /** scored[depth][day], 1 or 0. */
  readonly scored: readonly Uint8Array[];
  /** The same before days after an unexplained gain are taken out. */
  readonly beforeGains: readonly Uint8Array[];
  readonly gains: readonly Gain[];
  readonly notes: readonly string[];
}

/** Water that the soil gained and the gauge does not explain. */
export interface Gain {
  /** First day on which the gain shows. */
  readonly day: number;
  readonly gainMm: number;
  readonly rainMm: number;
  readonly gaugeOut: boolean;
  /** Day after the last that is left out for it. */
  readonly until: number;
}

/** At or below this the probes read ice as dry soil; the network's own practice is to distrust them there (our figure). */
const frozenC = 0.5;
/** No mineral soil of these stations holds more; our choice, no source. */
const mostTheta = 0.65;
/** A one-day spike: off both neighbours by this much while they agree within a third of it; our choice, no source. */
const spike = 0.1;
/** An unexplained gain: at least this over three days, less than half of it in the gauge in those and the two days before. */
const leastGainMm = 10;
const gainDays = 3;
const rainDaysBefore = 2;

/** The readings that count: present, possible, no spike, no frost, and no water that the gauge never saw. */
export function scoredDays(record: StationRecord): ScoredDays {
  const { theta, days, soilTemp5C } = record;
  const beforeGains = theta.map((column) =>
    Uint8Array.from(column, (t, d) => (usable(column, d) && !(soilTemp5C[d] <= frozenC) && t > 0 ? 1 : 0)),
  );
  const gains = unexplainedGains(record);
  const out = new Uint8Array(days);
  for (const { day, until } of gains) out.fill(1, day, until);
  const scored = beforeGains.map((column) => column.map((counts, d) => (out[d] === 1 ? 0 : counts)));
  const frozen = soilTemp5C.filter((t) => t <= frozenC).length;
  const spikes = theta.map((column) => column.filter((t, d) => !Number.isNaN(t) && !usable(column, d)).length);
  const missing = record.rainMissing.reduce((sum, gone) => sum + gone, 0);
  const notes = [
    ...(frozen > 0 ? [`${frozen} days with soil at or below ${frozenC} C at 5 cm are left out`] : []),
    ...(spikes.some((count) => count > 0)
      ? [`impossible readings and one-day spikes left out: ${spikes.join(", ")} at ${record.depthsCm.join(", ")} cm`]
      : []),
    ...(missing > 0 ? [`the gauge gave nothing on ${missing} days`] : []),
    ...(gains.length > mostInWords ? [summaryOf(gains)] : gains.map(wordsOf)),
  ];
  return { scored, beforeGains, gains, notes };
}

function usable(column: Float64Array, d: number): boolean {
  const t = column[d];
  if (!(t > 0 && t <= mostTheta)) return false;
  const before = column[d - 1];
  const after = column[d + 1];
  return !(Math.abs(before - after) < spike / 3 && Math.abs(t - (before + after) / 2) > spike);
}

function unexplainedGains(record: StationRecord): Gain[] {
  const { days, rainMm, rainMissing, depthsCm, theta } = record;
  const storedMm = meanTheta(depthsCm, theta).map((mean) => mean * 10 * measuredCm(depthsCm));
  const blockOf = (day: number): DayBlock => blocksOf(days).find(({ from, to }) => day >= from && day < to) as DayBlock;
  const gains: Gain[] = [];
  for (let d = gainDays; d < days; d++) {
    const gainMm = storedMm[d] - storedMm[d - gainDays];
    const first = Math.max(0, d - gainDays - rainDaysBefore + 1);
    const rain = rainMm.slice(first, d + 1).reduce((sum, mm) => sum + mm, 0);
    if (!(gainMm > leastGainMm && rain < gainMm / 2)) continue;
    const day = d - gainDays + 1;
    const previous = gains[gains.length - 1];
    if (previous !== undefined && day < previous.until) continue;
    const gaugeOut = rainMissing.slice(first, d + 1).some((gone) => gone === 1);
    gains.push({ day, gainMm, rainMm: rain, gaugeOut, until: blockOf(d).to });
  }
  return gains;
}

/** More gains than this are told together. */
const mostInWords = 3;

function summaryOf(gains: readonly Gain[]): string {
  const left = gains.reduce((sum, { day, until }) => sum + until - day, 0);
  const out = gains.filter(({ gaugeOut }) => gaugeOut).length;
  return (
    `${gains.length} unexplained gains of 10 mm or more in three days, ${out} with the gauge out, the others a gauge gap, snow, run-on ` +
    `or irrigation not entered; ${left} days to the ends of their blocks left out`
  );
}

const wordsOf = ({ day, gainMm, rainMm, gaugeOut, until }: Gain): string =>
  `unexplained gain of about ${gainMm.toFixed(0)} mm in three days from day ${day + 1} with ${rainMm.toFixed(1)} mm in the gauge: ` +
  `${gaugeOut ? "the gauge was out" : "gauge gap, snow, run-on or irrigation not entered"}; days ${day + 1} to ${until} left out`;
