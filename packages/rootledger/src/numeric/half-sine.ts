/**
 * Share of a half sine between `start` and `end` that lies between `from` and `to`; the whole is 1. An empty half sine
 * (end not after start) has share 0.
 *
 * @example halfSineShare(6, 12, 6, 18) // 0.5
 */
export function halfSineShare(from: number, to: number, start: number, end: number): number {
  const length = end - start;
  if (!(length > 0)) return 0;
  const a = from <= start ? 0 : from >= end ? 1 : (from - start) / length;
  const b = to <= start ? 0 : to >= end ? 1 : (to - start) / length;
  return 0.5 * (Math.cos(Math.PI * a) - Math.cos(Math.PI * b));
}
