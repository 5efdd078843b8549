import type { SoilCurve } from "./curve.js";
import { conductivityIntegralCm2PerH } from "./head-integral.js";

/**
 * Macroscopic capillary length, cm: int K dh from the initial head to 0, over kSat - K(initial). It is 1/alpha of the
 * exponential soil that draws as much. Sources: Philip (1985), SSSAJ 49:328-331; White & Sully (1987), Water Resour. Res.
 * 23:1514-1522; from memory. Curves that let K fall steeply in the first centimetre (van Genuchten with n near 1, untreated)
 * give a length of a few cm whatever the texture.
 * @param initialHeadCm head of the dry soil, cm, below 0
 * @throws RangeError when the head is not below 0. @example 1 / capillaryLengthCm(defaultSoilCurve("loam"), -1000) // about 0.05
 */
export function capillaryLengthCm(curve: SoilCurve, initialHeadCm: number): number {
  const drawnCm2PerH = conductivityIntegralCm2PerH(curve, initialHeadCm, () => 1);
  return drawnCm2PerH / (curve.kSatCmPerH - curve.conductivityAt(initialHeadCm));
}
