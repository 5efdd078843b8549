/** A crop's line: full up to the threshold, falling by the slope for each dS/m of ECe beyond it. */
export interface SaltTolerance {
  readonly thresholdDsPerM: number;
  readonly slopePerDsPerM: number;
}

/**
 * What salt leaves of the full size, 1 - slope (ECe - threshold), from 1 down to 0. Source: Maas & Hoffman (1977), J. Irrigation
 * and Drainage Division ASCE 103(IR2):115-134; FAO-56 (1998) eq. 89 takes the same line over Ky for evapotranspiration.
 * The sources speak of harvest; here it only says how far salt holds a crop back, and nothing of a harvest is promised.
 *
 * @param ky yield response factor, evapotranspiration lost per harvest lost; 1 unless a crop's own is known (FAO-56 table 24)
 * @throws RangeError if ECe, slope or ky is out of range.
 * @example saltFactor({ thresholdDsPerM: 1, slopePerDsPerM: 0.19 }, 1.5, 1.15) // 0.917
 */
export function saltFactor(tolerance: SaltTolerance, eceDsPerM: number, ky = 1): number {
  const { thresholdDsPerM, slopePerDsPerM } = tolerance;
  if (!(eceDsPerM >= 0)) throw new RangeError(`saltFactor requires eceDsPerM from 0: got ${eceDsPerM}`);
  if (!(slopePerDsPerM > 0)) throw new RangeError(`saltFactor requires a slope above 0: got ${slopePerDsPerM}`);
  if (!(ky > 0)) throw new RangeError(`saltFactor requires ky above 0: got ${ky}`);
  if (eceDsPerM <= thresholdDsPerM) return 1;
  const left = 1 - (slopePerDsPerM / ky) * (eceDsPerM - thresholdDsPerM);
  return left > 0 ? left : 0;
}

/**
 * ECe at which a fraction of the full size is left, dS/m: threshold + (1 - fraction) / slope. Source: Ayers & Westcot (1985),
 * FAO-29 table 4, whose columns are the fractions 1, 0.9, 0.75, 0.5 and 0.
 *
 * @throws RangeError if the fraction is outside 0 to 1.
 * @example eceAtFraction({ thresholdDsPerM: 1.7, slopePerDsPerM: 0.16 }, 0.5) // 4.825
 */
export function eceAtFraction(tolerance: SaltTolerance, fraction: number): number {
  if (!(fraction >= 0 && fraction <= 1)) {
    throw new RangeError(`eceAtFraction requires a fraction from 0 to 1: got ${fraction}`);
  }
  return tolerance.thresholdDsPerM + (1 - fraction) / tolerance.slopePerDsPerM;
}

/**
 * Stress coefficient that belongs to a harvest already weighed: 1 - (1 - harvest/full harvest) / Ky. It looks back, never ahead.
 * Source: FAO-56 (1998) eq. 103 (from the Ky of FAO-33).
 *
 * @throws RangeError if the ratio is outside 0 to 1 or ky is not above 0.
 * @example stressFromHarvest({ harvestRatio: 0.6111, ky: 1.15 }) // 0.66
 */
export function stressFromHarvest(input: { readonly harvestRatio: number; readonly ky: number }): number {
  const { harvestRatio, ky } = input;
  if (!(harvestRatio >= 0 && harvestRatio <= 1)) {
    throw new RangeError(`stressFromHarvest requires harvestRatio from 0 to 1: got ${harvestRatio}`);
  }
  if (!(ky > 0)) throw new RangeError(`stressFromHarvest requires ky above 0: got ${ky}`);
  return 1 - (1 - harvestRatio) / ky;
}
