import type { DailyWeather, WeatherColumn } from "./daily-weather.js";
import type { WeatherFault } from "./weather-fault.js";

/** Checks that need more than one cell of a day, or the whole record; `lines` are the lines of the days in the file. */
export function checkRecord(
  weather: DailyWeather,
  lines: readonly number[],
  given: ReadonlySet<WeatherColumn>,
  broken: ReadonlySet<string>,
): WeatherFault[] {
  const faults: WeatherFault[] = [];
  const missing = (d: number, column: WeatherColumn, rule: string): void => {
    const path = `line ${lines[d]}, ${column}`;
    if (given.has(column) && Number.isNaN(weather[column][d]) && !broken.has(path)) {
      faults.push({ code: "missing-value", path, received: "nothing", rule });
    }
  };
  const belowMax = (d: number, low: WeatherColumn, high: WeatherColumn): void => {
    if (!(weather[low][d] > weather[high][d])) return;
    faults.push({
      code: "min-above-max",
      path: `line ${lines[d]}, ${low}`,
      received: String(weather[low][d]),
      rule: `must not be above ${high}, ${weather[high][d]}`,
    });
  };
  const et0Given = given.has("et0Mm");
  const temperaturesGiven = given.has("tMinC") && given.has("tMaxC");
  for (let d = 0; d < weather.days; d++) {
    missing(d, "rainMm", "is required on every day; rain is never filled in (0 where it was dry)");
    if (!(weather.et0Mm[d] >= 0)) {
      if (temperaturesGiven) {
        const unless = et0Given ? ", unless et0Mm is given" : "";
        missing(d, "tMinC", `is required on every day; a temperature is never filled in${unless}`);
        missing(d, "tMaxC", `is required on every day; a temperature is never filled in${unless}`);
      } else missing(d, "et0Mm", "is required on every day without temperatures");
    }
    belowMax(d, "tMinC", "tMaxC");
    belowMax(d, "rhMinPct", "rhMaxPct");
  }
  if (looksLikeFraction(weather.rhMaxPct)) {
    faults.push({
      code: "looks-like-fraction",
      path: "rhMaxPct",
      received: "no day above 1",
      rule: "must be in percent, 0 to 100, not a fraction",
    });
  }
  return faults;
}

function looksLikeFraction(rhMaxPct: Float64Array): boolean {
  let highest = 0;
  for (const value of rhMaxPct) if (value > highest) highest = value;
  return highest > 0 && highest <= 1;
}
