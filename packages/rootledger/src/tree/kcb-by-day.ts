import { dayNumber } from "../numeric/day-number.js";

/**
 * Basal crop coefficient of every day: linear between the given dates, constant before the first and after the last.
 *
 * @throws RangeError if no point is given or the dates do not rise.
 * @example kcbByDay("2025-10-01", 2, [{ date: "2025-10-01", kcb: 0.6 }])[1] // 0.6
 */
export function kcbByDay(
  startDate: string,
  days: number,
  points: readonly { date: string; kcb: number }[],
): Float64Array {
  if (points.length === 0) throw new RangeError("kcbByDay requires at least one point: got 0");
  const at = points.map((point) => dayNumber(point.date));
  for (let p = 1; p < at.length; p++) {
    if (!(at[p] > at[p - 1])) {
      throw new RangeError(`kcbByDay requires rising dates: got ${points[p].date} after ${points[p - 1].date}`);
    }
  }
  const first = dayNumber(startDate);
  const kcb = new Float64Array(days);
  let p = 0;
  for (let d = 0; d < days; d++) {
    const now = first + d;
    while (p < at.length - 1 && at[p + 1] <= now) p++;
    if (now <= at[p] || p === at.length - 1) kcb[d] = points[p].kcb;
    else kcb[d] = points[p].kcb + ((points[p + 1].kcb - points[p].kcb) * (now - at[p])) / (at[p + 1] - at[p]);
  }
  return kcb;
}
