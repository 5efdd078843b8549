import type { CropClimate } from "../tree/kc-climate.js";
import type { DailyWeather } from "../weather/daily-weather.js";
import { dayVapourPressureKPa } from "../weather/day-humidity.js";
import { dayWindAt2mMPerS } from "../weather/day-wind.js";
import { noCounts } from "../weather/et0-notes.js";
import { meanSaturationVapourPressureKPa, saturationVapourPressureKPa } from "../weather/vapour-pressure.js";
import { windFactor } from "../weather/wind.js";

/** The air over the crop by day of a record; NaN where it is not known. */
export interface DayAir {
  readonly windAt2mMPerS: Float64Array;
  readonly rhMinPct: Float64Array;
  readonly tMinC: Float64Array;
  readonly tMaxC: Float64Array;
}

/**
 * Wind at 2 m and lowest humidity of every day by the rules that fill a record for ET0: wind 2 m/s where none was measured; RHmin as
 * measured, else 100 ea / e(Tmax), with dew point at Tmin where no humidity was measured. Source: FAO-56 (Allen et al. 1998) eqs 10, 47
 * and 48, ch. 3. Days without temperatures are not known.
 *
 * @example dayAir(weather, 10).rhMinPct[0]
 */
export function dayAir(weather: DailyWeather, windHeightM: number): DayAir {
  const factor = windFactor(windHeightM);
  const counts = noCounts();
  const windAt2mMPerS = new Float64Array(weather.days);
  const rhMinPct = new Float64Array(weather.days);
  for (let d = 0; d < weather.days; d++) {
    const tMinC = weather.tMinC[d];
    const tMaxC = weather.tMaxC[d];
    windAt2mMPerS[d] = dayWindAt2mMPerS(weather.windMPerS[d], factor, counts);
    const measured = weather.rhMinPct[d];
    const saturation = meanSaturationVapourPressureKPa(tMinC, tMaxC);
    rhMinPct[d] =
      measured >= 0
        ? measured
        : (100 * dayVapourPressureKPa(weather, d, saturation, counts)) / saturationVapourPressureKPa(tMaxC);
  }
  return { windAt2mMPerS, rhMinPct, tMinC: weather.tMinC, tMaxC: weather.tMaxC };
}

/** The climate of a day, where it is known. */
export function climateOfDay(air: DayAir, day: number): CropClimate | undefined {
  const climate = { windAt2mMPerS: air.windAt2mMPerS[day], rhMinPct: air.rhMinPct[day] };
  return Number.isFinite(climate.windAt2mMPerS) && Number.isFinite(climate.rhMinPct) ? climate : undefined;
}

/** Mean climate of the days that a test picks, of those that are known. */
export function meanClimate(air: DayAir, picks: (day: number) => boolean): CropClimate | undefined {
  let wind = 0;
  let humidity = 0;
  let count = 0;
  for (let d = 0; d < air.rhMinPct.length; d++) {
    const climate = picks(d) ? climateOfDay(air, d) : undefined;
    if (climate === undefined) continue;
    wind += climate.windAt2mMPerS;
    humidity += climate.rhMinPct;
    count++;
  }
  return count === 0 ? undefined : { windAt2mMPerS: wind / count, rhMinPct: humidity / count };
}
