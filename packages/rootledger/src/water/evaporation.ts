import type { SoilCurve } from "../ground/curve.js";
import { mmPerCm } from "../units.js";
import type { Ground } from "./ground.js";

/** A process slot: writes the evaporation of each lane's top cell, cm3/h, at most `potentialCm3PerH`. */
export type EvaporationProcess = (
  outCm3PerH: Float64Array,
  theta: Float64Array,
  potentialCm3PerH: Float64Array,
) => void;

/**
 * Soil-limited evaporation from the top layer: full while the layer is wetter than at 33 kPa, falling linearly to nothing
 * at half its water content at 1500 kPa (air-dry). The two end points are those of FAO-56 eq. 73-74 (TEW counts water from
 * field capacity to half the wilting point); the straight line between them is a simplification of its two stages.
 *
 * @example soilLimitedEvaporation(ground)(out, theta, potential)
 */
export const soilLimitedEvaporation = (ground: Ground): EvaporationProcess =>
  dryingEvaporation(ground, ground.grid.layerEdgesCm[1], -336.6, 0);

/**
 * Head of field capacity for TEW: 10 kPa. With the default class curves TEW then lies within 20 % of the ranges of FAO-56 table 19; at
 * 33 kPa it would be a third of them in sand.
 */
const fieldCapacityHeadCm = -102;

/**
 * FAO-56's two stages lane by lane: full while the depletion De of the evaporable depth is within REW, then
 * Kr = (TEW - De)/(TEW - REW), nothing at TEW. De and TEW are read from the cells: water below that at 10 kPa, and from there to
 * half of that at 1500 kPa. Source: Allen et al. (1998), FAO-56 eqs 73 and 74. The few of eq. 75 is in the potential of each lane.
 * The water is taken from the top cell, which gives none below half of its 1500 kPa.
 *
 * @throws RangeError if REW is not above 0 and below the TEW of every lane.
 * @example twoStageEvaporation(ground, { readilyEvaporableMm: 9, depthCm: 10 })(out, theta, potential)
 */
export function twoStageEvaporation(
  ground: Ground,
  surface: { readonly readilyEvaporableMm: number; readonly depthCm: number },
): EvaporationProcess {
  const { readilyEvaporableMm: readily } = surface;
  if (!(readily > 0)) throw new RangeError(`twoStageEvaporation requires REW above 0 mm: got ${readily}`);
  return dryingEvaporation(ground, surface.depthCm, fieldCapacityHeadCm, readily);
}

/** Water that evaporation can take from a depth of one soil, mm: 10 (theta at 10 kPa - air-dry) per cm. Source: FAO-56 eq. 73. @example evaporableMm(curve, 10) */
export const evaporableMm = (curve: SoilCurve, depthCm: number): number =>
  (curve.thetaAt(fieldCapacityHeadCm) - airDryTheta(curve)) * depthCm * mmPerCm;

/** Air-dry water content: half of that at 1500 kPa (FAO-56 eq. 73), not below the residual one. */
function airDryTheta(curve: SoilCurve): number {
  const half = 0.5 * curve.thetaAt(-15300);
  return half < curve.thetaResidual ? curve.thetaResidual : half;
}

/** Over this last share of a top cell's range its supply ends, so that it is never asked for water it has not. Our choice. */
const lastShare = 0.1;

/** Full until the depth has lost REW from its water at `fullHeadCm`, then straight to nothing at air-dry; none from a top cell that is dry. */
function dryingEvaporation(ground: Ground, depthCm: number, fullHeadCm: number, readilyMm: number): EvaporationProcess {
  const { lanes, layers, layerEdgesCm } = ground.grid;
  const airDryMm = new Float64Array(lanes);
  const fallingMm = new Float64Array(lanes);
  const topAirDry = new Float64Array(lanes);
  const topRamp = new Float64Array(lanes);
  const thicknessMm: number[] = [];
  for (let i = 0; i < layers && layerEdgesCm[i] < depthCm; i++) {
    const toCm = layerEdgesCm[i + 1] < depthCm ? layerEdgesCm[i + 1] : depthCm;
    thicknessMm[i] = (toCm - layerEdgesCm[i]) * mmPerCm;
    for (let j = 0; j < lanes; j++) {
      const { curve } = ground.tables[ground.material[i * lanes + j]];
      const airDry = airDryTheta(curve);
      const range = curve.thetaAt(fullHeadCm) - airDry;
      airDryMm[j] += airDry * thicknessMm[i];
      fallingMm[j] += range * thicknessMm[i];
      if (i === 0) topAirDry[j] = airDry;
      if (i === 0) topRamp[j] = lastShare * range;
    }
  }
  for (let j = 0; j < lanes; j++) fallingMm[j] -= readilyMm;
  const least = Math.min(...fallingMm);
  // A soil that holds nothing between the two gives nothing; only a REW of one's own can be too large.
  if (readilyMm > 0 && !(least > 0))
    throw new RangeError(`evaporation requires REW below TEW: got ${-least} mm beyond it`);
  const thick = Float64Array.from(thicknessMm);
  return (outCm3PerH, theta, potentialCm3PerH) => {
    for (let j = 0; j < lanes; j++) {
      let waterMm = -airDryMm[j];
      for (let i = 0; i < thick.length; i++) waterMm += theta[i * lanes + j] * thick[i];
      const byDepth = waterMm / fallingMm[j];
      const byTop = (theta[j] - topAirDry[j]) / topRamp[j];
      const kr = byDepth < byTop ? byDepth : byTop;
      outCm3PerH[j] = !(kr > 0) ? 0 : kr >= 1 ? potentialCm3PerH[j] : kr * potentialCm3PerH[j];
    }
  };
}
