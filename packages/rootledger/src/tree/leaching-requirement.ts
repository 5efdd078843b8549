/**
 * Fraction of the irrigation that must pass below the roots to hold the root zone at a given ECe, ECw / (5 ECe - ECw). Source:
 * Rhoades (1974), in Ayers & Westcot (1985), FAO-29 Rev. 1, and FAO-56 (1998) ch. 8. Meant for ordinary intervals that let the
 * soil dry between waterings.
 *
 * @param ecwDsPerM of the irrigation water
 * @param eceDsPerM of the saturation extract that the crop may have on average
 * @throws RangeError if an EC is out of range, or the water is so salty that no fraction below 1 holds that ECe.
 * @example leachingRequirement(1.2, 2.5) // 0.106
 */
export function leachingRequirement(ecwDsPerM: number, eceDsPerM: number): number {
  return fractionOf("leachingRequirement", ecwDsPerM, eceDsPerM, 5 * eceDsPerM - ecwDsPerM);
}

/**
 * The same for drip and other frequent watering, which keeps the upper roots near the water's own EC: ECw / (2 ECe at which
 * nothing is left). Source: Keller & Karmeli (1975), Trickle Irrigation Design; Keller & Bliesner (1990); from memory.
 *
 * @param eceNothingLeftDsPerM ECe at which the crop's line reaches 0, see `eceAtFraction(crop, 0)`
 * @throws RangeError if an EC is out of range, or the water is so salty that no fraction below 1 will do.
 * @example leachingRequirementFrequent(1.2, 6) // 0.1
 */
export function leachingRequirementFrequent(ecwDsPerM: number, eceNothingLeftDsPerM: number): number {
  return fractionOf("leachingRequirementFrequent", ecwDsPerM, eceNothingLeftDsPerM, 2 * eceNothingLeftDsPerM);
}

function fractionOf(caller: string, ecwDsPerM: number, eceDsPerM: number, divisor: number): number {
  if (!(ecwDsPerM >= 0)) throw new RangeError(`${caller} requires ecwDsPerM from 0: got ${ecwDsPerM}`);
  if (!(eceDsPerM > 0)) throw new RangeError(`${caller} requires eceDsPerM above 0: got ${eceDsPerM}`);
  const fraction = ecwDsPerM / divisor;
  if (!(divisor > 0 && fraction < 1)) {
    throw new RangeError(`${caller} requires water that a fraction below 1 can leach: got ECw ${ecwDsPerM} dS/m`);
  }
  return fraction;
}
