import { eaFromDewPointKPa, eaFromRhMaxKPa, eaFromRhMeanKPa, eaFromRhMinMaxKPa } from "./actual-vapour-pressure.js";
import type { DailyWeather } from "./daily-weather.js";
import type { Et0Counts } from "./et0-notes.js";

/**
 * Actual vapour pressure of day `d`, kPa, by the best rule that the record allows, in the order of FAO-56 ch. 3: dew point
 * (eq. 14), RHmax and RHmin (eq. 17), RHmax alone (eq. 18), RHmean (eq. 19), dew point taken as Tmin (eq. 48). RHmin alone has
 * no rule there and is not used. Held at saturation, which a dew point above the air's temperature would pass.
 */
export function dayVapourPressureKPa(
  weather: DailyWeather,
  d: number,
  saturationKPa: number,
  counts: Et0Counts,
): number {
  const actual = uncheckedVapourPressureKPa(weather, d, counts);
  if (actual <= saturationKPa) return actual;
  counts.aboveSaturation++;
  return saturationKPa;
}

function uncheckedVapourPressureKPa(weather: DailyWeather, d: number, counts: Et0Counts): number {
  const tMinC = weather.tMinC[d];
  const tMaxC = weather.tMaxC[d];
  const dewPointC = weather.dewPointC[d];
  if (!Number.isNaN(dewPointC)) return eaFromDewPointKPa(dewPointC);
  const rhMaxPct = atMost100(weather.rhMaxPct[d], counts);
  if (rhMaxPct >= 0) {
    const rhMinPct = atMost100(weather.rhMinPct[d], counts);
    if (rhMinPct >= 0) return eaFromRhMinMaxKPa({ tMinC, tMaxC, rhMinPct, rhMaxPct });
    counts.rhMaxOnly++;
    return eaFromRhMaxKPa(tMinC, rhMaxPct);
  }
  const rhMeanPct = atMost100(weather.rhMeanPct[d], counts);
  if (rhMeanPct >= 0) {
    counts.rhMeanOnly++;
    return eaFromRhMeanKPa({ tMinC, tMaxC, rhMeanPct });
  }
  counts.dewPointAsTMin++;
  return eaFromDewPointKPa(tMinC);
}

function atMost100(humidityPct: number, counts: Et0Counts): number {
  if (!(humidityPct > 100)) return humidityPct;
  counts.rhAbove100++;
  return 100;
}
