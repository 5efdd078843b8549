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
  const months = grouped(startDate, referenceMm, coefficient, (date) => date.slice(0, 7));
  return [...months].map(([name, days]) => spanOf(name, days, days.length, referenceMm, coefficient));
}

const monthNames = [
  ...["January", "February", "March", "April", "May", "June"],
  ...["July", "August", "September", "October", "November", "December"],
];

/**
 * Months of the year over all years of a daily record, as `needPeriods` has the months of each year; the days of a span are the mean
 * number that the years have of that month.
 *
 * @throws RangeError if the lengths differ or a day is not a number.
 * @example needByMonth("2024-12-31", [6, 5, 5], [0.8, 0.8, 0.8]).map((month) => month.name) // ["January", "December"]
 */
export function needByMonth(
  startDate: string,
  referenceMm: ArrayLike<number>,
  coefficient: ArrayLike<number>,
): readonly NeedPeriod[] {
  const first = dayNumber(startDate);
  const months = grouped(startDate, referenceMm, coefficient, (date) => date.slice(5, 7));
  return [...months]
    .sort(([a], [b]) => Number(a) - Number(b))
    .map(([month, days]) => {
      const years = new Set(days.map((day) => dateOf(first + day).slice(0, 4))).size;
      return spanOf(monthNames[Number(month) - 1], days, days.length / years, referenceMm, coefficient);
    });
}

/** Days of a record by a part of their date, in the order of the record. */
function grouped(
  startDate: string,
  referenceMm: ArrayLike<number>,
  coefficient: ArrayLike<number>,
  keyOf: (date: string) => string,
): ReadonlyMap<string, readonly number[]> {
  if (referenceMm.length !== coefficient.length) {
    throw new RangeError(
      `needPeriods requires a coefficient a day: got ${coefficient.length} for ${referenceMm.length} days`,
    );
  }
  const first = dayNumber(startDate);
  const groups = new Map<string, number[]>();
  for (let day = 0; day < referenceMm.length; day++) {
    if (!Number.isFinite(referenceMm[day] * coefficient[day])) {
      throw new RangeError(`needPeriods requires numbers on every day: got none on ${dateOf(first + day)}`);
    }
    const key = keyOf(dateOf(first + day));
    const days = groups.get(key);
    if (days === undefined) groups.set(key, [day]);
    else days.push(day);
  }
  return groups;
}

function spanOf(
  name: string,
  days: readonly number[],
  length: number,
  referenceMm: ArrayLike<number>,
  coefficient: ArrayLike<number>,
): NeedPeriod {
  const mm = days.map((day) => referenceMm[day]);
  const total = mm.reduce((sum, value) => sum + value, 0);
  const used = days.reduce((sum, day) => sum + referenceMm[day] * coefficient[day], 0);
  const plain = days.reduce((sum, day) => sum + coefficient[day], 0) / days.length;
  const rising = [...mm].sort((a, b) => a - b);
  return {
    name,
    days: length,
    referenceMmPerDay: total / days.length,
    hotDayMmPerDay: rising[Math.floor(hotShare * rising.length)],
    coefficient: total > 0 ? used / total : plain,
  };
}
