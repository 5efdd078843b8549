import { type WeatherColumn, weatherColumns } from "./daily-weather.js";
import type { WeatherFault } from "./weather-fault.js";

/** Which cell of a row holds what; -1 where the file has no such column. */
export interface HeaderPlaces {
  readonly cells: number;
  readonly date: number;
  readonly columns: Readonly<Record<WeatherColumn, number>>;
}

const known: readonly string[] = ["date", ...weatherColumns];

/** Reads the header row of a daily weather file and adds what is wrong with it to `faults`. */
export function readHeader(names: readonly string[], line: number, faults: WeatherFault[]): HeaderPlaces {
  const places: Record<string, number> = Object.fromEntries(known.map((name) => [name, -1]));
  const path = `line ${line}`;
  if (names.length === 1 && /[;\t|]/.test(names[0])) {
    faults.push({
      code: "not-comma-separated",
      path,
      received: names[0].slice(0, 60),
      rule: "must separate its columns by commas",
    });
  } else {
    names.forEach((text, place) => {
      const name = text.trim();
      if (!known.includes(name)) {
        faults.push({
          code: "unknown-column",
          path,
          received: name.slice(0, 60),
          rule: `must be one of ${known.join(", ")}`,
        });
      } else if (places[name] >= 0) {
        faults.push({ code: "duplicate-column", path, received: name, rule: "must not be given twice" });
      } else places[name] = place;
    });
    for (const name of requiredColumns(places.et0Mm >= 0)) {
      if (places[name] >= 0) continue;
      const unless = name.startsWith("t") ? ", unless et0Mm is given" : "";
      faults.push({ code: "missing-column", path, received: "nothing", rule: `must have the column ${name}${unless}` });
    }
  }
  return { cells: names.length, date: places.date, columns: places as Record<WeatherColumn, number> };
}

const requiredColumns = (et0Given: boolean): readonly string[] =>
  et0Given ? ["date", "rainMm"] : ["date", "rainMm", "tMinC", "tMaxC"];
