import { drawIds } from "../chance/draw.js";
import type { UnknownId } from "../chance/prior.js";
import type { Scenario } from "../scenario/scenario.js";
import type { Reading } from "./judge-readings.js";
import type { SensorPlace } from "./sensor-place.js";
import { drawnScenarios, sensorTraces, type TwinDraws, type TwinOptions } from "./sensor-twin.js";

/** One unknown before and after the readings. */
export interface FittedUnknown {
  readonly id: UnknownId;
  readonly before: { readonly mean: number; readonly deviation: number };
  readonly after: { readonly mean: number; readonly deviation: number };
}

/** The soil that explains one's own readings best. */
export interface ReadingsFit {
  readonly unknowns: readonly FittedUnknown[];
  /**
   * Draws that carry the answer, (sum w)^2 / sum w^2. Below about ten the readings contradict what was drawn, or more draws
   * are needed: then nothing is known.
   */
  readonly effectiveDraws: number;
  readonly members: number;
  /** Typical miss of the best draw, as a ratio: 1.2 is 20 % in tension. */
  readonly bestRatio: number;
  readonly failed: readonly { readonly member: number; readonly reason: string }[];
}

/** Spread of a reading about the cell's mean in ln kPa: a third. Our choice: sensors under drip differ widely from spot to spot. */
const usualReadingSpread = 0.33;
/** Tensions below this count as this: near saturation a cup and the cell's mean part by more than a ratio tells, kPa. Our choice. */
const leastKPa = 0.5;

/**
 * What a few tensiometer readings say about the unknowns: every draw is weighed by how well its twin meets the readings,
 * normal in ln(kPa) (importance weights; Beven & Freer 2001, J. Hydrology 249:11-29, for the idea of weighing draws). Give
 * few unknowns, two or three: more cannot be told apart by a few readings. The deviation after is the honest error; where it
 * hardly fell, the readings said nothing about that unknown.
 *
 * @param spread of a reading about the twin, in ln kPa
 * @throws RangeError as `sensorTraces` and `drawMaker`, if there is no reading, or every draw fails.
 * @example fitReadings(scenario, readings, { source: { kind: "priors", priors, seed: 1 }, members: 200 }).unknowns[0].after.deviation
 */
export function fitReadings(
  scenario: Scenario,
  readings: readonly Reading[],
  draws: TwinDraws,
  { spread = usualReadingSpread, ...options }: TwinOptions & { readonly spread?: number } = {},
): ReadingsFit {
  if (readings.length === 0 || !(spread > 0)) {
    throw new RangeError(`fitReadings requires readings and a spread above 0: got ${readings.length} and ${spread}`);
  }
  const hours = readings.map(({ hour }) => Math.round(hour));
  const fromHour = Math.min(...hours);
  const window = { places: placesOf(readings), fromHour, hours: Math.max(...hours) - fromHour + 1 };
  const rows: { readonly values: Float64Array; readonly misfit: number }[] = [];
  const failed: { member: number; reason: string }[] = [];
  for (const { member, values, run } of drawnScenarios(scenario, draws)) {
    try {
      const traces = sensorTraces(run(), window, options);
      let misfit = 0;
      readings.forEach((reading, r) => {
        const trace = traces.find(({ place }) => isAt(place, reading));
        const simulated = Math.max(trace?.tensionKPa[hours[r] - fromHour] ?? Number.NaN, leastKPa);
        misfit += Math.log(Math.max(reading.tensionKPa, leastKPa) / simulated) ** 2;
      });
      rows.push({ values, misfit });
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      failed.push({ member, reason: error.message });
    }
  }
  if (rows.length === 0)
    throw new RangeError(`fitReadings requires a draw that runs: got ${failed[0]?.reason ?? "none"}`);
  const least = Math.min(...rows.map(({ misfit }) => misfit));
  const weights = rows.map(({ misfit }) => Math.exp((-0.5 * (misfit - least)) / (spread * spread)));
  const even = rows.map(() => 1);
  const sum = weights.reduce((a, b) => a + b, 0);
  const squares = weights.reduce((a, b) => a + b * b, 0);
  return {
    unknowns: drawIds(draws.source).map((id, i) => ({
      id,
      before: momentsOf(rows, even, i),
      after: momentsOf(rows, weights, i),
    })),
    effectiveDraws: (sum * sum) / squares,
    members: rows.length,
    bestRatio: Math.exp(Math.sqrt(least / readings.length)),
    failed,
  };
}

const isAt = (a: SensorPlace, b: SensorPlace): boolean => a.depthCm === b.depthCm && a.fromLineCm === b.fromLineCm;

function placesOf(readings: readonly Reading[]): SensorPlace[] {
  return readings
    .filter((reading, r) => readings.findIndex((other) => isAt(other, reading)) === r)
    .map(({ depthCm, fromLineCm }) => ({ depthCm, fromLineCm }));
}

/** Weighted mean and deviation of one column. */
function momentsOf(rows: readonly { readonly values: Float64Array }[], weights: readonly number[], column: number) {
  let sum = 0;
  let mean = 0;
  rows.forEach(({ values }, r) => {
    sum += weights[r];
    mean += weights[r] * values[column];
  });
  mean /= sum;
  let variance = 0;
  rows.forEach(({ values }, r) => {
    variance += weights[r] * (values[column] - mean) ** 2;
  });
  return { mean, deviation: Math.sqrt(variance / sum) };
}
