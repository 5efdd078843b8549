import type { Result } from "../water/result.js";
import type { SimulateOptions } from "./options.js";
import type { Scenario } from "./scenario.js";
import { createSimulation } from "./simulation.js";

/**
 * Runs a whole season. A run that fails on the way returns what it has, with the reason in `status`.
 *
 * @throws RangeError if the scenario does not fit together, or asks for Richards' equation and no engine is given.
 * @example simulate(scenario).ledger.residualFraction[0] // below 1e-9
 */
export function simulate(scenario: Scenario, options: SimulateOptions = {}): Result {
  const run = createSimulation(scenario, options);
  while (run.status().kind === "running") run.step();
  return run.result();
}
