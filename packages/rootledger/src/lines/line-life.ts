/** A catch-can test of a line: its age and the mean of the lowest quarter of catches over the mean of all. */
export interface UniformityTest {
  readonly ageYears: number;
  readonly lowQuarterUniformity: number;
}

/** Lowest-quarter uniformity of drip below which a system counts as poor. Source: University of California Cooperative Extension (2019). */
export const poorUniformity = 0.8;

/** How a line ages. */
export interface LineLife {
  /** Fall of the low-quarter uniformity in a year, least squares over the tests; negative where it rose. */
  readonly fallPerYear: number;
  /** Uniformity expected at the age of the last test. */
  readonly nowUniformity: number;
  /** Age at which the trend reaches the limit; left out where it does not fall. */
  readonly replaceAtYears?: number;
}

/**
 * When a line has worn so far that it should be flushed, cleaned or replaced, from two or more catch-can tests: a straight
 * line through them. Two tests say little; the trend beyond the last one is a guess.
 *
 * @throws RangeError with fewer than two ages, or if a uniformity is not above 0 and at most 1.
 * @example lineLife([{ ageYears: 1, lowQuarterUniformity: 0.9 }, { ageYears: 3, lowQuarterUniformity: 0.86 }]).replaceAtYears // 6
 */
export function lineLife(tests: readonly UniformityTest[], limit: number = poorUniformity): LineLife {
  for (const { ageYears, lowQuarterUniformity } of tests) {
    if (!(ageYears >= 0 && lowQuarterUniformity > 0 && lowQuarterUniformity <= 1)) {
      throw new RangeError(
        `lineLife requires ages from 0 and uniformities above 0 up to 1: got ${ageYears} years, ${lowQuarterUniformity}`,
      );
    }
  }
  const meanAge = tests.reduce((sum, { ageYears }) => sum + ageYears, 0) / tests.length;
  const mean = tests.reduce((sum, { lowQuarterUniformity }) => sum + lowQuarterUniformity, 0) / tests.length;
  const spread = tests.reduce((sum, { ageYears }) => sum + (ageYears - meanAge) ** 2, 0);
  if (!(spread > 0))
    throw new RangeError(`lineLife requires tests at two ages or more: got ${tests.length} at one age`);
  const covariance = tests.reduce(
    (sum, { ageYears, lowQuarterUniformity }) => sum + (ageYears - meanAge) * (lowQuarterUniformity - mean),
    0,
  );
  const fallPerYear = -covariance / spread;
  const lastAge = Math.max(...tests.map(({ ageYears }) => ageYears));
  const nowUniformity = mean - fallPerYear * (lastAge - meanAge);
  const reached = meanAge + (mean - limit) / fallPerYear;
  return { fallPerYear, nowUniformity, ...(fallPerYear > 0 ? { replaceAtYears: reached } : {}) };
}

/**
 * Share of trees with at least so many of their open emitters plugged, if every emitter is plugged with the same chance and by
 * itself: the binomial tail. Such a tree is run as its own with `pluggedPerTree` raised; the average tree does not show it.
 *
 * @throws RangeError if numbers are not whole and from 0, or the fraction is outside 0 to 1.
 * @example treesWithPlugged({ openPerTree: 2, pluggedFraction: 0.1, atLeast: 1 }) // 0.19
 */
export function treesWithPlugged(input: {
  readonly openPerTree: number;
  readonly pluggedFraction: number;
  readonly atLeast: number;
}): number {
  const { openPerTree, pluggedFraction, atLeast } = input;
  if (!(Number.isInteger(openPerTree) && openPerTree >= 1 && Number.isInteger(atLeast) && atLeast >= 0)) {
    throw new RangeError(
      `treesWithPlugged requires whole numbers: got ${openPerTree} open, at least ${atLeast} plugged`,
    );
  }
  if (!(pluggedFraction >= 0 && pluggedFraction <= 1)) {
    throw new RangeError(`treesWithPlugged requires pluggedFraction from 0 to 1: got ${pluggedFraction}`);
  }
  let chance = (1 - pluggedFraction) ** openPerTree;
  if (pluggedFraction === 1) return atLeast <= openPerTree ? 1 : 0;
  let below = 0;
  for (let k = 0; k < atLeast && k <= openPerTree; k++) {
    below += chance;
    chance *= ((openPerTree - k) / (k + 1)) * (pluggedFraction / (1 - pluggedFraction));
  }
  return atLeast > openPerTree ? 0 : 1 - below;
}
