import { csvParseRows } from "d3-dsv";
import { dayNumber } from "../numeric/day-number.js";
import type { MoistureReading } from "./moisture-reading.js";

/** Something in a file of readings that stops its use. */
export interface MoistureFault {
  readonly code:
    | "empty-file"
    | "missing-column"
    | "unknown-column"
    | "wrong-cell-count"
    | "not-a-number"
    | "out-of-range"
    | "not-a-time"
    | "outside-season"
    | "too-many-faults";
  /** Where, like "line 3, theta"; "" for the file as a whole. */
  readonly path: string;
  readonly received: string;
  readonly rule: string;
}

/** Readings, or every fault of their file. */
export type ParsedMoisture =
  | { readonly ok: true; readonly readings: readonly MoistureReading[]; readonly missing: number }
  | { readonly ok: false; readonly faults: readonly MoistureFault[] };

const columns = ["time", "depthCm", "fromLineCm", "theta"] as const;
const mostFaults = 20;
const decimal = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/;
const clock = /^(\d{4}-\d{2}-\d{2})[T ](\d{2}):(\d{2})$/;

/**
 * Reads soil-moisture records: comma separated, columns `time` (YYYY-MM-DDTHH:MM, local standard time), `depthCm`, `fromLineCm` (away
 * from the tree row) and `theta` (m3/m3), one reading a row. An empty `theta` is a missing reading: it is left out and counted. Never
 * throws; the first twenty faults are returned at once.
 *
 * @example parseMoisture("time,depthCm,fromLineCm,theta\n2026-01-02T06:00,20,10,0.31\n", { startDate: "2026-01-01", days: 5 }) // { ok: true, missing: 0, ... }
 */
export function parseMoisture(
  text: string,
  season: { readonly startDate: string; readonly days: number },
): ParsedMoisture {
  const rows = csvParseRows(text.replace(/^\uFEFF/, ""))
    .map((cells, i) => ({ cells: cells.map((cell) => cell.trim()), line: i + 1 }))
    .filter(({ cells }) => cells.length > 1 || cells[0] !== "");
  const faults: MoistureFault[] = [];
  const [header, ...body] = rows;
  const refuse = (code: MoistureFault["code"], path: string, received: string, rule: string): void => {
    faults.push({ code, path, received, rule });
  };
  if (header === undefined || body.length === 0) {
    refuse("empty-file", "", `${rows.length} rows`, "must have a header row and at least one reading");
    return { ok: false, faults };
  }
  const at = columns.map((name) => header.cells.indexOf(name));
  columns.forEach((name, i) => {
    if (at[i] < 0)
      refuse("missing-column", `line ${header.line}`, header.cells.join(","), `must have a column ${name}`);
  });
  for (const name of header.cells) {
    if (!columns.some((column) => column === name)) {
      refuse("unknown-column", `line ${header.line}`, name, `must be one of ${columns.join(", ")}`);
    }
  }
  if (faults.length > 0) return { ok: false, faults };
  const readings: MoistureReading[] = [];
  let missing = 0;
  for (const { cells, line } of body) {
    if (cells.length !== header.cells.length) {
      refuse(
        "wrong-cell-count",
        `line ${line}`,
        String(cells.length),
        `must have ${header.cells.length} cells like the header`,
      );
      continue;
    }
    const [time, depth, from, moisture] = at.map((i) => cells[i]);
    const number = (name: string, cell: string): number => {
      const value = decimal.test(cell) ? Number(cell) : Number.NaN;
      if (Number.isFinite(value)) return value;
      refuse("not-a-number", `line ${line}, ${name}`, cell, "must be a number with a decimal point");
      return Number.NaN;
    };
    const found = clock.exec(time);
    const hour = found === null ? Number.NaN : hourOf(found, season.startDate);
    if (Number.isNaN(hour)) refuse("not-a-time", `line ${line}, time`, time, "must be YYYY-MM-DDTHH:MM");
    else if (!(hour >= 0.5 && hour <= season.days * 24)) {
      refuse(
        "outside-season",
        `line ${line}, time`,
        time,
        `must lie in the ${season.days} days from ${season.startDate}`,
      );
    }
    const depthCm = number("depthCm", depth);
    const fromLineCm = number("fromLineCm", from);
    if (moisture === "") {
      missing++;
      continue;
    }
    const theta = number("theta", moisture);
    if (theta <= 0 || theta >= 1)
      refuse("out-of-range", `line ${line}, theta`, moisture, "must be between 0 and 1, m3/m3");
    readings.push({ hour, depthCm, fromLineCm, theta });
  }
  if (faults.length === 0) return { ok: true, readings, missing };
  const more = faults.length - mostFaults;
  if (more <= 0) return { ok: false, faults };
  const rest = { code: "too-many-faults", path: "", received: `${more} more`, rule: "must be mended first" } as const;
  return { ok: false, faults: [...faults.slice(0, mostFaults), rest] };
}

/** Hours since the season's first midnight; NaN for a date or clock that is none. */
function hourOf([, date, hours, minutes]: RegExpExecArray, startDate: string): number {
  const clockH = Number(hours) + Number(minutes) / 60;
  if (Number(minutes) > 59 || clockH > 24) return Number.NaN;
  return (dayNumber(date) - dayNumber(startDate)) * 24 + clockH;
}
