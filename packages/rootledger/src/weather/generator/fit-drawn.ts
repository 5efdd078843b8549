import type { DailyWeather } from "../daily-weather.js";
import type { DrawnColumn, DrawnVariable, NormalVariable } from "./generator-fit.js";
import { fitHarmonic, type Harmonic, harmonicAt } from "./harmonic.js";
import { fitRanked } from "./ranked-variable.js";
import { type ResidualProcess, residualProcess } from "./residual-process.js";

/** Harmonics of means and of variances; the published fit has one of each. Own choice: with two, the means of single months fit too. */
const meanHarmonics = 2;
const varianceHarmonics = 1;

/** A variance never falls below this share of its mean over the year: a low harmonic must not make it negative. */
const leastShare = 0.1;

export interface DrawnFit {
  readonly drawn: readonly DrawnVariable[];
  readonly process: ResidualProcess | undefined;
}

/** Fits the yearly course of each column on dry days (state 0) and wet days (1; -1 where the rain is not known), and the process of what is left of them when standardised. */
export function fitDrawn(
  weather: DailyWeather,
  columns: readonly DrawnColumn[],
  state: Int8Array,
  dayOfYear: Int16Array,
  monthOf: Uint8Array,
): DrawnFit {
  const fits = columns.map((column) =>
    column === "tMaxC" || column === "tMinC"
      ? fitNormal(weather[column], column, state, dayOfYear)
      : fitRanked(weather[column], column, state, dayOfYear, monthOf),
  );
  const drawn = fits.map(({ variable }) => variable);
  const residuals = fits.map(({ scores }) => unitVariance(scores));
  const correlation = (i: number, j: number, lag: 0 | 1): number => {
    let sum = 0;
    let count = 0;
    for (let d = lag; d < weather.days; d++) {
      const product = residuals[i][d] * residuals[j][d - lag];
      if (Number.isNaN(product)) continue;
      sum += product;
      count++;
    }
    return count === 0 ? 0 : sum / count;
  };
  const matrix = (lag: 0 | 1): number[][] =>
    drawn.map((_, i) => drawn.map((_, j) => (lag === 0 && i === j ? 1 : correlation(i, j, lag))));
  return { drawn, process: residualProcess(matrix(0), matrix(1)) };
}

function fitNormal(
  values: Float64Array,
  column: DrawnColumn,
  state: Int8Array,
  dayOfYear: Int16Array,
): { readonly variable: NormalVariable; readonly scores: Float64Array } {
  const side = (of: 0 | 1): NormalVariable["dry"] => {
    const use = (d: number): boolean => state[d] === of;
    const mean = fitHarmonic(values, dayOfYear, use, meanHarmonics);
    const squares = values.map((value, d) => {
      const off = value - harmonicAt(mean, dayOfYear[d]);
      return off * off;
    });
    return { mean, variance: fitHarmonic(squares, dayOfYear, use, varianceHarmonics) };
  };
  const [dry, wet] = [side(0), side(1)];
  // A record without wet days (or without dry ones) has one side only.
  const sides = { dry: Number.isNaN(dry.mean.mean) ? wet : dry, wet: Number.isNaN(wet.mean.mean) ? dry : wet };
  const scores = values.map((value, d) => {
    if (state[d] < 0) return Number.NaN;
    const { mean, variance } = state[d] === 1 ? sides.wet : sides.dry;
    return (value - harmonicAt(mean, dayOfYear[d])) / deviationAt(variance, dayOfYear[d]);
  });
  return { variable: { kind: "normal", column, ...sides, lowest: [], highest: [] }, scores };
}

function unitVariance(scores: Float64Array): Float64Array {
  let squares = 0;
  let count = 0;
  for (const value of scores) {
    if (Number.isNaN(value)) continue;
    squares += value * value;
    count++;
  }
  const scale = Math.sqrt(squares / count);
  return scale > 0 ? scores.map((value) => value / scale) : scores;
}

/** Standard deviation on a day of the year from a course of the variance. */
export function deviationAt(variance: Harmonic, dayOfYear: number): number {
  const value = harmonicAt(variance, dayOfYear);
  const least = leastShare * variance.mean;
  return Math.sqrt(value > least ? value : least);
}
