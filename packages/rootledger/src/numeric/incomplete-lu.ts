import type { GridMatrix } from "./grid-matrix.js";

/**
 * Share of the dropped fill-in that goes to the diagonal. 1 keeps row sums exactly (modified factorisation, Gustafsson
 * 1978, BIT 18:142-156), slightly less is safer for unsymmetric matrices.
 */
const fillShare = 0.97;

/**
 * Incomplete factorisation of a five-point matrix on its own pattern: M = (D + L) D^-1 (D + U) with L and U the matrix's
 * own off-diagonals. Writes 1/D. Exact when the grid has one column (tridiagonal) and no extras.
 *
 * @example factorInto(inverseDiagonal, matrix)
 */
export function factorInto(inverseDiagonal: Float64Array, matrix: GridMatrix): void {
  const { columns, centre, before, after, above, below } = matrix;
  const points = centre.length;
  for (let p = 0; p < points; p++) {
    const full = centre[p];
    let d = full;
    let fill = 0;
    if (columns > 1 && p > 0) {
      const lower = before[p] * inverseDiagonal[p - 1];
      d -= lower * after[p - 1];
      fill += lower * below[p - 1];
    }
    if (p >= columns) {
      const lower = above[p] * inverseDiagonal[p - columns];
      d -= lower * below[p - columns];
      if (columns > 1) fill += lower * after[p - columns];
    }
    const modified = d - fillShare * fill;
    // A pivot that all but vanishes would spoil the whole sweep; the plain one is never smaller for these matrices.
    inverseDiagonal[p] = 1 / (modified > 1e-3 * full ? modified : d > 1e-3 * full ? d : full);
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
