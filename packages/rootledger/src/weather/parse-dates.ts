import { dateOf, dayNumber } from "../numeric/day-number.js";
import type { FaultList } from "./fault-list.js";

/**
 * Checks one date against the day before it and returns its day number; a text that is no date adds a fault and returns
 * the number given for the day before.
 */
export function readDate(cell: string, before: number, line: number, faults: FaultList): number {
  const text = cell.trim();
  const place = { line, column: "date" };
  const day = dayNumber(text);
  if (Number.isNaN(day)) {
    faults.add("not-a-date", place, text, () => "must be a real date written YYYY-MM-DD");
    return before + 1;
  }
  if (Number.isNaN(before)) return day;
  if (day === before) {
    faults.add("duplicate-date", place, text, () => "must not repeat the day of the line before");
  } else if (day < before) {
    faults.add(
      "date-out-of-order",
      place,
      text,
      () => `must be later than ${dateOf(before)}, the day before it in the file`,
    );
  } else if (day > before + 1) {
    const missing = day - before - 1;
    const count = missing === 1 ? "1 day is missing" : `${missing} days are missing`;
    faults.add("gap-in-dates", place, text, () => `must be ${dateOf(before + 1)}: ${count}`);
  }
  return day;
}
