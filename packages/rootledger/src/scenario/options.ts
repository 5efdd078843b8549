import type { WaterSetup } from "../water/bucket.js";
import type { WaterEngine } from "../water/engine.js";
import type { TreeName } from "../water/result.js";
import type { SolutesMaker } from "./solutes-in-run.js";
import type { ValveMaker } from "./valve.js";
import type { YoungTree } from "./young-tree.js";

/** Makes the engine that moves the water; both engines answer the same scenario with the same kind of result. */
export type EngineMaker = (setup: WaterSetup) => WaterEngine;

/** How a scenario is run; nothing here changes what is simulated. */
export interface SimulateOptions {
  /**
   * Default `bucketEngine`, for a scenario that names it. `engineOf(scenario)` gives the one that a scenario names:
   * `refinedRichardsEngine` is the referee, with finer cells and implicit steps, much slower.
   */
  readonly engine?: EngineMaker;
  /**
   * `seasonSolutes` of rootledger/scenario: moves salt and nitrogen with the water. A scenario that has either cannot run without; to one
   * that has neither it does nothing.
   */
  readonly solutes?: SolutesMaker;
  /**
   * `decidedValve` of rootledger/scenario, for programmes with a rule or limits; left alone by the others. It is passed in so
   * that a page which only runs calendars does not load it.
   */
  readonly valve?: ValveMaker;
  /**
   * `youngTree` of rootledger/scenario: nursery ball, roots in the litter, roots that grow. A scenario that has one of them cannot run
   * without.
   */
  readonly youngTree?: YoungTree;
  /** Default: the mean tree alone. */
  readonly trees?: readonly TreeName[];
  /** Asks for the other geometry than the layout's rule would choose. */
  readonly geometry?: "strip" | "ring";
  /** Least number of lanes across half a row; default 8. */
  readonly lanes?: number;
  /** Makes finer layers of the layer edges chosen for the profile, which must stay among them; see `convergence`. */
  readonly cutLayers?: (edgesCm: number[]) => number[];
  /** How much change of theta may be in doubt in a sub-step, m3/m3; default 0.005. */
  readonly thetaDoubtPerStep?: number;
  /** Name of the part of the season of each day, by which root-hours are booked; default limit periods, else the crop's stages, else months. */
  readonly partOfDay?: readonly string[];
  /** Hours whose theta is kept for every cell of the mean tree. */
  readonly cells?: { readonly fromHour: number; readonly hours: number };
}
