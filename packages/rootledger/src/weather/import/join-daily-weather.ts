import { dateOf, dayNumber } from "../../numeric/day-number.js";
import { type DailyWeather, emptyDailyWeather, weatherColumns } from "../daily-weather.js";

/** Records of one place as one, or where they contradict. */
export type Joined =
  | { readonly ok: true; readonly weather: DailyWeather; readonly notes: readonly string[] }
  | { readonly ok: false; readonly conflicts: readonly string[] };

/**
 * Joins records of the same place by their dates, such as files that hold one variable each. A day is missing in a column where no file has it; two files that
 * disagree on a value are a conflict and nothing is joined.
 *
 * @example joinDailyWeather([tMin, tMax, rain])
 */
export function joinDailyWeather(records: readonly DailyWeather[]): Joined {
  const used = records.filter(({ days }) => days > 0);
  if (used.length === 0) return { ok: false, conflicts: ["there is nothing to join"] };
  const starts = used.map(({ startDate }) => dayNumber(startDate));
  const first = Math.min(...starts);
  const end = Math.max(...used.map(({ days }, k) => starts[k] + days));
  const joined = emptyDailyWeather(dateOf(first), end - first);
  const conflicts: string[] = [];
  used.forEach((record, k) => {
    for (const column of weatherColumns) {
      for (let d = 0; d < record.days; d++) {
        const value = record[column][d];
        if (Number.isNaN(value)) continue;
        const at = starts[k] - first + d;
        const there = joined[column][at];
        if (!Number.isNaN(there) && there !== value)
          conflicts.push(`${dateOf(first + at)}, ${column}: ${there} and ${value}`);
        joined[column][at] = value;
      }
    }
  });
  if (conflicts.length > 0) return { ok: false, conflicts: conflicts.slice(0, 20) };
  const notes = weatherColumns
    .filter((column) => used.some((record) => record[column].some((value) => !Number.isNaN(value))))
    .map(
      (column) =>
        `${column}: missing on ${joined[column].reduce((count, value) => count + (Number.isNaN(value) ? 1 : 0), 0)} of ${joined.days} days`,
    );
  return { ok: true, weather: joined, notes };
}
