/**
 * Solves a band matrix without exchanging rows, in place: fit for matrices whose diagonal outweighs the rest of each row.
 * `band[row * (2 * half + 1) + half + (column - row)]`; the answer replaces `right`. Both arrays are spent.
 *
 * @throws RangeError if a pivot is 0 or not a number.
 * @example solveBanded(new Float64Array([0, 2, 1, 1, 2, 0]), new Float64Array([3, 3]), 1) // Float64Array [1, 1]
 */
export function solveBanded(band: Float64Array, right: Float64Array, half: number): Float64Array {
  const n = right.length;
  const width = 2 * half + 1;
  for (let k = 0; k < n; k++) {
    const pivot = band[k * width + half];
    if (!(Math.abs(pivot) > 0))
      throw new RangeError(`solveBanded requires pivots other than 0: got ${pivot} in row ${k}`);
    const last = k + half < n - 1 ? k + half : n - 1;
    for (let i = k + 1; i <= last; i++) {
      const at = i * width + half - (i - k);
      const factor = band[at] / pivot;
      if (factor === 0) continue;
      for (let j = 1; j <= half; j++) band[at + j] -= factor * band[k * width + half + j];
      right[i] -= factor * right[k];
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    let sum = right[k];
    const last = k + half < n - 1 ? k + half : n - 1;
    for (let j = k + 1; j <= last; j++) sum -= band[k * width + half + (j - k)] * right[j];
    right[k] = sum / band[k * width + half];
  }
  return right;
}
