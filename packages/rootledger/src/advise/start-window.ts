import { everyPart } from "../scenario/every-part.js";
import { spellShare } from "../scenario/measures.js";
import type { SimulateOptions } from "../scenario/options.js";
import type { Scenario } from "../scenario/scenario.js";
import { createSimulation, type Snapshot } from "../scenario/simulation.js";
import { column, type TreeName } from "../water/result.js";

/** How the roots fare from now on if nothing is watered. Hours are counted from now. */
export interface StartWindow {
  /**
   * Hours until fewer than the asked share of the roots lack air, and so for the rest of the hours looked at; 0 if they
   * have air now. Undefined if that does not come within them.
   */
  readonly airBackH: number | undefined;
  /** Hours until at least the asked share of the roots is thirsty for the first time. Undefined if that does not come. */
  readonly thirstH: number | undefined;
  /**
   * Starts that leave no root share of that size without air before and thirsty by then: from `airBackH` to `thirstH`.
   * Undefined if thirst comes before air is back; then the two limits cannot both be kept and less should be given at once.
   */
  readonly safe: { readonly fromH: number; readonly toH: number } | undefined;
  /** Hours that were looked at: to the end of the forecast. */
  readonly hours: number;
  /** By hour from now: share of the roots without air, share that is thirsty. */
  readonly airlessShare: Float64Array;
  readonly thirstyShare: Float64Array;
}

/** How the window of a start is sought. */
export interface StartWindowOptions extends Pick<SimulateOptions, "engine" | "lanes" | "geometry"> {
  /** Today's state, from a run of the same block, soil, season and trees; without it the scenario's start. */
  readonly from?: Snapshot;
  /** Trees the snapshot was made with; default the mean tree alone. */
  readonly trees?: readonly TreeName[];
  /** Whose roots are asked about; default the first of `trees`. */
  readonly tree?: TreeName;
  /** Share of the roots that counts, default 0.25. */
  readonly rootShare?: number;
}

/**
 * "It is wet now: when may I start again?" Carries today's state through the season's remaining weather (the forecast) with
 * no watering at all: hours until air is back, hours until thirst, the safe interval for the next start. The answer knows
 * nothing of what the next run will do to the air; keep its length in mind, and put a spade or tensiometer beside it.
 *
 * @throws RangeError if the scenario does not fit together, the tree is not among `trees`, or rootShare is not in (0, 1].
 * @example startWindow(scenario, { from: simulation.snapshot() }).safe
 */
export function startWindow(scenario: Scenario, options: StartWindowOptions = {}): StartWindow {
  const { from, trees = ["mean"], tree = trees[0], rootShare = spellShare, ...how } = options;
  if (!(rootShare > 0 && rootShare <= 1)) {
    throw new RangeError(`startWindow requires rootShare above 0 and up to 1: got ${rootShare}`);
  }
  const place = trees.indexOf(tree);
  if (place < 0) throw new RangeError(`startWindow requires tree among ${trees.join(", ")}: got ${tree}`);
  const dry: Scenario = { ...scenario, programme: { name: "no watering", runs: [] }, start: startOf(scenario, from) };
  const simulation = createSimulation(dry, { ...everyPart(dry), ...how, trees });
  if (from !== undefined) simulation.restore(from);
  const nowH = simulation.hour();
  while (simulation.status().kind === "running") simulation.step();
  const { hours, status } = simulation.result();
  if (status.kind === "failed") throw new RangeError(`startWindow requires a run that can go on: ${status.message}`);
  const shareOf = (name: string): Float64Array =>
    column(hours, name).values.filter((_, i) => i % trees.length === place && i >= nowH * trees.length);
  const airlessShare = shareOf("airlessShare");
  const thirstyShare = shareOf("thirstyShare");
  const firstThirsty = thirstyShare.findIndex((share) => share >= rootShare);
  let airH = airlessShare.length;
  while (airH > 0 && airlessShare[airH - 1] < rootShare) airH--;
  const airBackH = airH < airlessShare.length ? airH : undefined;
  const thirstH = firstThirsty < 0 ? undefined : firstThirsty;
  const toH = thirstH ?? airlessShare.length;
  return {
    airBackH,
    thirstH,
    safe: airBackH !== undefined && airBackH < toH ? { fromH: airBackH, toH } : undefined,
    hours: airlessShare.length,
    airlessShare,
    thirstyShare,
  };
}

/** A given state needs no settling; without watering there is nothing to settle under. */
const startOf = ({ start }: Scenario, from: Snapshot | undefined): Scenario["start"] =>
  from === undefined && start.kind === "same-state" ? start : { ...start, kind: "same-state" };
