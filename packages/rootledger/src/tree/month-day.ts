import { dateOf, dayNumber, daysInMonth } from "../numeric/day-number.js";

const monthDayPattern = /^(\d{2})-(\d{2})$/;

/** Whether a text is a day of every year, written MM-DD; 29 February is not. @example isMonthDay("11-30") // true */
export const isMonthDay = (text: string): boolean =>
  monthDayPattern.test(text) && Number.isFinite(dayNumber(`2025-${text}`));

/**
 * The day of the year six months later, for a calendar that was written for the other hemisphere. A day that the month does not
 * have becomes its last: 31 August gives 28 February.
 *
 * @throws RangeError if the text is not a day of every year written MM-DD.
 * @example otherHemisphere("10-15") // "04-15"
 */
export function otherHemisphere(monthDay: string): string {
  if (!isMonthDay(monthDay)) throw new RangeError(`otherHemisphere requires a day as MM-DD: got ${monthDay}`);
  const month = ((Number(monthDay.slice(0, 2)) + 5) % 12) + 1;
  const last = daysInMonth(2025, month);
  const day = Math.min(Number(monthDay.slice(3)), last);
  return `${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}

/** Every occurrence of a day of the year from one day number to another, both included. @example occurrences("01-01", dayNumber("2025-06-01"), dayNumber("2026-06-01")).length // 1 */
export function occurrences(monthDay: string, fromDay: number, toDay: number): readonly number[] {
  const found: number[] = [];
  const lastYear = Number(dateOf(toDay).slice(0, 4));
  for (let year = Number(dateOf(fromDay).slice(0, 4)); year <= lastYear; year++) {
    const day = dayNumber(`${String(year).padStart(4, "0")}-${monthDay}`);
    if (day >= fromDay && day <= toDay) found.push(day);
  }
  return found;
}
