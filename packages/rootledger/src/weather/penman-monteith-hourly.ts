import { type PenmanMonteithInputs, penmanMonteith, type ReferenceSurface } from "./penman-monteith.js";

/** FAO-56 eq. 53. Its 0.34 holds by day and by night, unlike the hourly step of ASCE-EWRI (2005). */
export const fao56GrassHourly: ReferenceSurface = { numerator: 37, denominator: 0.34 };

/**
 * Reference evapotranspiration of an hour, mm: (0.408 D (Rn - G) + g 37/(T + 273) u2 (e(T) - ea)) / (D + g (1 + 0.34 u2)), all
 * inputs of that hour. Source: FAO-56 eq. 53. Negative at night where dew outweighs it: the caller decides.
 *
 * @example et0PenmanMonteithMmPerH({ meanTempC: 38, saturationVapourPressureKPa: 6.625, actualVapourPressureKPa: 3.445, windAt2mMPerS: 3.3, netRadiationMJPerM2: 1.749, soilHeatFluxMJPerM2: 0.175, psychrometricConstantKPaPerC: 0.0673 }) // 0.63
 */
export const et0PenmanMonteithMmPerH = (hour: PenmanMonteithInputs): number => penmanMonteith(hour, fao56GrassHourly);
