import { type CropClimate, kcClimateTerm } from "./kc-climate.js";

/** Kcb of dry bare soil with scattered weeds. Source: FAO-56 (Allen et al. 1998) ch. 9: 0.15 to 0.20; its examples take 0.15. */
export const kcMinimum = 0.15;

/**
 * Kcb of full cover from plant height: 1 + 0.1 h up to 2 m, 1.2 above, plus the climate term. Source: FAO-56 eqs 99 and 100.
 *
 * @throws RangeError where `kcClimateTerm` does.
 * @example kcbFullCover(5, { windAt2mMPerS: 2, rhMinPct: 25 }) // 1.29
 */
export const kcbFullCover = (heightM: number, climate: CropClimate): number =>
  kcbByHeight(heightM) + kcClimateTerm(climate, heightM);

/** Kcb of full cover in the standard climate. Source: FAO-56 eq. 100. @example kcbByHeight(1.5) // 1.15 */
export const kcbByHeight = (heightM: number): number => (heightM < 2 ? 1 + 0.1 * heightM : 1.2);

/**
 * Reduction of Kcb for stomata that close more than those of field crops: (s + g (1 + 0.34 u2)) / (s + g (1 + 0.34 u2 rl/100)).
 * Source: FAO-56 eq. 102.
 *
 * @example stomatalReduction({ slopeKPaPerC: 0.189, gammaKPaPerC: 0.0676, windAt2mMPerS: 2, leafResistanceSPerM: 420 }) // 0.67
 */
export function stomatalReduction(air: {
  readonly slopeKPaPerC: number;
  readonly gammaKPaPerC: number;
  readonly windAt2mMPerS: number;
  readonly leafResistanceSPerM: number;
}): number {
  const { slopeKPaPerC: slope, gammaKPaPerC: gamma } = air;
  const wind = 0.34 * air.windAt2mMPerS;
  return (slope + gamma * (1 + wind)) / (slope + gamma * (1 + (wind * air.leafResistanceSPerM) / 100));
}

/**
 * Density of a canopy as FAO-56 counts it: min(1, 2 fc, fc_eff^(1/(1 + h))). Source: FAO-56 eq. 98; fc is the cover seen from
 * above, fc_eff the shade at noon.
 *
 * @example canopyDensityFao56({ cover: 0.3, effectiveCover: 0.41, heightM: 2 }) // 0.6
 */
export function canopyDensityFao56(canopy: { cover: number; effectiveCover: number; heightM: number }): number {
  const byHeight = canopy.effectiveCover ** (1 / (1 + canopy.heightM));
  const byCover = 2 * canopy.cover;
  return Math.min(1, byCover, byHeight);
}

/**
 * Density coefficient Kd: min(1, ML fc_eff, fc_eff^(1/(1 + h))). ML, 1.5 to 2.0, holds back canopies that let much light through.
 * Source: Allen & Pereira (2009), Irrigation Science 28:17-34, formula from memory. It limits with the shade at noon where
 * FAO-56 takes the cover seen from above, so the two differ where the sun stands low.
 *
 * @example densityCoefficient({ effectiveCover: 0.2, heightM: 3, multiplier: 1.5 }) // 0.30
 */
export function densityCoefficient(canopy: { effectiveCover: number; heightM: number; multiplier: number }): number {
  const byHeight = canopy.effectiveCover ** (1 / (1 + canopy.heightM));
  const byShade = canopy.multiplier * canopy.effectiveCover;
  return Math.min(1, byShade, byHeight);
}

/** Kcb (or Kc) of a sparse canopy: Kc min + density (Kc full - Kc min). Source: FAO-56 eq. 98. @example sparseKcb(0.6, 1.15) // 0.75 */
export const sparseKcb = (density: number, kcFull: number, kcMin: number = kcMinimum): number =>
  kcMin + density * (kcFull - kcMin);

/**
 * Kcb with a cover crop between the trees: Kcb cover + Kd max(Kcb full - Kcb cover, (Kcb full - Kcb cover)/2).
 * Source: Allen & Pereira (2009), from memory.
 *
 * @example kcbOverCoverCrop({ density: 0.5, kcbFull: 1.1, kcbCover: 0.5 }) // 0.8
 */
export function kcbOverCoverCrop(orchard: { density: number; kcbFull: number; kcbCover: number }): number {
  const gain = orchard.kcbFull - orchard.kcbCover;
  return orchard.kcbCover + orchard.density * (gain > gain / 2 ? gain : gain / 2);
}

/** Kcb from leaf area index: Kc min + (Kcb full - Kc min)(1 - exp(-0.7 LAI)). Source: FAO-56 eq. 97. @example kcbFromLeafArea(1, 1.15) // 0.6534 */
export const kcbFromLeafArea = (leafAreaIndex: number, kcbFull: number, kcMin: number = kcMinimum): number =>
  kcMin + (kcbFull - kcMin) * (1 - Math.exp(-0.7 * leafAreaIndex));

/**
 * Leaf area index that gives a Kcb, the inverse of eq. 97. Source: FAO-56 ch. 10, example 47.
 *
 * @throws RangeError if Kcb is not from Kc min to below Kcb full.
 * @example leafAreaFromKcb(1.09, 1.34) // 2.23
 */
export function leafAreaFromKcb(kcb: number, kcbFull: number, kcMin: number = kcMinimum): number {
  if (!(kcb >= kcMin && kcb < kcbFull)) {
    throw new RangeError(`leafAreaFromKcb requires Kcb from ${kcMin} to below ${kcbFull}: got ${kcb}`);
  }
  return -Math.log(1 - (kcb - kcMin) / (kcbFull - kcMin)) / 0.7;
}

/**
 * What is taken off Kc for a stand thinner than usual: 1 - sqrt(fc / fc dense), or with leaf area indices in place of covers.
 * Source: FAO-56 eqs 94 to 96.
 *
 * @example thinStandReduction(0.5, 0.85) // 0.23
 */
export const thinStandReduction = (actual: number, dense: number): number => 1 - Math.sqrt(actual / dense);
