import type { RainHeld } from "./scenario.js";

/** Shares of each day's rain: what reaches the soil of every lane, `[day * lanes + lane]`, and what does not, over all ground. */
export interface RainShares {
  readonly soil: Float64Array;
  readonly canopy: Float64Array;
  readonly layer: Float64Array;
  readonly runoff: Float64Array;
}

/**
 * Rain held under canopy and in the open, mixed lane by lane.
 *
 * @param exposed share of a lane that no canopy covers, `[day * lanes + lane]`
 * @example rainShares(held, grid.laneAreaCm2, exposed).soil[0]
 */
export function rainShares(held: RainHeld, laneAreaCm2: Float64Array, exposed: Float64Array): RainShares {
  const lanes = laneAreaCm2.length;
  const { runoff, byCanopy, byLayerUnderCanopy, byLayerInOpen } = held;
  const soil = new Float64Array(exposed.length);
  const canopy = new Float64Array(runoff.length);
  const layer = new Float64Array(runoff.length);
  let groundCm2 = 0;
  for (let j = 0; j < lanes; j++) groundCm2 += laneAreaCm2[j];
  for (let at = 0; at < exposed.length; at++) {
    const d = (at / lanes) | 0;
    const bare = exposed[at];
    const part = laneAreaCm2[at % lanes] / groundCm2;
    const inLeaves = (1 - bare) * byCanopy[d];
    const inLayer = (1 - bare) * byLayerUnderCanopy[d] + bare * byLayerInOpen[d];
    canopy[d] += part * inLeaves;
    layer[d] += part * inLayer;
    soil[at] = 1 - runoff[d] - inLeaves - inLayer;
  }
  return { soil, canopy, layer, runoff };
}
