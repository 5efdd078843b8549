import { columnLimits } from "./column-limits.js";
import type { WeatherColumn } from "./daily-weather.js";
import type { FaultList } from "./fault-list.js";

const decimalNumber = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/;

/** What a broken cell gives: neither a number nor missing. */
export const brokenCell: unique symbol = Symbol("broken cell");

/** The number in a cell, NaN where it is empty; a cell that holds anything else adds a fault. */
export function readCell(
  cell: string,
  column: WeatherColumn,
  line: number,
  faults: FaultList,
): number | typeof brokenCell {
  const text = cell.trim();
  if (text === "") return Number.NaN;
  const place = { line, column };
  if (!decimalNumber.test(text)) {
    faults.add("not-a-number", place, text, () => "must be a number with a decimal point, or empty where missing");
    return brokenCell;
  }
  const value = Number(text);
  const limits = columnLimits[column];
  if (value >= limits.lowest && value <= limits.highest) return value;
  faults.add(value < limits.lowest ? limits.below : limits.above, place, text, () => limits.rule);
  return brokenCell;
}
