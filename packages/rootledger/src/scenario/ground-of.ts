import type { SoilCurve } from "../ground/curve.js";
import { defaultSoilCurve } from "../ground/default-curve.js";
import { tabulateSoil } from "../ground/table.js";
import { vanGenuchtenCurve } from "../ground/van-genuchten.js";
import { lineLayout } from "../lines/layout.js";
import { rootDepthShare } from "../tree/root-depth-share.js";
import { rootLaneShare } from "../tree/root-lane-share.js";
import { cmPerM, headFromTension } from "../units.js";
import type { EmitterLines } from "../water/cascade.js";
import { type Grid, stripGrid } from "../water/grid.js";
import { fillGround, type Ground } from "../water/ground.js";
import type { TreeLimits } from "../water/stress.js";
import { laneEdges, layerEdges } from "../water/strip-edges.js";
import type { RootZone } from "../water/uptake.js";
import type { Horizon, Scenario } from "./scenario.js";

/** A scenario turned into cells. */
export interface Prepared {
  readonly grid: Grid;
  readonly geometryReason: string;
  readonly ground: Ground;
  readonly lines: EmitterLines;
  readonly lineAtCm: Float64Array;
  readonly roots: RootZone;
  readonly limits: TreeLimits;
  /** Flow of all open emitters of the mean tree, L/h. */
  readonly treeFlowLPerH: number;
  /** Ground of one tree, cm2. */
  readonly groundCm2: number;
  readonly rootedDepthCm: number;
  /** Number of layers above the rooted depth. */
  readonly rootedLayers: number;
}

export interface GridChoice {
  /** Least number of lanes; default 8. */
  readonly lanes?: number;
}

/**
 * Cells, soil, roots and lines of a scenario. Lines are taken as continuous along the row (strip geometry).
 *
 * @throws RangeError if lines, roots or horizons do not fit the block.
 * @example groundOf(scenario).grid.cells
 */
export function groundOf(scenario: Scenario, choice: GridChoice = {}): Prepared {
  const { block, soil, programme } = scenario;
  const { tree, lines } = block;
  const layout = lineLayout(lines.offsetsM, block.treeSpacingM, lines.emitterSpacingM);
  const halfRowCm = (block.rowSpacingM * cmPerM) / 2;
  const bottomCm = soil.horizons[soil.horizons.length - 1].toCm;
  const depthCm = tree.roots.depthCm < bottomCm ? tree.roots.depthCm : bottomCm;
  const grid = stripGrid({
    layerEdgesCm: layerEdges([depthCm, ...soil.horizons.map((h) => h.toCm)]),
    laneEdgesCm: laneEdges(layout.lineAtCm, halfRowCm, choice.lanes ?? 8),
    rowLengthCm: block.treeSpacingM * cmPerM,
    sides: 2,
  });
  const ground = fillGround(
    grid,
    soil.horizons.map((h) => tabulateSoil(curveOf(h))),
    materialOf(grid, soil.horizons),
  );
  const byLayer = rootDepthShare(grid.layerEdgesCm, depthCm, tree.roots.topShare);
  const byLane = rootLaneShare(grid.laneEdgesCm, layout.lineAtCm, block.treeSpacingM * cmPerM, tree.roots.lateral);
  const share = new Float64Array(grid.cells);
  for (let c = 0; c < grid.cells; c++) share[c] = byLayer[(c / grid.lanes) | 0] * byLane[c % grid.lanes];
  const flow = programme.emitterFlowLPerH ?? lines.emitterFlowLPerH;
  return {
    grid,
    geometryReason: `strip: emitters ${lines.emitterSpacingM} m apart are taken as continuous lines along the row`,
    ground,
    lines: {
      edge: Int32Array.from(layout.lineAtCm, (at) => nearestEdge(grid.laneEdgesCm, at)),
      share: Float64Array.from(layout.share),
    },
    lineAtCm: Float64Array.from(layout.lineAtCm),
    roots: { share, compensationOnset: tree.roots.compensationOnset },
    limits: {
      pullLimitHeadCm: headFromTension(tree.limits.pullLimitKPa),
      zeroUptakeHeadCm: headFromTension(tree.limits.zeroUptakeKPa),
      airLimit: tree.limits.airLimitFraction,
      airZero: tree.limits.airZeroFraction,
      airReturnHeadCm: headFromTension(tree.limits.airReturnKPa),
    },
    treeFlowLPerH: layout.emittersPerTree * flow,
    groundCm2: block.treeSpacingM * block.rowSpacingM * cmPerM * cmPerM,
    rootedDepthCm: depthCm,
    rootedLayers: grid.layerEdgesCm.indexOf(depthCm),
  };
}

function curveOf(horizon: Horizon): SoilCurve {
  if ("texture" in horizon) return defaultSoilCurve(horizon.texture, horizon.structure);
  return vanGenuchtenCurve(`own curve to ${horizon.toCm} cm`, horizon.vanGenuchten, "given in the scenario");
}

function materialOf(grid: Grid, horizons: readonly Horizon[]): Uint8Array {
  const material = new Uint8Array(grid.cells);
  for (let c = 0; c < grid.cells; c++) {
    const layer = (c / grid.lanes) | 0;
    const middleCm = (grid.layerEdgesCm[layer] + grid.layerEdgesCm[layer + 1]) / 2;
    material[c] = horizons.findIndex((h) => middleCm < h.toCm);
  }
  return material;
}

function nearestEdge(edges: Float64Array, at: number): number {
  let best = 0;
  for (let e = 1; e < edges.length; e++) if (Math.abs(edges[e] - at) < Math.abs(edges[best] - at)) best = e;
  return best;
}
