/** Canopy diameter at an age, measured or expected. */
export interface CanopyPoint {
  readonly ageYears: number;
  readonly diameterM: number;
}

/**
 * Canopy diameter at an age, m: linear between the given ages, constant before the first and after the last. Measure by tape
 * where you can; trees of one age differ twofold between sites.
 *
 * @throws RangeError if no point is given or the ages do not rise.
 * @example canopyDiameterM([{ ageYears: 0, diameterM: 0.5 }, { ageYears: 4, diameterM: 4.5 }], 1) // 1.5
 */
export function canopyDiameterM(points: readonly CanopyPoint[], ageYears: number): number {
  if (points.length === 0) throw new RangeError("canopyDiameterM requires at least one point: got 0");
  for (let p = 1; p < points.length; p++) {
    if (!(points[p].ageYears > points[p - 1].ageYears)) {
      throw new RangeError(`canopyDiameterM requires rising ages: got ${points[p].ageYears} years`);
    }
  }
  const after = points.findIndex((point) => point.ageYears >= ageYears);
  if (after < 0) return points[points.length - 1].diameterM;
  if (after === 0) return points[0].diameterM;
  const low = points[after - 1];
  const high = points[after];
  const share = (ageYears - low.ageYears) / (high.ageYears - low.ageYears);
  return low.diameterM + share * (high.diameterM - low.diameterM);
}
