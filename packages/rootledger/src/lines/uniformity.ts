/**
 * Christiansen's coefficient of catches or emitter flows: 1 - mean absolute deviation / mean. Source: Christiansen (1942), Univ. California
 * Bull. 670 (definition from memory).
 *
 * @param amounts depths, volumes or flows of equal areas or emitters, in any one unit
 * @throws RangeError with fewer than two amounts, or if one is negative or their mean is 0.
 * @example christiansenUniformity([8, 12]) // 0.8
 */
export function christiansenUniformity(amounts: readonly number[]): number {
  const mean = meanOf(amounts, "christiansenUniformity");
  return 1 - amounts.reduce((sum, amount) => sum + Math.abs(amount - mean), 0) / (amounts.length * mean);
}

/**
 * Low-quarter uniformity: mean of the lowest quarter over the mean of all. It is the distribution uniformity of catches, and of emitter
 * flows the emission uniformity found in the field. Where the number is no multiple of 4 the amount on the boundary counts in part.
 * Source: Merriam & Keller (1978), Farm irrigation system evaluation (definition from memory).
 *
 * @param amounts depths, volumes or flows of equal areas or emitters, in any one unit
 * @throws RangeError with fewer than two amounts, or if one is negative or their mean is 0.
 * @example lowQuarterUniformity([8, 10, 11, 11]) // 0.8
 */
export function lowQuarterUniformity(amounts: readonly number[]): number {
  const mean = meanOf(amounts, "lowQuarterUniformity");
  const quarter = amounts.length / 4;
  const low = [...amounts]
    .sort((a, b) => a - b)
    .reduce((sum, amount, i) => sum + amount * Math.min(1, Math.max(0, quarter - i)), 0);
  return low / (quarter * mean);
}

/**
 * Emission uniformity of a design: (1 - 1.27 v / sqrt(n)) qMin / qMean. Source: Keller & Karmeli (1974), Trans. ASAE 17:678-684.
 *
 * @param input.variation manufacturer's coefficient of variation of emitters of one make, 0 to below 0.5
 * @param input.minOverMeanFlow least over mean flow that the pressures in the lines allow
 * @throws RangeError if the variation, the emitters of a tree (1 or more) or the flows (above 0 to 1) are out of range.
 * @example designEmissionUniformity({ variation: 0.05, emittersPerTree: 4, minOverMeanFlow: 0.95 }) // 0.920
 */
export function designEmissionUniformity(input: {
  readonly variation: number;
  readonly emittersPerTree: number;
  readonly minOverMeanFlow: number;
}): number {
  const { variation, emittersPerTree, minOverMeanFlow } = input;
  if (!(variation >= 0 && variation < 0.5 && emittersPerTree >= 1 && minOverMeanFlow > 0 && minOverMeanFlow <= 1)) {
    throw new RangeError(
      `designEmissionUniformity requires a variation from 0 to below 0.5, 1 emitter or more and flows above 0 to 1: got ${variation}, ${emittersPerTree}, ${minOverMeanFlow}`,
    );
  }
  return (1 - (1.27 * variation) / Math.sqrt(emittersPerTree)) * minOverMeanFlow;
}

function meanOf(amounts: readonly number[], who: string): number {
  const sum = amounts.reduce((total, amount) => total + amount, 0);
  if (amounts.length < 2 || !amounts.every((amount) => amount >= 0 && amount < Number.POSITIVE_INFINITY) || sum === 0) {
    throw new RangeError(`${who} requires two or more amounts from 0, one of them above: got ${amounts.join(", ")}`);
  }
  return sum / amounts.length;
}
