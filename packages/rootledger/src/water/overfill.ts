import type { FaceSums, WaterFluxes } from "./engine.js";
import type { Ground } from "./ground.js";

/**
 * Moves water that the update left above saturation upward through its lane, into the top cell; what goes up counts against
 * the flow down. Nothing is lost.
 *
 * @example raiseOverfill(theta, ground, fluxes)
 */
export function raiseOverfill(theta: Float64Array, ground: Ground, { downwardCm3, faces }: WaterFluxes): void {
  const { lanes, cells, volumeCm3 } = ground.grid;
  const { thetaSaturated } = ground;
  for (let c = cells - 1; c >= lanes; c--) {
    if (theta[c] <= thetaSaturated[c]) continue;
    const above = c - lanes;
    const excess = (theta[c] - thetaSaturated[c]) * volumeCm3[c];
    theta[c] = thetaSaturated[c];
    theta[above] += excess / volumeCm3[above];
    downwardCm3[(above / lanes) | 0] -= excess;
    if (faces !== undefined) faces.downCm3[above] -= excess;
  }
}

/** Fills one cell as far as it goes; returns what is left, cm3. */
function pour(theta: Float64Array, ground: Ground, cell: number, excessCm3: number): number {
  const volume = ground.grid.volumeCm3[cell];
  // A trifle less than all, so that the cell cannot end a last digit above saturation.
  const roomCm3 = (ground.thetaSaturated[cell] - theta[cell]) * volume * (1 - 1e-12);
  if (roomCm3 <= 0) return excessCm3;
  const taken = excessCm3 < roomCm3 ? excessCm3 : roomCm3;
  theta[cell] += taken / volume;
  return excessCm3 - taken;
}

/**
 * Cracks: moves a share of what just entered each lane from its top cell straight down to one layer, as far as there is
 * room. Counts as downward flow through every face it passes.
 *
 * @param layer index of the layer that receives the water, at least 1
 */
export function moveThroughCracks(
  theta: Float64Array,
  ground: Ground,
  intake: Float64Array,
  fraction: number,
  layer: number,
  step: Float64Array,
  downwardCm3: Float64Array,
  faces: FaceSums | undefined,
): void {
  const { lanes, volumeCm3 } = ground.grid;
  if (faces !== undefined) faces.crackLayer = layer;
  for (let j = 0; j < lanes; j++) {
    const deep = layer * lanes + j;
    const wanted = fraction * intake[j] * step[0];
    const there = 0.9 * (theta[j] - ground.thetaResidual[j]) * volumeCm3[j];
    const offered = wanted < there ? wanted : there;
    const taken = offered - pour(theta, ground, deep, offered);
    if (taken <= 0) continue;
    theta[j] -= taken / volumeCm3[j];
    for (let i = 0; i < layer; i++) downwardCm3[i] += taken;
    if (faces !== undefined) faces.crackCm3[j] += taken;
  }
}
