import type { HeadTable } from "./boundary.js";
import { faceConductivity } from "./boundary.js";
import type { CellValues, Ground } from "./ground.js";

/**
 * Flows through every face at one moment, cm3/h per tree. A cell's `down` face is its lower one (positive downward), its
 * `side` face the outer one (positive outward). Gravity and matric parts stay apart because their limits differ; between
 * two soils all of the flow is in `gravity`.
 */
export interface FaceFlows {
  readonly gravityDown: Float64Array;
  readonly matricDown: Float64Array;
  readonly matricSide: Float64Array;
  /** Between two soils the side flow is not limited by the pair's contents. */
  readonly headSide: Float64Array;
}

/** @example faceFlows(64).gravityDown.length // 64 */
export function faceFlows(cells: number): FaceFlows {
  return {
    gravityDown: new Float64Array(cells),
    matricDown: new Float64Array(cells),
    matricSide: new Float64Array(cells),
    headSide: new Float64Array(cells),
  };
}

/**
 * Same soil on both sides: gravity with the arithmetic mean conductivity, matric part as the difference of matric flux
 * potential over the distance (Kirchhoff). Two soils: mean conductivity times head gradient. Bottom: unit gradient.
 */
export function faceFlowsInto(
  flows: FaceFlows,
  ground: Ground,
  values: CellValues,
  byHead: readonly HeadTable[],
): void {
  const { layers, lanes, laneAreaCm2, thicknessCm, sideLengthCm, laneDistanceCm } = ground.grid;
  const { material } = ground;
  const { conductivityCmPerH, headCm, matricFluxCm2PerH } = values;
  const { gravityDown, matricDown, matricSide, headSide } = flows;
  for (let i = 0; i < layers; i++) {
    const first = i * lanes;
    const thickness = thicknessCm[i];
    if (i < layers - 1) {
      const half = 0.5 * thickness;
      const halfBelow = 0.5 * thicknessCm[i + 1];
      const inverseDistance = 1 / (half + halfBelow);
      for (let j = 0; j < lanes; j++) {
        const c = first + j;
        const below = c + lanes;
        const area = laneAreaCm2[j];
        if (material[c] === material[below]) {
          gravityDown[c] = 0.5 * area * (conductivityCmPerH[c] + conductivityCmPerH[below]);
          matricDown[c] = area * (matricFluxCm2PerH[c] - matricFluxCm2PerH[below]) * inverseDistance;
        } else {
          const k = faceConductivity(
            byHead[material[c]],
            byHead[material[below]],
            half,
            halfBelow,
            headCm[c],
            headCm[below],
          );
          gravityDown[c] = area * k * ((headCm[c] - headCm[below]) * inverseDistance + 1);
          matricDown[c] = 0;
        }
      }
    } else {
      for (let j = 0; j < lanes; j++) {
        gravityDown[first + j] = laneAreaCm2[j] * conductivityCmPerH[first + j];
        matricDown[first + j] = 0;
      }
    }
    for (let j = 0; j < lanes - 1; j++) {
      const c = first + j;
      const perDistance = (sideLengthCm[j] * thickness) / laneDistanceCm[j];
      if (material[c] === material[c + 1]) {
        matricSide[c] = perDistance * (matricFluxCm2PerH[c] - matricFluxCm2PerH[c + 1]);
        headSide[c] = 0;
      } else {
        const k = faceConductivity(byHead[material[c]], byHead[material[c + 1]], 1, 1, headCm[c], headCm[c + 1]);
        matricSide[c] = 0;
        headSide[c] = perDistance * k * (headCm[c] - headCm[c + 1]);
      }
    }
  }
}
