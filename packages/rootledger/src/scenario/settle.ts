import type { WaterEngine } from "../water/engine.js";
import type { Demand } from "./demand.js";
import type { Prepared } from "./ground-of.js";
import type { Scenario } from "./scenario.js";
import { carryHour, storageCm3, type TreeRun } from "./tree-run.js";

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
const longestCycleDays = 28;

/**
 * Repeats the first days of the season under the scenario's own programme until every tree's storage changes by less than
 * 1 % of the water applied in a cycle. A cycle holds whole intervals of every run, at least 7 days and at most 28.
 * Changes the trees' state; a `same-state` start leaves it.
 *
 * @example settle(scenario, prepared, demand, timeline, engine, trees).cycles
 */
export function settle(
  scenario: Scenario,
  prepared: Prepared,
  demand: Demand,
  timeline: Float64Array,
  engine: WaterEngine,
  trees: readonly TreeRun[],
): Settling {
  if (scenario.start.kind === "same-state") return { kind: "same-state", cycles: 0, changeFraction: 0 };
  const cycleDays = Math.min(cycleLength(scenario), scenario.season.days);
  let changeFraction = Number.POSITIVE_INFINITY;
  let cycles = 0;
  let failure: string | undefined;
  while (cycles < mostCycles && changeFraction >= enoughChangeFraction && failure === undefined) {
    changeFraction = 0;
    for (const tree of trees) {
      const before = storageCm3(tree.state.theta, prepared.grid);
      let appliedCm3 = 0;
      let place = 0;
      for (let hour = 0; hour < cycleDays * 24; hour++) {
        const next = carryHour(tree, engine, prepared, demand, timeline, hour, place);
        if (typeof next === "string") return { kind: "settled", cycles, changeFraction, failure: next };
        place = next;
        appliedCm3 += tree.fluxes.emitterCm3;
      }
      const change = Math.abs(storageCm3(tree.state.theta, prepared.grid) - before);
      const fraction = appliedCm3 > 0 ? change / appliedCm3 : 0;
      if (!(fraction <= changeFraction)) changeFraction = fraction;
    }
    cycles++;
    if (!Number.isFinite(changeFraction)) failure = "a state is not a finite number while settling";
  }
  for (const tree of trees) tree.state.timeH = 0;
  return { kind: "settled", cycles, changeFraction, ...(failure === undefined ? {} : { failure }) };
}

/** Days of one cycle. @example cycleLength(scenario) // 7 for a daily or weekly calendar */
function cycleLength(scenario: Scenario): number {
  let period = 1;
  for (const run of scenario.programme.runs) period = leastCommonMultiple(period, run.everyDays);
  if (period > longestCycleDays) return longestCycleDays;
  return period * Math.ceil(shortestCycleDays / period);
}

function leastCommonMultiple(a: number, b: number): number {
  let x = a;
  let y = b;
  while (y > 0) [x, y] = [y, x % y];
  return (a * b) / x;
}
