import { eaFromDewPointKPa, eaFromRhMaxKPa, eaFromRhMinMaxKPa } from "./actual-vapour-pressure.js";
import type { DailyWeather } from "./daily-weather.js";
import type { Et0Counts } from "./et0-notes.js";

/**
 * Actual vapour pressure of day `d`, kPa, by the best rule that the record allows, in the order of FAO-56 ch. 3: RHmax and
 * RHmin (eq. 17), RHmax alone (eq. 18), dew point taken as Tmin (eq. 48). RHmin alone has no rule there and is not used.
 */
export function dayVapourPressureKPa(weather: DailyWeather, d: number, counts: Et0Counts): number {
  const tMinC = weather.tMinC[d];
  let rhMaxPct = weather.rhMaxPct[d];
  let rhMinPct = weather.rhMinPct[d];
  if (!(rhMaxPct >= 0)) {
    counts.dewPointAsTMin++;
    return eaFromDewPointKPa(tMinC);
  }
  if (rhMaxPct > 100 || rhMinPct > 100) {
    counts.rhAbove100++;
    if (rhMaxPct > 100) rhMaxPct = 100;
    if (rhMinPct > 100) rhMinPct = 100;
  }
  if (!(rhMinPct >= 0)) {
    counts.rhMaxOnly++;
    return eaFromRhMaxKPa(tMinC, rhMaxPct);
  }
  return eaFromRhMinMaxKPa({ tMinC, tMaxC: weather.tMaxC[d], rhMinPct, rhMaxPct });
}
