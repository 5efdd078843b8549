import type { SoilTable } from "../ground/table.js";
import { rootDepthShare } from "../tree/root-depth-share.js";
import type { Grid } from "../water/grid.js";
import type { RootZone } from "../water/uptake.js";
import { type Emitters, rootLanes } from "./root-lanes.js";
import type { Scenario } from "./scenario.js";

/** The roots as they grow. Engine and ledger read `inForce`; `bringRootsIntoForce` writes its shares. */
export interface RootsByDay {
  readonly inForce: RootZone;
  /** Share of each cell by day of the season; one entry where roots do not grow. */
  readonly days: readonly Float64Array[];
  /** Share of each lane's ground that has roots on the last day. */
  readonly rootedByLane: Float64Array;
  readonly wetByLane: Float64Array;
  readonly reason: string;
}

/**
 * Share of the tree's roots in each cell: the vertical law times the lateral one, the same on every day.
 *
 * @throws RangeError if the roots do not fit the cells.
 * @example settledRoots(scenario, grid, cells, table).inForce.share
 */
export function settledRoots({ block }: Scenario, grid: Grid, emitters: Emitters, top: SoilTable): RootsByDay {
  const { depthCm, topShare, compensationOnset } = block.tree.roots;
  const { rootByLane, ...sideways } = rootLanes(block, grid, emitters, top);
  const share = sharesOf(grid, rootDepthShare(grid.layerEdgesCm, depthCm, topShare), rootByLane);
  return { inForce: { share, compensationOnset }, days: [share], ...sideways };
}

/** @example sharesOf(grid, byLayer, byLane).length // grid.cells */
export const sharesOf = (grid: Grid, byLayer: Float64Array, byLane: Float64Array): Float64Array =>
  Float64Array.from({ length: grid.cells }, (_, c) => byLayer[(c / grid.lanes) | 0] * byLane[c % grid.lanes]);

/** Puts the roots of a day of the season into force. @example bringRootsIntoForce(prepared.rootsByDay, 12) */
export function bringRootsIntoForce({ inForce, days }: RootsByDay, day: number): void {
  if (days.length > 1) inForce.share.set(days[day]);
}
