import { bucketEngine } from "../water/bucket.js";
import { refinedRichardsEngine } from "../water/richards-refined.js";
import type { EngineMaker } from "./options.js";
import type { EngineName } from "./scenario.js";

/**
 * The engine that a scenario names, to pass to `simulate`. It stands apart so that a page that only runs buckets does not
 * load the solver of Richards' equation.
 *
 * @example simulate(scenario, { engine: engineOf(scenario) })
 */
export function engineOf({ engine }: { readonly engine?: EngineName | undefined }): EngineMaker {
  return engine === "richards" ? refinedRichardsEngine : bucketEngine;
}
