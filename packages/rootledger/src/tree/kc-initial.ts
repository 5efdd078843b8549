/** Water that a wet soil surface can lose by evaporation, in all and at full rate. */
export interface SurfaceStore {
  readonly totalEvaporableMm: number;
  readonly readilyEvaporableMm: number;
}

/** Light events, about 10 mm or less (figure 29); heavy ones, 40 mm or more, on coarse (30a) or on fine and medium soil (30b). */
export type Wetting = "light" | "heavy-coarse" | "heavy-fine";

/** Evaporation from a wet bare soil over ET0. Source: FAO-56 (Allen et al. 1998) Annex 7, text to eq. 7-1. */
export const wetBareSoilKc = 1.15;

/**
 * Evaporable water behind FAO-56's figures 29, 30a and 30b, from ET0 in mm/day: light, TEW 10 and REW 6/sqrt(ET0) within
 * 2.5 and 7; coarse, TEW 7 sqrt(ET0) up to 15 and REW 6; fine and medium, TEW 13 sqrt(ET0) up to 28 and REW 9; REW at least
 * 0.01 below TEW. Source: FAO-56 Annex 7, the limits from memory; example 7-1 checks the first two.
 *
 * @throws RangeError if ET0 is not above 0.
 * @example figureStore("heavy-coarse", 5).totalEvaporableMm // 15
 */
export function figureStore(wetting: Wetting, et0MmPerDay: number): SurfaceStore {
  if (!(et0MmPerDay > 0)) throw new RangeError(`figureStore requires ET0 above 0 mm/day: got ${et0MmPerDay}`);
  const root = Math.sqrt(et0MmPerDay);
  if (wetting === "light") {
    return { totalEvaporableMm: 10, readilyEvaporableMm: Math.min(Math.max(2.5, 6 / root), 7) };
  }
  const coarse = wetting === "heavy-coarse";
  const total = coarse ? Math.min(15, 7 * root) : Math.min(28, 13 * root);
  return { totalEvaporableMm: total, readilyEvaporableMm: Math.min(coarse ? 6 : 9, total - 0.01) };
}

/** Days from a wetting until the surface no longer evaporates at full rate: REW / (1.15 ET0). Source: FAO-56 eq. 7-1. @example stageOneDays(6, 5) // 1.04 */
export const stageOneDays = (readilyEvaporableMm: number, et0MmPerDay: number): number =>
  readilyEvaporableMm / (wetBareSoilKc * et0MmPerDay);

/**
 * Mean Kc of a bare soil between two wettings: 1.15 while the wettings come within stage one, else
 * (TEW - (TEW - REW) exp(-(tw - t1) Eso (1 + REW/(TEW - REW)) / TEW)) / (tw ET0). Source: FAO-56 eqs 7-2 and 7-3.
 *
 * @throws RangeError if the interval or ET0 is not above 0, or REW not between 0 and TEW.
 * @example kcInitial({ totalEvaporableMm: 15, readilyEvaporableMm: 6 }, 3.5, 5) // 0.75
 */
export function kcInitial(store: SurfaceStore, intervalDays: number, et0MmPerDay: number): number {
  const { totalEvaporableMm: total, readilyEvaporableMm: ready } = store;
  if (!(intervalDays > 0) || !(et0MmPerDay > 0)) {
    throw new RangeError(`kcInitial requires interval and ET0 above 0: got ${intervalDays} and ${et0MmPerDay}`);
  }
  if (!(ready >= 0 && ready < total)) throw new RangeError(`kcInitial requires REW from 0 to below TEW: got ${ready}`);
  const stageOne = stageOneDays(ready, et0MmPerDay);
  if (intervalDays <= stageOne) return wetBareSoilKc;
  const soilMmPerDay = wetBareSoilKc * et0MmPerDay;
  const fall = ((intervalDays - stageOne) * soilMmPerDay * (1 + ready / (total - ready))) / total;
  return (total - (total - ready) * Math.exp(-fall)) / (intervalDays * et0MmPerDay);
}

/**
 * Kc of the initial stage for wettings of a depth between light and heavy: light + (I - 10)/(40 - 10) (heavy - light);
 * at 10 mm and less light, at 40 mm and more heavy. Source: FAO-56 eq. 59.
 *
 * @example kcInitialForDepth(30, 0.85, 1.15) // 1.05
 */
export function kcInitialForDepth(depthMm: number, kcLight: number, kcHeavy: number): number {
  if (depthMm <= 10) return kcLight;
  return depthMm >= 40 ? kcHeavy : kcLight + ((depthMm - 10) / 30) * (kcHeavy - kcLight);
}

/** Depth on the part of the ground that is wetted: depth over the field / wetted fraction. Source: FAO-56 eq. 61. @example depthOnWettedMm(12, 0.4) // 30 */
export const depthOnWettedMm = (fieldDepthMm: number, wettedFraction: number): number => fieldDepthMm / wettedFraction;

/** Kc of the initial stage when only a part of the ground is wetted: fw Kc. Source: FAO-56 eq. 60. @example kcInitialPartlyWetted(1.05, 0.4) // 0.42 */
export const kcInitialPartlyWetted = (kc: number, wettedFraction: number): number => wettedFraction * kc;

/** Wettings in a month whose rain comes in events of one size. Source: FAO-56 ch. 6, example 23. @example rainEvents(50, 3) // 16.7 */
export const rainEvents = (monthRainMm: number, eventMm: number): number => monthRainMm / eventMm;
