import { cm3PerL } from "../units.js";
import type { Ground } from "../water/ground.js";
import type { RootZone } from "../water/uptake.js";
import { availableCells } from "./available-cells.js";

/** What a root zone lacks. */
export interface Depletion {
  /**
   * Root-zone depletion over total available water (FAO-56 ch. 8), each weighted by root share; below 0 when wetter than
   * field capacity.
   */
  readonly fraction: number;
  /** What all rooted cells together lack of field capacity, L per tree; at least 0. */
  readonly lackingL: number;
}

/**
 * Makes the function that finds a root zone's depletion from theta by cell.
 *
 * @throws RangeError as `availableCells`.
 * @example depletionFinder(ground, roots)(theta).fraction
 */
export function depletionFinder(ground: Ground, { share }: RootZone): (theta: Float64Array) => Depletion {
  const { cells, volumeCm3 } = ground.grid;
  const { atFieldCapacity, atWiltingPoint } = availableCells(ground);
  let total = 0;
  for (let c = 0; c < cells; c++) total += share[c] * (atFieldCapacity[c] - atWiltingPoint[c]);
  return (theta) => {
    let lacking = 0;
    let lackingCm3 = 0;
    for (let c = 0; c < cells; c++) {
      const lack = atFieldCapacity[c] - theta[c];
      lacking += share[c] * lack;
      if (share[c] > 0) lackingCm3 += volumeCm3[c] * lack;
    }
    return { fraction: lacking / total, lackingL: lackingCm3 > 0 ? lackingCm3 / cm3PerL : 0 };
  };
}
