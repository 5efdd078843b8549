import type { SoilCurve } from "./curve.js";

/**
 * The curve of a soil in which a share of the pores stays filled with trapped air when it is wetted: theta never rises
 * above thetaResidual + (1 - share) x (thetaSaturated - thetaResidual), conductivity at a head is unchanged. A sensitivity,
 * off by default; field soils wetted from above commonly reach 80 to 95 % of their pore space (range from memory).
 *
 * @param share of the pore space, [0, 0.5)
 * @throws RangeError if share is out of range.
 * @example withTrappedAir(defaultSoilCurve("loam"), 0.1).thetaAt(0) < defaultSoilCurve("loam").thetaAt(0) // true
 */
export function withTrappedAir(curve: SoilCurve, share: number): SoilCurve {
  if (!(share >= 0 && share < 0.5)) throw new RangeError(`withTrappedAir requires share in [0, 0.5): got ${share}`);
  const most = curve.thetaResidual + (1 - share) * (curve.thetaSaturated - curve.thetaResidual);
  return {
    ...curve,
    name: `${curve.name}, ${(share * 100).toPrecision(2)} % of pores trapped`,
    thetaSaturated: most,
    thetaAt: (headCm) => {
      const theta = curve.thetaAt(headCm);
      return theta < most ? theta : most;
    },
    conductivityAt: (headCm) => curve.conductivityAt(headCm),
    capacityAt: (headCm) => (curve.thetaAt(headCm) < most ? curve.capacityAt(headCm) : 0),
  };
}
