import { parseDailyWeather } from "../weather/parse-daily-weather.js";
import { fault } from "./faults.js";
import { readPart, shapeFaults, valueAt } from "./parse-issues.js";
import { readWeather, type WeatherRead } from "./parse-weather.js";
import { weatherSchema } from "./schema-file.js";

/**
 * Reads a longer weather record for the site of a scenario or comparison file: all its days, with the place, the wind height and
 * the ET0 method that the file names. Every fault is returned at once.
 *
 * @param input the parsed JSON of the scenario or comparison
 * @param name of the record's file, for faults
 * @param text of the record, a plain daily weather file
 * @example parseWeatherRecord(input, "years.csv", csv).ok
 */
export function parseWeatherRecord(input: unknown, name: string, text: string): WeatherRead {
  const weather = readPart(weatherSchema, input, ["weather"]);
  if (weather === undefined) return { ok: false, faults: shapeFaults(weatherSchema, valueAt(input, ["weather"])) };
  const parsed = parseDailyWeather(text);
  const season = parsed.ok ? parsed.weather : undefined;
  if (season?.days === 0) return { ok: false, faults: [fault("file-not-given", "weather.file", name)] };
  return readWeather({ ...weather, file: name }, season, { [name]: text }, []);
}
