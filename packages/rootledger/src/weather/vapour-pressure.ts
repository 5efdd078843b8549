/**
 * Saturation vapour pressure over water, kPa: 0.6108 exp(17.27 T / (T + 237.3)). Source: FAO-56 eq. 11. Valid -90 to 60 C.
 *
 * @example saturationVapourPressureKPa(25) // 3.168
 */
export const saturationVapourPressureKPa = (tempC: number): number =>
  0.6108 * Math.exp((17.27 * tempC) / (tempC + 237.3));

/** Mean of the day, kPa: that of Tmax and that of Tmin, averaged. Source: FAO-56 eq. 12. @example meanSaturationVapourPressureKPa(15, 24.5) // 2.39 */
export const meanSaturationVapourPressureKPa = (tMinC: number, tMaxC: number): number =>
  (saturationVapourPressureKPa(tMaxC) + saturationVapourPressureKPa(tMinC)) / 2;

/** Slope of the saturation curve, kPa/C: 4098 e(T) / (T + 237.3)^2. Source: FAO-56 eq. 13. @example vapourPressureSlopeKPaPerC(16.9) // 0.122 */
export function vapourPressureSlopeKPaPerC(tempC: number): number {
  const fromPole = tempC + 237.3;
  return (4098 * saturationVapourPressureKPa(tempC)) / (fromPole * fromPole);
}

/**
 * Dew point, C: (116.91 + 237.3 ln e) / (16.78 - ln e), the inverse of the saturation curve. Source: FAO-56 Annex 3, eq. 3-11.
 *
 * @example dewPointC(2.338) // 20.0
 */
export function dewPointC(actualVapourPressureKPa: number): number {
  const log = Math.log(actualVapourPressureKPa);
  return (116.91 + 237.3 * log) / (16.78 - log);
}
