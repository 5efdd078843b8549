/**
 * Share of the strip between distances `from` and `to` from a line through a circle's centre, `length` long and centred on
 * the circle, that the circle covers. Where neighbouring circles overlap along the strip the ground is covered once.
 * Midpoint rule on 64 slices.
 *
 * @example circleStripShare(0, 10, 1000, 100) // 1
 */
export function circleStripShare(from: number, to: number, radius: number, length: number): number {
  const slices = 64;
  let covered = 0;
  for (let s = 0; s < slices; s++) {
    const x = from + ((s + 0.5) / slices) * (to - from);
    const half = radius * radius - x * x;
    if (half <= 0) continue;
    const chord = 2 * Math.sqrt(half);
    covered += chord < length ? chord / length : 1;
  }
  return covered / slices;
}
