import type { SensorPlace } from "../advise/sensor-place.js";
import { drawnScenario, sensorTraces, type TwinOptions } from "../advise/sensor-twin.js";
import { quantileOf, requireDistribution } from "../chance/distribution.js";
import type { Prior, UnknownId } from "../chance/prior.js";
import { normalShare } from "../numeric/normal-share.js";
import type { Scenario } from "../scenario/scenario.js";
import { version } from "../version.js";
import { boundedFit, reachSpreads } from "./bounded-fit.js";
import { dayUse } from "./day-blocks.js";
import { type FitScores, fitScores } from "./fit-scores.js";
import { type FitSpread, fitSpread } from "./fit-spread.js";
import type { LeastSquares } from "./least-squares.js";
import { type MoistureReading, readingOrder } from "./moisture-reading.js";

/** How a calibration is run. */
export interface CalibrationOptions extends TwinOptions {
  /** `dampedLeastSquares(levenbergMarquardt)`, or another. */
  readonly leastSquares: LeastSquares;
  /** Days of a block; train and test blocks take turns. Default 10. */
  readonly blockDays?: number;
  /** What one reading may miss, m3/m3. Default 0.02: what probes of dielectric kind are stated to be good for in the field, from memory. */
  readonly noiseTheta?: number;
  /** Rounds of the optimiser at most. Default 8. */
  readonly iterations?: number;
  /** Share of the intervals. Default 0.9. */
  readonly share?: number;
}

/** One unknown before and after the readings, in the unit of its prior. */
export interface CalibratedUnknown extends Pick<Prior, "id" | "unit"> {
  readonly value: number;
  /** Ends of the interval. */
  readonly low: number;
  readonly high: number;
  /** The same share of the prior. */
  readonly priorLow: number;
  readonly priorHigh: number;
  /** The fit ended where the prior ends: the value is the bound's, not the readings'. */
  readonly atBound: boolean;
}

/** Scores of all places together, and of each. */
export interface PlaceScores {
  readonly all: FitScores;
  readonly byPlace: readonly (SensorPlace & FitScores)[];
}

/** Fitted unknowns with scores on days unseen. */
export interface Calibration extends Pick<FitSpread, "noise" | "autocorrelation" | "effectiveReadings" | "enough"> {
  readonly version: string;
  readonly unknowns: readonly CalibratedUnknown[];
  /** Share of the intervals. */
  readonly share: number;
  /** With the fitted values: on readings the fit has seen, and on those it has not. `test` is left out where a record has one block. */
  readonly train: PlaceScores;
  readonly test?: PlaceScores;
  /** With the scenario as it stood. */
  readonly before: { readonly train: PlaceScores; readonly test?: PlaceScores };
  readonly runs: number;
  /** The scenario with the fitted values. */
  readonly scenario: Scenario;
}

/** Slopes are taken over this many spreads to either side; our choice: wide enough to pass over the kinks of a run. */
const slopeSpreads = 0.1;

/**
 * Fits a few unknowns to soil-moisture records of the mean tree: bounded least squares in normal spreads of each prior, seen through the
 * sensor twin (the cell's mean at depth and distance at the end of the reading's hour), on blocks of days in turn with blocks that are
 * only scored. Intervals are those of `fitSpread`, carried through the prior; they know of noise that hangs together in time, and not
 * of an error of the model. Two or three unknowns; more are seldom told apart.
 *
 * @param unknowns priors that move continuously, such as some of `defaultPriors`
 * @throws RangeError if an unknown is a choice, comes twice or none is given, a reading lies outside season or section, no reading is in a
 * train block, or a run fails on the way.
 * @example calibrate(scenario, readings, [{ id: "k-sat", unit: "factor", spread: { kind: "log-uniform", from: 0.3, to: 3 }, source: "own" }], { leastSquares }).unknowns[0].low
 */
