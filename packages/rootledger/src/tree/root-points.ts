import { dayNumber } from "../numeric/day-number.js";

/** How far the roots reach at a date, dug up or expected. */
export interface RootPoint {
  readonly date: string;
  readonly depthCm: number;
  /** Radius of the root disc; left out, the disc does not grow. */
  readonly radiusCm?: number | undefined;
}

/**
 * Rooted depth and radius on a day: linear between the given dates, constant before the first and after the last. No rate is
 * published that would hold from site to site: dig.
 *
 * @param day day number, as `dayNumber` gives it
 * @param radiusCm radius of points that name none
 * @throws RangeError if no point is given or the dates do not rise.
 * @example rootsOnDay([{ date: "2025-01-01", depthCm: 25 }], 0, 20).depthCm // 25
 */
export function rootsOnDay(
  points: readonly RootPoint[],
  day: number,
  radiusCm: number,
): { readonly depthCm: number; readonly radiusCm: number } {
  if (points.length === 0) throw new RangeError("rootsOnDay requires at least one point: got 0");
  const at = points.map(({ date }) => dayNumber(date));
  at.forEach((when, p) => {
    if (p > 0 && !(when > at[p - 1])) {
      throw new RangeError(`rootsOnDay requires rising dates: got ${points[p].date} after ${points[p - 1].date}`);
    }
  });
  const after = at.findIndex((when) => when >= day);
  const last = points.length - 1;
  const high = after < 0 ? last : after;
  const low = after < 0 || after === 0 ? high : after - 1;
  const share = high === low ? 0 : (day - at[low]) / (at[high] - at[low]);
  const between = (a: number, b: number): number => a + share * (b - a);
  return {
    depthCm: between(points[low].depthCm, points[high].depthCm),
    radiusCm: between(points[low].radiusCm ?? radiusCm, points[high].radiusCm ?? radiusCm),
  };
}
