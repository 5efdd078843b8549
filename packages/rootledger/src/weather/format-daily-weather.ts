import { dateOf, dayNumber } from "../numeric/day-number.js";
import { type DailyWeather, type WeatherColumn, weatherColumns } from "./daily-weather.js";

/**
 * Writes a record as the plain daily weather file, at full precision: what `parseDailyWeather` reads back is the same record.
 * Columns without any value are left out.
 *
 * @example formatDailyWeather(weather) // "date,tMinC,tMaxC,rainMm\n2025-10-01,8.1,21.4,0\n"
 */
export function formatDailyWeather(weather: DailyWeather): string {
  const columns = weatherColumns.filter((column) => isUsed(weather, column));
  const first = dayNumber(weather.startDate);
  let text = `${["date", ...columns].join(",")}\n`;
  for (let d = 0; d < weather.days; d++) {
    text += dateOf(first + d);
    for (const column of columns) text += `,${cellText(weather[column][d])}`;
    text += "\n";
  }
  return text;
}

const isUsed = (weather: DailyWeather, column: WeatherColumn): boolean =>
  weather[column].some((value) => !Number.isNaN(value));

const cellText = (value: number): string => (Number.isNaN(value) ? "" : Object.is(value, -0) ? "-0" : String(value));
