import type { Section } from "../water/result.js";

/** What a place is looked up in. */
export type Places = Pick<Section, "geometry" | "layerEdgesCm" | "laneEdgesCm" | "lanes" | "lineAtCm">;

/** Where a tensiometer or probe sits. */
export interface SensorPlace {
  readonly depthCm: number;
  /**
   * From the outermost line outward, towards mid-alley, cm; negative: towards the tree row. With rings: from the emitter.
   */
  readonly fromLineCm: number;
}

/**
 * The cell of a section that a place lies in: a sensor reads that cell's mean.
 *
 * @throws RangeError if the place lies outside the profile or the lanes.
 * @example cellAt(result.section, { depthCm: 20, fromLineCm: 10 })
 */
export function cellAt(section: Places, { depthCm, fromLineCm }: SensorPlace): number {
  const { layerEdgesCm, laneEdgesCm, lanes, lineAtCm, geometry } = section;
  const acrossCm = geometry === "ring" ? fromLineCm : lineAtCm[lineAtCm.length - 1] + fromLineCm;
  const layer = pieceOf(layerEdgesCm, depthCm);
  const lane = pieceOf(laneEdgesCm, acrossCm);
  if (layer < 0 || lane < 0) {
    throw new RangeError(
      `cellAt requires a place within ${layerEdgesCm[layerEdgesCm.length - 1]} cm of depth and ${laneEdgesCm[laneEdgesCm.length - 1]} cm across: got ${depthCm} and ${acrossCm} cm`,
    );
  }
  return layer * lanes + lane;
}

/** Which piece between edges holds a value, or -1; the last edge belongs to the last piece. */
function pieceOf(edges: Float64Array, value: number): number {
  if (!(value >= edges[0])) return -1;
  for (let i = 1; i < edges.length; i++)
    if (value < edges[i] || (i === edges.length - 1 && value === edges[i])) return i - 1;
  return -1;
}
