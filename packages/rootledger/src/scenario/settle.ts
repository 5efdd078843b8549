import type { WaterEngine } from "../water/engine.js";
import type { Demand } from "./demand.js";
import type { Prepared } from "./ground-of.js";
import type { Scenario } from "./scenario.js";
import { carryHour, storageCm3, type TreeRun } from "./tree-run.js";
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
/** A trigger opens when it will: its cycles are the longest, and fewer of them must do. */
const mostTriggerCycles = 12;
const shortestCycleDays = 7;
const longestCycleDays = 28;

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
  const cycleDays = Math.min(cycleLength(scenario), scenario.season.days);
  const most = opensAtWill(scenario) ? mostTriggerCycles : mostCycles;
  const before = new Float64Array(trees.length);
  const appliedCm3 = new Float64Array(trees.length);
  let changeFraction = Number.POSITIVE_INFINITY;
  let cycles = 0;
  let failure: string | undefined;
  while (cycles < most && changeFraction >= enoughChangeFraction && failure === undefined) {
    for (let t = 0; t < trees.length; t++) before[t] = storageCm3(trees[t].state.theta, prepared.grid);
    appliedCm3.fill(0);
    restart(valve, trees);
    for (let hour = 0; hour < cycleDays * 24; hour++) {
      valve.decided?.before(hour, trees);
      let next = valve.place;
      for (let t = 0; t < trees.length; t++) {
        const carried = carryHour(trees[t], engine, prepared, demand, valve, hour);
        if (typeof carried === "string") return { kind: "settled", cycles, changeFraction, failure: carried };
        next = carried;
        appliedCm3[t] += trees[t].fluxes.emitterCm3;
      }
      valve.place = next;
      valve.decided?.after(hour, trees);
    }
    changeFraction = 0;
    for (let t = 0; t < trees.length; t++) {
      const change = Math.abs(storageCm3(trees[t].state.theta, prepared.grid) - before[t]);
      const fraction = appliedCm3[t] > 0 ? change / appliedCm3[t] : 0;
      if (!(fraction <= changeFraction)) changeFraction = fraction;
    }
    cycles++;
    if (!Number.isFinite(changeFraction)) failure = "a state is not a finite number while settling";
  }
  restart(valve, trees);
  for (const tree of trees) tree.state.timeH = 0;
  return { kind: "settled", cycles, changeFraction, ...(failure === undefined ? {} : { failure }) };
}

function restart(valve: Valve, trees: readonly TreeRun[]): void {
  valve.place = 0;
  valve.decided?.restart(trees);
}

const opensAtWill = ({ programme: { rule } }: Scenario): boolean =>
  rule?.kind === "depletion" || rule?.kind === "tension" || rule?.kind === "own";

/** Days of one cycle. @example cycleLength(scenario) // 7 for a daily or weekly calendar */
function cycleLength(scenario: Scenario): number {
  const { rule, runs } = scenario.programme;
  if (opensAtWill(scenario)) return longestCycleDays;
  let period = rule?.everyDays ?? 1;
  for (const run of runs) period = leastCommonMultiple(period, run.everyDays);
  if (period > longestCycleDays) return longestCycleDays;
  return period * Math.ceil(shortestCycleDays / period);
}

function leastCommonMultiple(a: number, b: number): number {
  let x = a;
  let y = b;
  while (y > 0) [x, y] = [y, x % y];
  return (a * b) / x;
}
