import type { ExponentialSoil } from "./exponential-soil.js";
import { stripPondHalfWidthCm } from "./strip-pond.js";
import { woodingPondRadiusCm } from "./wooding-pond.js";

/** Emitters along a line. */
export interface EmitterRow {
  readonly emitterFlowCm3PerH: number;
  /** Distance between open emitters along the line; left out where each emitter wets ground of its own. */
  readonly emitterSpacingCm?: number;
}

/**
 * How far from its line, or from its emitter, drip keeps ground wet, cm: the pond that the emitter keeps up (Wooding 1968; as a
 * strip where emitters stand close, if that is wider) and one capillary length, 1/alpha, beyond it. The pond counts up to one
 * capillary length: in fine soil the steady pond takes days, and runs last hours. Looks at layout and soil alone. The sum and the
 * cut are our choice; for a single emitter of 4 L/h they agree within 25 % with the diameters of Keller & Bliesner (1990), Sprinkle
 * and Trickle Irrigation, table 19.1 (uniform soil, roots to 0.75 m: 0.5, 0.9 and 1.1 m in coarse, medium and fine soil, from memory).
 *
 * @throws RangeError when an argument is not above 0.
 * @example wettedReachCm({ emitterFlowCm3PerH: 1600, emitterSpacingCm: 40 }, { kSatCmPerH: 1.5, alphaPerCm: 0.05 }) // 29.665
 */
export function wettedReachCm({ emitterFlowCm3PerH, emitterSpacingCm }: EmitterRow, soil: ExponentialSoil): number {
  const round = woodingPondRadiusCm(emitterFlowCm3PerH, soil);
  const strip = emitterSpacingCm === undefined ? 0 : stripPondHalfWidthCm(emitterFlowCm3PerH / emitterSpacingCm, soil);
  const pond = strip > round ? strip : round;
  const beyond = 1 / soil.alphaPerCm;
  return beyond + (pond < beyond ? pond : beyond);
}
