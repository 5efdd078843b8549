import { dateOf, dayNumber } from "../numeric/day-number.js";
import type { NeedPeriod } from "./water-need.js";

/** Of ten days of a month nine are cooler than its hot day. Our choice of what "hot" means. */
const hotShare = 0.9;

/**
 * Calendar months of a daily record as spans for `waterNeed`: mean reference, the figure that nine days of ten stay below, and the
 * coefficient weighted with the reference, so that mean x coefficient is the mean of the daily products.
 *
 * @throws RangeError if the lengths differ or a day is not a number.
 * @example needPeriods("2025-01-30", [4, 6, 5], [0.7, 0.7, 0.6]).map((month) => month.days) // [2, 1]
 */
export function needPeriods(
  startDate: string,
  referenceMm: ArrayLike<number>,
  coefficient: ArrayLike<number>,
): readonly NeedPeriod[] {
  if (referenceMm.length !== coefficient.length) {
    throw new RangeError(
      `needPeriods requires a coefficient a day: got ${coefficient.length} for ${referenceMm.length} days`,
    );
  }
  const first = dayNumber(startDate);
  const months = new Map<string, number[]>();
  for (let day = 0; day < referenceMm.length; day++) {
    if (!Number.isFinite(referenceMm[day] * coefficient[day])) {
      throw new RangeError(`needPeriods requires numbers on every day: got none on ${dateOf(first + day)}`);
    }
    const month = dateOf(first + day).slice(0, 7);
    const days = months.get(month) ?? [];
    months.set(month, [...days, day]);
  }
  return [...months].map(([name, days]) => {
    const mm = days.map((day) => referenceMm[day]);
    const total = mm.reduce((sum, value) => sum + value, 0);
    const used = days.reduce((sum, day) => sum + referenceMm[day] * coefficient[day], 0);
    const plain = days.reduce((sum, day) => sum + coefficient[day], 0) / days.length;
    const rising = [...mm].sort((a, b) => a - b);
    return {
      name,
      days: days.length,
      referenceMmPerDay: total / days.length,
      hotDayMmPerDay: rising[Math.min(rising.length - 1, Math.floor(hotShare * rising.length))],
      coefficient: total > 0 ? used / total : plain,
    };
  });
}
