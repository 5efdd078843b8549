/** Share of the water that each quarter of the root depth draws, from the top. Source: Ayers & Westcot (1985), FAO-29 Rev. 1, assumption 2 of table 3. */
export const quarterUptake: readonly number[] = [0.4, 0.3, 0.2, 0.1];

/**
 * EC of the soil water at the top of the roots and below each quarter of them, in the long run: ECw over the fraction of the
 * applied water that still passes there. Source: Ayers & Westcot (1985), FAO-29 Rev. 1, Example 2.
 *
 * @throws RangeError if the leaching fraction is outside 0 to 1 (0 excluded) or ECw is negative.
 * @example soilWaterEcByQuarter(1, 0.15) // Float64Array [1, 1.515, 2.469, 4.255, 6.667]
 */
export function soilWaterEcByQuarter(ecwDsPerM: number, leachingFraction: number): Float64Array {
  if (!(leachingFraction > 0 && leachingFraction <= 1)) {
    throw new RangeError(`soilWaterEcByQuarter requires a leaching fraction in (0, 1]: got ${leachingFraction}`);
  }
  if (!(ecwDsPerM >= 0)) throw new RangeError(`soilWaterEcByQuarter requires ecwDsPerM from 0: got ${ecwDsPerM}`);
  const ec = new Float64Array(quarterUptake.length + 1);
  let drawn = 0;
  ec[0] = ecwDsPerM;
  quarterUptake.forEach((share, q) => {
    drawn += share;
    ec[q + 1] = ecwDsPerM / (1 - drawn * (1 - leachingFraction));
  });
  return ec;
}

/**
 * ECe of the root zone in the long run over ECw: half the mean of the five values of `soilWaterEcByQuarter`. Source: Ayers & Westcot
 * (1985), FAO-29 Rev. 1, table 3 and Example 2, where the soil water is twice as salty as its saturation extract.
 *
 * @throws RangeError if the leaching fraction is outside 0 to 1 (0 excluded).
 * @example concentrationFactor(0.15) // 1.59
 */
export function concentrationFactor(leachingFraction: number): number {
  const ec = soilWaterEcByQuarter(1, leachingFraction);
  return ec.reduce((sum, value) => sum + value, 0) / ec.length / 2;
}
