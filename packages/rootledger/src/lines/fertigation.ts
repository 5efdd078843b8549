/** Standard atomic masses, g/mol (IUPAC, abridged). */
const atomicMass = { oxygen: 15.999, phosphorus: 30.974, potassium: 39.098 };

/** Phosphorus in P2O5 and potassium in K2O, by mass. @example elementPerOxide.potassium // 0.830 */
export const elementPerOxide: { readonly phosphorus: number; readonly potassium: number } = {
  phosphorus: (2 * atomicMass.phosphorus) / (2 * atomicMass.phosphorus + 5 * atomicMass.oxygen),
  potassium: (2 * atomicMass.potassium) / (2 * atomicMass.potassium + atomicMass.oxygen),
};

/**
 * Content of a nutrient in irrigation water, mg/L (g/m3): product x its fraction of the nutrient / water.
 *
 * @param input nutrientFraction: of the element in the product; for an oxide on the label multiply by `elementPerOxide`
 * @throws RangeError if water is not above 0 or another argument is out of range.
 * @example fertigationMgPerL({ productKg: 2, nutrientFraction: 0.13, waterM3: 20 }) // 13
 */
export function fertigationMgPerL(input: {
  readonly productKg: number;
  readonly nutrientFraction: number;
  readonly waterM3: number;
}): number {
  const { productKg, nutrientFraction, waterM3 } = input;
  if (!(productKg >= 0)) throw new RangeError(`fertigationMgPerL requires productKg from 0: got ${productKg}`);
  if (!(nutrientFraction >= 0 && nutrientFraction <= 1)) {
    throw new RangeError(`fertigationMgPerL requires nutrientFraction from 0 to 1: got ${nutrientFraction}`);
  }
  if (!(waterM3 > 0)) throw new RangeError(`fertigationMgPerL requires waterM3 above 0: got ${waterM3}`);
  return (1000 * productKg * nutrientFraction) / waterM3;
}

/** Times of one injection within one run of the valve, minutes. */
export interface InjectionTimes {
  /** Water from the pump to the last emitter. */
  readonly travelMinutes: number;
  readonly injectMinutes: number;
  /** Clean water after the injection, to empty the lines. */
  readonly flushMinutes: number;
}

/**
 * Usual times: travel 20-30 min, inject at least 30-45, flush at least 30. Source: Zekri et al. (2018); UF/IFAS Circular 1410.
 */
export const usualInjection: InjectionTimes = { travelMinutes: 25, injectMinutes: 45, flushMinutes: 30 };

/**
 * Shortest run that can carry an injection: lines filled, product injected, lines flushed. In split runs each pulse that
 * carries product needs it.
 *
 * @example shortestFertigatedRunMinutes(usualInjection) // 100
 */
export function shortestFertigatedRunMinutes(times: InjectionTimes): number {
  return times.travelMinutes + times.injectMinutes + times.flushMinutes;
}
