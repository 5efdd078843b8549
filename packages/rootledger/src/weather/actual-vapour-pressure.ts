import { saturationVapourPressureKPa } from "./vapour-pressure.js";

/** Actual vapour pressure, kPa, from the dew point. Source: FAO-56 eq. 14; with Tmin as dew point, eq. 48. @example eaFromDewPointKPa(14.8) // 1.68 */
export const eaFromDewPointKPa = (dewPointC: number): number => saturationVapourPressureKPa(dewPointC);

/** Readings of a dry and a wet bulb. */
export interface Psychrometer {
  readonly dryC: number;
  readonly wetC: number;
  readonly pressureKPa: number;
  /** 0.000662 aspirated at about 5 m/s, 0.000800 naturally ventilated at about 1 m/s, 0.001200 indoor (FAO-56 eq. 16). */
  readonly coefficientPerC: number;
}

/**
 * Actual vapour pressure, kPa: e(Twet) - a P (Tdry - Twet). Source: FAO-56 eqs 15 and 16.
 *
 * @example eaFromPsychrometerKPa({ dryC: 25.6, wetC: 19.5, pressureKPa: 87.9, coefficientPerC: 0.000662 }) // 1.91
 */
export const eaFromPsychrometerKPa = ({ dryC, wetC, pressureKPa, coefficientPerC }: Psychrometer): number =>
  saturationVapourPressureKPa(wetC) - coefficientPerC * pressureKPa * (dryC - wetC);

/** A day's relative humidity from its two ends. */
export interface DailyHumidity {
  readonly tMinC: number;
  readonly tMaxC: number;
  readonly rhMinPct: number;
  readonly rhMaxPct: number;
}

/**
 * Actual vapour pressure, kPa: (e(Tmin) RHmax/100 + e(Tmax) RHmin/100) / 2. Source: FAO-56 eq. 17.
 *
 * @example eaFromRhMinMaxKPa({ tMinC: 18, tMaxC: 25, rhMinPct: 54, rhMaxPct: 82 }) // 1.70
 */
export const eaFromRhMinMaxKPa = ({ tMinC, tMaxC, rhMinPct, rhMaxPct }: DailyHumidity): number =>
  (saturationVapourPressureKPa(tMinC) * (rhMaxPct / 100) + saturationVapourPressureKPa(tMaxC) * (rhMinPct / 100)) / 2;

/** Actual vapour pressure, kPa: e(Tmin) RHmax/100. Source: FAO-56 eq. 18. @example eaFromRhMaxKPa(18, 82) // 1.69 */
export const eaFromRhMaxKPa = (tMinC: number, rhMaxPct: number): number =>
  saturationVapourPressureKPa(tMinC) * (rhMaxPct / 100);

/** A day's mean relative humidity. */
export interface MeanHumidity {
  readonly tMinC: number;
  readonly tMaxC: number;
  readonly rhMeanPct: number;
}

/**
 * Actual vapour pressure, kPa: RHmean/100 times the mean of e(Tmax) and e(Tmin). Source: FAO-56 eq. 19.
 *
 * @example eaFromRhMeanKPa({ tMinC: 18, tMaxC: 25, rhMeanPct: 68 }) // 1.78
 */
export const eaFromRhMeanKPa = ({ tMinC, tMaxC, rhMeanPct }: MeanHumidity): number =>
  (rhMeanPct / 100) * ((saturationVapourPressureKPa(tMaxC) + saturationVapourPressureKPa(tMinC)) / 2);
