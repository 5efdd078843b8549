/**
 * Rain of a first-order Markov chain of wet and dry days with gamma amounts. Source of the relations: Richardson (1981), Water Resources Research
 * 17:182-190; they follow from the stationary state of the chain.
 */
export interface RainChain {
  /** Probability of a wet day after a dry one, and after a wet one. */
  readonly wetAfterDry: number;
  readonly wetAfterWet: number;
}

/** Share of wet days: P(W|D) / (1 + P(W|D) - P(W|W)). @example wetFraction({ wetAfterDry: 0.2, wetAfterWet: 0.6 }) // 0.333 */
export const wetFraction = ({ wetAfterDry, wetAfterWet }: RainChain): number => {
  const change = 1 + wetAfterDry - wetAfterWet;
  return change > 0 ? wetAfterDry / change : 1;
};

/** Mean length of a spell of wet days: 1 / (1 - P(W|W)). @example meanWetSpellDays({ wetAfterDry: 0.2, wetAfterWet: 0.6 }) // 2.5 */
export const meanWetSpellDays = ({ wetAfterWet }: RainChain): number => 1 / (1 - wetAfterWet);

/** Mean length of a spell of dry days: 1 / P(W|D). @example meanDrySpellDays({ wetAfterDry: 0.2, wetAfterWet: 0.6 }) // 5 */
export const meanDrySpellDays = ({ wetAfterDry }: RainChain): number => 1 / wetAfterDry;

/**
 * The chain of a month known only by its share of wet days: P(W|D) = 0.75 f, P(W|W) = 0.25 + 0.75 f, which has the share f. Source: Geng, Penning de
 * Vries & Supit (1986), Agricultural and Forest Meteorology 36:363-376; from memory.
 *
 * @example chainOfWetFraction(0.4) // { wetAfterDry: 0.3, wetAfterWet: 0.55 }
 */
export const chainOfWetFraction = (fraction: number): RainChain => ({
  wetAfterDry: 0.75 * fraction,
  wetAfterWet: 0.25 + 0.75 * fraction,
});
