import { airlessCell } from "./air-spells.js";
import { type OxygenOptions, oxygenDefaults, oxygenOfRun } from "./oxygen-run.js";
import type { Result } from "./result.js";

/** Root-hours by what two rules for air say of them; they add up to all root-hours looked at. */
export interface AirRulesApart {
  readonly both: number;
  /** Air-filled porosity and tension say airless, oxygen is there. */
  readonly onlyPorosity: number;
  /** Oxygen lacks, air-filled porosity and tension allow the root its air. */
  readonly onlyOxygen: number;
  readonly neither: number;
}

/**
 * The airless rule (air-filled porosity under 0.10, Wesseling & van Wijk 1957, and tension under 5 kPa) beside oxygen in the soil air
 * under 10 %: where two published limits part on one run. The first is blind to duration, depth, warmth and supply from the side; the
 * second rests on use and diffusivity, which Cook & Knight (2003), SSSAJ 67:20, show to leave no single critical value. Over the hours
 * for which the run kept its cells; both read at whole hours.
 *
 * @throws RangeError if the run kept no cells, or a figure is out of range.
 * @example airRulesApart(simulate(scenario, { cells: { fromHour: 0, hours: 336 } })).onlyOxygen
 */
export function airRulesApart(result: Result, options: OxygenOptions = {}): AirRulesApart {
  const oxygen = oxygenOfRun(result, options);
  const { theta } = result.cells ?? { theta: new Float64Array(0) };
  const limit = options.limitFraction ?? oxygenDefaults.limitFraction;
  const { rootShare, layers, lanes } = result.section;
  const count = layers * lanes;
  const sums = { both: 0, onlyPorosity: 0, onlyOxygen: 0, neither: 0 };
  for (let at = 0; at < oxygen.fraction.length; at++) {
    const cell = at % count;
    const lacks = oxygen.fraction[at] < limit;
    const airless = airlessCell(result, theta[at], cell);
    sums[lacks ? (airless ? "both" : "onlyOxygen") : airless ? "onlyPorosity" : "neither"] += rootShare[cell];
  }
  return sums;
}
