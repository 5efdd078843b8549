import { type BottomLaw, bottomFlow } from "./bottom.js";
import { faceConductivity, type HeadTable } from "./boundary.js";
import type { BucketValues, RiseTable } from "./bucket-values.js";
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
  /** What comes into each cell less what leaves it, cm3/h; of the first layer without what the surface gives. */
  readonly net: Float64Array;
  /** How much less comes into each cell through its upper and lower face as its own theta rises, cm3/h per unit of theta. */
  readonly back: Float64Array;
  /** What `faceConductivity` says of one face between two soils. */
  readonly between: Float64Array;
}

/**
 * How far the flow of a face follows the state at the end of the step: half (second order) while the pair of cells is far
 * from even by then, towards all where it would overshoot. `pace` is the step over the time in which the pair evens out.
 */
export const followShare = (pace: number): number => (pace > 4 ? 1 - 2 / pace : 0.5);

/** @example faceFlows(64).down.length // 64 */
export const faceFlows = (cells: number): FaceFlows => ({
  down: new Float64Array(cells),
  downHere: new Float64Array(cells),
  downThere: new Float64Array(cells),
  side: new Float64Array(cells),
  sideHere: new Float64Array(cells),
  sideThere: new Float64Array(cells),
  net: new Float64Array(cells),
  back: new Float64Array(cells),
  between: new Float64Array(3),
});

/**
 * Looks up every cell at `theta` and writes values, the flow through every face, and what that leaves in each cell before
 * water from the surface. Same soil on both sides: gravity with the arithmetic mean conductivity, matric part as the
 * difference of matric flux potential over the distance (Kirchhoff). Two soils: mean conductivity times head gradient.
 * Bottom: `bottomFlow`.
 *
 * @param sink what roots and evaporation take from each cell, cm3/h
 */
export function flowsInto(
  flows: FaceFlows,
  ground: Ground,
  faces: Faces,
  values: BucketValues,
  table: RiseTable,
  byHead: readonly HeadTable[],
  bottom: BottomLaw,
  theta: Float64Array,
  sink: Float64Array,
): void {
  const { layers, lanes, laneAreaCm2 } = ground.grid;
  const { thetaResidual, pointsPerTheta, intervals } = ground;
  const { conductanceDownCm, conductanceSideCm, twoSoilsDown, twoSoilsSide } = faces;
  const { conductivityCmPerH, conductivitySlopeCmPerH, matricFluxCm2PerH, matricFluxSlopeCm2PerH } = values;
  const { headCm, headSlopeCm } = values;
  const { lookup, start } = table;
  const { down, downHere, downThere, side, sideHere, sideThere, net, back } = flows;
  const oneSoil = byHead.length === 0;
  for (let i = 0, c = 0; i < layers; i++) {
    let gainInside = 0;
    let potentialInside = 0;
    let slopeInside = 0;
    for (let j = 0; j < lanes; j++, c++) {
      const perTheta = pointsPerTheta[c];
      const point = (theta[c] - thetaResidual[c]) * perTheta;
      let p = point | 0;
      if (p >= intervals) p = intervals - 1;
      const part = point - p;
      const at = start[c] + 6 * p;
      const kRise = lookup[at + 1];
      const headRise = lookup[at + 3];
      const potentialRise = lookup[at + 5];
      const k = lookup[at] + part * kRise;
      const kSlope = perTheta * kRise;
      const potential = lookup[at + 4] + part * potentialRise;
      const slope = perTheta * potentialRise;
      conductivityCmPerH[c] = k;
      conductivitySlopeCmPerH[c] = kSlope;
      matricFluxCm2PerH[c] = potential;
      matricFluxSlopeCm2PerH[c] = slope;
      headCm[c] = lookup[at + 2] + part * headRise;
      headSlopeCm[c] = perTheta * headRise;
      let gain = -sink[c];
      if (i > 0) {
        const u = c - lanes;
        let fromAbove: number;
        let here: number;
        let there: number;
        if (oneSoil || twoSoilsDown[u] === 0) {
          const g = conductanceDownCm[u];
          const area = laneAreaCm2[j];
          const kAbove = conductivityCmPerH[u];
          const apart = matricFluxCm2PerH[u] - potential;
          fromAbove = 0.5 * area * (kAbove + k) + g * apart;
          here = 0.5 * area * conductivitySlopeCmPerH[u] + g * matricFluxSlopeCm2PerH[u];
          there = g * slope - 0.5 * area * kSlope;
          if (apart < 0 && fromAbove > area * kAbove) {
            // Down into wetter soil no more can flow than the drier soil conducts at unit gradient.
            fromAbove = area * kAbove;
            downHere[u] = area * conductivitySlopeCmPerH[u];
            downThere[u] = 0;
          } else {
            downHere[u] = here;
            downThere[u] = there;
          }
          down[u] = fromAbove;
        } else {
          betweenSoils(flows, ground, faces, values, byHead, u, c);
          fromAbove = down[u];
          here = downHere[u];
          there = downThere[u];
        }
        gain += fromAbove;
        // Without that limit: two cells alike are on either side of it by a last digit, and the step must not jump.
        back[c] = there > 0 ? there : 0;
        net[u] -= fromAbove;
        back[u] += here;
      } else back[c] = 0;
      if (j > 0) {
        const inner = c - 1;
        let fromInside: number;
        if (oneSoil || twoSoilsSide[inner] === 0) {
          const g = conductanceSideCm[inner];
          fromInside = g * (potentialInside - potential);
          side[inner] = fromInside;
          sideHere[inner] = g * slopeInside;
          sideThere[inner] = g * slope;
        } else {
          betweenSoils(flows, ground, faces, values, byHead, inner, c);
          fromInside = side[inner];
        }
        gain += fromInside;
        net[inner] = gainInside - fromInside;
      }
      gainInside = gain;
      potentialInside = potential;
      slopeInside = slope;
    }
    net[c - 1] = gainInside;
  }
  throughBottom(flows, ground, values, bottom);
  const from = (layers - 1) * lanes;
  for (let c = from; c < from + lanes; c++) {
    net[c] -= down[c];
    back[c] += downHere[c];
  }
}

/** Mean conductivity times head gradient through the face of `c` to the cell `next`, below it or outside. */
function betweenSoils(
  flows: FaceFlows,
  ground: Ground,
  faces: Faces,
  values: BucketValues,
  byHead: readonly HeadTable[],
  c: number,
  next: number,
): void {
  const { lanes, laneAreaCm2, thicknessCm } = ground.grid;
  const { headCm, headSlopeCm } = values;
  const { between } = flows;
  const layer = (c / lanes) | 0;
  const below = ((next / lanes) | 0) - layer;
  const half = below * 0.5 * thicknessCm[layer] + 1 - below;
  const halfNext = below * 0.5 * thicknessCm[layer + below] + 1 - below;
  faceConductivity(
    between,
    byHead[ground.material[c]],
    byHead[ground.material[next]],
    half,
    halfNext,
    headCm[c],
    headCm[next],
  );
  const g = (below === 1 ? faces.conductanceDownCm : faces.conductanceSideCm)[c];
  const gravity = below * laneAreaCm2[c % lanes];
  (below === 1 ? flows.down : flows.side)[c] = between[0] * (gravity + g * (headCm[c] - headCm[next]));
  (below === 1 ? flows.downHere : flows.sideHere)[c] = g * between[1] * headSlopeCm[c];
  (below === 1 ? flows.downThere : flows.sideThere)[c] = g * between[2] * headSlopeCm[next];
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
