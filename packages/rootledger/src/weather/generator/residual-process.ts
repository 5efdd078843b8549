import { choleskyFactor, type Matrix, multiply, solve, subtract, transpose } from "../../numeric/small-matrix.js";

/** How the standardised residuals of a day follow from those of the day before: x(t) = A x(t-1) + B e(t), e of unit normals. */
export interface ResidualProcess {
  readonly a: Matrix;
  readonly b: Matrix;
  /** Lower triangle whose product with its transpose is M0: turns unit normals into residuals of a first day. */
  readonly start: Matrix;
}

/**
 * The process whose residuals have the correlations M0 within a day and M1 from day to day: A = M1 M0^-1, B B^T = M0 - M1 M0^-1 M1^T, B lower triangular. Source: Richardson (1981),
 * Water Resources Research 17:182-190; Richardson & Wright (1984), ARS-8; after Matalas (1967). Undefined where the matrices belong to no such process.
 *
 * @example residualProcess([[1]], [[0.6]]) // { a: [[0.6]], b: [[0.8]], start: [[1]] }
 */
export function residualProcess(m0: Matrix, m1: Matrix): ResidualProcess | undefined {
  // A M0 = M1, so M0^T A^T = M1^T.
  const aTransposed = solve(transpose(m0), transpose(m1));
  if (aTransposed === undefined) return undefined;
  const a = transpose(aTransposed);
  const b = choleskyFactor(subtract(m0, multiply(a, transpose(m1))));
  const start = choleskyFactor(m0);
  return b === undefined || start === undefined ? undefined : { a, b, start };
}

/**
 * Writes the residuals of a day into `out`: A times those of the day before plus `spread` times fresh unit normals, where spread is B, or `start` on
 * a first day (with zeros before it). `out` and `before` must be different arrays.
 *
 * @example residualsInto(out, process, process.b, before, normals)
 */
export function residualsInto(
  out: Float64Array,
  { a }: ResidualProcess,
  spread: Matrix,
  before: Float64Array,
  normals: Float64Array,
): void {
  for (let i = 0; i < out.length; i++) {
    let sum = 0;
    for (let j = 0; j < out.length; j++) sum += a[i][j] * before[j] + spread[i][j] * normals[j];
    out[i] = sum;
  }
}

/**
 * Mean correlations of maximum and minimum temperature and radiation over stations of the United States, within a day and from day to day (the row's
 * variable today, the column's yesterday). Source: Richardson & Wright (1984), ARS-8; from memory.
 */
export const publishedCorrelations: { readonly m0: Matrix; readonly m1: Matrix } = {
  m0: [
    [1, 0.633, 0.186],
    [0.633, 1, -0.193],
    [0.186, -0.193, 1],
  ],
  m1: [
    [0.621, 0.445, 0.087],
    [0.563, 0.674, -0.1],
    [0.015, -0.091, 0.251],
  ],
};
