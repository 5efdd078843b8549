/** Transpiration at and above which, and at and below which, the pull limit no longer changes, mm/d (Feddes et al. 1978). */
const highDemandMm = 5;
const lowDemandMm = 1;

/**
 * Head or tension at which thirst begins on a day of a given demand: linear between the values for 1 and for 5 mm of
 * transpiration a day, constant beyond. Both in one unit, which the answer has too.
 * Source: Feddes, Kowalik & Zaradny (1978), from memory.
 *
 * @throws RangeError if the demand is not a number of at least 0.
 * @example pullLimitByDemand(3, { highDemand: -320, lowDemand: -600 }) // -460
 */
export function pullLimitByDemand(
  demandMmPerDay: number,
  limit: { readonly highDemand: number; readonly lowDemand: number },
): number {
  if (!(demandMmPerDay >= 0)) {
    throw new RangeError(`pullLimitByDemand requires demandMmPerDay of at least 0: got ${demandMmPerDay}`);
  }
  if (demandMmPerDay >= highDemandMm) return limit.highDemand;
  if (demandMmPerDay <= lowDemandMm) return limit.lowDemand;
  const share = (highDemandMm - demandMmPerDay) / (highDemandMm - lowDemandMm);
  return limit.highDemand + share * (limit.lowDemand - limit.highDemand);
}