export function calibrate(
  scenario: Scenario,
  readings: readonly MoistureReading[],
  unknowns: readonly Prior[],
  options: CalibrationOptions,
): Calibration {
  const { leastSquares, blockDays = 10, noiseTheta = 0.02, iterations = 8, share = 0.9, ...twin } = options;
  requireUnknowns(unknowns);
  const { sorted, places, placeOf } = readingOrder(readings, scenario.season.days);
  const inTrain = sorted.map(({ hour }) => dayUse(Math.floor((hour - 1) / 24), blockDays) === "train");
  const train = sorted.flatMap((_, i) => (inTrain[i] ? [i] : []));
  const test = sorted.flatMap((_, i) => (inTrain[i] ? [] : [i]));
  if (train.length === 0) throw new RangeError("calibrate requires a reading in a train block: got none");
  const ids = unknowns.map(({ id }) => id);
  const fromHour = Math.min(...sorted.map(({ hour }) => Math.round(hour))) - 1;
  const lastHour = Math.max(...sorted.map(({ hour }) => Math.round(hour))) - 1;
  const valueAt = (i: number, z: number): number => quantileOf(unknowns[i].spread, normalShare(z));
  const scenarioAt = (z: readonly number[]): Scenario =>
    drawnScenario(scenario, { member: 0, ids, values: Float64Array.from(z, (spread, i) => valueAt(i, spread)) });
  let runs = 0;
  const seen = (of: Scenario): number[] => {
    runs++;
    const traces = sensorTraces(of, { places, fromHour, hours: lastHour - fromHour + 1 }, twin);
    return sorted.map(({ hour }, i) => traces[placeOf[i]].theta[Math.round(hour) - 1 - fromHour]);
  };
  const only = (of: readonly number[], which: readonly number[]): number[] => which.map((i) => of[i]);
  const read = sorted.map(({ theta }) => theta);

  const fit = boundedFit(
    ids.map((id) => ({ name: id, expected: 0, spread: 1 })),
    only(read, train),
    noiseTheta,
    { leastSquares, iterations },
    (values) => only(seen(scenarioAt(ids.map((id) => values[id]))), train),
  );
  const best = scenarioAt(fit.spreads);
  const ours = seen(best);
  const columns = ids.map((_, u) => {
    const aside = (by: number): number[] =>
      only(seen(scenarioAt(fit.spreads.map((z, i) => (i === u ? z + by : z)))), train);
    const up = aside(slopeSpreads);
    const down = aside(-slopeSpreads);
    return up.map((value, k) => (value - down[k]) / (2 * slopeSpreads));
  });
  const spread = fitSpread(
    {
      residuals: train.map((i) => ours[i] - read[i]),
      slopes: train.map((_, k) => columns.map((column) => column[k])),
      series: only(placeOf, train),
      atH: train.map((i) => sorted[i].hour),
      sigma: noiseTheta,
    },
    share,
  );
  const scored = (model: readonly number[], which: readonly number[]): PlaceScores => ({
    all: fitScores(only(read, which), only(model, which)),
    byPlace: places.flatMap((place, p) => {
      const here = which.filter((i) => placeOf[i] === p);
      return here.length === 0 ? [] : [{ ...place, ...fitScores(only(read, here), only(model, here)) }];
    }),
  });
  const bothScores = (model: readonly number[]) => ({
    train: scored(model, train),
    ...(test.length > 0 && { test: scored(model, test) }),
  });
  const before = bothScores(seen(scenario));
  const tail = (1 - share) / 2;
  return {
    version,
    unknowns: unknowns.map(({ id, unit, spread: prior }, i) => ({
      ...{ id, unit },
      value: valueAt(i, fit.spreads[i]),
      low: valueAt(i, fit.spreads[i] - spread.halfWidths[i]),
      high: valueAt(i, fit.spreads[i] + spread.halfWidths[i]),
      ...{ priorLow: quantileOf(prior, tail), priorHigh: quantileOf(prior, 1 - tail) },
      atBound: Math.abs(fit.spreads[i]) > 0.999 * reachSpreads,
    })),
    share,
    ...bothScores(ours),
    before,
    noise: spread.noise,
    autocorrelation: spread.autocorrelation,
    effectiveReadings: spread.effectiveReadings,
    enough: spread.enough,
    runs,
    scenario: best,
  };
}

function requireUnknowns(unknowns: readonly Prior[]): void {
  if (unknowns.length === 0) throw new RangeError("calibrate requires an unknown: got none");
  const ids: UnknownId[] = [];
  for (const { id, spread } of unknowns) {
    requireDistribution(id, spread);
    if (spread.kind === "choice") throw new RangeError(`calibrate requires unknowns that move continuously: got ${id}`);
    if (ids.includes(id)) throw new RangeError(`calibrate requires each unknown once: got ${id} twice`);
    ids.push(id);
  }
}
