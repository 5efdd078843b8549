import { normalQuantile } from "../numeric/normal-share.js";
import { type Matrix, multiply, solve, transpose } from "../numeric/small-matrix.js";

/** A fit at its best, in spreads of the unknowns. */
export interface FittedModel {
  /** Model less reading, in time order within each series. */
  readonly residuals: readonly number[];
  /** d model / d unknown, one row a reading, one column an unknown in spreads. */
  readonly slopes: Matrix;
  /** Which series a reading belongs to (a probe), and when, h. */
  readonly series: readonly number[];
  readonly atH: readonly number[];
  /** What one reading was taken to miss in the fit. */
  readonly sigma: number;
}

/** How sure the fitted values are. */
export interface FitSpread {
  /** Standard error of each unknown, in spreads. */
  readonly errors: readonly number[];
  /** Half widths of the interval that holds the stated share. */
  readonly halfWidths: readonly number[];
  /** Standard deviation of a residual. */
  readonly noise: number;
  /** Correlation of neighbouring residuals of a series, one usual gap apart; below 0 counts as 0, above 0.99 as 0.99. */
  readonly autocorrelation: number;
  /** Readings that say as much as all of them would if they were independent: n (1 - r) / (1 + r). */
  readonly effectiveReadings: number;
  /** False where effective readings are fewer than two beyond what they are asked: the intervals are then those of what was expected. */
  readonly enough: boolean;
}

/** Effective readings that must be left over to know the noise by. Our choice. */
const leastFree = 2;
/** A correlation above this counts as this: nearer to 1 no length of record would tell anything. Our choice. */
const mostCorrelation = 0.99;

/**
 * How far the fitted unknowns may be off, from the slopes of the model and from residuals that hang together in time. Residuals of
 * a series count as first-order autoregressive, series as independent of each other. With A = J'J / sigma^2 + I (I for what was
 * expected), the covariance is A^-1 (J' W J / sigma^4 + I) A^-1, W the covariance of the residuals: the sandwich of White (1980,
 * Econometrica 48:817-838) and Newey & West (1987, Econometrica 55:703-708) with an autoregressive W. The lag-one correlation is
 * corrected for its bias by (1 + 3 r) / n (Marriott & Pope 1954, Biometrika 41:390-402, from memory). Student's t from the normal by
 * Abramowitz & Stegun (1964) 26.7.5. What it leaves out: that the model itself may be wrong.
 *
 * @param share of the interval, such as 0.9
 * @throws RangeError if series are mixed or out of order.
 * @example fitSpread({ residuals, slopes, series, atH, sigma: 0.02 }, 0.9).halfWidths
 */
export function fitSpread(fit: FittedModel, share: number): FitSpread {
  const { residuals, slopes, sigma } = fit;
  const count = residuals.length;
  const unknowns = slopes[0].length;
  const neighbours = neighbourGaps(fit);
  const autocorrelation = lagOne(residuals, neighbours);
  const effectiveReadings = (count * (1 - autocorrelation)) / (1 + autocorrelation);
  const information = multiply(transpose(slopes), slopes);
  const precision = information.map((row, i) => row.map((v, j) => v / (sigma * sigma) + (i === j ? 1 : 0)));
  const identity = precision.map((_, i) => precision.map((__, j) => (i === j ? 1 : 0)));
  const inverse = solve(precision, identity);
  if (inverse === undefined)
    throw new RangeError("fitSpread requires slopes that can be told apart: got a singular fit");
  const told = multiply(inverse, information).reduce((sum, row, i) => sum + row[i] / (sigma * sigma), 0);
  const free = effectiveReadings - told;
  const squares = residuals.reduce((sum, e) => sum + e * e, 0);
  const enough = free >= leastFree;
  const variance = enough ? (squares / count) * (effectiveReadings / free) : sigma * sigma;
  const spreadOfScore = autoregressiveSum(slopes, neighbours, autocorrelation).map((row, i) =>
    row.map((v, j) => (variance * v) / sigma ** 4 + identity[i][j]),
  );
  const covariance = multiply(multiply(inverse, spreadOfScore), inverse);
  const errors = Array.from({ length: unknowns }, (_, i) => (enough ? Math.sqrt(covariance[i][i]) : 1));
  const t = enough ? studentQuantile((1 + share) / 2, free) : normalQuantile((1 + share) / 2);
  return {
    errors,
    halfWidths: errors.map((error) => t * error),
    noise: Math.sqrt(variance),
    autocorrelation,
    effectiveReadings,
    enough,
  };
}

/** For each reading, how many usual gaps lie between it and the one before it in its series; Infinity for the first. */
function neighbourGaps({ series, atH }: FittedModel): number[] {
  const gapsH = series.map((name, i) =>
    i === 0 || series[i - 1] !== name ? Number.POSITIVE_INFINITY : atH[i] - atH[i - 1],
  );
  const disorder = gapsH.findIndex((gapH) => !(gapH > 0));
  if (disorder >= 0) {
    throw new RangeError(
      `fitSpread requires series one after the other, each in time order: got ${atH[disorder]} h late`,
    );
  }
  const finite = gapsH.filter(Number.isFinite).sort((a, b) => a - b);
  const usualH = finite[finite.length >> 1] ?? 1;
  return gapsH.map((gapH) => gapH / usualH);
}

/** Correlation of residuals at most one and a half usual gaps apart. */
function lagOne(residuals: readonly number[], gaps: readonly number[]): number {
  let product = 0;
  let square = 0;
  let pairs = 0;
  for (let i = 1; i < residuals.length; i++) {
    if (!(gaps[i] <= 1.5)) continue;
    product += residuals[i] * residuals[i - 1];
    square += 0.5 * (residuals[i] ** 2 + residuals[i - 1] ** 2);
    pairs++;
  }
  if (pairs === 0 || square === 0) return 0;
  const raw = product / square;
  const corrected = raw + (1 + 3 * raw) / pairs;
  return corrected < 0 ? 0 : corrected > mostCorrelation ? mostCorrelation : corrected;
}

/** J' R J for R with R_st = r^(gaps between s and t) within a series, 0 between series. */
function autoregressiveSum(slopes: Matrix, gaps: readonly number[], r: number): number[][] {
  const n = slopes[0].length;
  const sum = Array.from({ length: n }, () => new Array<number>(n).fill(0));
  const trail = new Array<number>(n).fill(0);
  slopes.forEach((row, t) => {
    const keep = Number.isFinite(gaps[t]) ? r ** gaps[t] : 0;
    for (let i = 0; i < n; i++) trail[i] = t === 0 ? 0 : keep * (trail[i] + slopes[t - 1][i]);
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) sum[i][j] += row[i] * row[j] + row[i] * trail[j] + trail[i] * row[j];
  });
  return sum;
}

function studentQuantile(share: number, freedom: number): number {
  const x = normalQuantile(share);
  const first = (x ** 3 + x) / 4;
  const second = (5 * x ** 5 + 16 * x ** 3 + 3 * x) / 96;
  return x + first / freedom + second / (freedom * freedom);
}
