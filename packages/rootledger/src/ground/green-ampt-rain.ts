import { requirePositive } from "../numeric/require-positive.js";
import { type GreenAmptSoil, greenAmptPonded, greenAmptRateCmPerH, type Infiltrated } from "./green-ampt.js";

/**
 * Depth that goes in before rain (or any steady supply) of i cm/h starts to pond: F = K psi d/(i - K), cm; infinite when the
 * soil takes it all (i <= K). Source: Mein & Larson (1973), Water Resour. Res. 9:384-394, as in Chow, Maidment & Mays (1988),
 * eq. 4.4.2, from memory.
 * @throws RangeError when an argument is not above 0.
 * @example greenAmptPondingDepthCm({ conductivityCmPerH: 0.65, frontSuctionCm: 16.7, thetaDeficit: 0.34 }, 5) // 0.85
 */
export function greenAmptPondingDepthCm(soil: GreenAmptSoil, rainCmPerH: number): number {
  const { conductivityCmPerH, frontSuctionCm, thetaDeficit } = soil;
  requirePositive("greenAmptPondingDepthCm", { conductivityCmPerH, frontSuctionCm, thetaDeficit, rainCmPerH });
  if (rainCmPerH <= conductivityCmPerH) return Number.POSITIVE_INFINITY;
  return (conductivityCmPerH * frontSuctionCm * thetaDeficit) / (rainCmPerH - conductivityCmPerH);
}

/** Hours of steady rain until it ponds, tp = F/i; infinite when it never does. @example greenAmptPondingTimeH(soil, 5) // 0.17 */
export const greenAmptPondingTimeH = (soil: GreenAmptSoil, rainCmPerH: number): number =>
  greenAmptPondingDepthCm(soil, rainCmPerH) / rainCmPerH;

/** What of a steady rain entered. */
export interface RainInfiltrated extends Infiltrated {
  /** Hours within this rain until it ponds; infinite when it does not. */
  readonly pondingAfterH: number;
  /** Rain of this step that did not go in, cm: pond or run-off. */
  readonly excessCm: number;
}

/**
 * Rain of one steady intensity on Green & Ampt's soil: all goes in until it ponds, from then on what a pond lets in:
 * F - Fp - P ln[(F + P)/(Fp + P)] = K (t - tp). For changing rain call it step by step with the water so far; excess is taken
 * to run off, so no pond is left for the next step. Source: Mein & Larson (1973); Chow, Maidment & Mays (1988), eq. 4.4.5.
 * @param cumulativeBeforeCm water taken in since the dry start, before this step
 * @throws RangeError when a number of the soil, the rain or the hours are not above 0, or the water before is negative.
 * @example greenAmptUnderRain({ conductivityCmPerH: 0.65, frontSuctionCm: 16.7, thetaDeficit: 0.3402 }, 5, 1).cumulativeCm // 3.02
 */
export function greenAmptUnderRain(
  soil: GreenAmptSoil,
  rainCmPerH: number,
  hours: number,
  cumulativeBeforeCm = 0,
): RainInfiltrated {
  requirePositive("greenAmptUnderRain", { hours });
  const pondingDepthCm = greenAmptPondingDepthCm(soil, rainCmPerH);
  const freeCm = pondingDepthCm - cumulativeBeforeCm;
  const pondingAfterH = freeCm > 0 ? freeCm / rainCmPerH : 0;
  if (pondingAfterH >= hours) {
    greenAmptRateCmPerH(soil, cumulativeBeforeCm);
    return {
      cumulativeCm: cumulativeBeforeCm + rainCmPerH * hours,
      rateCmPerH: rainCmPerH,
      pondingAfterH: Number.POSITIVE_INFINITY,
      excessCm: 0,
    };
  }
  const atPondingCm = cumulativeBeforeCm + rainCmPerH * pondingAfterH;
  const after = greenAmptPonded(soil, hours - pondingAfterH, atPondingCm);
  return { ...after, pondingAfterH, excessCm: cumulativeBeforeCm + rainCmPerH * hours - after.cumulativeCm };
}
