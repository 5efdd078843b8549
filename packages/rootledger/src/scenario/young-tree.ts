import type { SoilTable } from "../ground/table.js";
import { dayNumber } from "../numeric/day-number.js";
import { rootDepthShareWithLitter } from "../tree/litter-roots.js";
import { rootDepthShare } from "../tree/root-depth-share.js";
import { rootsOnDay } from "../tree/root-points.js";
import type { Grid } from "../water/grid.js";
import { ballCells } from "./ball-cells.js";
import { type Emitters, rootLanes } from "./root-lanes.js";
import { type RootsByDay, sharesOf } from "./roots-by-day.js";
import type { Block, Scenario } from "./scenario.js";

/** What a run needs for a nursery ball, for roots in the litter and for roots that grow; passed in, so that others do not carry it. */
export interface YoungTree {
  /** The cells of ball and ground. */
  readonly cells: typeof ballCells;
  /** The roots of a day. */
  readonly roots: (scenario: Scenario, grid: Grid, emitters: Emitters, top: SoilTable) => RootsByDay;
}

/** The `youngTree` of the options of `simulate`. */
export const youngTree: YoungTree = { cells: ballCells, roots: youngRoots };

/** Litter first, then the vertical law, times the lateral one; of every day where roots grow. */
function youngRoots({ block, season }: Scenario, grid: Grid, emitters: Emitters, top: SoilTable): RootsByDay {
  const { roots } = block.tree;
  const { lateral, growth } = roots;
  const sideways = rootLanes(block, grid, emitters, top);
  const first = dayNumber(season.startDate);
  const discCm = lateral.kind === "disc" ? lateral.radiusCm : 0;
  let { rootedByLane } = sideways;
  const onDay = (radiusCm: number): Float64Array => {
    if (lateral.kind !== "disc") return sideways.rootByLane;
    const grown = rootLanes(withRadius(block, radiusCm), grid, emitters, top);
    rootedByLane = grown.rootedByLane;
    return grown.rootByLane;
  };
  const days =
    growth === undefined
      ? [sharesOf(grid, byLayer(block, grid, roots.depthCm), sideways.rootByLane)]
      : Array.from({ length: season.days }, (_, day) => {
          const { depthCm, radiusCm } = rootsOnDay(growth, first + day, discCm);
          return sharesOf(grid, byLayer(block, grid, depthCm), onDay(radiusCm));
        });
  return {
    inForce: { share: days[0].slice(), compensationOnset: roots.compensationOnset },
    days,
    rootedByLane,
    wetByLane: sideways.wetByLane,
    reason:
      growth === undefined ? sideways.reason : `roots that grow, by dates given; without growth ${sideways.reason}`,
  };
}

function byLayer({ tree }: Block, grid: Grid, depthCm: number): Float64Array {
  const { topShare, litter } = tree.roots;
  return litter === undefined
    ? rootDepthShare(grid.layerEdgesCm, depthCm, topShare)
    : rootDepthShareWithLitter(grid.layerEdgesCm, depthCm, topShare, litter);
}

const withRadius = (block: Block, radiusCm: number): Block => ({
  ...block,
  tree: { ...block.tree, roots: { ...block.tree.roots, lateral: { kind: "disc", radiusCm } } },
});
