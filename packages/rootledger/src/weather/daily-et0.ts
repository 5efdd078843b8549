import { asceSigmaMJPerK4M2Day } from "./asce-reference.js";
import { atmosphericPressureKPa, psychrometricConstantKPaPerC } from "./atmosphere.js";
import { type DailySun, dailySun } from "./daily-sun.js";
import type { DailyWeather } from "./daily-weather.js";
import { dayVapourPressureKPa } from "./day-humidity.js";
import { dayNetRadiationMJPerM2, daySolarMJPerM2 } from "./day-radiation.js";
import { dayWindAt2mMPerS } from "./day-wind.js";
import { et0Faults } from "./et0-faults.js";
import { type Et0Counts, et0Notes, noCounts } from "./et0-notes.js";
import { et0HargreavesSamaniMmPerDay } from "./hargreaves-samani.js";
import { stefanBoltzmannMJPerK4M2Day } from "./net-radiation.js";
import { et0PanMmPerDay } from "./pan-coefficient.js";
import { fao56GrassDaily, penmanMonteith } from "./penman-monteith.js";
import { clearSkyMJPerM2 } from "./solar-radiation.js";
import { meanSaturationVapourPressureKPa } from "./vapour-pressure.js";
import type { Et0Method, WeatherSite } from "./weather-site.js";
import { windFactor } from "./wind.js";

/** Reference evapotranspiration and the sun's hours (local solar, noon at 12) of each day, with every rule that filled or held a value. */
export interface DailyEt0 {
  readonly et0Mm: Float64Array;
  readonly sunriseH: Float64Array;
  readonly sunsetH: Float64Array;
  readonly notes: readonly string[];
}

/** The short surface of ASCE-EWRI (2005) is that of FAO-56; only the constant of net longwave radiation differs. */
const sigmas = {
  "penman-monteith": stefanBoltzmannMJPerK4M2Day,
  "asce-short": asceSigmaMJPerK4M2Day,
} as const;

/**
 * ET0 of every day of a record, mm/day, never negative. What the record lacks is filled by the rules of FAO-56 ch. 3 and
 * counted in the notes.
 *
 * @throws RangeError with the first fault that `et0Faults` finds, which a caller with a user's file asks first.
 * @example dailyEt0(weather, { latitudeDeg: -33, elevationM: 200, windHeightM: 2 }, "penman-monteith").et0Mm[0]
 */
export function dailyEt0(weather: DailyWeather, site: WeatherSite, method: Et0Method): DailyEt0 {
  const [fault] = et0Faults(weather, site, method);
  if (fault) throw new RangeError(`dailyEt0: ${fault.path} ${fault.rule}: got ${fault.received}`);
  const sun = dailySun(weather.startDate, weather.days, site.latitudeDeg);
  const counts = noCounts();
  const et0Mm = new Float64Array(weather.days);
  if (method === "given") et0Mm.set(weather.et0Mm);
  else if (method === "pan") fillFromPan(et0Mm, weather, site.panCoefficient ?? Number.NaN);
  else if (method === "hargreaves-samani") fillHargreaves(et0Mm, weather, sun);
  else fillCombination(et0Mm, weather, site, sun, counts, sigmas[method]);
  for (let d = 0; d < weather.days; d++) {
    if (et0Mm[d] < 0) {
      et0Mm[d] = 0;
      counts.et0Floored++;
    }
  }
  return { et0Mm, sunriseH: sun.sunriseH, sunsetH: sun.sunsetH, notes: et0Notes(counts, weather.days) };
}

function fillFromPan(et0Mm: Float64Array, weather: DailyWeather, panCoefficient: number): void {
  for (let d = 0; d < weather.days; d++) et0Mm[d] = et0PanMmPerDay(weather.panMm[d], panCoefficient);
}

function fillHargreaves(et0Mm: Float64Array, weather: DailyWeather, sun: DailySun): void {
  for (let d = 0; d < weather.days; d++) {
    et0Mm[d] = et0HargreavesSamaniMmPerDay({
      tMinC: weather.tMinC[d],
      tMaxC: weather.tMaxC[d],
      extraterrestrialMJPerM2Day: sun.extraterrestrialMJPerM2[d],
    });
  }
}

function fillCombination(
  et0Mm: Float64Array,
  weather: DailyWeather,
  site: WeatherSite,
  sun: DailySun,
  counts: Et0Counts,
  sigma: number,
): void {
  const gamma = psychrometricConstantKPaPerC(atmosphericPressureKPa(site.elevationM));
  const factorTo2m = windFactor(site.windHeightM);
  for (let d = 0; d < weather.days; d++) {
    const tMinC = weather.tMinC[d];
    const tMaxC = weather.tMaxC[d];
    const saturationVapourPressureKPa = meanSaturationVapourPressureKPa(tMinC, tMaxC);
    const actualVapourPressureKPa = dayVapourPressureKPa(weather, d, saturationVapourPressureKPa, counts);
    const solarMJPerM2 = daySolarMJPerM2(weather, site, sun, d, counts);
    const clearSky = clearSkyMJPerM2(sun.extraterrestrialMJPerM2[d], site.elevationM);
    const netRadiationMJPerM2 = dayNetRadiationMJPerM2(
      { tMinC, tMaxC, actualVapourPressureKPa, solarMJPerM2, clearSkyMJPerM2: clearSky, sigma },
      counts,
    );
    et0Mm[d] = penmanMonteith(
      {
        meanTempC: (tMinC + tMaxC) / 2,
        saturationVapourPressureKPa,
        actualVapourPressureKPa,
        windAt2mMPerS: dayWindAt2mMPerS(weather.windMPerS[d], factorTo2m, counts),
        netRadiationMJPerM2,
        soilHeatFluxMJPerM2: 0,
        psychrometricConstantKPaPerC: gamma,
      },
      fao56GrassDaily,
    );
  }
}
