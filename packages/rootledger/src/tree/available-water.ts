/**
 * Total available water of a root zone, mm: 1000 (theta at field capacity - theta at wilting point) x depth.
 * Source: FAO-56 (Allen et al. 1998) eq. 82.
 *
 * @example totalAvailableWaterMm(0.32, 0.15, 0.4) // 68
 */
export const totalAvailableWaterMm = (
  thetaFieldCapacity: number,
  thetaWiltingPoint: number,
  rootDepthM: number,
): number => 1000 * (thetaFieldCapacity - thetaWiltingPoint) * rootDepthM;

/** Water a crop takes before it suffers, mm: p x TAW. Source: FAO-56 eq. 83. @example readilyAvailableWaterMm(68, 0.3) // 20.4 */
export const readilyAvailableWaterMm = (totalMm: number, depletionFraction: number): number =>
  depletionFraction * totalMm;

/**
 * Depletion fraction p for the day's crop evapotranspiration: table value + 0.04 (5 - ETc), kept within 0.1 and 0.8.
 * Both the line and the limits are the source's. Source: FAO-56 Table 22, footnote 2.
 *
 * @example depletionFractionFor(0.5, 8) // 0.38
 */
export function depletionFractionFor(tableFraction: number, etcMmPerDay: number): number {
  const p = tableFraction + 0.04 * (5 - etcMmPerDay);
  return p < 0.1 ? 0.1 : p > 0.8 ? 0.8 : p;
}

/**
 * Water stress coefficient Ks: 1 while the depletion is within RAW, then (TAW - Dr) / ((1 - p) TAW), 0 when all is gone.
 * Source: FAO-56 eq. 84. @example stressCoefficient(72.8, 160, 0.4) // 0.908
 */
export function stressCoefficient(depletionMm: number, totalMm: number, depletionFraction: number): number {
  const ks = (totalMm - depletionMm) / ((1 - depletionFraction) * totalMm);
  return ks > 1 ? 1 : ks < 0 ? 0 : ks;
}
