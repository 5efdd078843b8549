import { leastCommonMultiple } from "../numeric/least-common-multiple.js";
import type { WaterEngine } from "../water/engine.js";
import type { Demand } from "./demand.js";
import type { Prepared } from "./ground-of.js";
import type { Scenario } from "./scenario.js";
import { carryTrees, storageCm3, type TreeRun } from "./tree-run.js";
import type { Valve } from "./valve.js";

/** How the start of the season was reached. `changeFraction` is the last cycle's largest storage change over its applied water. */
export interface Settling {
  readonly kind: "same-state" | "settled";
  readonly cycles: number;
  readonly changeFraction: number;
  /** Why the engine could not go on while settling, if it could not. */
  readonly failure?: string;
}

const enoughChangeFraction = 0.01;
const mostCycles = 40;
const shortestCycleDays = 7;
export const longestCycleDays = 28;

/**
 * Repeats the first days of the season under the scenario's own programme until every tree's storage changes by less than
 * 1 % of the water applied in a cycle. A cycle holds whole intervals of every run, at least 7 days and at most 28; under a
 * trigger 28. Changes the trees' state and what a rule remembers; a `same-state` start leaves them.
 *
 * @example settle(scenario, prepared, demand, valve, engine, trees).cycles
 */
export function settle(
  scenario: Scenario,
  prepared: Prepared,
  demand: Demand,
  valve: Valve,
  engine: WaterEngine,
  trees: readonly TreeRun[],
): Settling {
  if (scenario.start.kind === "same-state") return { kind: "same-state", cycles: 0, changeFraction: 0 };
  const cycleDays = Math.min(valve.decided?.cycleDays ?? cycleLength(scenario), scenario.season.days);
  const stored = trees.map(() => 0);
  const appliedCm3 = trees.map(() => 0);
  const now = (tree: TreeRun): number => storageCm3(tree.state.theta, prepared.grid);
  let changeFraction = Number.POSITIVE_INFINITY;
  let cycles = 0;
  const failed = (failure: string): Settling => ({ kind: "settled", cycles, changeFraction, failure });
  while (cycles < mostCycles && changeFraction >= enoughChangeFraction) {
    trees.forEach((tree, t) => {
      stored[t] = now(tree);
      appliedCm3[t] = 0;
    });
    for (let hour = 0; hour < cycleDays * 24; hour++) {
      const stuck = carryTrees(trees, engine, prepared, demand, valve, hour);
      if (stuck !== undefined) return failed(stuck);
      for (let t = 0; t < trees.length; t++) appliedCm3[t] += trees[t].fluxes.emitterCm3;
    }
    const changes = trees.map((tree, t) => (appliedCm3[t] > 0 ? Math.abs(now(tree) - stored[t]) / appliedCm3[t] : 0));
    changeFraction = Math.max(...changes);
    cycles++;
    if (!Number.isFinite(changeFraction)) return failed("a state is not a finite number while settling");
    valve.place = 0;
    valve.decided?.restart(trees);
  }
  for (const tree of trees) tree.state.timeH = 0;
  return { kind: "settled", cycles, changeFraction };
}

/** Days of one cycle. @example cycleLength(scenario) // 7 for a daily or weekly calendar */
export function cycleLength({ programme: { runs } }: Pick<Scenario, "programme">): number {
  let period = 1;
  for (const run of runs) period = leastCommonMultiple(period, run.everyDays);
  if (period > longestCycleDays) return longestCycleDays;
  return period * Math.ceil(shortestCycleDays / period);
}
