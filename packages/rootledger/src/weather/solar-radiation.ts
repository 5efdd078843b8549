/**
 * Solar radiation from sunshine hours, MJ/m2 per day: (as + bs n/N) Ra with as 0.25, bs 0.50. Source: FAO-56 eq. 35.
 * `sunshineShare` is n/N, 0 to 1.
 *
 * @example solarFromSunshineMJPerM2Day(25.1, 7.1 / 10.9) // 14.4
 */
export const solarFromSunshineMJPerM2Day = (
  extraterrestrialMJPerM2Day: number,
  sunshineShare: number,
  coefficients: { readonly as: number; readonly bs: number } = { as: 0.25, bs: 0.5 },
): number => (coefficients.as + coefficients.bs * sunshineShare) * extraterrestrialMJPerM2Day;

/** Clear-sky radiation, MJ/m2 in the period of Ra: (0.75 + 2e-5 z) Ra. Source: FAO-56 eq. 37. @example clearSkyMJPerM2(41.09, 100) // 30.9 */
export const clearSkyMJPerM2 = (extraterrestrialMJPerM2: number, elevationM: number): number =>
  (0.75 + 2e-5 * elevationM) * extraterrestrialMJPerM2;

/** kRs of FAO-56 eq. 50, per square root of a degree. */
export const krsInterior = 0.16;
/** Adjustment of radiation from temperatures near a coast, 1/sqrt(C). */
export const krsCoastal = 0.19;

/** The temperatures of a day between which radiation is estimated. */
export interface TemperatureRange {
  readonly tMinC: number;
  readonly tMaxC: number;
}

/**
 * Solar radiation from the day's temperature range, MJ/m2: kRs sqrt(Tmax - Tmin) Ra. Source: FAO-56 eq. 50. kRs 0.16 inland,
 * 0.19 on the coast.
 *
 * @example solarFromTemperatureMJPerM2Day(40.55, { tMinC: 14.8, tMaxC: 26.6 }, krsInterior) // 22.3
 */
export const solarFromTemperatureMJPerM2Day = (
  extraterrestrialMJPerM2Day: number,
  { tMinC, tMaxC }: TemperatureRange,
  krs: number,
): number => krs * Math.sqrt(tMaxC - tMinC) * extraterrestrialMJPerM2Day;
