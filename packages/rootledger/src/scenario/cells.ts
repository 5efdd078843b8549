import type { EmitterLines } from "../water/cascade.js";
import type { Grid } from "../water/grid.js";

/** How one tree's ground is cut into lanes, and what each lane holds. */
export interface Cells {
  readonly grid: Grid;
  readonly reason: string;
  readonly lines: EmitterLines;
  readonly lineAtCm: readonly number[];
  /** Share of each lane's surface that the canopy disc does not cover. */
  readonly exposedByLane: Float64Array;
  readonly openEmitters: number;
}

/** Rings may take up at most this share of the tree's ground. Our choice. */
export const mostRingShare = 0.9;
