import { type DailyWeather, type WeatherColumn, weatherColumns } from "../daily-weather.js";
import { daysOfYear } from "../day-of-year.js";
import type { WeatherFault } from "../weather-fault.js";
import { calendarMonths } from "./calendar-months.js";
import { fitDrawn } from "./fit-drawn.js";
import { fitFollowing } from "./fit-following.js";
import { fitRain } from "./fit-rain.js";
import type { DrawnColumn, GeneratorFit } from "./generator-fit.js";

/** A generator, or why a record gives none. */
export type FittedGenerator =
  | { readonly ok: true; readonly fit: GeneratorFit; readonly notes: readonly string[] }
  | { readonly ok: false; readonly faults: readonly WeatherFault[] };

/** A day with less is dry: the resolution of a metric gauge. Richardson & Wright (1984) take 0.01 inch (from memory). */
const wetDayMm = 0.1;

/** Least days with a value in each month of the year; own choice, a good month. */
const leastDays = 25;

/**
 * Fits a weather generator of the type of Richardson (1981), Water Resources Research 17:182-190, and Richardson & Wright (1984), ARS-8, to a daily record: wet and dry days by a
 * first-order Markov chain and gamma amounts, each by month; maximum and minimum temperature normal about yearly courses, radiation (or sunshine) with its own distribution in each month, both different on wet and dry days, their
 * standardised residuals by a first-order autoregression of all together; wind and humidity by their monthly means on wet and dry days.
 *
 * It keeps the record's means, share of wet days and day-to-day variance. It underestimates what lasts longer than some days: the spread between years (dry and wet years, warm and cold ones), the longest dry spells
 * and the heaviest falls of a century; wind and humidity have no spread of their own. Twenty years or more should be fitted; a record of a few years passes its accidents on.
 *
 * @example fitGenerator(weather).ok
 */
export function fitGenerator(weather: DailyWeather): FittedGenerator {
  const monthOf = calendarMonths(weather.startDate, weather.days);
  const faults = (["rainMm", "tMinC", "tMaxC"] as const).flatMap((column) => shortfall(weather, column, monthOf));
  if (faults.length > 0) return { ok: false, faults };
  const state = new Int8Array(weather.days);
  for (let d = 0; d < weather.days; d++) state[d] = weather.rainMm[d] >= wetDayMm ? 1 : weather.rainMm[d] >= 0 ? 0 : -1;
  const rain = fitRain(weather.rainMm, monthOf, wetDayMm);
  const sun = (["solarMJPerM2", "sunshineH"] as const).find(
    (column) => shortfall(weather, column, monthOf).length === 0,
  );
  const columns: DrawnColumn[] = sun === undefined ? ["tMaxC", "tMinC"] : ["tMaxC", "tMinC", sun];
  const { drawn, process } = fitDrawn(weather, columns, state, daysOfYear(weather.startDate, weather.days), monthOf);
  if (process === undefined) {
    const rule = "must vary from day to day, each in its own way";
    return {
      ok: false,
      faults: [{ code: "no-values", path: columns.join(", "), received: "constant or equal columns", rule }],
    };
  }
  const following = fitFollowing(weather, state, monthOf);
  const fit: GeneratorFit = { wetDayMm, months: rain.months, drawn, process, following };
  const made = new Set<WeatherColumn>(["rainMm", ...columns, ...following.map(({ column }) => column)]);
  const left = weatherColumns.filter((column) => !made.has(column) && !weather[column].every(Number.isNaN));
  const notes = left.length === 0 ? rain.notes : [...rain.notes, `not generated: ${left.join(", ")}`];
  return { ok: true, fit, notes };
}

function shortfall(weather: DailyWeather, column: WeatherColumn, monthOf: Uint8Array): WeatherFault[] {
  const counts = new Array<number>(12).fill(0);
  for (let d = 0; d < weather.days; d++) if (!Number.isNaN(weather[column][d])) counts[monthOf[d]]++;
  const short = counts.findIndex((count) => count < leastDays);
  if (short < 0) return [];
  const received = `${counts[short]} days in month ${short + 1}`;
  return [
    {
      code: "too-short-record",
      path: column,
      received,
      rule: `must have at least ${leastDays} days in every month of the year`,
    },
  ];
}
