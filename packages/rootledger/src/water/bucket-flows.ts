import { type BottomLaw, bottomFlow } from "./bottom.js";
import { faceConductivity, type HeadTable } from "./boundary.js";
import type { BucketValues } from "./bucket-values.js";
import type { Faces } from "./faces.js";
import type { Ground } from "./ground.js";

/**
 * Flow through every face at one moment, cm3/h per tree, and how it changes with theta: a change `here` on the near side and
 * `there` on the far side adds `slopeHere * here - slopeThere * there`. A cell's `down` face is its lower one (positive
 * downward), its `side` face the outer one (positive outward).
 */
export interface FaceFlows {
  readonly down: Float64Array;
  readonly downHere: Float64Array;
  readonly downThere: Float64Array;
  readonly side: Float64Array;
  readonly sideHere: Float64Array;
  readonly sideThere: Float64Array;
  /** What comes into each cell less what leaves it, cm3/h. */
  readonly net: Float64Array;
  /** What `faceConductivity` says of one face between two soils. */
  readonly between: Float64Array;
}

/**
 * How far the flow of a face follows the state at the end of the step: half (second order) while the pair of cells is far
 * from even by then, towards all where it would overshoot. `pace` is the step over the time in which the pair evens out.
 */
export const followShare = (pace: number): number => (pace > 2 ? 1 - 1 / pace : 0.5);

/** @example faceFlows(64).down.length // 64 */
export const faceFlows = (cells: number): FaceFlows => ({
  down: new Float64Array(cells),
  downHere: new Float64Array(cells),
  downThere: new Float64Array(cells),
  side: new Float64Array(cells),
  sideHere: new Float64Array(cells),
  sideThere: new Float64Array(cells),
  net: new Float64Array(cells),
  between: new Float64Array(3),
});

/**
 * Writes the flow through every face and the fastest change of theta that follows, 1/h, to `pace[0]`. Same soil on both sides:
 * gravity with the arithmetic mean conductivity, matric part as the difference of matric flux potential over the distance
 * (Kirchhoff). Two soils: mean conductivity times head gradient. Bottom: `bottomFlow`.
 *
 * @param intake what enters each lane from the surface, cm3/h
 * @param sink what roots and evaporation take from each cell, cm3/h
 */
export function flowsInto(
  flows: FaceFlows,
  ground: Ground,
  faces: Faces,
  values: BucketValues,
  byHead: readonly HeadTable[],
  bottom: BottomLaw,
  theta: Float64Array,
  intake: Float64Array,
  sink: Float64Array,
  pace: Float64Array,
): void {
  const { layers, lanes, laneAreaCm2 } = ground.grid;
  const { thetaSaturated } = ground;
  const { conductanceDownCm, conductanceSideCm, twoSoilsDown, twoSoilsSide, perVolume } = faces;
  const { conductivityCmPerH, conductivitySlopeCmPerH, matricFluxCm2PerH, matricFluxSlopeCm2PerH } = values;
  const { down, downHere, downThere, side, sideHere, sideThere, net } = flows;
  throughBottom(flows, ground, values, bottom);
  let fastest = 1e-12;
  for (let i = 0, c = 0; i < layers; i++) {
    let fromInside = 0;
    for (let j = 0; j < lanes; j++, c++) {
      const potential = matricFluxCm2PerH[c];
      const slope = matricFluxSlopeCm2PerH[c];
      if (i < layers - 1) {
        const below = c + lanes;
        if (twoSoilsDown[c] === 0) {
          const g = conductanceDownCm[c];
          const half = 0.5 * laneAreaCm2[j];
          const k = conductivityCmPerH[c];
          const apart = potential - matricFluxCm2PerH[below];
          const flow = half * (k + conductivityCmPerH[below]) + g * apart;
          if (apart < 0 && flow > 2 * half * k) {
            // Down into wetter soil no more can flow than the drier soil conducts at unit gradient.
            down[c] = 2 * half * k;
            downHere[c] = 2 * half * conductivitySlopeCmPerH[c];
            downThere[c] = 0;
          } else {
            down[c] = flow;
            downHere[c] = half * conductivitySlopeCmPerH[c] + g * slope;
            downThere[c] = g * matricFluxSlopeCm2PerH[below] - half * conductivitySlopeCmPerH[below];
          }
        } else {
          betweenSoilsDown(flows, ground, faces, values, byHead, i, j);
        }
      }
      if (j < lanes - 1) {
        const next = c + 1;
        if (twoSoilsSide[c] === 0) {
          const g = conductanceSideCm[c];
          side[c] = g * (potential - matricFluxCm2PerH[next]);
          sideHere[c] = g * slope;
          sideThere[c] = g * matricFluxSlopeCm2PerH[next];
        } else {
          betweenSoilsSide(flows, ground, faces, values, byHead, c);
        }
      }
      const outward = side[c];
      const gain = (i > 0 ? down[c - lanes] : intake[j]) + fromInside - outward - down[c] - sink[c];
      net[c] = gain;
      fromInside = outward;
      const rate = gain * perVolume[c];
      // A full cell cannot rise: what it does not take goes up or aside.
      const change = rate < 0 ? -rate : thetaSaturated[c] - theta[c] > 1e-6 ? rate : 0;
      if (change > fastest) fastest = change;
    }
  }
  pace[0] = fastest;
}

