import { dayNumber } from "../numeric/day-number.js";

/**
 * Day of the year, 1 January = 1, leap years counted. Source: FAO-56 (Allen et al. 1998), Annex 2, table 2.5.
 * NaN where the text is not a real ISO date.
 *
 * @example dayOfYear("2025-09-03") // 246
 */
export const dayOfYear = (date: string): number => dayNumber(date) - dayNumber(`${date.slice(0, 4)}-01-01`) + 1;

/** Days of the year of each of `days` dates from `startDate`, 1 January = 1. @example daysOfYear("2024-12-31", 2) // [366, 1] */
export function daysOfYear(startDate: string, days: number): Int16Array {
  const result = new Int16Array(days);
  let year = Number(startDate.slice(0, 4));
  let ofYear = dayOfYear(startDate);
  let length = daysInYear(year);
  for (let d = 0; d < days; d++) {
    result[d] = ofYear;
    ofYear++;
    if (ofYear > length) {
      year++;
      ofYear = 1;
      length = daysInYear(year);
    }
  }
  return result;
}

const daysInYear = (year: number): number => ((year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 366 : 365);
