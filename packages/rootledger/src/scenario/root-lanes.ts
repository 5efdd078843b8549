import type { SoilTable } from "../ground/table.js";
import { wettedReachCm } from "../lines/wetted-reach.js";
import { lengthNearLines, rootedLaneShare } from "../tree/root-lane-share.js";
import { cm3PerL, cmPerM } from "../units.js";
import type { Grid } from "../water/grid.js";
import type { Block, Roots } from "./scenario.js";

/** Where the roots and the wetted ground lie sideways. */
export interface RootLanes {
  /** Share of the roots in each lane: even over the ground that has roots. */
  readonly rootByLane: Float64Array;
  /** Share of each lane's ground that has roots. */
  readonly rootedByLane: Float64Array;
  /** Share of each lane's surface within the wetted reach of a line. */
  readonly wetByLane: Float64Array;
  readonly reason: string;
}

/** What the lanes were cut from. */
export interface Emitters {
  /** Places of the lines from the tree row, cm; [0] where the lanes are rings round each emitter. */
  readonly lineAtCm: readonly number[];
  readonly openEmitters: number;
}

/**
 * Lateral roots of a tree. `wetted-lanes`: even within the wetted reach of the lines, a rule that looks at layout, emitter and the
 * soil of the top horizon only, so that all programmes of a comparison meet the same roots.
 *
 * @param top table of the top horizon
 * @throws RangeError if no lane has roots.
 * @example rootLanes(block, grid, { lineAtCm: [50], openEmitters: 20 }, table).reason
 */
export function rootLanes(block: Block, grid: Grid, emitters: Emitters, top: SoilTable): RootLanes {
  const { lateral } = block.tree.roots;
  const reachCm = reachOf(block, grid, emitters, top);
  const wide = lateral.kind === "wetted-lanes" ? reachCm * (lateral.widthFactor ?? 1) : 0;
  const rootedByLane =
    grid.geometry === "ring"
      ? lateral.kind === "wetted-lanes"
        ? wetByLane(grid, emitters, wide)
        : rootsByRing(grid, rootedAreaCm2(block, lateral))
      : rootsByStrip(block, grid, emitters, lateral, wide);
  const areaCm2 = rootedByLane.map((part, j) => part * grid.laneAreaCm2[j]);
  const rootedCm2 = areaCm2.reduce((sum, cm2) => sum + cm2, 0);
  return {
    rootByLane: areaCm2.map((cm2) => cm2 / rootedCm2),
    rootedByLane,
    wetByLane: wetByLane(grid, emitters, reachCm),
    reason: `${reasonOf(lateral, wide)}; ground within ${reachCm.toPrecision(2)} cm of a line counts as wetted`,
  };
}

function reasonOf(lateral: Roots["lateral"], wideCm: number): string {
  if (lateral.kind === "disc") return `roots even over a disc of ${lateral.radiusCm} cm round the trunk`;
  if (lateral.kind === "along-lines") return `roots even within ${lateral.halfWidthCm} cm of the lines`;
  return `roots even within ${wideCm.toPrecision(2)} cm of the lines, where drip keeps this soil wet whatever the programme`;
}

/** The block's own emitter: a programme may name another, and all programmes of a comparison must meet the same roots. */
function reachOf(block: Block, grid: Grid, { openEmitters }: Emitters, top: SoilTable): number {
  const { lines, treeSpacingM } = block;
  const places = new Set(lines.offsetsM.map((offset) => Math.round(offset * 1e6))).size;
  const row = { emitterFlowCm3PerH: lines.emitterFlowLPerH * cm3PerL };
  const alphaPerCm = top.kSatCmPerH / top.matricFluxCm2PerH[top.intervals];
  return wettedReachCm(
    grid.geometry === "ring" ? row : { ...row, emitterSpacingCm: (treeSpacingM * cmPerM * places) / openEmitters },
    { kSatCmPerH: top.kSatCmPerH, alphaPerCm },
  );
}

function rootsByStrip(
  block: Block,
  grid: Grid,
  { lineAtCm }: Emitters,
  lateral: Roots["lateral"],
  wideCm: number,
): Float64Array {
  return rootedLaneShare(
    grid.laneEdgesCm,
    lineAtCm,
    block.treeSpacingM * cmPerM,
    lateral.kind === "wetted-lanes" ? { kind: "along-lines", halfWidthCm: wideCm } : lateral,
  );
}

/** Ground with roots, cm2 per tree: along the lines or round the trunk, at most all of it. */
function rootedAreaCm2(block: Block, lateral: Exclude<Roots["lateral"], { readonly kind: "wetted-lanes" }>): number {
  const groundCm2 = block.treeSpacingM * block.rowSpacingM * cmPerM * cmPerM;
  const area =
    lateral.kind === "disc"
      ? Math.PI * lateral.radiusCm * lateral.radiusCm
      : 2 * lateral.halfWidthCm * block.lines.offsetsM.length * block.treeSpacingM * cmPerM;
  return area < groundCm2 ? area : groundCm2;
}

/** Roots fill the rings from the emitters outward until their area is used up, then the rest lane; even within it. */
function rootsByRing(grid: Grid, areaCm2: number): Float64Array {
  let left = areaCm2;
  return grid.laneAreaCm2.map((whole) => {
    const here = left < whole ? left : whole;
    left -= here;
    return here / whole;
  });
}

/** Rings end at a wall before the last lane, which no emitter reaches. */
function wetByLane({ geometry, lanes, laneEdgesCm }: Grid, { lineAtCm }: Emitters, reachCm: number): Float64Array {
  return Float64Array.from({ length: lanes }, (_, j) => {
    const from = laneEdgesCm[j];
    const to = laneEdgesCm[j + 1];
    if (geometry === "strip") return lengthNearLines(from, to, lineAtCm, reachCm) / (to - from);
    if (j === lanes - 1) return 0;
    const [at] = lineAtCm;
    const start = from > at - reachCm ? from : at - reachCm;
    const end = to < at + reachCm ? to : at + reachCm;
    return end > start ? (end * end - start * start) / (to * to - from * from) : 0;
  });
}
