import { requirePositive } from "../numeric/require-positive.js";
import { cmPerM } from "../units.js";

/** One run of one emitter on the surface. */
export interface EmitterRun {
  readonly emitterFlowCm3PerH: number;
  readonly volumeCm3: number;
  readonly kSatCmPerH: number;
}

/** Size of the wetted body, cm: full width, and depth below the emitter. */
export interface WettedSize {
  readonly widthCm: number;
  readonly depthCm: number;
}

/**
 * W = 1.82 V^0.22 (kSat/q)^-0.17, the full width at the widest; Z = 2.54 V^0.63 (kSat/q)^0.45, the depth. With SI numbers
 * (m, m3, kSat/q in 1/m2), since the second exponent sum is not quite a length.
 * Source: Schwartzman & Zur (1986), J. Irrig. Drain. Eng. 112:242-253, from memory. Fitted on very few soils; a field test on
 * 24 sites found its width poor.
 * @throws RangeError when an argument is not above 0.
 * @example schwartzmanZur({ emitterFlowCm3PerH: 4000, volumeCm3: 12000, kSatCmPerH: 2 }) // { widthCm: 52.3, depthCm: 32.3 }
 */
export function schwartzmanZur(run: EmitterRun): WettedSize {
  const { emitterFlowCm3PerH, volumeCm3, kSatCmPerH } = run;
  requirePositive("schwartzmanZur", { emitterFlowCm3PerH, volumeCm3, kSatCmPerH });
  const volumeM3 = volumeCm3 / cmPerM ** 3;
  const perM2 = (kSatCmPerH / emitterFlowCm3PerH) * cmPerM ** 2;
  return {
    widthCm: cmPerM * 1.82 * volumeM3 ** 0.22 * perM2 ** -0.17,
    depthCm: cmPerM * 2.54 * volumeM3 ** 0.63 * perM2 ** 0.45,
  };
}
