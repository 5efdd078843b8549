import { dateOf, dayNumber } from "../numeric/day-number.js";
import type { DailyWeather, WeatherColumn } from "./daily-weather.js";
import { latitudeSignFaults } from "./latitude-sign.js";
import type { WeatherFault, WeatherFaultCode } from "./weather-fault.js";
import type { Et0Method, WeatherSite } from "./weather-site.js";

/** kRs: FAO-56 has 0.16 and 0.19; fitted values in the literature run from about 0.1 to 0.25. Kp: FAO-56 tables 5 and 7. */
const siteLimits: readonly [keyof WeatherSite, number, number, WeatherFaultCode, string][] = [
  ["latitudeDeg", -90, 90, "latitude-out-of-range", " degrees, north positive"],
  ["elevationM", -450, 9000, "elevation-out-of-range", " m above sea level"],
  ["windHeightM", 0.5, 100, "wind-height-out-of-range", " m above short grass"],
  ["krs", 0.1, 0.25, "krs-out-of-range", ""],
  ["panCoefficient", 0.35, 1.1, "pan-coefficient-out-of-range", ""],
];

const isOptional = (key: keyof WeatherSite, method: Et0Method): boolean =>
  key === "krs" || (key === "panCoefficient" && method !== "pan");

const neededColumns: Readonly<Record<Et0Method, readonly WeatherColumn[]>> = {
  "penman-monteith": ["tMinC", "tMaxC"],
  "asce-short": ["tMinC", "tMaxC"],
  "hargreaves-samani": ["tMinC", "tMaxC"],
  pan: ["panMm"],
  given: ["et0Mm"],
};

/**
 * Everything that keeps a record from giving reference evapotranspiration by a method at a site; empty when nothing does.
 *
 * @example et0Faults(weather, { latitudeDeg: -33, elevationM: 200, windHeightM: 2 }, "penman-monteith") // []
 */
export function et0Faults(weather: DailyWeather, site: WeatherSite, method: Et0Method): WeatherFault[] {
  const faults: WeatherFault[] = [];
  for (const [key, lowest, highest, code, unit] of siteLimits) {
    const value = site[key];
    if (value === undefined && isOptional(key, method)) continue;
    if (value === undefined || !(value >= lowest && value <= highest)) {
      faults.push({ code, path: key, received: String(value), rule: `must be ${lowest} to ${highest}${unit}` });
    }
  }
  const first = dayNumber(weather.startDate);
  for (const column of neededColumns[method]) {
    for (let d = 0; d < weather.days; d++) {
      if (Number.isFinite(weather[column][d])) continue;
      const path = `${dateOf(first + d)}, ${column}`;
      const rule = `is required for reference evapotranspiration by the method "${method}"`;
      faults.push({ code: "missing-value", path, received: "nothing", rule });
    }
  }
  if (faults.length > 0 || method === "given" || method === "pan") return faults;
  return latitudeSignFaults(weather, site);
}
