import type { DailySun } from "./daily-sun.js";
import type { DailyWeather } from "./daily-weather.js";
import type { Et0Counts } from "./et0-notes.js";
import {
  cloudTerm,
  humidityTerm,
  leastCloudTerm,
  netLongwaveMJPerM2Day,
  netShortwaveMJPerM2,
} from "./net-radiation.js";
import {
  clearSkyMJPerM2,
  krsInterior,
  solarFromSunshineMJPerM2Day,
  solarFromTemperatureMJPerM2Day,
} from "./solar-radiation.js";
import type { WeatherSite } from "./weather-site.js";

/** Rs/Rso with the sun down: middle of FAO-56's 0.4 to 0.6 for humid nights (ch. 4, hourly step). */
const polarNightShare = 0.5;
/** A pyranometer within 5 % is a good one; beyond that over a clear sky the day is noted. Common practice, no source. */
const clearSkyMargin = 1.05;

/** Solar radiation of day `d`, MJ/m2: measured, else from sunshine (eq. 35), else from the temperature range (eq. 50) of FAO-56. */
export function daySolarMJPerM2(
  weather: DailyWeather,
  site: WeatherSite,
  sun: DailySun,
  d: number,
  counts: Et0Counts,
): number {
  const extraterrestrial = sun.extraterrestrialMJPerM2[d];
  const measured = weather.solarMJPerM2[d];
  if (measured >= 0) {
    if (measured > clearSkyMargin * clearSkyMJPerM2(extraterrestrial, site.elevationM)) counts.solarAboveClearSky++;
    return measured;
  }
  const sunshineH = weather.sunshineH[d];
  const lengthH = sun.dayLengthH[d];
  if (sunshineH >= 0) {
    counts.solarFromSunshine++;
    if (sunshineH > lengthH) counts.sunshineBeyondDay++;
    const share = sunshineH < lengthH ? sunshineH / lengthH : 1;
    return solarFromSunshineMJPerM2Day(extraterrestrial, share);
  }
  counts.solarFromTemperature++;
  const range = { tMinC: weather.tMinC[d], tMaxC: weather.tMaxC[d] };
  const solar = solarFromTemperatureMJPerM2Day(extraterrestrial, range, site.krs ?? krsInterior);
  const clearSky = clearSkyMJPerM2(extraterrestrial, site.elevationM);
  if (solar <= clearSky) return solar;
  counts.solarHeldAtClearSky++;
  return clearSky;
}

export interface NetRadiationDay {
  readonly tMinC: number;
  readonly tMaxC: number;
  readonly actualVapourPressureKPa: number;
  readonly solarMJPerM2: number;
  readonly clearSkyMJPerM2: number;
  readonly sigma: number;
}

/** Net radiation of a day over the reference crop, MJ/m2: FAO-56 eqs 38 to 40 with the cloud term held at 0.05 or more. */
export function dayNetRadiationMJPerM2(day: NetRadiationDay, counts: Et0Counts): number {
  let relative = polarNightShare;
  if (day.clearSkyMJPerM2 > 0) relative = day.solarMJPerM2 / day.clearSkyMJPerM2;
  else counts.polarNight++;
  let cloud = cloudTerm(relative);
  if (cloud < leastCloudTerm) {
    counts.thickCloud++;
    cloud = leastCloudTerm;
  }
  const longwave = netLongwaveMJPerM2Day({
    tMinC: day.tMinC,
    tMaxC: day.tMaxC,
    humidityTerm: humidityTerm(day.actualVapourPressureKPa),
    cloudTerm: cloud,
    sigma: day.sigma,
  });
  return netShortwaveMJPerM2(day.solarMJPerM2) - longwave;
}
