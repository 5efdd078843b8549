/** Rise of theta that counts as wetted in the reference study, m3/m3. */
const rise = 0.02;

/**
 * Last place, going outward or downward, where a rise crosses 0.02, linear between cell centres; the outer edge when the
 * last cell is wet, 0 when none is.
 */
export function lastWet(edgesCm: Float64Array, risen: (cell: number) => number): number {
  const cells = edgesCm.length - 1;
  const centre = (k: number): number => (edgesCm[k] + edgesCm[k + 1]) / 2;
  for (let k = cells - 1; k >= 0; k--) {
    if (risen(k) <= rise) continue;
    if (k === cells - 1) return edgesCm[cells];
    return centre(k) + ((risen(k) - rise) / (risen(k) - risen(k + 1))) * (centre(k + 1) - centre(k));
  }
  return 0;
}

export const overlap = (a: number, b: number, from: number, to: number): number =>
  Math.max(0, Math.min(b, to) - Math.max(a, from));
