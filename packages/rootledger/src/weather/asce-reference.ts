import { type PenmanMonteithInputs, penmanMonteith, type ReferenceSurface } from "./penman-monteith.js";

/** Stefan-Boltzmann constant of ASCE-EWRI (2005) eq. 17, MJ per K4, m2 and day. */
export const asceSigmaMJPerK4M2Day = 4.901e-9;

/** ASCE-EWRI (2005) table 1, daily step: clipped grass. */
export const asceShortDaily: ReferenceSurface = { numerator: 900, denominator: 0.34 };

/** ASCE-EWRI (2005) table 1, daily step: alfalfa. */
export const asceTallDaily: ReferenceSurface = { numerator: 1600, denominator: 0.38 };

/**
 * Standardized reference evapotranspiration, mm/day. Source: ASCE-EWRI (2005) eq. 1 and table 1. The short surface is that of
 * FAO-56; only the constants of net radiation differ slightly. Negative where dew outweighs it: the caller decides.
 *
 * @example et0AsceMmPerDay({ meanTempC: 23.7, saturationVapourPressureKPa: 3.3, actualVapourPressureKPa: 1.4, windAt2mMPerS: 1.92, netRadiationMJPerM2: 13.3, soilHeatFluxMJPerM2: 0, psychrometricConstantKPaPerC: 0.0567 }, "short") // 5.9
 */
export const et0AsceMmPerDay = (at: PenmanMonteithInputs, surface: "short" | "tall"): number =>
  penmanMonteith(at, surface === "short" ? asceShortDaily : asceTallDaily);
