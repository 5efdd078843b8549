import { type WeatherColumn, weatherColumns } from "./daily-weather.js";
import type { FaultList } from "./fault-list.js";

/** Which cell of a row holds what; -1 where the file has no such column. */
export interface HeaderPlaces {
  readonly cells: number;
  readonly date: number;
  readonly columns: Readonly<Record<WeatherColumn, number>>;
}

const known: readonly string[] = ["date", ...weatherColumns];

/** Reads the header row of a daily weather file and adds what is wrong with it to `faults`. */
export function readHeader(names: readonly string[], line: number, faults: FaultList): HeaderPlaces {
  const places: Record<string, number> = Object.fromEntries(known.map((name) => [name, -1]));
  const place = { line, column: "" };
  if (names.length === 1 && /[;\t|]/.test(names[0])) {
    faults.add("not-comma-separated", place, names[0], () => "must separate its columns by commas");
  } else {
    names.forEach((text, index) => {
      const name = text.trim();
      if (!known.includes(name)) {
        faults.add("unknown-column", place, name, () => `must be one of ${known.join(", ")}`);
      } else if (places[name] >= 0) {
        faults.add("duplicate-column", place, name, () => "must not be given twice");
      } else places[name] = index;
    });
    for (const name of requiredColumns(places.et0Mm >= 0 || places.panMm >= 0)) {
      if (places[name] >= 0) continue;
      const unless = name.startsWith("t") ? ", unless et0Mm or panMm is given" : "";
      faults.add("missing-column", place, "nothing", () => `must have the column ${name}${unless}`);
    }
  }
  return { cells: names.length, date: places.date, columns: places as Record<WeatherColumn, number> };
}

const requiredColumns = (withoutTemperatures: boolean): readonly string[] =>
  withoutTemperatures ? ["date", "rainMm"] : ["date", "rainMm", "tMinC", "tMaxC"];
