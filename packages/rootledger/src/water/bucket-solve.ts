import { type FaceFlows, followShare } from "./bucket-flows.js";
import { type PondWork, spreadAnew } from "./bucket-surface.js";
import type { Forcing } from "./engine.js";
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
 * theta and solved sweep by sweep, first along every lane and then out along every layer (alternating directions in the form
 * that keeps a steady state exactly: Douglas & Gunn 1964; one linear solve a step: Rosenbrock 1963). Lanes under a pond take
 * what they draw by the end of the step; what they leave goes on along the surface within the same solution. What leaves a
 * cell enters its neighbour, so nothing is lost. Returns whether every cell can give what is asked of it.
 */
export function solveStep(
  out: Solution,
  flows: FaceFlows,
  ground: Ground,
  faces: Faces,
  pond: PondWork,
  forcing: Forcing,
  theta: Float64Array,
  sink: Float64Array,
  step: Float64Array,
): boolean {
  eliminateUp(out, flows, ground, faces, step);
  solveTop(out, pond, forcing);
  return solveDown(out, flows, ground, faces, theta, sink, step);
}

/** From the bottom layer up, without the first: each cell's change as `rest` and `ratio` times the change of the cell above. */
function eliminateUp(out: Solution, flows: FaceFlows, ground: Ground, { perVolume }: Faces, step: Float64Array): void {
  const { lanes, cells, volumeCm3 } = ground.grid;
  const { ratio, rest, downHere, downThere } = out;
  const { net, downHere: hereAtStart, downThere: thereAtStart } = flows;
  const dtH = step[0];
  const perH = 1 / dtH;
  for (let c = cells - 1; c >= 0; c--) {
    const below = c + lanes;
    let here = hereAtStart[c];
    let there = 0;
    let diagonal = volumeCm3[c] * perH;
    let right = net[c];
    if (below < cells) {
      there = thereAtStart[c];
      const share = followShare(dtH * (here * perVolume[c] + there * perVolume[below]));
      here *= share;
      there *= share;
      // Where gravity rules, a wetter cell below speeds the flow into it; more than this would make the sweep uncertain.
      const least = -gravityShare * volumeCm3[below] * perH;
      if (there < least) there = least;
      const inverse = 1 / (ratio[below] + there);
      diagonal += here - there * here * inverse;
      rest[below] *= inverse;
      ratio[below] = here * inverse;
      right += there * rest[below];
    } else {
      here *= followShare(dtH * here * perVolume[c]);
      diagonal += here;
    }
    downHere[c] = here;
    downThere[c] = there;
    // The cell's own equation, still without the face above it.
    ratio[c] = diagonal;
    rest[c] = right;
  }
}

/** The first layer: lanes under the pond first, then the surface anew with what they draw, then the others. */
function solveTop({ first, ratio, rest }: Solution, pond: PondWork, forcing: Forcing): void {
  const { follow, drawn, surface } = pond;
  const { capacity, intake } = surface;
  const lanes = follow.length;
  let ponded = false;
  for (let j = 0; j < lanes; j++) {
    capacity[j] = drawn[j];
    if (follow[j] === 0) continue;
    ponded = true;
    const most = drawn[j] - (follow[j] * (rest[j] + drawn[j])) / (ratio[j] + follow[j]);
    capacity[j] = most > 0 ? most : 0;
  }
  if (ponded) spreadAnew(pond, forcing);
  for (let j = 0; j < lanes; j++) first[j] = (rest[j] + intake[j]) / ratio[j];
}

/** From the first layer down: each layer's change along the lanes, then, with that, its change out along the layer. */
function solveDown(
  out: Solution,
  flows: FaceFlows,
  ground: Ground,
  { perVolume }: Faces,
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
  downCm3PerH.fill(0);
  for (let i = 0; i < layers; i++) {
    const from = i * lanes;
    const to = from + lanes - 1;
    let through = 0;
    let hereBefore = 0;
    let thereBefore = 0;
    let ratioBefore = 0;
    let restBefore = 0;
    for (let c = from; c <= to; c++) {
      let own = first[c];
      if (i > 0) {
        const u = c - lanes;
        const above = first[u];
        own = rest[c] + ratio[c] * above;
        first[c] = own;
        through += down[u] + downHere[u] * above - downThere[u] * own;
      }
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
    if (i > 0) downCm3PerH[i - 1] = through;
    let beyond = 0;
    for (let c = to; c >= from; c--) {
      beyond = rest[c] + ratio[c] * beyond;
      change[c] = beyond;
      if (beyond + sink[c] * dtH * perVolume[c] < -mostLeavingShare * (theta[c] - thetaResidual[c])) enough = false;
    }
  }
  let bottom = 0;
  for (let c = (layers - 1) * lanes; c < layers * lanes; c++) bottom += down[c] + downHere[c] * first[c];
  downCm3PerH[layers - 1] = bottom;
  return enough;
}
