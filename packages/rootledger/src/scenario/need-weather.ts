import { dateOf, dayNumber } from "../numeric/day-number.js";
import { kcByStage } from "../tree/kc-by-stage.js";
import { kcbByDay } from "../tree/kcb-by-day.js";
import { needByMonth } from "../tree/need-periods.js";
import type { NeedPeriod } from "../tree/water-need.js";
import { rainOnRoots } from "../water/effective-rain.js";
import type { DefaultUsed } from "../water/result.js";
import { dailyEt0 } from "../weather/daily-et0.js";
import type { DailyWeather } from "../weather/daily-weather.js";
import { et0Faults } from "../weather/et0-faults.js";
import { parseDailyWeather } from "../weather/parse-daily-weather.js";
import { cropDefaults } from "./crop-defaults.js";
import { defaults } from "./defaults.js";
import { type Fault, fault } from "./faults.js";
import { needDefaults } from "./need-defaults.js";
import { pick } from "./parse-default.js";
import { filledStages } from "./parse-tree.js";
import { gathered, inFile, ofSite, panFaults, ruleUsed, siteOf } from "./parse-weather.js";
import type { Season } from "./scenario.js";
import type { NeedWeatherFile } from "./schema-need-weather.js";
import { cropFaults } from "./tree-faults.js";

export type NeedPeriodsRead =
  | { readonly ok: true; readonly periods: readonly NeedPeriod[]; readonly notes: readonly string[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Months of the year of a need: ET0 of every day of the named weather file by the chosen method, with the day's coefficient. */
export function periodsFromWeather(
  file: NeedWeatherFile,
  files: Readonly<Record<string, string>>,
  used: DefaultUsed[],
): NeedPeriodsRead {
  const given = [file.coefficient, file.kc, file.crop].filter((one) => one !== undefined).length;
  const options = { options: "coefficient, kc, crop" };
  const found = given === 1 ? [] : [fault("exactly-one-of", "weather", file, options)];
  const text = Object.hasOwn(files, file.file) ? files[file.file] : undefined;
  if (text === undefined) return refused([...found, fault("file-not-given", "weather.file", file.file)]);
  const { longestGapDays: longestDays } = file;
  const temperature = longestDays === undefined ? {} : { temperature: { kind: "interpolate", longestDays } as const };
  // A day without rain in the file is no gap where its rain is not asked for.
  const rain = file.usefulRain === undefined ? { rain: "dry" as const } : {};
  const parsed = parseDailyWeather(text, { ...temperature, ...rain });
  if (!parsed.ok) return refused([...found, ...parsed.faults.map((one) => inFile(one, file.file))]);
  const record = parsed.weather;
  found.push(...coefficientFaults(file, record));
  const windHeightM = record.windMPerS.some((wind) => wind >= 0)
    ? pick(used, "weather.windHeightM", file.windHeightM, defaults.windHeightM)
    : (file.windHeightM ?? defaults.windHeightM.value);
  const method = pick(used, "weather.et0Method", file.et0Method, defaults.et0Method);
  const site = siteOf(file, windHeightM);
  found.push(...gathered(et0Faults(record, site, method)).map((one) => ofSite(one, file.file)));
  found.push(...panFaults(file, method));
  if (found.length > 0) return refused(found);
  const { et0Mm, notes } = dailyEt0(record, site, method);
  if (method !== "given") used.push(...notes.map((rule) => ruleUsed(rule, file.file)));
  const months = needByMonth(record.startDate, et0Mm, coefficientByDay(file, record, used));
  const periods = file.usefulRain === undefined ? months : withRain(months, file.usefulRain, record, used);
  const last = dateOf(dayNumber(record.startDate) + record.days - 1);
  const span = `${file.file}: ${record.days} days, ${record.startDate} to ${last}`;
  return { ok: true, periods, notes: [span, ...parsed.notes.map((note) => `${file.file}: ${note}`)] };
}

/** Rain of each month that roots get, mean of the years. */
function withRain(
  months: readonly NeedPeriod[],
  file: NonNullable<NeedWeatherFile["usefulRain"]>,
  { startDate, rainMm }: DailyWeather,
  used: DefaultUsed[],
): readonly NeedPeriod[] {
  const { rootedGroundM2, roomMm } = file;
  const path = "weather.usefulRain.countsAboveMm";
  const countsAboveMm = pick(used, path, file.countsAboveMm, needDefaults.countsAboveMm);
  const usefulL = rainMm.map(
    (mm) => rainOnRoots({ rainMm: mm, interceptedMm: 0, rootedGroundM2, roomMm, countsAboveMm }).usefulL,
  );
  // The mean of a month's days times its length, as the need itself is.
  const daily = needByMonth(startDate, usefulL, new Float64Array(usefulL.length).fill(1));
  return months.map((month, i) => ({ ...month, usefulRainLPerTree: month.days * daily[i].referenceMmPerDay }));
}

const refused = (faults: readonly Fault[]): NeedPeriodsRead => ({ ok: false, faults });

const seasonOf = ({ startDate, days }: DailyWeather): Season => ({ startDate, days });

function coefficientFaults({ kc, crop, latitudeDeg }: NeedWeatherFile, record: DailyWeather): Fault[] {
  if (crop !== undefined) return cropFaults(crop, "weather.crop", { season: seasonOf(record), latitudeDeg });
  return (kc ?? []).flatMap(({ date }, i, points) => {
    const before = points[i - 1]?.date;
    if (before === undefined || dayNumber(date) > dayNumber(before)) return [];
    return [fault("dates-not-rising", `weather.kc[${i}].date`, date, { before })];
  });
}

function coefficientByDay(file: NeedWeatherFile, { startDate, days }: DailyWeather, used: DefaultUsed[]): Float64Array {
  const { coefficient, kc, crop, latitudeDeg } = file;
  if (crop !== undefined) {
    const which = pick(used, "weather.crop.coefficient", crop.coefficient, cropDefaults.coefficient);
    const { stages, phenology } = filledStages(crop, which, "weather.crop", latitudeDeg, used);
    return kcByStage(startDate, days, stages, phenology);
  }
  if (kc === undefined) return new Float64Array(days).fill(coefficient ?? Number.NaN);
  return kcbByDay(
    startDate,
    days,
    kc.map((point) => ({ date: point.date, kcb: point.kc })),
  );
}
