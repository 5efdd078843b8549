import type { Body } from "./body-rows.js";
import { hourOf, minuteOfDay } from "./date-parts.js";
import { newStampParts, scanStamp } from "./scan-stamp.js";

/** A column of times of day: minutes, 24:00 included, and offsets from UTC where the cells say them. */
export interface ClockColumn {
  readonly minute: Float64Array;
  readonly offsetMinutes: Float64Array;
}

/**
 * Reads a time column. A lone number is an hour, or hours and minutes together where any cell of the column has three digits or more or
 * exceeds 24 ("0100 UTC", "2330").
 */
export function readClockColumn({ rows, places }: Body, c: number): ClockColumn {
  const minute = new Float64Array(places.length).fill(Number.NaN);
  const offsetMinutes = new Float64Array(places.length).fill(Number.NaN);
  const parts = newStampParts();
  const lone: number[] = [];
  let together = false;
  for (let i = 0; i < places.length; i++) {
    rows.open(places[i]);
    const text = rows.cell(c);
    if (!scanStamp(text, parts) || parts.monthAt >= 0 || text.trimStart().startsWith("-")) continue;
    const { values, digits, count, half } = parts;
    offsetMinutes[i] = parts.offsetMinutes;
    if (count === 1 && half === 0) {
      if (digits[0] > 4) continue;
      lone.push(i);
      minute[i] = values[0];
      together ||= digits[0] >= 3 || values[0] > 24;
    } else if (count <= 4) {
      minute[i] = minuteOfDay(hourOf(values[0], half), count > 1 ? values[1] : 0, count > 2 ? values[2] : 0);
    }
  }
  for (const i of lone)
    minute[i] = together ? minuteOfDay(Math.floor(minute[i] / 100), minute[i] % 100, 0) : minuteOfDay(minute[i], 0, 0);
  return { minute, offsetMinutes };
}
