/**
 * Area that two circles share, in the square of the unit given: the lens between two chords.
 *
 * @param apart distance of the centres
 * @example circleOverlap(1, 1, 0) // 3.14
 */
export function circleOverlap(radiusA: number, radiusB: number, apart: number): number {
  if (apart >= radiusA + radiusB) return 0;
  const [small, large] = radiusA < radiusB ? [radiusA, radiusB] : [radiusB, radiusA];
  if (apart <= large - small) return Math.PI * small * small;
  const toChord = (apart * apart + small * small - large * large) / (2 * apart);
  return segment(small, toChord) + segment(large, apart - toChord);
}

/** Part of a circle beyond a chord at a distance from its centre; a negative distance means more than half. */
function segment(radius: number, toChord: number): number {
  const share = toChord / radius;
  const cosine = share > 1 ? 1 : share < -1 ? -1 : share;
  const halfChord = Math.sqrt(radius * radius - toChord * toChord || 0);
  return radius * radius * Math.acos(cosine) - toChord * (Number.isNaN(halfChord) ? 0 : halfChord);
}