function betweenSoilsDown(
  flows: FaceFlows,
  ground: Ground,
  faces: Faces,
  values: BucketValues,
  byHead: readonly HeadTable[],
  layer: number,
  lane: number,
): void {
  const { lanes, laneAreaCm2, thicknessCm } = ground.grid;
  const { headCm, headSlopeCm } = values;
  const { between } = flows;
  const c = layer * lanes + lane;
  const below = c + lanes;
  const upper = byHead[ground.material[c]];
  const lower = byHead[ground.material[below]];
  const half = 0.5 * thicknessCm[layer];
  const halfBelow = 0.5 * thicknessCm[layer + 1];
  faceConductivity(between, upper, lower, half, halfBelow, headCm[c], headCm[below]);
  const g = faces.conductanceDownCm[c];
  flows.down[c] = between[0] * (laneAreaCm2[lane] + g * (headCm[c] - headCm[below]));
  flows.downHere[c] = g * between[1] * headSlopeCm[c];
  flows.downThere[c] = g * between[2] * headSlopeCm[below];
}

function betweenSoilsSide(
  flows: FaceFlows,
  ground: Ground,
  faces: Faces,
  values: BucketValues,
  byHead: readonly HeadTable[],
  c: number,
): void {
  const { headCm, headSlopeCm } = values;
  const { between } = flows;
  const next = c + 1;
  const inner = byHead[ground.material[c]];
  const outer = byHead[ground.material[next]];
  faceConductivity(between, inner, outer, 1, 1, headCm[c], headCm[next]);
  const g = faces.conductanceSideCm[c];
  flows.side[c] = g * between[0] * (headCm[c] - headCm[next]);
  flows.sideHere[c] = g * between[1] * headSlopeCm[c];
  flows.sideThere[c] = g * between[2] * headSlopeCm[next];
}

function throughBottom(flows: FaceFlows, ground: Ground, values: BucketValues, bottom: BottomLaw): void {
  const { layers, lanes, laneAreaCm2, thicknessCm } = ground.grid;
  const half = 0.5 * thicknessCm[layers - 1];
  for (let j = 0; j < lanes; j++) {
    const c = (layers - 1) * lanes + j;
    const k = values.conductivityCmPerH[c];
    const kSlope = values.conductivitySlopeCmPerH[c];
    const slope =
      bottom.law === 1 ? 0.5 * kSlope + values.matricFluxSlopeCm2PerH[c] / half : k < bottom.mostCmPerH ? kSlope : 0;
    flows.down[c] = laneAreaCm2[j] * bottomFlow(bottom, j, k, values.matricFluxCm2PerH[c], half);
    flows.downHere[c] = laneAreaCm2[j] * slope;
  }
}
