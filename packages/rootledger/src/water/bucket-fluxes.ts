import { type BottomLaw, bottomFlow } from "./bottom.js";
import type { HeadTable } from "./boundary.js";
import { faceConductivity } from "./boundary.js";
import type { Faces } from "./faces.js";
import type { CellValues, Ground } from "./ground.js";

/**
 * Flows through every face at one moment, cm3/h per tree. A cell's `down` face is its lower one (positive downward), its
 * `side` face the outer one (positive outward). Gravity and matric parts stay apart because their limits differ; between
 * two soils all of the flow is in `gravityDown` or `headSide`.
 */
export interface FaceFlows {
  readonly gravityDown: Float64Array;
  readonly matricDown: Float64Array;
  readonly matricSide: Float64Array;
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

/** The bound on the fall of K applies to cells whose K is above this share of kSat. */
const wetShareOfKSat = 0.05;

/**
 * Writes the flow through every face, and to `step[0]` the longest step that they allow, h: no cell may change by more than
 * `thetaChange`, and in a wet cell that loses water K may not fall by more than about itself.
 *
 * Same soil on both sides: gravity with the arithmetic mean conductivity, matric part as the difference of matric flux
 * potential over the distance (Kirchhoff). Two soils: mean conductivity times head gradient. Bottom: `bottomFlow`.
 *
 * @param intake what enters each lane from the surface, cm3/h
 * @param sink what roots and evaporation take from each cell, cm3/h
 */
export function flowsAndStep(
  flows: FaceFlows,
  ground: Ground,
  faces: Faces,
  values: CellValues,
  byHead: readonly HeadTable[],
  bottom: BottomLaw,
  intake: Float64Array,
  sink: Float64Array,
  thetaChange: number,
  step: Float64Array,
): void {
  const { layers, lanes, laneAreaCm2, thicknessCm } = ground.grid;
  const { material, kSatCmPerH } = ground;
  const { conductanceDownCm, conductanceSideCm, perVolume } = faces;
  const { conductivityCmPerH, conductivitySlopeCmPerH, headCm, matricFluxCm2PerH } = values;
  const { gravityDown, matricDown, matricSide, headSide } = flows;
  let fastest = 1e-12;
  let longest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < layers; i++) {
    const above = (i - 1) * lanes;
    const last = i === layers - 1;
    let fromInside = 0;
    for (let j = 0; j < lanes; j++) {
      const c = i * lanes + j;
      const k = conductivityCmPerH[c];
      const potential = matricFluxCm2PerH[c];
      let gravity: number;
      let matric = 0;
      if (last) {
        gravity = laneAreaCm2[j] * bottomFlow(bottom, j, k, potential, 0.5 * thicknessCm[i]);
      } else {
        const below = c + lanes;
        if (material[c] === material[below]) {
          gravity = 0.5 * laneAreaCm2[j] * (k + conductivityCmPerH[below]);
          matric = conductanceDownCm[c] * (potential - matricFluxCm2PerH[below]);
        } else {
          const half = 0.5 * thicknessCm[i];
          const halfBelow = 0.5 * thicknessCm[i + 1];
          const upper = byHead[material[c]];
          const lower = byHead[material[below]];
          const mean = faceConductivity(upper, lower, half, halfBelow, headCm[c], headCm[below]);
          gravity = mean * (laneAreaCm2[j] + conductanceDownCm[c] * (headCm[c] - headCm[below]));
        }
      }
      gravityDown[c] = gravity;
      matricDown[c] = matric;
      let outward = 0;
      if (j < lanes - 1) {
        const next = c + 1;
        if (material[c] === material[next]) {
          outward = conductanceSideCm[c] * (potential - matricFluxCm2PerH[next]);
          matricSide[c] = outward;
          headSide[c] = 0;
        } else {
          const mean = faceConductivity(byHead[material[c]], byHead[material[next]], 1, 1, headCm[c], headCm[next]);
          outward = conductanceSideCm[c] * mean * (headCm[c] - headCm[next]);
          matricSide[c] = 0;
          headSide[c] = outward;
        }
      }
      const fromAbove = i > 0 ? gravityDown[above + j] + matricDown[above + j] : intake[j];
      const rate = (fromAbove + fromInside - outward - gravity - matric - sink[c]) * perVolume[c];
      fromInside = outward;
      const pace = rate < 0 ? -rate : rate;
      if (pace > fastest) fastest = pace;
      if (rate < 0 && k > wetShareOfKSat * kSatCmPerH[c]) {
        const slope = conductivitySlopeCmPerH[c];
        if (k < longest * slope * pace) longest = k / (slope * pace);
      }
    }
  }
  const byTheta = thetaChange / fastest;
  step[0] = byTheta < longest ? byTheta : longest;
}
