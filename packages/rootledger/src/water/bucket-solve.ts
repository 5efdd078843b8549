import { type FaceFlows, followShare } from "./bucket-flows.js";
import type { PondWork } from "./bucket-surface.js";
import type { Faces } from "./faces.js";
import type { Ground } from "./ground.js";

/** Room for the solution of one step; index 0 of `downCm3PerH` belongs to the first layer's lower edge. */
export interface Solution {
  /** Change of theta over the step. */
  readonly change: Float64Array;
  /** Flow through the lower edge of each layer, all lanes, cm3/h. */
  readonly downCm3PerH: Float64Array;
  /** How much the flow through each face follows the change on the near and far side, cm3/h per unit of theta. */
  readonly downHere: Float64Array;
  readonly downThere: Float64Array;
  readonly sideHere: Float64Array;
  readonly sideThere: Float64Array;
  /** Change before the outward sweep; vertical flows follow this one. */
  readonly first: Float64Array;
  readonly ratio: Float64Array;
  readonly rest: Float64Array;
}

/** @example solution(8, 8).change.length // 64 */
export function solution(layers: number, lanes: number): Solution {
  const cells = layers * lanes;
  return {
    change: new Float64Array(cells),
    downCm3PerH: new Float64Array(layers),
    downHere: new Float64Array(cells),
    downThere: new Float64Array(cells),
    sideHere: new Float64Array(cells),
    sideThere: new Float64Array(cells),
    first: new Float64Array(cells),
    ratio: new Float64Array(cells),
    rest: new Float64Array(cells),
  };
}

/** Share of a cell's mobile water that may leave it in one step; keeps theta above its residual. */
export const mostLeavingShare = 0.95;

/** Largest part of a cell's volume per step by which flow may grow with the theta of the cell it enters. */
const gravityShare = 0.25;

/**
 * Change of theta over `step[0]` hours: the flows at its start, corrected by how they follow the change itself, linear in
 * theta and solved sweep by sweep, first down every lane and then out along every layer (alternating directions in the form
 * that keeps a steady state exactly: Douglas & Gunn 1964; one linear solve a step: Rosenbrock 1963). What leaves a cell
 * enters its neighbour, so nothing is lost. Returns whether every cell can give what is asked of it.
 */
export function solveStep(
  out: Solution,
  flows: FaceFlows,
  ground: Ground,
  faces: Faces,
  pond: PondWork,
  theta: Float64Array,
  sink: Float64Array,
  step: Float64Array,
): boolean {
  eliminateDown(out, flows, ground, faces, pond, step);
  return solveOut(out, flows, ground, faces, pond, theta, sink, step);
}

function eliminateDown(
  out: Solution,
  flows: FaceFlows,
  ground: Ground,
  { perVolume }: Faces,
  pond: PondWork,
  step: Float64Array,
): void {
  const { layers, lanes, volumeCm3 } = ground.grid;
  const { ratio, rest, downHere, downThere } = out;
  const { net, downHere: hereAtStart, downThere: thereAtStart } = flows;
  const { follow } = pond;
  const dtH = step[0];
  const perH = 1 / dtH;
  for (let i = 0, c = 0; i < layers; i++) {
    const last = i === layers - 1;
    for (let j = 0; j < lanes; j++, c++) {
      let here = hereAtStart[c];
      let there = 0;
      let pace = dtH * here * perVolume[c];
      if (!last) {
        there = thereAtStart[c];
        pace += dtH * there * perVolume[c + lanes];
      }
      const share = followShare(pace);
      here *= share;
      there *= share;
      // Where gravity rules, a wetter cell below speeds the flow into it; more than this would make the sweep uncertain.
      if (there < 0 && there < -gravityShare * volumeCm3[c + lanes] * perH)
        there = -gravityShare * volumeCm3[c + lanes] * perH;
      downHere[c] = here;
      downThere[c] = there;
      let diagonal = volumeCm3[c] * perH + here;
      let right = net[c];
      if (i > 0) {
        const u = c - lanes;
        const fromAbove = downHere[u];
        diagonal += downThere[u] - fromAbove * ratio[u];
        right += fromAbove * rest[u];
      } else {
        diagonal += follow[j];
      }
      const inverse = 1 / diagonal;
      ratio[c] = there * inverse;
      rest[c] = right * inverse;
    }
  }
}

/** From the bottom layer up: each layer's change down the lanes, then, with that, its change out along the layer. */
function solveOut(
  out: Solution,
  flows: FaceFlows,
  ground: Ground,
  { perVolume }: Faces,
  pond: PondWork,
  theta: Float64Array,
  sink: Float64Array,
  step: Float64Array,
): boolean {
  const { layers, lanes, volumeCm3 } = ground.grid;
  const { thetaResidual } = ground;
  const { change, first, ratio, rest, downHere, downThere, sideHere, sideThere, downCm3PerH } = out;
  const { down, sideHere: hereAtStart, sideThere: thereAtStart } = flows;
  const dtH = step[0];
  const perH = 1 / dtH;
  let enough = true;
  for (let i = layers - 1; i >= 0; i--) {
    const from = i * lanes;
    const to = from + lanes - 1;
    let through = 0;
    let hereBefore = 0;
    let thereBefore = 0;
    let ratioBefore = 0;
    let restBefore = 0;
    for (let c = from; c <= to; c++) {
      const below = i < layers - 1 ? first[c + lanes] : 0;
      const own = rest[c] + ratio[c] * below;
      first[c] = own;
      through += down[c] + downHere[c] * own - downThere[c] * below;
      let here = 0;
      let there = 0;
      if (c < to) {
        here = hereAtStart[c];
        there = thereAtStart[c];
        const share = followShare(dtH * (here * perVolume[c] + there * perVolume[c + 1]));
        here *= share;
        there *= share;
      }
      const weight = volumeCm3[c] * perH;
      const inverse = 1 / (weight + here + thereBefore - hereBefore * ratioBefore);
      restBefore = (weight * own + hereBefore * restBefore) * inverse;
      ratioBefore = there * inverse;
      ratio[c] = ratioBefore;
      rest[c] = restBefore;
      sideHere[c] = here;
      sideThere[c] = there;
      hereBefore = here;
      thereBefore = there;
    }
    downCm3PerH[i] = through;
    let beyond = 0;
    for (let c = to; c >= from; c--) {
      beyond = rest[c] + ratio[c] * beyond;
      change[c] = beyond;
      if (beyond + sink[c] * dtH * perVolume[c] < -mostLeavingShare * (theta[c] - thetaResidual[c])) enough = false;
    }
  }
  const { given, follow, surface } = pond;
  for (let j = 0; j < lanes; j++) given[j] = surface.intake[j] - follow[j] * first[j];
  return enough;
}
