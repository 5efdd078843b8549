import { csvParseRows } from "d3-dsv";
import { dateOf } from "../numeric/day-number.js";
import { type DailyWeather, emptyDailyWeather, type WeatherColumn, weatherColumns } from "./daily-weather.js";
import { type FaultList, newFaultList } from "./fault-list.js";
import { fillGaps, type GapRule } from "./fill-gaps.js";
import { brokenCell, readCell } from "./parse-cell.js";
import { readDate } from "./parse-dates.js";
import { type HeaderPlaces, readHeader } from "./parse-header.js";
import { repairsAndNotes } from "./parse-notes.js";
import { checkRecord, type RecordRead } from "./parse-record-checks.js";
import type { WeatherFault } from "./weather-fault.js";

/** A daily record, or every fault of its file. */
export type ParsedWeather =
  | { readonly ok: true; readonly weather: DailyWeather; readonly notes: readonly string[] }
  | { readonly ok: false; readonly faults: readonly WeatherFault[] };

/**
 * Reads the plain daily weather file: comma separated, a header row, one row a day without gaps, decimal point, empty cell
 * where missing. Columns in any order: `date` (YYYY-MM-DD) and `rainMm`, with `tMinC` and `tMaxC`, or `et0Mm`, or `panMm`,
 * and optionally `rhMinPct`, `rhMaxPct`, `rhMeanPct`, `dewPointC`, `windMPerS`, `solarMJPerM2`, `sunshineH`, `panMm`. A missing
 * temperature or rain is a fault unless a gap rule covers it. Never throws; all faults are returned at
 * once, of each kind in a column the first twenty and a count of the rest.
 *
 * @example parseDailyWeather("date,tMinC,tMaxC,rainMm\n2025-10-01,8.1,21.4,0\n").ok // true
 */
export function parseDailyWeather(text: string, gapRule: GapRule = {}): ParsedWeather {
  const faults = newFaultList();
  const rows = numberedRows(text);
  if (rows.length < 2) {
    const place = { line: 0, column: "" };
    faults.add("empty-file", place, `${rows.length} rows`, () => "must have a header row and at least one day");
    return { ok: false, faults: faults.all() };
  }
  const header = readHeader(rows[0].cells, rows[0].line, faults);
  if (!faults.isEmpty()) return { ok: false, faults: faults.all() };
  const read = readDays(rows.slice(1), header, faults);
  const filled = faults.isEmpty() ? fillGaps(read.weather, gapRule) : [];
  checkRecord(read, faults);
  if (!faults.isEmpty()) return { ok: false, faults: faults.all() };
  return { ok: true, weather: read.weather, notes: [...filled, ...repairsAndNotes(read.weather)] };
}

function readDays(rows: readonly NumberedRow[], header: HeaderPlaces, faults: FaultList): RecordRead {
  const given = new Set<WeatherColumn>(weatherColumns.filter((column) => header.columns[column] >= 0));
  const broken = new Map(weatherColumns.map((column) => [column, new Set<number>()]));
  const values = emptyDailyWeather("", rows.length);
  let first = Number.NaN;
  let day = Number.NaN;
  for (let d = 0; d < rows.length; d++) {
    const { cells, line } = rows[d];
    if (cells.length !== header.cells) {
      const rule = (): string => `must have ${header.cells} cells like the header`;
      faults.add("wrong-cell-count", { line, column: "" }, String(cells.length), rule);
    }
    day = readDate(cells[header.date] ?? "", day, line, faults);
    if (d === 0) first = day;
    for (const column of given) {
      const value = readCell(cells[header.columns[column]] ?? "", column, line, faults);
      if (value === brokenCell) broken.get(column)?.add(d);
      else values[column][d] = value;
    }
  }
  const startDate = Number.isNaN(first) ? "" : dateOf(first);
  return { weather: { ...values, startDate }, lines: rows.map((row) => row.line), given, broken };
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
    for (const cell of cells) if (cell.includes("\n")) line += cell.split("\n").length - 1;
  }
  return rows;
}
