import type { SoilCurve } from "../ground/curve.js";
import { curveOfMaterial } from "../ground/material.js";
import { withStructure } from "../ground/structure.js";
import { tabulateSoil } from "../ground/table.js";
import { withTrappedAir } from "../ground/trapped-air.js";
import { cmPerM, mmPerCm } from "../units.js";
import type { BottomEdge } from "../water/bottom.js";
import type { WaterSetup } from "../water/bucket.js";
import type { EmitterLines } from "../water/cascade.js";
import type { Grid } from "../water/grid.js";
import { fillGround, type Ground } from "../water/ground.js";
import type { TreeLimits } from "../water/stress.js";
import { layerEdges } from "../water/strip-edges.js";
import type { RootZone } from "../water/uptake.js";
import { cellsOf } from "./geometry.js";
import { treeLimits } from "./limits-by-day.js";
import { type RootsByDay, settledRoots } from "./roots-by-day.js";
import type { Horizon, NurseryBall, Scenario, Soil } from "./scenario.js";
import type { YoungTree } from "./young-tree.js";

/** A scenario turned into cells. */
export interface Prepared {
  readonly grid: Grid;
  readonly geometryReason: string;
  readonly ground: Ground;
  readonly lines: EmitterLines;
  readonly lineAtCm: Float64Array;
  /** Those in force on the day that is being simulated. */
  readonly roots: RootZone;
  readonly rootsByDay: RootsByDay;
  readonly limits: TreeLimits;
  readonly bottom: BottomEdge;
  readonly cracks: WaterSetup["bypass"] | undefined;
  readonly exposedByLane: Float64Array;
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
  readonly lanes?: number | undefined;
  readonly geometry?: "strip" | "ring" | undefined;
  readonly youngTree?: YoungTree | undefined;
  /** Makes other layers of the layer edges chosen for a profile, which must stay among them. */
  readonly cutLayers?: ((edgesCm: number[]) => number[]) | undefined;
}

/**
 * Cells, soil, roots and lines of a scenario.
 *
 * @throws RangeError if lines, roots or horizons do not fit the block.
 * @example groundOf(scenario).grid.cells
 */
export function groundOf(scenario: Scenario, choice: GridChoice = {}): Prepared {
  const { block, soil, programme } = scenario;
  const { tree, lines } = block;
  const bottomCm = soil.horizons[soil.horizons.length - 1].toCm;
  const { depthCm } = tree.roots;
  if (!(depthCm > 0 && depthCm <= bottomCm && (tree.ball?.depthCm ?? 0) <= bottomCm)) {
    throw new RangeError(`groundOf requires roots and ball within the profile, 0 to ${bottomCm} cm: got ${depthCm} cm`);
  }
  const { ball } = tree;
  const inside = [tree.roots.litter?.thicknessCm, ball?.depthCm].filter((cm) => cm !== undefined);
  const chosen = layerEdges([depthCm, ...inside, ...soil.horizons.map((h) => h.toCm)]);
  const layers = choice.cutLayers?.(chosen) ?? chosen;
  const cells = cellsOf(scenario, layers, choice.lanes ?? 8, choice.geometry, choice.youngTree);
  const { grid } = cells;
  const tables = soil.horizons.map((h) => tabulateSoil(curveOf(h, soil)));
  if (ball !== undefined) tables.push(tabulateSoil(curveOfMaterial(ball.material, "nursery ball")));
  const ground = fillGround(grid, tables, materialOf(grid, soil.horizons, ball));
  const young = ball !== undefined || tree.roots.litter !== undefined || tree.roots.growth !== undefined;
  if (young && choice.youngTree === undefined) {
    throw new RangeError(
      "groundOf requires options.youngTree for a nursery ball, litter roots or growth: pass youngTree of rootledger/scenario",
    );
  }
  const makeRoots = young && choice.youngTree !== undefined ? choice.youngTree.roots : settledRoots;
  const roots = makeRoots(scenario, grid, cells, tables[0]);
  return {
    grid,
    geometryReason: cells.reason,
    ground,
    lines: cells.lines,
    lineAtCm: Float64Array.from(cells.lineAtCm),
    roots: roots.inForce,
    rootsByDay: roots,
    limits: treeLimits(tree.limits),
    bottom: bottomOf(soil),
    cracks: soil.cracks,
    exposedByLane: cells.exposedByLane,
    treeFlowLPerH: cells.openEmitters * (programme.emitterFlowLPerH ?? lines.emitterFlowLPerH),
    groundCm2: block.treeSpacingM * block.rowSpacingM * cmPerM * cmPerM,
    rootedDepthCm: depthCm,
    rootedLayers: grid.layerEdgesCm.indexOf(depthCm),
  };
}

function bottomOf({ bottom }: Soil): BottomEdge {
  if (bottom.kind === "water-table") return { kind: "head", headCm: 0 };
  if (bottom.kind === "free-drainage") return bottom;
  return { kind: "impeding", conductivityCmPerH: bottom.conductivityMmPerH / mmPerCm };
}

/** The curve of a horizon, with the soil's trapped air. @example curveOf(soil.horizons[0], soil).thetaAt(-100) */
export function curveOf(horizon: Horizon, soil: Soil): SoilCurve {
  const curve = curveOfMaterial(horizon, `own curve to ${horizon.toCm} cm`);
  const fed =
    soil.kSatFactor === undefined
      ? curve
      : withStructure(curve, { macroporeFactor: 1, kSatFactor: soil.kSatFactor }, curve.name);
  return soil.trappedAirFraction === undefined ? fed : withTrappedAir(fed, soil.trappedAirFraction);
}

/** Number of each cell's horizon; the ball's comes after the last. */
function materialOf(grid: Grid, horizons: readonly Horizon[], ball: NurseryBall | undefined): Uint8Array {
  const material = new Uint8Array(grid.cells);
  for (let c = 0; c < grid.cells; c++) {
    const layer = (c / grid.lanes) | 0;
    const middleCm = (grid.layerEdgesCm[layer] + grid.layerEdgesCm[layer + 1]) / 2;
    const inBall =
      ball !== undefined && middleCm < ball.depthCm && grid.laneEdgesCm[c % grid.lanes] < ball.diameterCm / 2 - 1e-6;
    material[c] = inBall ? horizons.length : horizons.findIndex((h) => middleCm < h.toCm);
  }
  return material;
}
