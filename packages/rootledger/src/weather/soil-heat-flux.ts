/**
 * Soil heat flux of a month, MJ/m2 per day, from the months either side: 0.07 (Tnext - Tbefore). Source: FAO-56 eq. 43. Over a
 * single day it is taken as 0 (eq. 42).
 *
 * @example monthlySoilHeatFluxMJPerM2Day(14.1, 18.8) // 0.33
 */
export const monthlySoilHeatFluxMJPerM2Day = (meanBeforeC: number, meanNextC: number): number =>
  0.07 * (meanNextC - meanBeforeC);

/** The same where the next month is not known yet: 0.14 (T - Tbefore). Source: FAO-56 eq. 44. @example latestMonthSoilHeatFluxMJPerM2Day(29.2, 30.2) // 0.14 */
export const latestMonthSoilHeatFluxMJPerM2Day = (meanBeforeC: number, meanC: number): number =>
  0.14 * (meanC - meanBeforeC);

/** Soil heat flux of an hour, MJ/m2: 0.1 Rn in daylight, 0.5 Rn at night. Source: FAO-56 eqs 45, 46. @example hourlySoilHeatFluxMJPerM2(1.749, "day") // 0.175 */
export const hourlySoilHeatFluxMJPerM2 = (netRadiationMJPerM2: number, light: "day" | "night"): number =>
  (light === "day" ? 0.1 : 0.5) * netRadiationMJPerM2;
