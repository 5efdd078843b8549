const isoDate = /^(\d{4})-(\d{2})-(\d{2})$/;
/** Days of a mean year of the Gregorian calendar. */
export const daysPerYear = 365.2425;

const daysBeforeMonth = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

/**
 * Days from 0000-03-01 of the proleptic Gregorian calendar to an ISO date; differences of two are days between dates.
 * NaN where the text is not a real date. No time zone is involved.
 *
 * @example dayNumber("2024-03-01") - dayNumber("2024-02-28") // 2
 */
export function dayNumber(date: string): number {
  const parts = isoDate.exec(date);
  if (!parts) return Number.NaN;
  return dayNumberOf(Number(parts[1]), Number(parts[2]), Number(parts[3]));
}

/** The same for a year, a month and a day of the month; NaN where there is no such day. @example dayNumberOf(2023, 2, 29) // NaN */
export function dayNumberOf(year: number, month: number, day: number): number {
  if (month < 1 || month > 12 || day < 1 || day > daysInMonth(year, month)) return Number.NaN;
  const shifted = month > 2 ? year : year - 1;
  const monthFromMarch = (month + 9) % 12;
  return (
    365 * shifted +
    Math.floor(shifted / 4) -
    Math.floor(shifted / 100) +
    Math.floor(shifted / 400) +
    Math.floor((153 * monthFromMarch + 2) / 5) +
    day -
    1
  );
}

/** @example daysInMonth(2024, 2) // 29 */
export function daysInMonth(year: number, month: number): number {
  const next = month === 12 ? 365 : daysBeforeMonth[month];
  return next - daysBeforeMonth[month - 1] + (month === 2 && isLeap(year) ? 1 : 0);
}

/** ISO date of a day number. @example dateOf(dayNumber("2024-02-29") + 1) // "2024-03-01" */
export function dateOf(number: number): string {
  const era = Math.floor(number / 146097);
  const ofEra = number - era * 146097;
  const yearOfEra = Math.floor(
    (ofEra - Math.floor(ofEra / 1460) + Math.floor(ofEra / 36524) - Math.floor(ofEra / 146096)) / 365,
  );
  const ofYear = ofEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const monthFromMarch = Math.floor((5 * ofYear + 2) / 153);
  const day = ofYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1;
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}
