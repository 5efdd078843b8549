export interface MonotoneCubic {
  at(x: number): number;
  slopeAt(x: number): number;
}

/**
 * Piecewise cubic through points with rising x that never turns between two of them. Slopes inside are the weighted
 * harmonic mean of the neighbouring chords, at the ends the chord itself. Source: Fritsch & Butland (1984),
 * SIAM J. Sci. Stat. Comput. 5:300-304. Outside the points it goes on straight.
 * @throws RangeError with fewer than two points, unequal lengths, or x that does not rise.
 * @example monotoneCubic([0, 1, 2], [0, 1, 4]).at(1) // 1
 */
export function monotoneCubic(xs: readonly number[], ys: readonly number[]): MonotoneCubic {
  const count = xs.length;
  if (count < 2 || ys.length !== count) {
    throw new RangeError(`monotoneCubic requires as many y as x, at least two: got ${count} and ${ys.length}`);
  }
  const chords: number[] = [];
  for (let i = 0; i + 1 < count; i++) {
    const width = xs[i + 1] - xs[i];
    if (!(width > 0)) throw new RangeError(`monotoneCubic requires rising x: got ${xs[i + 1]} after ${xs[i]}`);
    chords.push((ys[i + 1] - ys[i]) / width);
  }
  const slopes = xs.map((_, i) => {
    if (i === 0) return chords[0];
    if (i === count - 1) return chords[count - 2];
    const before = chords[i - 1];
    const after = chords[i];
    if (before * after <= 0) return 0;
    const left = xs[i] - xs[i - 1];
    const right = xs[i + 1] - xs[i];
    return (3 * (left + right)) / ((2 * right + left) / before + (right + 2 * left) / after);
  });
  const piece = (x: number): number => {
    let low = 0;
    let high = count - 1;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (xs[middle] <= x) low = middle;
      else high = middle;
    }
    return low;
  };
  const last = count - 1;
  return {
    at(x) {
      if (x <= xs[0]) return ys[0] + slopes[0] * (x - xs[0]);
      if (x >= xs[last]) return ys[last] + slopes[last] * (x - xs[last]);
      const i = piece(x);
      const width = xs[i + 1] - xs[i];
      const t = (x - xs[i]) / width;
      const u = 1 - t;
      return (
        ys[i] * u * u * (1 + 2 * t) +
        ys[i + 1] * t * t * (3 - 2 * t) +
        width * t * u * (slopes[i] * u - slopes[i + 1] * t)
      );
    },
    slopeAt(x) {
      if (x <= xs[0]) return slopes[0];
      if (x >= xs[last]) return slopes[last];
      const i = piece(x);
      const t = (x - xs[i]) / (xs[i + 1] - xs[i]);
      const u = 1 - t;
      return 6 * t * u * chords[i] + slopes[i] * u * (1 - 3 * t) + slopes[i + 1] * t * (3 * t - 2);
    },
  };
}
