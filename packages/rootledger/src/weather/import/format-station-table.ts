import { dateOf } from "../../numeric/day-number.js";
import { offsetText } from "./local-time.js";
import { mark } from "./special-cell.js";
import type { StationTable } from "./station-table.js";
import { stationTime } from "./station-time.js";

/**
 * Writes a table as plain CSV: a column `date` (one record a day) or `intervalStart` or `intervalEnd` (local standard time, with its offset from UTC where known), then the columns by their names, full precision, an empty
 * cell where there is no value, "T" for a trace, "Acum" where the amount is inside a later record, ">80" and "<5" for limits of the
 * instrument, "12.5?" for doubtful values. `understandStationFile` reads back the same table.
 *
 * @example formatStationTable(table) // "date,rainMm\n2024-01-01,T\n"
 */
export function formatStationTable({ minutes, columns, stamp, utcOffsetMinutes }: StationTable): string {
  const daily =
    stamp === "day" &&
    utcOffsetMinutes === undefined &&
    minutes.every((time) => Math.floor(time / 1440) * 1440 === time);
  const zone = utcOffsetMinutes === undefined ? "" : offsetText(utcOffsetMinutes);
  const first = daily ? "date" : stamp === "end" ? "intervalEnd" : stamp === "start" ? "intervalStart" : "date";
  let text = `${[first, ...columns.map(({ name }) => name)].join(",")}\n`;
  for (let i = 0; i < minutes.length; i++) {
    text += daily ? dateOf(minutes[i] / 1440) : stationTime(minutes[i]) + zone;
    for (const { values, marks } of columns) text += `,${cellText(values[i], marks[i])}`;
    text += "\n";
  }
  return text;
}

function cellText(value: number, one: number): string {
  if (one === mark.accumulating) return "Acum";
  if (one === mark.trace) return "T";
  if (Number.isNaN(value)) return "";
  const sign = one === mark.above ? ">" : one === mark.below ? "<" : "";
  return `${sign}${value}${one === mark.suspect ? "?" : ""}`;
}
