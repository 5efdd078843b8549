import { decidedValve } from "./decided-valve.js";
import { engineOf } from "./engine-of.js";
import type { SimulateOptions } from "./options.js";
import type { EngineName } from "./scenario.js";
import { seasonSolutes } from "./solutes/season-solutes.js";
import { youngTree } from "./young-tree.js";

/**
 * All that `simulate` leaves out of its bundle, to pass where any scenario may come: the engine it names, salt and nitrogen, rules
 * and limits of the valve, young trees.
 *
 * @example simulate(scenario, everyPart(scenario)).status.kind
 */
export const everyPart = (scenario: {
  readonly engine?: EngineName | undefined;
}): Required<Pick<SimulateOptions, "engine" | "solutes" | "valve" | "youngTree">> => ({
  engine: engineOf(scenario),
  solutes: seasonSolutes,
  valve: decidedValve,
  youngTree,
});
