import type { SurfaceStore } from "./kc-initial.js";

/** Total evaporable water, mm: 1000 (theta at field capacity - half theta at wilting point) x depth. Source: FAO-56 (Allen et al. 1998) eq. 73. @example totalEvaporableWaterMm(0.23, 0.10, 0.1) // 18 */
export const totalEvaporableWaterMm = (thetaFieldCapacity: number, thetaWiltingPoint: number, depthM: number): number =>
  1000 * (thetaFieldCapacity - 0.5 * thetaWiltingPoint) * depthM;

/**
 * Evaporation reduction coefficient Kr: 1 while De is within REW, then (TEW - De)/(TEW - REW), 0 when all is gone.
 * Source: FAO-56 eq. 74.
 *
 * @example evaporationReduction(9.45, { totalEvaporableMm: 20, readilyEvaporableMm: 9 }) // 0.96
 */
export function evaporationReduction(depletionMm: number, store: SurfaceStore): number {
  const { totalEvaporableMm: total, readilyEvaporableMm: ready } = store;
  if (depletionMm <= ready) return 1;
  return depletionMm >= total ? 0 : (total - depletionMm) / (total - ready);
}

/**
 * Share of the ground under leaves, from Kcb: ((Kcb - Kc min)/(Kc max - Kc min))^(1 + 0.5 h), with Kcb - Kc min at least
 * 0.01 and the share at most 0.99; both limits are the source's. Source: FAO-56 eq. 76.
 *
 * @example coverFromKcb({ kcb: 0.9, kcMin: 0.15, kcMax: 1.3, heightM: 1 }) // 0.53
 */
export function coverFromKcb(crop: { kcb: number; kcMin: number; kcMax: number; heightM: number }): number {
  const above = crop.kcb - crop.kcMin > 0.01 ? crop.kcb - crop.kcMin : 0.01;
  const cover = (above / (crop.kcMax - crop.kcMin)) ** (1 + 0.5 * crop.heightM);
  return cover > 0.99 ? 0.99 : cover;
}

/** Share of the ground that is wetted and in the sun: the smaller of 1 - fc and fw. Source: FAO-56 eq. 75. @example exposedWetted(0.08, 0.8) // 0.8 */
export const exposedWetted = (coverFraction: number, wettedFraction: number): number =>
  1 - coverFraction < wettedFraction ? 1 - coverFraction : wettedFraction;

/**
 * The same under drip, whose wet ground lies mostly in the shade of the crop: the wetted share counts as (1 - 2/3 fc) fw.
 * Source: FAO-56 ch. 7, text to eq. 75.
 *
 * @example exposedWettedUnderDrip(0.6, 0.35) // 0.21
 */
export const exposedWettedUnderDrip = (coverFraction: number, wettedFraction: number): number =>
  exposedWetted(coverFraction, (1 - (2 / 3) * coverFraction) * wettedFraction);

/** Soil evaporation coefficient Ke: the smaller of Kr (Kc max - Kcb) and few Kc max. Source: FAO-56 eq. 71. @example evaporationCoefficient({ kr: 1, kcMax: 1.21, kcb: 0.3, exposedWetted: 0.8 }) // 0.91 */
export function evaporationCoefficient(day: {
  readonly kr: number;
  readonly kcMax: number;
  readonly kcb: number;
  readonly exposedWetted: number;
}): number {
  const byEnergy = day.kr * (day.kcMax - day.kcb);
  const byGround = day.exposedWetted * day.kcMax;
  return byEnergy < byGround ? byEnergy : byGround;
}
