import { cmPerM } from "../units.js";
import { ringGrid } from "../water/grid.js";
import { laneEdges } from "../water/strip-edges.js";
import { type Cells, mostRingShare } from "./cells.js";
import type { Block, NurseryBall } from "./scenario.js";

/**
 * Rings round the trunk of a young tree, with an edge at the wall of its nursery ball and one where its open emitters stand, spread
 * evenly round it; rings end half way to the next tree, and a rest lane that no emitter reaches lies beyond.
 *
 * @throws RangeError if emitters stand nearer than 4 cm to the ball's wall without standing on the trunk, or beyond the rings.
 * @example ballCells(block, ball, [0, 20, 60, 100], 8, 1).reason
 */
export function ballCells(
  block: Block,
  ball: NurseryBall,
  layerEdgesCm: readonly number[],
  lanes: number,
  openEmitters: number,
): Cells {
  const groundCm2 = block.treeSpacingM * block.rowSpacingM * cmPerM * cmPerM;
  const fullCm = Math.sqrt(groundCm2 / Math.PI);
  const widestCm = Math.sqrt(mostRingShare) * fullCm;
  const halfApartCm = (Math.min(block.treeSpacingM, block.rowSpacingM) * cmPerM) / 2;
  const wallAtCm = halfApartCm < widestCm ? halfApartCm : widestCm;
  const { emitterDistanceCm } = ball;
  const required = [...new Set([emitterDistanceCm, ball.diameterCm / 2])].sort((a, b) => a - b);
  const edges = laneEdges(required, wallAtCm, lanes - 1);
  const grid = ringGrid({ layerEdgesCm, laneEdgesCm: [...edges, fullCm], emittersPerTree: 1, wallAtCm });
  const canopyCm = (block.tree.canopyDiameterM * cmPerM) / 2;
  const exposedByLane = Float64Array.from({ length: grid.lanes }, (_, j) => {
    const from = grid.laneEdgesCm[j];
    const to = grid.laneEdgesCm[j + 1];
    if (to <= canopyCm) return 0;
    return from >= canopyCm ? 1 : (to * to - canopyCm * canopyCm) / (to * to - from * from);
  });
  return {
    grid,
    reason: `ring: rings round the trunk and its nursery ball, ${openEmitters} open emitters evenly round it at ${emitterDistanceCm} cm`,
    lines: {
      edge: Int32Array.of(grid.laneEdgesCm.findIndex((edge) => Math.abs(edge - emitterDistanceCm) < 1e-6)),
      share: Float64Array.of(1),
    },
    lineAtCm: [emitterDistanceCm],
    exposedByLane,
    openEmitters,
  };
}
