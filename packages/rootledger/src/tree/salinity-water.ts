import { saltMgPerLPerDsPerM } from "../units.js";

/** kPa of osmotic tension per dS/m of the soil water. Source: US Salinity Laboratory (1954), Agriculture Handbook 60; Saxton & Rawls (2006). */
export const osmoticKPaPerDsPerM = 36;

/** Salt in water of a given EC, mg/L. @throws RangeError if EC is negative. @example saltMgPerL(0.7) // 448 */
export function saltMgPerL(ecDsPerM: number): number {
  if (!(ecDsPerM >= 0)) throw new RangeError(`saltMgPerL requires ecDsPerM from 0: got ${ecDsPerM}`);
  return saltMgPerLPerDsPerM * ecDsPerM;
}

/** EC of water with a given salt content, dS/m. @throws RangeError if the content is negative. @example ecFromSaltMgPerL(640) // 1 */
export function ecFromSaltMgPerL(mgPerL: number): number {
  if (!(mgPerL >= 0)) throw new RangeError(`ecFromSaltMgPerL requires mgPerL from 0: got ${mgPerL}`);
  return mgPerL / saltMgPerLPerDsPerM;
}

/**
 * EC of the saturation extract of soil whose water has a given EC: the same salt in the water that the soil holds when saturated,
 * EC theta / thetaSaturated. FAO-29 takes half the EC of the water at field capacity, the same where that is half of saturation.
 *
 * @throws RangeError if theta is not above 0 or exceeds thetaSaturated.
 * @example extractEc({ soilWaterEcDsPerM: 4, theta: 0.23, thetaSaturated: 0.46 }) // 2
 */
export function extractEc(input: {
  readonly soilWaterEcDsPerM: number;
  readonly theta: number;
  readonly thetaSaturated: number;
}): number {
  const { soilWaterEcDsPerM, theta, thetaSaturated } = input;
  if (!(theta > 0 && theta <= thetaSaturated)) {
    throw new RangeError(`extractEc requires theta above 0 and up to thetaSaturated: got ${theta}`);
  }
  if (!(soilWaterEcDsPerM >= 0)) throw new RangeError(`extractEc requires an EC from 0: got ${soilWaterEcDsPerM}`);
  return (soilWaterEcDsPerM * theta) / thetaSaturated;
}
