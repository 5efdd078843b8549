import type { RawColumn } from "./read-values.js";
import { mark } from "./special-cell.js";

/**
 * Applies the flag beside a value. Source: Environment and Climate Change Canada, climate data glossary: T trace; C precipitation occurred, its amount is inside a
 * later reading; A accumulated; E estimated; F accumulated and estimated; M missing. Returns the rows of estimates.
 */
export function applyEcccFlags(raw: RawColumn, flagOf: (row: number) => string): number[] {
  const estimated: number[] = [];
  for (let i = 0; i < raw.values.length; i++) {
    const flag = flagOf(i);
    if (flag === "T" && raw.values[i] === 0) raw.marks[i] = mark.trace;
    else if (flag === "C" && raw.values[i] === 0) {
      raw.marks[i] = mark.accumulating;
      raw.values[i] = Number.NaN;
    } else if (flag === "M") {
      raw.marks[i] = mark.missing;
      raw.values[i] = Number.NaN;
    } else if (flag === "E" || flag === "F") estimated.push(i);
  }
  return estimated;
}
