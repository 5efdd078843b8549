import { columnLimits } from "./column-limits.js";
import type { WeatherColumn } from "./daily-weather.js";
import type { WeatherFault } from "./weather-fault.js";

const decimalNumber = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/;

/** The number in a cell, NaN where it is empty; a cell that holds anything else is NaN too and adds a fault. */
export function readCell(cell: string, column: WeatherColumn, line: number, faults: WeatherFault[]): number {
  const text = cell.trim();
  if (text === "") return Number.NaN;
  const path = `line ${line}, ${column}`;
  const received = text.slice(0, 60);
  if (!decimalNumber.test(text)) {
    faults.push({
      code: "not-a-number",
      path,
      received,
      rule: "must be a number with a decimal point, or empty where missing",
    });
    return Number.NaN;
  }
  const value = Number(text);
  const limits = columnLimits[column];
  if (value >= limits.lowest && value <= limits.highest) return value;
  faults.push({ code: value < limits.lowest ? limits.below : limits.above, path, received, rule: limits.rule });
  return Number.NaN;
}
