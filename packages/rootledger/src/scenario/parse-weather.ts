import { dateOf, dayNumber } from "../numeric/day-number.js";
import type { DefaultUsed } from "../water/result.js";
import { dailyEt0 } from "../weather/daily-et0.js";
import { type DailyWeather, emptyDailyWeather, weatherColumns } from "../weather/daily-weather.js";
import { et0Faults } from "../weather/et0-faults.js";
import { parseDailyWeather } from "../weather/parse-daily-weather.js";
import type { WeatherFault } from "../weather/weather-fault.js";
import type { WeatherSite } from "../weather/weather-site.js";
import { type DayAir, dayAir } from "./day-air.js";
import { defaults } from "./defaults.js";
import { type Fault, fault } from "./faults.js";
import { pick } from "./parse-default.js";
import type { Season, SiteWeather } from "./scenario.js";
import type { WeatherFile } from "./schema-file.js";
import type { SiteFile } from "./schema-site.js";

/** Weather of the season, or every fault of its file. */
export type WeatherRead =
  | { readonly ok: true; readonly weather: SiteWeather; readonly air: DayAir; readonly notes: readonly string[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** The season's part of the named weather file with its reference evapotranspiration; faults name file and line. */
export function readWeather(
  file: WeatherFile,
  season: Season | undefined,
  files: Readonly<Record<string, string>>,
  used: DefaultUsed[],
): WeatherRead {
  const text = Object.hasOwn(files, file.file) ? files[file.file] : undefined;
  if (text === undefined) return { ok: false, faults: [fault("file-not-given", "weather.file", file.file)] };
  const parsed = parseDailyWeather(text);
  if (!parsed.ok) return { ok: false, faults: parsed.faults.map((found) => inFile(found, file.file)) };
  if (season === undefined) return { ok: false, faults: [] };
  const record = parsed.weather;
  const skip = dayNumber(season.startDate) - dayNumber(record.startDate);
  if (skip < 0 || skip + season.days > record.days) return { ok: false, faults: [tooShort(record, season)] };
  return withEt0(partOf(record, season, skip), file, parsed.notes, used);
}

function tooShort(record: DailyWeather, season: Season): Fault {
  const first = dayNumber(record.startDate);
  const asked = `${season.startDate} to ${dateOf(dayNumber(season.startDate) + season.days - 1)}`;
  const terms = { from: record.startDate, to: dateOf(first + record.days - 1) };
  return { ...fault("weather-too-short", "season", undefined, terms), received: asked };
}

function partOf(record: DailyWeather, season: Season, skip: number): DailyWeather {
  const part = emptyDailyWeather(season.startDate, season.days);
  for (const column of weatherColumns) part[column].set(record[column].subarray(skip, skip + season.days));
  return part;
}

/** Where a record was taken, with what the method asks beside it. */
export const siteOf = (file: SiteFile, windHeightM: number): WeatherSite => ({
  latitudeDeg: file.latitudeDeg,
  elevationM: file.elevationM,
  windHeightM,
  ...(file.panCoefficient === undefined ? {} : { panCoefficient: file.panCoefficient }),
});

/** A pan coefficient without the pan. */
export function panFaults({ panCoefficient }: SiteFile, et0Method: SiteWeather["et0Method"]): Fault[] {
  if (panCoefficient === undefined || et0Method === "pan") return [];
  const terms = { others: "weather.et0Method pan", given: `weather.et0Method ${et0Method}` };
  return [fault("only-beside", "weather.panCoefficient", panCoefficient, terms)];
}

function withEt0(record: DailyWeather, file: WeatherFile, notes: readonly string[], used: DefaultUsed[]): WeatherRead {
  const windHeightM = record.windMPerS.some((wind) => wind >= 0)
    ? pick(used, "weather.windHeightM", file.windHeightM, defaults.windHeightM)
    : (file.windHeightM ?? defaults.windHeightM.value);
  const et0Method = pick(used, "weather.et0Method", file.et0Method, defaults.et0Method);
  const site = siteOf(file, windHeightM);
  const found = [
    ...gathered(et0Faults(record, site, et0Method)).map((one) => ofSite(one, file.file)),
    ...panFaults(file, et0Method),
  ];
  if (found.length > 0) return { ok: false, faults: found };
  const { et0Mm, sunriseH, sunsetH, notes: rules } = dailyEt0(record, site, et0Method);
  if (et0Method !== "given") used.push(...rules.map((rule) => ruleUsed(rule, file.file)));
  const rainIntensityMmPerH = pick(
    used,
    "weather.rainIntensityMmPerH",
    file.rainIntensityMmPerH,
    defaults.rainIntensityMmPerH,
  );
  const { startDate, days, rainMm } = record;
  const weather: SiteWeather = {
    ...{
      name: file.name,
      latitudeDeg: file.latitudeDeg,
      elevationM: file.elevationM,
      windHeightM,
      et0Method,
      rainIntensityMmPerH,
      startDate,
      days,
    },
    ...{ et0Mm, rainMm, sunriseH, sunsetH },
  };
  return { ok: true, weather, air: dayAir(record, windHeightM), notes: notes.map((note) => `${file.file}: ${note}`) };
}

/** A rule for missing weather, written "what (source): so many days", as a default used. */
export function ruleUsed(rule: string, file: string): DefaultUsed {
  const [, what, source, days] = /^(.*) \(([^()]*)\): (.*)$/.exec(rule) ?? [];
  if (what === undefined) return { path: `weather.file ${file}`, value: rule, source: "limit on a measured value" };
  return { path: `weather.file ${file}`, value: `${what}, ${days}`, source };
}

/** A fault of a weather file's text. */
export const inFile = (found: WeatherFault, file: string): Fault => ({
  ...found,
  path: found.path === "" ? file : `${file} ${found.path}`,
  terms: {},
});

const siteKeys: readonly string[] = ["latitudeDeg", "elevationM", "windHeightM", "panCoefficient"];

/** A fault of a record or of its site. */
export const ofSite = (found: WeatherFault, file: string): Fault =>
  siteKeys.includes(found.path) ? { ...found, path: `weather.${found.path}`, terms: {} } : inFile(found, file);

/** One fault for a column that lacks many days, in place of one for each of them. */
export function gathered(found: readonly WeatherFault[]): WeatherFault[] {
  const byColumn = new Map<string, WeatherFault[]>();
  for (const one of found) {
    const column = one.path.split(", ").at(-1) ?? one.path;
    byColumn.set(column, [...(byColumn.get(column) ?? []), one]);
  }
  return [...byColumn.values()].map((list) =>
    list.length === 1 ? list[0] : { ...list[0], rule: `${list[0].rule}; ${list.length - 1} more days lack it` },
  );
}
