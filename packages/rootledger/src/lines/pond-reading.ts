import { stripPondFlowCm2PerH } from "./strip-pond.js";
import { woodingPondFlowCm3PerH } from "./wooding-pond.js";

/** A pond measured by tape while the water runs and the pond no longer grows. */
export type PondReading =
  | { readonly kind: "strip"; readonly widthCm: number; readonly flowLPerHPerM: number }
  | { readonly kind: "round"; readonly diameterCm: number; readonly flowLPerH: number };

/**
 * Conductivity at saturation from the size of a steady pond under an emitter or along a line, cm/h: the pond's flow is
 * proportional to kSat, by Wooding (1968) for a round pond and its counterpart for a strip. The wide pond is what gravity takes,
 * the edge what dry soil draws; in wet soil the edge draws less and the answer is too low.
 *
 * @param alphaPerCm how fast conductivity falls with suction, 1/cm: about 0.1 in sand, 0.04 in loam, 0.02 in clay
 * @throws RangeError when a number is not above 0.
 * @example kSatFromPondCmPerH({ kind: "round", diameterCm: 31.06, flowLPerH: 4 }, 0.05) // 2.00
 */
export function kSatFromPondCmPerH(reading: PondReading, alphaPerCm: number): number {
  const unit = { kSatCmPerH: 1, alphaPerCm };
  if (reading.kind === "round") {
    return (reading.flowLPerH * 1000) / woodingPondFlowCm3PerH(reading.diameterCm / 2, unit);
  }
  // 1 L/h on 1 m of line is 10 cm2/h.
  return (reading.flowLPerHPerM * 10) / stripPondFlowCm2PerH(reading.widthCm / 2, unit);
}
