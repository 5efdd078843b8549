import { mark } from "./special-cell.js";

/** Longest run of days that one reading may stand for; own choice. */
const longestRun = 31;

/**
 * Days whose rain is inside a later reading: by "reading-day" they count 0 and the amount stands on the day of the reading, by "spread" all share it
 * alike. The total is kept either way. In place; returns the days concerned, the readings not counted.
 */
export function placeAccumulated(values: Float64Array, marks: Uint8Array, rule: "reading-day" | "spread"): number {
  let run = 0;
  let placed = 0;
  for (let d = 0; d < values.length; d++) {
    if (marks[d] === mark.accumulating && Number.isNaN(values[d])) {
      run++;
      continue;
    }
    if (run > 0 && run < longestRun && !Number.isNaN(values[d])) {
      const share = rule === "spread" ? values[d] / (run + 1) : 0;
      for (let k = d - run; k < d; k++) {
        values[k] = share;
        marks[k] = mark.value;
      }
      if (rule === "spread") values[d] = share;
      placed += run;
    }
    run = 0;
  }
  return placed;
}
