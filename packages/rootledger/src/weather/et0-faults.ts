import { dateOf, dayNumber } from "../numeric/day-number.js";
import { dailySun } from "./daily-sun.js";
import type { DailyWeather, WeatherColumn } from "./daily-weather.js";
import type { WeatherFault, WeatherFaultCode } from "./weather-fault.js";
import type { Et0Method, WeatherSite } from "./weather-site.js";

const siteLimits: readonly [keyof WeatherSite, number, number, WeatherFaultCode, string][] = [
  ["latitudeDeg", -90, 90, "latitude-out-of-range", "degrees, north positive"],
  ["elevationM", -450, 9000, "elevation-out-of-range", "m above sea level"],
  ["windHeightM", 0.5, 100, "wind-height-out-of-range", "m above short grass"],
];

/** Ten days of a month: below that a shaky sensor could be taken for a wrong hemisphere. Own choice. */
const fewestDaysOfEvidence = 10;
const shareOfDays = 0.1;

/**
 * Everything that keeps a record from giving reference evapotranspiration by a method at a site; empty when nothing does.
 *
 * @example et0Faults(weather, { latitudeDeg: -33, elevationM: 200, windHeightM: 2 }, "penman-monteith") // []
 */
export function et0Faults(weather: DailyWeather, site: WeatherSite, method: Et0Method): WeatherFault[] {
  const faults: WeatherFault[] = [];
  for (const [key, lowest, highest, code, unit] of siteLimits) {
    const value = site[key];
    if (value === undefined || !(value >= lowest && value <= highest)) {
      faults.push({ code, path: key, received: String(value), rule: `must be ${lowest} to ${highest} ${unit}` });
    }
  }
  const needed: WeatherColumn[] = method === "given" ? ["et0Mm"] : ["tMinC", "tMaxC"];
  const first = dayNumber(weather.startDate);
  for (const column of needed) {
    for (let d = 0; d < weather.days; d++) {
      if (Number.isFinite(weather[column][d])) continue;
      const path = `${dateOf(first + d)}, ${column}`;
      const rule = `is required for reference evapotranspiration by the method "${method}"`;
      faults.push({ code: "missing-value", path, received: "nothing", rule });
    }
  }
  if (faults.length > 0 || method === "given" || method === "hargreaves-samani") return faults;
  return latitudeSignFaults(weather, site);
}

/** More sun than the latitude can have on many days, but not on the other side of the equator: the sign is probably lost. */
function latitudeSignFaults(weather: DailyWeather, site: WeatherSite): WeatherFault[] {
  const here = daysWithTooMuchSun(weather, site.latitudeDeg);
  if (here.days < fewestDaysOfEvidence || here.days < shareOfDays * here.of) return [];
  const opposite = daysWithTooMuchSun(weather, -site.latitudeDeg);
  if (opposite.days > here.days / 4) return [];
  return [
    {
      code: "check-latitude-sign",
      path: "latitudeDeg",
      received: String(site.latitudeDeg),
      rule:
        `must fit the record: on ${here.days} of ${here.of} days there is more sun than can reach this latitude, ` +
        `against ${opposite.days} at ${-site.latitudeDeg}; south of the equator is negative`,
    },
  ];
}

function daysWithTooMuchSun(weather: DailyWeather, latitudeDeg: number): { days: number; of: number } {
  const sun = dailySun(weather.startDate, weather.days, latitudeDeg);
  let days = 0;
  let of = 0;
  for (let d = 0; d < weather.days; d++) {
    const solar = weather.solarMJPerM2[d];
    const sunshineH = weather.sunshineH[d];
    if (!(solar >= 0 || sunshineH >= 0)) continue;
    of++;
    if (solar > sun.extraterrestrialMJPerM2[d] || sunshineH > sun.dayLengthH[d] + 0.5) days++;
  }
  return { days, of };
}
