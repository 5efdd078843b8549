import type { Ground } from "./ground.js";

/** What geometry and soil fix once for all steps, by cell: its lower face and its outer face. Zero where there is no face. */
export interface Faces {
  /** Area of the face over the distance between the two centres, cm per tree. */
  readonly conductanceDownCm: Float64Array;
  readonly conductanceSideCm: Float64Array;
  /** 1 where the soils on both sides differ. */
  readonly twoSoilsDown: Uint8Array;
  readonly twoSoilsSide: Uint8Array;
  readonly perVolume: Float64Array;
}

/** @example facesOf(ground).conductanceDownCm.length // ground.grid.cells */
export function facesOf({ grid, material }: Ground): Faces {
  const { layers, lanes, cells, volumeCm3, laneAreaCm2, thicknessCm, sideLengthCm, laneDistanceCm } = grid;
  const conductanceDownCm = new Float64Array(cells);
  const conductanceSideCm = new Float64Array(cells);
  const twoSoilsDown = new Uint8Array(cells);
  const twoSoilsSide = new Uint8Array(cells);
  for (let i = 0; i < layers; i++) {
    for (let j = 0; j < lanes; j++) {
      const c = i * lanes + j;
      if (i < layers - 1) {
        conductanceDownCm[c] = laneAreaCm2[j] / (0.5 * (thicknessCm[i] + thicknessCm[i + 1]));
        if (material[c] !== material[c + lanes]) twoSoilsDown[c] = 1;
      }
      if (j < lanes - 1) {
        conductanceSideCm[c] = (sideLengthCm[j] * thicknessCm[i]) / laneDistanceCm[j];
        if (material[c] !== material[c + 1]) twoSoilsSide[c] = 1;
      }
    }
  }
  return {
    conductanceDownCm,
    conductanceSideCm,
    twoSoilsDown,
    twoSoilsSide,
    perVolume: volumeCm3.map((volume) => 1 / volume),
  };
}
