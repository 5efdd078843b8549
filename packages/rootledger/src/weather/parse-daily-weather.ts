import { csvParseRows } from "d3-dsv";
import { dateOf } from "../numeric/day-number.js";
import { type DailyWeather, emptyDailyWeather, type WeatherColumn, weatherColumns } from "./daily-weather.js";
import { fillGaps, type GapRule } from "./fill-gaps.js";
import { gatherFaults } from "./gather-faults.js";
import { readCell } from "./parse-cell.js";
import { readDate } from "./parse-dates.js";
import { readHeader } from "./parse-header.js";
import { repairsAndNotes } from "./parse-notes.js";
import { checkRecord } from "./parse-record-checks.js";
import type { WeatherFault } from "./weather-fault.js";

export type ParsedWeather =
  | { readonly ok: true; readonly weather: DailyWeather; readonly notes: readonly string[] }
  | { readonly ok: false; readonly faults: readonly WeatherFault[] };

/**
 * Reads the plain daily weather file: comma separated, a header row, one row a day without gaps, decimal point, empty cell
 * where missing. Columns in any order: `date` (YYYY-MM-DD) and `rainMm`, with `tMinC` and `tMaxC` or `et0Mm` or both, and
 * optionally `rhMinPct`, `rhMaxPct`, `rhMeanPct`, `dewPointC`, `windMPerS`, `solarMJPerM2`, `sunshineH`, `panMm`. A missing
 * temperature or rain is a fault unless a gap rule covers it. Never throws; all faults are returned at
 * once, of each kind in a column the first twenty and a count of the rest.
 *
 * @example parseDailyWeather("date,tMinC,tMaxC,rainMm\n2025-10-01,8.1,21.4,0\n").ok // true
 */
export function parseDailyWeather(text: string, gapRule: GapRule = {}): ParsedWeather {
  const faults: WeatherFault[] = [];
  const rows = numberedRows(text);
  if (rows.length < 2) {
    const rule = "must have a header row and at least one day";
    return { ok: false, faults: [{ code: "empty-file", path: "", received: `${rows.length} rows`, rule }] };
  }
  const header = readHeader(rows[0].cells, rows[0].line, faults);
  if (faults.length > 0) return { ok: false, faults: gatherFaults(faults) };

  const given = new Set<WeatherColumn>(weatherColumns.filter((column) => header.columns[column] >= 0));
  const days = rows.length - 1;
  const values = emptyDailyWeather("", days);
  const lines: number[] = [];
  let first = Number.NaN;
  let day = Number.NaN;
  for (let d = 0; d < days; d++) {
    const { cells, line } = rows[d + 1];
    lines.push(line);
    if (cells.length !== header.cells) {
      const rule = `must have ${header.cells} cells like the header`;
      faults.push({ code: "wrong-cell-count", path: `line ${line}`, received: String(cells.length), rule });
    }
    day = readDate(cells[header.date] ?? "", day, line, faults);
    if (d === 0) first = day;
    for (const column of given) {
      values[column][d] = readCell(cells[header.columns[column]] ?? "", column, line, faults);
    }
  }
  const broken = new Set(faults.map((fault) => fault.path));
  const filled = faults.length > 0 ? [] : fillGaps(values, gapRule);
  for (const fault of checkRecord(values, lines, given, broken)) faults.push(fault);
  if (faults.length > 0) return { ok: false, faults: gatherFaults(faults) };
  const weather: DailyWeather = { ...values, startDate: dateOf(first) };
  return { ok: true, weather, notes: [...filled, ...repairsAndNotes(weather)] };
}

interface NumberedRow {
  readonly cells: readonly string[];
  readonly line: number;
}

/** Rows with the line on which each begins; blank lines and a byte order mark are passed over. */
function numberedRows(text: string): NumberedRow[] {
  const rows: NumberedRow[] = [];
  let line = 1;
  for (const cells of csvParseRows(text.replace(/^\uFEFF/, ""))) {
    if (cells.length > 1 || cells[0].trim() !== "") rows.push({ cells, line });
    line++;
    for (const cell of cells) line += cell.split("\n").length - 1;
  }
  return rows;
}
