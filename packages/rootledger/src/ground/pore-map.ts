import type { SoilCurve } from "./curve.js";

/** A water content of the curve and what it becomes. */
export interface ThetaKnot {
  readonly from: number;
  readonly to: number;
}

/**
 * The same curve with its water contents mapped piece by piece along straight lines between knots, dry end first;
 * conductivity at a head stays. For soils of which a few water contents were measured and the rest is taken from a class.
 * @throws RangeError unless both sides of the knots rise and span from thetaResidual or less to thetaSaturated.
 * @example withThetaMapped(curve, [{ from: 0, to: 0 }, { from: 0.298, to: 0.25 }, { from: 0.498, to: 0.45 }], "my clay", "own measurement")
 */
export function withThetaMapped(
  curve: SoilCurve,
  knots: readonly ThetaKnot[],
  name: string,
  source: string,
): SoilCurve {
  requireKnots(curve, knots);
  const pieceOf = (theta: number): number => {
    let i = 0;
    while (i + 2 < knots.length && theta > knots[i + 1].from) i++;
    return i;
  };
  const slope = (i: number): number => (knots[i + 1].to - knots[i].to) / (knots[i + 1].from - knots[i].from);
  const mapped = (theta: number): number => {
    const i = pieceOf(theta);
    return knots[i].to + slope(i) * (theta - knots[i].from);
  };
  return {
    name,
    source,
    thetaSaturated: mapped(curve.thetaSaturated),
    thetaResidual: mapped(curve.thetaResidual),
    kSatCmPerH: curve.kSatCmPerH,
    thetaAt: (headCm) => mapped(curve.thetaAt(headCm)),
    capacityAt: (headCm) => slope(pieceOf(curve.thetaAt(headCm))) * curve.capacityAt(headCm),
    conductivityAt: (headCm) => curve.conductivityAt(headCm),
  };
}

function requireKnots(curve: SoilCurve, knots: readonly ThetaKnot[]): void {
  if (knots.length < 2) {
    throw new RangeError(`withThetaMapped requires at least two knots: got ${knots.length}`);
  }
  for (let i = 1; i < knots.length; i++) {
    if (!(knots[i].from > knots[i - 1].from && knots[i].to > knots[i - 1].to)) {
      throw new RangeError(
        `withThetaMapped requires knots that rise: got ${knots[i].from} to ${knots[i].to} after ${knots[i - 1].from} to ${knots[i - 1].to}`,
      );
    }
  }
  const driest = knots[0].from;
  const wettest = knots[knots.length - 1].from;
  if (driest > curve.thetaResidual || Math.abs(wettest - curve.thetaSaturated) > 1e-9) {
    throw new RangeError(
      `withThetaMapped requires knots from ${curve.thetaResidual} or less to ${curve.thetaSaturated}: got ${driest} to ${wettest}`,
    );
  }
}
