import type { FaceFlows } from "./bucket-flows.js";
import { mostLeavingShare, type Solution } from "./bucket-solve.js";
import type { Ground } from "./ground.js";

/** Writes the flow of every face as solved, cm3/h: `ratio` then holds the flow down, `rest` the flow outward. */
export function writeFlows(out: Solution, flows: FaceFlows, ground: Ground): void {
  const { lanes, cells } = ground.grid;
  const { change, first, ratio, rest, downHere, downThere, sideHere, sideThere } = out;
  for (let c = 0; c < cells; c++) {
    const below = c + lanes < cells ? first[c + lanes] : 0;
    const next = (c + 1) % lanes !== 0 ? change[c + 1] : 0;
    ratio[c] = flows.down[c] + downHere[c] * first[c] - downThere[c] * below;
    rest[c] = flows.side[c] + sideHere[c] * change[c] - sideThere[c] * next;
  }
}

/**
 * For the rare step in which a cell would give more than it holds: works out the flow of every face as solved, holds back
 * all that leaves each cell in proportion until it is at most 0.95 of its mobile water, and writes the change of theta that
 * follows. What does not move stays where it is. Roots and evaporation are not part of it.
 */
export function holdBack(
  out: Solution,
  flows: FaceFlows,
  ground: Ground,
  theta: Float64Array,
  given: Float64Array,
  step: Float64Array,
): void {
  const { layers, lanes, volumeCm3 } = ground.grid;
  const { change, ratio, rest, downCm3PerH } = out;
  const dtH = step[0];
  writeFlows(out, flows, ground);
  for (let i = 0; i < layers; i++) {
    for (let j = 0; j < lanes; j++) {
      const c = i * lanes + j;
      let leaving = (ratio[c] > 0 ? ratio[c] : 0) + (rest[c] > 0 ? rest[c] : 0);
      if (i > 0 && ratio[c - lanes] < 0) leaving -= ratio[c - lanes];
      if (j > 0 && rest[c - 1] < 0) leaving -= rest[c - 1];
      const most = (mostLeavingShare * (theta[c] - ground.thetaResidual[c]) * volumeCm3[c]) / dtH;
      if (leaving <= most) continue;
      const keep = most / leaving;
      if (ratio[c] > 0) ratio[c] *= keep;
      if (rest[c] > 0) rest[c] *= keep;
      if (i > 0 && ratio[c - lanes] < 0) ratio[c - lanes] *= keep;
      if (j > 0 && rest[c - 1] < 0) rest[c - 1] *= keep;
    }
  }
  for (let i = 0; i < layers; i++) {
    downCm3PerH[i] = 0;
    for (let j = 0; j < lanes; j++) {
      const c = i * lanes + j;
      const above = i > 0 ? ratio[c - lanes] : given[j];
      const inside = j > 0 ? rest[c - 1] : 0;
      change[c] = ((above + inside - ratio[c] - rest[c]) * dtH) / volumeCm3[c];
      downCm3PerH[i] += ratio[c];
    }
  }
}
