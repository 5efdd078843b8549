import type { Rows } from "./split-rows.js";
import { linesOf } from "./split-rows.js";

/** Elements that are kept, with the name of the column; values in tenths of the unit. */
const elements: Readonly<Record<string, string>> = {
  PRCP: "Rain (0.1 mm)",
  TMAX: "Tmax (0.1 C)",
  TMIN: "Tmin (0.1 C)",
  TAVG: "Tmean (0.1 C)",
  AWND: "Wind (0.1 m/s)",
  EVAP: "Pan evaporation (0.1 mm)",
  TSUN: "Sunshine (min)",
};

export interface GhcnDaily {
  readonly rows: Rows;
  readonly stations: ReadonlySet<string>;
  /** Values with a quality flag, which are not used. */
  readonly failedQuality: number;
  readonly failedLines: readonly number[];
}

const start = /^[A-Z]{2}[A-Z0-9_-]{9}\d{6}[A-Z0-9]{4}[ -]/;

/** @example isGhcnDaily("XX000000001202401PRCP   25  S    0  S") // true */
export const isGhcnDaily = (text: string): boolean =>
  start.test(text.slice(0, 40)) && text.slice(0, 300).split(/\r\n|\n|\r/)[0].length >= 29;

/**
 * Daily records of the Global Historical Climatology Network in their own layout: station 11, year 4, month 2, element 4 characters, then
 * for each day a value of 5 characters and three flags (measurement, quality, source). Values are tenths of a degree or mm;
 * -9999 is missing and also fills months shorter than 31 days; a value with a quality flag has failed a check. Source: Menne et al. 2012, GHCN-Daily version 3, readme.txt, section III.
 */
export function readGhcnDaily(text: string): GhcnDaily {
  const days = new Map<string, { readonly line: number; readonly values: Map<string, string> }>();
  const used = new Set<string>();
  const stations = new Set<string>();
  let failedQuality = 0;
  const failedLines: number[] = [];
  linesOf(text).forEach((line, index) => {
    const element = line.slice(17, 21);
    if (!start.test(line) || !Object.hasOwn(elements, element)) return;
    used.add(element);
    stations.add(line.slice(0, 11));
    for (let d = 0; d < 31; d++) {
      const at = 21 + 8 * d;
      const value = line.slice(at, at + 5).trim();
      if (value === "" || value === "-9999") continue;
      const key = `${line.slice(11, 15)}-${line.slice(15, 17)}-${String(d + 1).padStart(2, "0")}`;
      let day = days.get(key);
      if (day === undefined) {
        day = { line: index + 1, values: new Map() };
        days.set(key, day);
      }
      const quality = line.charAt(at + 6);
      if (quality !== " " && quality !== "") {
        failedQuality++;
        failedLines.push(index + 1);
        day.values.set(element, "");
      } else day.values.set(element, line.charAt(at + 5) === "T" ? "T" : value);
    }
  });
  const columns = Object.keys(elements).filter((element) => used.has(element));
  const rows: Rows = { cells: [["Date", ...columns.map((element) => elements[element])]], lines: [1] };
  for (const key of [...days.keys()].sort()) {
    const day = days.get(key);
    if (day === undefined) continue;
    rows.cells.push([key, ...columns.map((element) => day.values.get(element) ?? "")]);
    rows.lines.push(day.line);
  }
  return { rows, stations, failedQuality, failedLines };
}
