import type { SimulateOptions } from "../scenario/options.js";
import type { Scenario } from "../scenario/scenario.js";
import { createSimulation, type Simulation } from "../scenario/simulation.js";
import type { Result } from "../water/result.js";

/** What an observer sees after each hour: to be read, not changed. `fluxes` are those of the hour just carried. */
export interface WatchedHour {
  /** Whole hours since the start. */
  readonly hour: number;
  readonly trees: ReturnType<Simulation["trees"]>;
}

/** Watches a run; never computes what the run uses. */
export interface Observer {
  /** Stands in the result's status if it stops the run. */
  readonly name: string;
  /** Sees every step; what it returns may stop the run. */
  readonly watch: (now: WatchedHour) => "go on" | "stop";
}

/**
 * Runs a season while observers look on after every hour. The first that says `stop` ends it: the status is then `stopped`, with the
 * hour and the observer's name, and tables and ledger hold what was carried until then.
 *
 * @throws RangeError as `createSimulation`; whatever an observer throws.
 * @example runWatched(scenario, [{ name: "first day", watch: ({ hour }) => (hour < 24 ? "go on" : "stop") }]).status.kind
 */
export function runWatched(scenario: Scenario, observers: readonly Observer[], options: SimulateOptions = {}): Result {
  const run = createSimulation(scenario, options);
  while (run.status().kind === "running") {
    run.step();
    if (run.status().kind === "failed") break;
    const now = { hour: run.hour(), trees: run.trees() };
    const stopper = observers.filter(({ watch }) => watch(now) === "stop")[0];
    if (stopper !== undefined && run.status().kind === "running") {
      return { ...run.result(), status: { kind: "stopped", hour: now.hour, by: stopper.name } };
    }
  }
  return run.result();
}
