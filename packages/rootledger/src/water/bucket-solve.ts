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

/** Largest part of a cell's volume per step by which flow may grow with the theta of the cell it enters. */
const gravityShare = 0.25;

/**
 * Change of theta over `step[0]` hours: the flows at its start, corrected by how they follow the change itself, linear in
 * theta and solved sweep by sweep, first down every lane and then out along every layer (alternating directions in the form
 * that keeps a steady state exactly: Douglas & Gunn 1964; one linear solve a step: Rosenbrock 1963). What leaves a cell
 * enters its neighbour, so nothing is lost.
 */
export function solveStep(
  out: Solution,
  flows: FaceFlows,
  ground: Ground,
  faces: Faces,
  pond: PondWork,
  step: Float64Array,
): void {
  sweepDown(out, flows, ground, faces, pond, step);
  sweepOut(out, flows, ground, faces, step);
}

function sweepDown(
  out: Solution,
  flows: FaceFlows,
  ground: Ground,
  { perVolume }: Faces,
  pond: PondWork,
  step: Float64Array,
): void {
  const { layers, lanes, volumeCm3 } = ground.grid;
  const { ratio, rest, first, downHere, downThere, downCm3PerH } = out;
  const { net } = flows;
  const { follow, given } = pond;
  const { intake } = pond.surface;
  const dtH = step[0];
  const perH = 1 / dtH;
  for (let i = 0, c = 0; i < layers; i++) {
    const last = i === layers - 1;
    for (let j = 0; j < lanes; j++, c++) {
      let here = flows.downHere[c];
      let there = last ? 0 : flows.downThere[c];
      const pace = dtH * (last ? here * perVolume[c] : here * perVolume[c] + there * perVolume[c + lanes]);
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
        diagonal += downThere[u] - downHere[u] * ratio[u];
        right += downHere[u] * rest[u];
      } else {
        diagonal += follow[j];
      }
      const inverse = 1 / diagonal;
      ratio[c] = there * inverse;
      rest[c] = right * inverse;
    }
  }
  for (let i = layers - 1; i >= 0; i--) {
    let through = 0;
    for (let j = 0; j < lanes; j++) {
      const c = i * lanes + j;
      const below = i < layers - 1 ? first[c + lanes] : 0;
      const change = rest[c] + ratio[c] * below;
      first[c] = change;
      through += flows.down[c] + downHere[c] * change - downThere[c] * below;
    }
    downCm3PerH[i] = through;
  }
  for (let j = 0; j < lanes; j++) given[j] = intake[j] - follow[j] * first[j];
}

function sweepOut(out: Solution, flows: FaceFlows, ground: Ground, { perVolume }: Faces, step: Float64Array): void {
  const { layers, lanes, volumeCm3 } = ground.grid;
  const { change, ratio, rest, first, sideHere, sideThere } = out;
  const dtH = step[0];
  const perH = 1 / dtH;
  for (let i = 0; i < layers; i++) {
    const from = i * lanes;
    const to = from + lanes - 1;
    let hereBefore = 0;
    let thereBefore = 0;
    let ratioBefore = 0;
    let restBefore = 0;
    for (let c = from; c <= to; c++) {
      let here = 0;
      let there = 0;
      if (c < to) {
        here = flows.sideHere[c];
        there = flows.sideThere[c];
        const pace = dtH * (here * perVolume[c] + there * perVolume[c + 1]);
        const share = followShare(pace);
        here *= share;
        there *= share;
      }
      const own = volumeCm3[c] * perH;
      const inverse = 1 / (own + here + thereBefore - hereBefore * ratioBefore);
      restBefore = (own * first[c] + hereBefore * restBefore) * inverse;
      ratioBefore = there * inverse;
      ratio[c] = ratioBefore;
      rest[c] = restBefore;
      sideHere[c] = here;
      sideThere[c] = there;
      hereBefore = here;
      thereBefore = there;
    }
    let beyond = 0;
    for (let c = to; c >= from; c--) {
      beyond = rest[c] + ratio[c] * beyond;
      change[c] = beyond;
    }
  }
}
