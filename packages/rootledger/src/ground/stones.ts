import type { SoilCurve } from "./curve.js";

/**
 * The whole soil where stones fill part of the volume: water contents x (1 - R), conductivity x 2(1 - R)/(2 + R).
 * Source: Peck & Watson (1979), from memory; the conductivity ratio is the gravel equation of Saxton & Rawls (2006)
 * written by volume.
 * @throws RangeError when the fraction is not in [0, 1). @example withStones(curve, 0.2)
 */
export function withStones(curve: SoilCurve, stonesFraction: number): SoilCurve {
  if (!(stonesFraction >= 0 && stonesFraction < 1)) {
    throw new RangeError(`withStones requires stonesFraction in [0, 1): got ${stonesFraction}`);
  }
  if (stonesFraction === 0) return curve;
  const earth = 1 - stonesFraction;
  const flow = (2 * earth) / (2 + stonesFraction);
  return {
    name: `stony ${curve.name}`,
    source: `${curve.source}; stones ${stonesFraction} of the volume`,
    thetaSaturated: earth * curve.thetaSaturated,
    thetaResidual: earth * curve.thetaResidual,
    kSatCmPerH: flow * curve.kSatCmPerH,
    thetaAt: (headCm) => earth * curve.thetaAt(headCm),
    capacityAt: (headCm) => earth * curve.capacityAt(headCm),
    conductivityAt: (headCm) => flow * curve.conductivityAt(headCm),
  };
}
