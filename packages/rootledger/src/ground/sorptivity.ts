import type { SoilCurve } from "./curve.js";
import { conductivityIntegralCm2PerH } from "./head-integral.js";

/**
 * Sorptivity of a soil wetted to saturation at zero head, cm/h^0.5: S^2 = int (theta + thetaSaturated - 2 thetaInitial) D
 * dtheta, with D dtheta = K dh. Source: Parlange (1975), Soil Sci. 119:158-161, from memory; within a few percent of the
 * exact value for soils whose diffusivity rises with water content.
 * @param initialHeadCm head of the dry soil, cm, below 0
 * @throws RangeError when the head is not below 0. @example sorptivityCmPerSqrtH(defaultSoilCurve("loam"), -1000) // about 3.7
 */
export function sorptivityCmPerSqrtH(curve: SoilCurve, initialHeadCm: number): number {
  const dry = curve.thetaAt(initialHeadCm);
  const weightAt = (headCm: number): number => curve.thetaAt(headCm) + curve.thetaSaturated - 2 * dry;
  return Math.sqrt(conductivityIntegralCm2PerH(curve, initialHeadCm, weightAt));
}
