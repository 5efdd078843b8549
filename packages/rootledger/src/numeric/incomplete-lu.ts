import type { GridMatrix } from "./grid-matrix.js";

/**
 * Incomplete factorisation of a five-point matrix on its own pattern, M = (D + L) D^-1 (D + U) with L and U the matrix's own
 * off-diagonals (Meijerink & van der Vorst 1977, Math. Comput. 31:148-162). Writes 1/D. Exact when the grid has one column
 * or one row (tridiagonal) and no extras. Giving the dropped fill-in to the diagonal was tried: on wetting fronts in sand
 * it took two to three times as many rounds.
 *
 * @example factorInto(inverseDiagonal, matrix)
 */
export function factorInto(inverseDiagonal: Float64Array, matrix: GridMatrix): void {
  const { columns, centre, before, after, above, below } = matrix;
  const points = centre.length;
  for (let p = 0; p < points; p++) {
    let d = centre[p];
    if (columns > 1 && p > 0) d -= before[p] * inverseDiagonal[p - 1] * after[p - 1];
    if (p >= columns) d -= above[p] * inverseDiagonal[p - columns] * below[p - columns];
    // A pivot that all but vanishes would spoil the whole sweep.
    inverseDiagonal[p] = 1 / (d > 1e-3 * centre[p] ? d : centre[p]);
  }
}

/** x = M^-1 b with the factorisation of `factorInto`. @example preconditionInto(x, matrix, inverseDiagonal, b) */
export function preconditionInto(
  x: Float64Array,
  matrix: GridMatrix,
  inverseDiagonal: Float64Array,
  b: Float64Array,
): void {
  const { columns, before, after, above, below } = matrix;
  const points = b.length;
  const last = points - columns;
  x[0] = b[0] * inverseDiagonal[0];
  for (let p = 1; p < columns; p++) x[p] = (b[p] - before[p] * x[p - 1]) * inverseDiagonal[p];
  for (let p = columns; p < points; p++) {
    x[p] = (b[p] - before[p] * x[p - 1] - above[p] * x[p - columns]) * inverseDiagonal[p];
  }
  for (let p = points - 2; p >= last; p--) x[p] -= after[p] * x[p + 1] * inverseDiagonal[p];
  for (let p = last - 1; p >= 0; p--) {
    x[p] -= (after[p] * x[p + 1] + below[p] * x[p + columns]) * inverseDiagonal[p];
  }
}
