import type { FaceFlows } from "./bucket-fluxes.js";
import type { Faces } from "./faces.js";
import type { Ground } from "./ground.js";

/** Share of a cell's mobile water that gravity may take in one step; keeps theta above its residual. */
const gravityShare = 0.9;
/** Share that all outflow and uptake together may take. */
const outflowShare = 0.95;
/** Share that flow between two soils side by side may take. */
const headFlowShare = 0.25;

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
 * equalise the pair, gravity within 0.9 of what is there. Step length in `step[0]`, h. Where all outflow and uptake of a cell still exceed its mobile
 * water they are held back in proportion, so that theta can never fall below its residual. Nothing is dropped: what does
 * not move stays where it is. Returns whether uptake was held back anywhere; only then `kept` holds each cell's share.
 */
export function limitFlows(
  out: LimitedFlows,
  flows: FaceFlows,
  ground: Ground,
  faces: Faces,
  theta: Float64Array,
  sink: Float64Array,
  kept: Float64Array,
  step: Float64Array,
): boolean {
  const { layers, lanes, volumeCm3 } = ground.grid;
  const { thetaResidual, material } = ground;
  const { gravityDown, matricDown, matricSide, headSide } = flows;
  const { pairDownCm3, pairSideCm3 } = faces;
  const { down, side } = out;
  const dtH = step[0];
  const perH = 1 / dtH;
  let held = false;
  for (let i = 0; i < layers; i++) {
    const last = i === layers - 1;
    for (let j = 0; j < lanes; j++) {
      const c = i * lanes + j;
      const wet = theta[c];
      const mobile = (wet - thetaResidual[c]) * volumeCm3[c] * perH;
      let leaving = sink[c];
      let flow = gravityDown[c];
      if (flow > gravityShare * mobile) flow = gravityShare * mobile;
      if (!last) {
        const below = c + lanes;
        if (material[c] === material[below]) {
          const apart = wet - theta[below];
          const bound = (apart < 0 ? -apart : apart) * pairDownCm3[c] * perH;
          const matric = matricDown[c];
          flow += matric > bound ? bound : matric < -bound ? -bound : matric;
        } else if (flow < 0) {
          const most = -gravityShare * (theta[below] - thetaResidual[below]) * volumeCm3[below] * perH;
          if (flow < most) flow = most;
        }
      }
      down[c] = flow;
      if (flow > 0) leaving += flow;
      let outward = 0;
      if (j < lanes - 1) {
        const apart = wet - theta[c + 1];
        const bound = (apart < 0 ? -apart : apart) * pairSideCm3[c] * perH;
        const matric = matricSide[c];
        outward = matric > bound ? bound : matric < -bound ? -bound : matric;
        if (headSide[c] !== 0) outward += limitHeadFlow(headSide[c], ground, theta, c, perH);
      }
      side[c] = outward;
      if (outward > 0) leaving += outward;
      if (i > 0 && down[c - lanes] < 0) leaving -= down[c - lanes];
      if (j > 0 && side[c - 1] < 0) leaving -= side[c - 1];
      if (leaving > outflowShare * mobile) {
        if (!held) kept.fill(1);
        held = true;
        holdBack(out, sink, kept, c, i, j, lanes, mobile > 0 ? (outflowShare * mobile) / leaving : 0);
      }
    }
  }
  return held;
}

function holdBack(
  out: LimitedFlows,
  sink: Float64Array,
  kept: Float64Array,
  c: number,
  i: number,
  j: number,
  lanes: number,
  keep: number,
): void {
  const { down, side } = out;
  kept[c] = keep;
  sink[c] *= keep;
  if (down[c] > 0) down[c] *= keep;
  if (side[c] > 0) side[c] *= keep;
  if (i > 0 && down[c - lanes] < 0) down[c - lanes] *= keep;
  if (j > 0 && side[c - 1] < 0) side[c - 1] *= keep;
}

/** Side flow between two soils: at most a quarter of the giving cell's mobile water in one step. */
function limitHeadFlow(flow: number, ground: Ground, theta: Float64Array, c: number, perH: number): number {
  const giver = flow > 0 ? c : c + 1;
  const most = headFlowShare * (theta[giver] - ground.thetaResidual[giver]) * ground.grid.volumeCm3[giver] * perH;
  return flow > most ? most : flow < -most ? -most : flow;
}

/**
 * From the bottom up: what comes from above (or rises from below the bottom) may not exceed the room left in the cell plus
 * what leaves it; the rest stays where it came from. Updates theta of every layer but the top one, whose inflow is not known yet; `room` receives what each lane can
 * still take from the surface, cm3/h.
 */
export function fillFromBelow(
  out: LimitedFlows,
  ground: Ground,
  faces: Faces,
  theta: Float64Array,
  sink: Float64Array,
  room: Float64Array,
  step: Float64Array,
): void {
  const { layers, lanes, volumeCm3 } = ground.grid;
  const { thetaSaturated } = ground;
  const { perVolume } = faces;
  const { down, side } = out;
  const dtH = step[0];
  const perH = 1 / dtH;
  for (let i = layers - 1; i >= 0; i--) {
    let fromInside = 0;
    for (let j = 0; j < lanes; j++) {
      const c = i * lanes + j;
      let net = fromInside - sink[c] - down[c] - side[c];
      fromInside = side[c];
      let able = (thetaSaturated[c] - theta[c]) * volumeCm3[c] * perH - net;
      if (able < 0 && i === layers - 1 && down[c] < 0) {
        const rise = down[c] - able < 0 ? down[c] - able : 0;
        net += down[c] - rise;
        able -= down[c] - rise;
        down[c] = rise;
      }
      if (i > 0) {
        if (down[c - lanes] > able) down[c - lanes] = able > 0 ? able : 0;
        theta[c] += (net + down[c - lanes]) * dtH * perVolume[c];
      } else {
        room[j] = able > 0 ? able : 0;
      }
    }
  }
}

/** Gives the top layer its inflow from the surface and updates it. */
export function fillTop(
  out: LimitedFlows,
  ground: Ground,
  faces: Faces,
  theta: Float64Array,
  sink: Float64Array,
  intake: Float64Array,
  step: Float64Array,
): void {
  const { lanes } = ground.grid;
  const { down, side } = out;
  const dtH = step[0];
  let fromInside = 0;
  for (let j = 0; j < lanes; j++) {
    theta[j] += (intake[j] + fromInside - sink[j] - down[j] - side[j]) * dtH * faces.perVolume[j];
    fromInside = side[j];
  }
}
