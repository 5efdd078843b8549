import { daysInMonth } from "../../numeric/day-number.js";

/** Month 0-11 of each of `days` dates from an ISO date. @example calendarMonths("2024-02-28", 3) // Uint8Array [1, 1, 2] */
export function calendarMonths(startDate: string, days: number): Uint8Array {
  const months = new Uint8Array(days);
  let year = Number(startDate.slice(0, 4));
  let month = Number(startDate.slice(5, 7));
  let left = daysInMonth(year, month) - Number(startDate.slice(8, 10)) + 1;
  for (let d = 0; d < days; d++) {
    if (left === 0) {
      month = month === 12 ? 1 : month + 1;
      if (month === 1) year++;
      left = daysInMonth(year, month);
    }
    months[d] = month - 1;
    left--;
  }
  return months;
}
