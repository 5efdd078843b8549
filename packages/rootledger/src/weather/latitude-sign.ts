import { dailySun } from "./daily-sun.js";
import type { DailyWeather } from "./daily-weather.js";
import type { WeatherFault } from "./weather-fault.js";
import type { WeatherSite } from "./weather-site.js";

/** Ten days of a month: below that a shaky sensor could be taken for a wrong hemisphere. Own choice. */
const fewestDaysOfEvidence = 10;
const shareOfDays = 0.1;

/** Temperature is evidence only over most of a year and outside the tropics, where it follows the sun by a month. Own choice. */
const fewestDaysOfSeasons = 300;
const tropicDeg = 23.5;
const againstTheSun = -0.5;

/** The signs of a latitude whose sign is lost: more sun than it can have, or a winter in the middle of its summer. */
export function latitudeSignFaults(weather: DailyWeather, site: WeatherSite): WeatherFault[] {
  const here = daysWithTooMuchSun(weather, site.latitudeDeg);
  if (here.days >= fewestDaysOfEvidence && here.days >= shareOfDays * here.of) {
    const opposite = daysWithTooMuchSun(weather, -site.latitudeDeg);
    if (opposite.days > here.days / 4) return [];
    const found = `on ${here.days} of ${here.of} days there is more sun than can reach this latitude, against ${opposite.days}`;
    return [signFault(site, found)];
  }
  if (weather.days < fewestDaysOfSeasons || Math.abs(site.latitudeDeg) < tropicDeg) return [];
  if (!(correlationWithSun(weather, site.latitudeDeg) < againstTheSun)) return [];
  return [signFault(site, "it is coldest when the sun is highest, unlike")];
}

const signFault = (site: WeatherSite, found: string): WeatherFault => ({
  code: "check-latitude-sign",
  path: "latitudeDeg",
  received: String(site.latitudeDeg),
  rule: `must fit the record: ${found} at ${-site.latitudeDeg}; south of the equator is negative`,
});

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

/** Correlation of the day's mean temperature with extraterrestrial radiation, over the days that have a temperature. */
function correlationWithSun(weather: DailyWeather, latitudeDeg: number): number {
  const { extraterrestrialMJPerM2 } = dailySun(weather.startDate, weather.days, latitudeDeg);
  let n = 0;
  let sumT = 0;
  let sumR = 0;
  let sumTt = 0;
  let sumRr = 0;
  let sumTr = 0;
  for (let d = 0; d < weather.days; d++) {
    const t = (weather.tMinC[d] + weather.tMaxC[d]) / 2;
    const r = extraterrestrialMJPerM2[d];
    if (Number.isNaN(t)) continue;
    n++;
    sumT += t;
    sumR += r;
    sumTt += t * t;
    sumRr += r * r;
    sumTr += t * r;
  }
  const spread = Math.sqrt((n * sumTt - sumT * sumT) * (n * sumRr - sumR * sumR));
  return spread > 0 ? (n * sumTr - sumT * sumR) / spread : 0;
}
