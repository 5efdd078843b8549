/** A small dense matrix, row by row. */
export type Matrix = readonly (readonly number[])[];

/** @example multiply([[1, 2], [3, 4]], [[1, 0], [0, 1]]) // [[1, 2], [3, 4]] */
export const multiply = (a: Matrix, b: Matrix): number[][] =>
  a.map((row) => b[0].map((_, j) => row.reduce((sum, value, k) => sum + value * b[k][j], 0)));

/** @example transpose([[1, 2], [3, 4]]) // [[1, 3], [2, 4]] */
export const transpose = (a: Matrix): number[][] => a[0].map((_, j) => a.map((row) => row[j]));

/** @example subtract([[1, 2]], [[1, 1]]) // [[0, 1]] */
export const subtract = (a: Matrix, b: Matrix): number[][] => a.map((row, i) => row.map((value, j) => value - b[i][j]));

/** Solves A X = B by elimination with row exchange. Undefined where A is singular. @example solve([[2, 0], [0, 4]], [[2], [8]]) // [[1], [2]] */
export function solve(a: Matrix, b: Matrix): number[][] | undefined {
  const n = a.length;
  const rows = a.map((row, i) => [...row, ...b[i]]);
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(rows[i][k]) > Math.abs(rows[pivot][k])) pivot = i;
    [rows[k], rows[pivot]] = [rows[pivot], rows[k]];
    const lead = rows[k][k];
    if (!(Math.abs(lead) > 1e-12)) return undefined;
    for (let i = 0; i < n; i++) {
      if (i === k) continue;
      const factor = rows[i][k] / lead;
      for (let j = k; j < rows[i].length; j++) rows[i][j] -= factor * rows[k][j];
    }
  }
  return rows.map((row, i) => row.slice(n).map((value) => value / row[i]));
}

/** The lower triangle L of A = L L^T. Undefined where A is not positive definite. @example choleskyFactor([[4, 2], [2, 5]]) // [[2, 0], [1, 2]] */
export function choleskyFactor(a: Matrix): number[][] | undefined {
  const lower = a.map((row) => row.map(() => 0));
  for (let i = 0; i < a.length; i++) {
    for (let j = 0; j <= i; j++) {
      let rest = a[i][j];
      for (let k = 0; k < j; k++) rest -= lower[i][k] * lower[j][k];
      if (i === j && !(rest > 1e-12)) return undefined;
      lower[i][j] = i === j ? Math.sqrt(rest) : rest / lower[j][j];
    }
  }
  return lower;
}
