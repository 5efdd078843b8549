import type { Grid } from "./grid.js";

/** Share of what would equalise a pair of cells that one step may move by matric flow. From a convergence study on uniform soils, 8 x 8 cells. */
const equalisingShare = 0.5;

/** What the geometry fixes once for all steps, by cell: its lower face and its outer face. Zero where there is no face. */
export interface Faces {
  /** Area of the face over the distance between the two centres, cm per tree. */
  readonly conductanceDownCm: Float64Array;
  readonly conductanceSideCm: Float64Array;
  /** Volume that one step may exchange per unit of theta difference, cm3 per tree. */
  readonly pairDownCm3: Float64Array;
  readonly pairSideCm3: Float64Array;
  readonly perVolume: Float64Array;
}

/** @example facesOf(grid).conductanceDownCm.length // grid.cells */
export function facesOf(grid: Grid): Faces {
  const { layers, lanes, cells, volumeCm3, laneAreaCm2, thicknessCm, sideLengthCm, laneDistanceCm } = grid;
  const conductanceDownCm = new Float64Array(cells);
  const conductanceSideCm = new Float64Array(cells);
  const pairDownCm3 = new Float64Array(cells);
  const pairSideCm3 = new Float64Array(cells);
  const pair = (a: number, b: number): number =>
    (equalisingShare * volumeCm3[a] * volumeCm3[b]) / (volumeCm3[a] + volumeCm3[b]);
  for (let i = 0; i < layers; i++) {
    for (let j = 0; j < lanes; j++) {
      const c = i * lanes + j;
      if (i < layers - 1) {
        conductanceDownCm[c] = laneAreaCm2[j] / (0.5 * (thicknessCm[i] + thicknessCm[i + 1]));
        pairDownCm3[c] = pair(c, c + lanes);
      }
      if (j < lanes - 1) {
        conductanceSideCm[c] = (sideLengthCm[j] * thicknessCm[i]) / laneDistanceCm[j];
        pairSideCm3[c] = pair(c, c + 1);
      }
    }
  }
  return {
    conductanceDownCm,
    conductanceSideCm,
    pairDownCm3,
    pairSideCm3,
    perVolume: volumeCm3.map((volume) => 1 / volume),
  };
}
