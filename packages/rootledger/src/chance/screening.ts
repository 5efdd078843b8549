import { type Distribution, quantileOf, requireDistribution } from "./distribution.js";
import type { EnsemblePlan } from "./ensemble-plan.js";
import { type MorrisDesign, morrisDesign } from "./morris.js";
import type { Prior } from "./prior.js";
import { type SobolDesign, sobolDesign } from "./sobol-indices.js";

/** `screen`: Morris, few runs, an order. `shares`: Sobol, many runs, shares of the variance. */
export type RankingMethod = "screen" | "shares";

/** The points at which a plan is to be run so that its unknowns can be ranked. */
export type Screening = {
  /** The plan with a table of own draws: member m is point m of the design. */
  readonly plan: EnsemblePlan;
  readonly unknowns: readonly Prior[];
  readonly members: number;
} & (
  | { readonly method: "screen"; readonly design: MorrisDesign }
  | { readonly method: "shares"; readonly design: SobolDesign }
);

/**
 * Lays out a ranking: shares of each prior on the points of Morris or Sobol, each turned into a value by the prior's own inverse
 * distribution. Both methods take the unknowns one by one, so correlations of the priors are not used.
 *
 * @param plan with priors; its seed also seeds the design
 * @param atLeast runs asked for; rounded up to whole trajectories or rows
 * @throws RangeError if the plan has own draws, a prior has no draws or atLeast is not a whole number above 0.
 * @example screeningOf(plan, "screen", 200).members
 */
export function screeningOf(plan: EnsemblePlan, method: RankingMethod, atLeast: number): Screening {
  const { draws } = plan;
  if (draws.kind !== "priors") throw new RangeError("a ranking requires priors: got own draws");
  if (!(Number.isInteger(atLeast) && atLeast > 0)) {
    throw new RangeError(`a ranking requires a whole number of runs above 0: got ${atLeast}`);
  }
  const { unknowns } = draws.priors;
  for (const { id, spread } of unknowns) requireDistribution(id, spread);
  const count = unknowns.length;
  const spreads = unknowns.map(({ spread }) => spread);
  const laid =
    method === "screen"
      ? { method, design: morrisDesign(count, Math.ceil(atLeast / (count + 1)), draws.seed) }
      : { method, design: sobolDesign(count, Math.ceil(atLeast / (count + 2)), draws.seed) };
  const { points } = laid.design;
  const ids = unknowns.map(({ id }) => id);
  const own = { kind: "own", ids, values: valuesAt(points, spreads) } as const;
  return { plan: { ...plan, draws: own }, unknowns, members: points.length / count, ...laid };
}

function valuesAt(points: Float64Array, spreads: readonly Distribution[]): Float64Array {
  return points.map((share, i) => quantileOf(spreads[i % spreads.length], share));
}
