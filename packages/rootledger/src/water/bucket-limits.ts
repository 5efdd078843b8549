import type { FaceFlows } from "./bucket-fluxes.js";
import type { Grid } from "./grid.js";
import type { Ground } from "./ground.js";

/** Share of what would equalise a pair of cells that one step may move by matric flow. Own convergence study on uniform soils, 8 x 8 cells. */
const equalisingShare = 0.5;
/** Share of a cell's mobile water that gravity may take in one step; keeps theta above its residual. */
const gravityShare = 0.9;

/** Flows through the lower and outer face of each cell after limiting, cm3/h per tree. */
export interface LimitedFlows {
  readonly down: Float64Array;
  readonly side: Float64Array;
}

/** @example limitedFlows(64).down.length // 64 */
export const limitedFlows = (cells: number): LimitedFlows => ({
  down: new Float64Array(cells),
  side: new Float64Array(cells),
});

/** Volumes the limits need again and again, cm3 per tree. `pair*`: share of the pair's contents that may move in one step. */
export interface LimitVolumes {
  readonly pairDown: Float64Array;
  readonly pairSide: Float64Array;
}

/** @example limitVolumes(grid).pairDown.length // grid.cells */
export function limitVolumes(grid: Grid): LimitVolumes {
  const { layers, lanes, cells, volumeCm3 } = grid;
  const pairDown = new Float64Array(cells);
  const pairSide = new Float64Array(cells);
  const pair = (a: number, b: number): number =>
    (equalisingShare * volumeCm3[a] * volumeCm3[b]) / (volumeCm3[a] + volumeCm3[b]);
  for (let c = 0; c < cells; c++) {
    if (c < (layers - 1) * lanes) pairDown[c] = pair(c, c + lanes);
    if (c % lanes < lanes - 1) pairSide[c] = pair(c, c + 1);
  }
  return { pairDown, pairSide };
}

/**
 * Limits the flows of one step so that explicit stepping cannot overshoot: matric flow stays within half of what would
 * equalise the pair, gravity within 0.9 of what is there. Nothing is dropped: what does not move stays where it is.
 */
export function limitFlows(
  out: LimitedFlows,
  flows: FaceFlows,
  ground: Ground,
  volumes: LimitVolumes,
  theta: Float64Array,
  dtH: number,
): void {
  const { layers, lanes, volumeCm3 } = ground.grid;
  const { thetaResidual, material } = ground;
  const { gravityDown, matricDown, matricSide, headSide } = flows;
  const { pairDown, pairSide } = volumes;
  const { down, side } = out;
  const perH = 1 / dtH;
  const gravityPerH = gravityShare * perH;
  for (let i = 0; i < layers; i++) {
    const bottom = i === layers - 1;
    for (let j = 0; j < lanes; j++) {
      const c = i * lanes + j;
      const wet = theta[c];
      let gravity = gravityDown[c];
      const most = gravityPerH * (wet - thetaResidual[c]) * volumeCm3[c];
      if (gravity > most) gravity = most;
      if (bottom) down[c] = gravity;
      else {
        const below = c + lanes;
        let matric = matricDown[c];
        if (material[c] === material[below]) {
          const apart = wet - theta[below];
          const bound = (apart < 0 ? -apart : apart) * pairDown[c] * perH;
          if (matric > bound) matric = bound;
          else if (matric < -bound) matric = -bound;
        } else if (gravity < 0) {
          const mostUp = -gravityPerH * (theta[below] - thetaResidual[below]) * volumeCm3[below];
          if (gravity < mostUp) gravity = mostUp;
        }
        down[c] = gravity + matric;
      }
      if (j < lanes - 1) {
        const apart = wet - theta[c + 1];
        const bound = (apart < 0 ? -apart : apart) * pairSide[c] * perH;
        let matric = matricSide[c];
        if (matric > bound) matric = bound;
        else if (matric < -bound) matric = -bound;
        const byHead = headSide[c];
        side[c] = byHead === 0 ? matric : matric + limitHeadFlow(byHead, ground, theta, c, perH);
      } else {
        side[c] = 0;
      }
    }
  }
}

/** Side flow between two soils: at most a quarter of the giving cell's mobile water in one step. */
function limitHeadFlow(flow: number, ground: Ground, theta: Float64Array, c: number, perH: number): number {
  const giver = flow > 0 ? c : c + 1;
  const most = 0.25 * (theta[giver] - ground.thetaResidual[giver]) * ground.grid.volumeCm3[giver] * perH;
  return flow > most ? most : flow < -most ? -most : flow;
}

/**
 * Holds back outflow of a cell that would lose more than its mobile water in this step (flows and sink together), in
 * proportion. Rare; needed so that theta can never fall below its residual. Returns whether it held anything back; only
 * then `kept` holds what share of its sink each cell could meet.
 */
export function limitOutflow(
  out: LimitedFlows,
  ground: Ground,
  theta: Float64Array,
  sink: Float64Array,
  dtH: number,
  kept: Float64Array,
): boolean {
  const { layers, lanes, volumeCm3 } = ground.grid;
  const { thetaResidual } = ground;
  const { down, side } = out;
  const share = 0.95 / dtH;
  let held = false;
  for (let i = 0; i < layers; i++) {
    for (let j = 0; j < lanes; j++) {
      const c = i * lanes + j;
      let leaving = sink[c];
      if (down[c] > 0) leaving += down[c];
      if (side[c] > 0) leaving += side[c];
      if (i > 0 && down[c - lanes] < 0) leaving -= down[c - lanes];
      if (j > 0 && side[c - 1] < 0) leaving -= side[c - 1];
      const most = share * (theta[c] - thetaResidual[c]) * volumeCm3[c];
      if (leaving <= most) continue;
      if (!held) kept.fill(1);
      held = true;
      const keep = most > 0 ? most / leaving : 0;
      kept[c] = keep;
      sink[c] *= keep;
      if (down[c] > 0) down[c] *= keep;
      if (side[c] > 0) side[c] *= keep;
      if (i > 0 && down[c - lanes] < 0) down[c - lanes] *= keep;
      if (j > 0 && side[c - 1] < 0) side[c - 1] *= keep;
    }
  }
  return held;
}

/**
 * From the bottom up: what comes from above may not exceed the room left in the cell plus what leaves it. The rest stays
 * above. `room` receives, for the top layer, what each lane can still take from the surface, cm3/h.
 */
export function limitInflow(
  out: LimitedFlows,
  ground: Ground,
  theta: Float64Array,
  sink: Float64Array,
  dtH: number,
  room: Float64Array,
): void {
  const { layers, lanes, volumeCm3 } = ground.grid;
  const { thetaSaturated } = ground;
  const { down, side } = out;
  const perH = 1 / dtH;
  for (let i = layers - 1; i >= 0; i--) {
    let fromInside = 0;
    for (let j = 0; j < lanes; j++) {
      const c = i * lanes + j;
      const able = (thetaSaturated[c] - theta[c]) * volumeCm3[c] * perH + sink[c] + down[c] + side[c] - fromInside;
      fromInside = side[c];
      if (i > 0) {
        if (down[c - lanes] > able) down[c - lanes] = able > 0 ? able : 0;
      } else {
        room[j] = able > 0 ? able : 0;
      }
    }
  }
}
