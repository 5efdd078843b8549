import { type TextureGroup, textureGroup } from "../ground/texture-group.js";
import { lineLayout } from "../lines/layout.js";
import { circleStripShare } from "../numeric/circle-strip.js";
import { canopyCover } from "../tree/canopy-cover.js";
import { cmPerM } from "../units.js";
import { ringGrid, stripGrid } from "../water/grid.js";
import { laneEdges } from "../water/strip-edges.js";
import { type Cells, mostRingShare } from "./cells.js";
import type { Block, Scenario, Soil } from "./scenario.js";
import type { YoungTree } from "./young-tree.js";

/**
 * Open emitters of one line at most this far apart wet a continuous strip, m, by texture of the top horizon: about twice
 * the half-width that a daily run wets. Our choice, no source.
 */
const joinedM = { coarse: 0.5, medium: 0.75, fine: 1 } as const;

/**
 * Chooses strip or rings by layout and soil alone, so that every programme of a comparison meets the same cells: a strip
 * where the open emitters are close enough to join, else rings round each open emitter out to half their distance, and a
 * rest lane that no emitter reaches. Round a nursery ball the rings are those of the trunk.
 *
 * @param asked the geometry to use whatever the rule says
 * @throws RangeError if no emitter is open or lines do not fit the row.
 * @example cellsOf(scenario, [0, 20, 60, 100], 8, undefined).grid.geometry
 */
export function cellsOf(
  scenario: Scenario,
  layerEdgesCm: readonly number[],
  lanes: number,
  asked: "strip" | "ring" | undefined,
  young?: YoungTree,
): Cells {
  const { block, soil } = scenario;
  const { lines, treeSpacingM } = block;
  const layout = lineLayout(lines.offsetsM, treeSpacingM, lines.emitterSpacingM);
  const openEmitters = layout.emittersPerTree - lines.pluggedPerTree;
  if (!(openEmitters > 0))
    throw new RangeError(`cellsOf requires an open emitter: got ${openEmitters} open of ${layout.emittersPerTree}`);
  const { ball } = block.tree;
  if (ball !== undefined) {
    if (asked === "strip") throw new RangeError("cellsOf requires rings round a nursery ball: got geometry strip");
    if (young === undefined) throw new RangeError("cellsOf requires youngTree for a nursery ball: got none");
    return young.cells(block, ball, layerEdgesCm, lanes, openEmitters);
  }
  const apartM = (treeSpacingM * lines.offsetsM.length) / openEmitters;
  const limitM = joinedM[group(soil)];
  const joined = apartM <= limitM + 1e-9;
  const geometry = asked ?? (joined ? "strip" : "ring");
  const why = `open emitters ${apartM.toPrecision(2)} m apart, in ${group(soil)} soil they join up to ${limitM} m`;
  const reason = `${geometry}: ${why}${asked === undefined ? "" : "; asked for"}`;
  return geometry === "strip"
    ? stripCells(block, layout, layerEdgesCm, lanes, reason, openEmitters)
    : ringCells(block, layerEdgesCm, lanes, reason, openEmitters, apartM);
}

/** The group of the top horizon; a soil with a curve of its own is held to the shortest distance. */
function group(soil: Soil): TextureGroup {
  const [top] = soil.horizons;
  return "texture" in top ? textureGroup(top.texture) : "coarse";
}

function stripCells(
  block: Block,
  layout: ReturnType<typeof lineLayout>,
  layerEdgesCm: readonly number[],
  lanes: number,
  reason: string,
  openEmitters: number,
): Cells {
  const rowLengthCm = block.treeSpacingM * cmPerM;
  const grid = stripGrid({
    layerEdgesCm,
    laneEdgesCm: laneEdges(layout.lineAtCm, (block.rowSpacingM * cmPerM) / 2, lanes),
    rowLengthCm,
    sides: 2,
  });
  const radiusCm = (block.tree.canopyDiameterM * cmPerM) / 2;
  const exposedByLane = new Float64Array(grid.lanes);
  for (let j = 0; j < grid.lanes; j++) {
    exposedByLane[j] = 1 - circleStripShare(grid.laneEdgesCm[j], grid.laneEdgesCm[j + 1], radiusCm, rowLengthCm);
  }
  return {
    grid,
    reason,
    lines: {
      edge: Int32Array.from(layout.lineAtCm, (at) => grid.laneEdgesCm.findIndex((edge) => Math.abs(edge - at) < 1e-6)),
      share: Float64Array.from(layout.share),
    },
    lineAtCm: layout.lineAtCm,
    exposedByLane,
    openEmitters,
  };
}

function ringCells(
  block: Block,
  layerEdgesCm: readonly number[],
  lanes: number,
  reason: string,
  openEmitters: number,
  apartM: number,
): Cells {
  const groundCm2 = block.treeSpacingM * block.rowSpacingM * cmPerM * cmPerM;
  const fullCm = Math.sqrt(groundCm2 / (openEmitters * Math.PI));
  const widestCm = Math.sqrt(mostRingShare) * fullCm;
  const halfApartCm = (apartM * cmPerM) / 2;
  const wallAtCm = halfApartCm < widestCm ? halfApartCm : widestCm;
  const edges = laneEdges([0], wallAtCm, lanes - 1);
  const grid = ringGrid({ layerEdgesCm, laneEdgesCm: [...edges, fullCm], emittersPerTree: openEmitters, wallAtCm });
  const cut = halfApartCm > widestCm ? `; rings cut to ${mostRingShare * 100} % of the tree's ground` : "";
  return {
    grid,
    reason: `${reason}${cut}`,
    lines: { edge: Int32Array.of(0), share: Float64Array.of(1) },
    lineAtCm: [0],
    exposedByLane: new Float64Array(grid.lanes).fill(1 - canopyCover(block.tree.canopyDiameterM, block)),
    openEmitters,
  };
}
