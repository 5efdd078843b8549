import type { FaceSums } from "./engine.js";
import type { Ground } from "./ground.js";

/**
 * Moves water that the update left above saturation: upward through the lane, then to the nearest top cells with room,
 * the rest is added to `runoff[0]`, cm3/h over the step of `step[0]` hours. What goes up counts against `downwardCm3`.
 * Nothing is lost.
 *
 * @example moveOverfill(theta, ground, fluxes.downwardCm3, surface.runoff, step, fluxes.faces)
 */
export function moveOverfill(
  theta: Float64Array,
  ground: Ground,
  downwardCm3: Float64Array,
  runoff: Float64Array,
  step: Float64Array,
  faces: FaceSums | undefined,
): void {
  const { layers, lanes, volumeCm3 } = ground.grid;
  const { thetaSaturated } = ground;
  for (let i = layers - 1; i >= 0; i--) {
    for (let j = 0; j < lanes; j++) {
      const c = i * lanes + j;
      if (theta[c] <= thetaSaturated[c]) continue;
      let excess = (theta[c] - thetaSaturated[c]) * volumeCm3[c];
      theta[c] = thetaSaturated[c];
      if (i > 0) {
        theta[c - lanes] += excess / volumeCm3[c - lanes];
        downwardCm3[i - 1] -= excess;
        if (faces !== undefined) faces.downCm3[c - lanes] -= excess;
        continue;
      }
      if (faces !== undefined) faces.intakeCm3[j] -= excess;
      for (let reach = 1; reach < lanes && excess > 0; reach++) {
        if (j + reach < lanes) excess = pourOn(theta, ground, j + reach, excess, faces);
        if (j - reach >= 0 && excess > 0) excess = pourOn(theta, ground, j - reach, excess, faces);
      }
      runoff[0] += excess / step[0];
    }
  }
}

/** `pour` into a top cell, booked as intake of its lane. */
function pourOn(
  theta: Float64Array,
  ground: Ground,
  lane: number,
  excessCm3: number,
  faces: FaceSums | undefined,
): number {
  const left = pour(theta, ground, lane, excessCm3);
  if (faces !== undefined) faces.intakeCm3[lane] += excessCm3 - left;
  return left;
}

/** Fills one cell as far as it goes; returns what is left, cm3. */
function pour(theta: Float64Array, ground: Ground, cell: number, excessCm3: number): number {
  const volume = ground.grid.volumeCm3[cell];
  const roomCm3 = (ground.thetaSaturated[cell] - theta[cell]) * volume;
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
