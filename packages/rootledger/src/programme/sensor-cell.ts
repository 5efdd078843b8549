import type { Grid } from "../water/grid.js";

/**
 * The cell in which a sensor sits: at a depth, and at a distance from the line nearest the tree row (or from the emitter of
 * rings), away from the row; below 0 towards it. On an edge it sits in the lower or outer cell.
 *
 * @throws RangeError if the place lies outside the cells.
 * @example sensorCell(grid, 50, { depthCm: 20, fromLineCm: 15 })
 */
export function sensorCell(
  { layerEdgesCm, laneEdgesCm, layers, lanes }: Pick<Grid, "layerEdgesCm" | "laneEdgesCm" | "layers" | "lanes">,
  lineAtCm: number,
  { depthCm, fromLineCm }: { readonly depthCm: number; readonly fromLineCm: number },
): number {
  const atCm = lineAtCm + fromLineCm;
  if (!(depthCm > 0 && depthCm <= layerEdgesCm[layers] && atCm >= laneEdgesCm[0] && atCm <= laneEdgesCm[lanes])) {
    throw new RangeError(
      `sensorCell requires a place down to ${layerEdgesCm[layers]} cm and up to ${laneEdgesCm[lanes] - lineAtCm} cm from the line: got ${depthCm} and ${fromLineCm} cm`,
    );
  }
  let layer = 0;
  while (layer < layers - 1 && depthCm >= layerEdgesCm[layer + 1]) layer++;
  let lane = 0;
  while (lane < lanes - 1 && atCm >= laneEdgesCm[lane + 1]) lane++;
  return layer * lanes + lane;
}
