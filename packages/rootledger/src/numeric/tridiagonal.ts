/**
 * Solves a tridiagonal system in place: `right` becomes the solution, `diagonal` is used up. Row i reads
 * lower[i] x[i-1] + diagonal[i] x[i] + upper[i] x[i+1] = right[i]. Thomas algorithm (LU without pivoting), for
 * diagonally dominant systems.
 */
export function solveTridiagonal(
  lower: Float64Array,
  diagonal: Float64Array,
  upper: Float64Array,
  right: Float64Array,
): void {
  const count = right.length;
  for (let i = 1; i < count; i++) {
    const factor = lower[i] / diagonal[i - 1];
    diagonal[i] -= factor * upper[i - 1];
    right[i] -= factor * right[i - 1];
  }
  right[count - 1] /= diagonal[count - 1];
  for (let i = count - 2; i >= 0; i--) {
    right[i] = (right[i] - upper[i] * right[i + 1]) / diagonal[i];
  }
}
