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

/**
 * A day of the year in every year of a season, given by its first and last day number, and in the year before and after it: the last
 * one before the season and the first one beyond it are always among them.
 *
 * @example occurrences("01-01", dayNumber("2025-06-01"), dayNumber("2025-06-30")).length // 3
 */
export function occurrences(monthDay: string, firstDay: number, lastDay: number): readonly number[] {
  const from = Number(dateOf(firstDay).slice(0, 4)) - 1;
  const years = Number(dateOf(lastDay).slice(0, 4)) + 2 - from;
  return Array.from({ length: years }, (_, i) => dayNumber(`${String(from + i).padStart(4, "0")}-${monthDay}`));
}
