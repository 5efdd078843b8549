import type { FaceFlows } from "./bucket-fluxes.js";
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

/**
 * Limits the flows of one step so that explicit stepping cannot overshoot: matric flow stays within half of what would
 * equalise the pair, gravity within 0.9 of what is there. Nothing is dropped: what does not move stays where it is.
 */
export function limitFlows(out: LimitedFlows, flows: FaceFlows, ground: Ground, theta: Float64Array, dtH: number): void {
  const { layers, lanes, volumeCm3 } = ground.grid;
  const { thetaResidual, material } = ground;
  const { down, side } = out;
  const perH = 1 / dtH;
  for (let i = 0; i < layers; i++) {
    for (let j = 0; j < lanes; j++) {
      const c = i * lanes + j;
      const v = volumeCm3[c];
      const most = gravityShare * (theta[c] - thetaResidual[c]) * v * perH;
      let gravity = flows.gravityDown[c];
      if (gravity > most) gravity = most;
      if (i < layers - 1) {
        const below = c + lanes;
        if (gravity < 0) {
          const mostUp = -gravityShare * (theta[below] - thetaResidual[below]) * volumeCm3[below] * perH;
          if (gravity < mostUp) gravity = mostUp;
        }
        let matric = flows.matricDown[c];
        if (material[c] === material[below]) {
          const apart = theta[c] - theta[below];
          const bound = (equalisingShare * (apart < 0 ? -apart : apart) * v * volumeCm3[below] * perH) / (v + volumeCm3[below]);
          if (matric > bound) matric = bound;
          else if (matric < -bound) matric = -bound;
        }
        down[c] = gravity + matric;
      } else {
        down[c] = gravity;
      }
      if (j < lanes - 1) {
        const next = c + 1;
        let matric = flows.matricSide[c];
        const apart = theta[c] - theta[next];
        const bound = (equalisingShare * (apart < 0 ? -apart : apart) * v * volumeCm3[next] * perH) / (v + volumeCm3[next]);
        if (matric > bound) matric = bound;
        else if (matric < -bound) matric = -bound;
        let byHead = flows.headSide[c];
        if (byHead !== 0) {
          const giver = byHead > 0 ? c : next;
          const most2 = 0.25 * (theta[giver] - thetaResidual[giver]) * volumeCm3[giver] * perH;
          if (byHead > most2) byHead = most2;
          else if (byHead < -most2) byHead = -most2;
        }
        side[c] = matric + byHead;
      } else {
        side[c] = 0;
      }
    }
  }
}

/**
 * Holds back outflow of a cell that would lose more than its mobile water in this step (flows and sink together), in
 * proportion. Rare; needed so that theta can never fall below its residual.
 */
export function limitOutflow(out: LimitedFlows, ground: Ground, theta: Float64Array, sink: Float64Array, dtH: number): void {
  const { lanes, volumeCm3, cells } = ground.grid;
  const { thetaResidual } = ground;
  const { down, side } = out;
  for (let c = 0; c < cells; c++) {
    const j = c % lanes;
    let leaving = sink[c];
    if (down[c] > 0) leaving += down[c];
    if (side[c] > 0) leaving += side[c];
    if (c >= lanes && down[c - lanes] < 0) leaving -= down[c - lanes];
    if (j > 0 && side[c - 1] < 0) leaving -= side[c - 1];
    const most = (0.95 * (theta[c] - thetaResidual[c]) * volumeCm3[c]) / dtH;
    if (leaving <= most) continue;
    const keep = most > 0 ? most / leaving : 0;
    sink[c] *= keep;
    if (down[c] > 0) down[c] *= keep;
    if (side[c] > 0) side[c] *= keep;
    if (c >= lanes && down[c - lanes] < 0) down[c - lanes] *= keep;
    if (j > 0 && side[c - 1] < 0) side[c - 1] *= keep;
  }
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
  for (let i = layers - 1; i >= 0; i--) {
    for (let j = 0; j < lanes; j++) {
      const c = i * lanes + j;
      let able = ((thetaSaturated[c] - theta[c]) * volumeCm3[c]) / dtH + sink[c] + down[c] + side[c];
      if (j > 0) able -= side[c - 1];
      if (i > 0) {
        if (down[c - lanes] > able) down[c - lanes] = able > 0 ? able : 0;
      } else {
        room[j] = able > 0 ? able : 0;
      }
    }
  }
}
