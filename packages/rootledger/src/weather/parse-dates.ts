import { dateOf, dayNumber } from "../numeric/day-number.js";
import type { WeatherFault } from "./weather-fault.js";

/**
 * Checks one date against the day before it and returns its day number; a text that is no date adds a fault and returns
 * the number given for the day before.
 */
export function readDate(cell: string, before: number, line: number, faults: WeatherFault[]): number {
  const text = cell.trim();
  const path = `line ${line}, date`;
  const received = text.slice(0, 60);
  const day = dayNumber(text);
  if (Number.isNaN(day)) {
    faults.push({ code: "not-a-date", path, received, rule: "must be a real date written YYYY-MM-DD" });
    return before + 1;
  }
  if (Number.isNaN(before)) return day;
  if (day === before) {
    faults.push({ code: "duplicate-date", path, received, rule: "must not repeat the day of the line before" });
  } else if (day < before) {
    faults.push({
      code: "date-out-of-order",
      path,
      received,
      rule: `must be later than ${dateOf(before)}, the day before it in the file`,
    });
  } else if (day > before + 1) {
    const missing = day - before - 1;
    const count = missing === 1 ? "1 day is missing" : `${missing} days are missing`;
    faults.push({ code: "gap-in-dates", path, received, rule: `must be ${dateOf(before + 1)}: ${count}` });
  }
  return day;
}
