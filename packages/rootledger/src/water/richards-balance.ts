import type { GridMatrix } from "../numeric/grid-matrix.js";
import type { Ground } from "./ground.js";
import { type EdgeFlow, type Edges, edgeFlowInto } from "./richards-edges.js";
import type { Sinks } from "./richards-sinks.js";
import type { Surface } from "./richards-surface.js";
import type { HeadValues } from "./richards-values.js";

/**
 * Water balance of every cell. `out` is what leaves a cell less what enters it, cm3/h; flows through the lower face
 * (downward), the outer face (outward) and the surface (inward, by lane) are kept for the sums.
 */
export interface Balance {
  readonly out: Float64Array;
  readonly down: Float64Array;
  readonly side: Float64Array;
  readonly top: Float64Array;
  readonly edge: EdgeFlow;
}

/** @example balanceOf(8, 8).down.length // 64 */
export function balanceOf(layers: number, lanes: number): Balance {
  const cells = layers * lanes;
  return {
    out: new Float64Array(cells),
    down: new Float64Array(cells),
    side: new Float64Array(cells),
    top: new Float64Array(lanes),
    edge: { flow: 0, slope: 0 },
  };
}

/**
 * Flows of all faces and the derivatives of each cell's balance by all heads it depends on; storage is added elsewhere.
 * Within one soil: (Phi_a - Phi_b) / distance, plus the arithmetic mean K for gravity. Between soils, or when asked for:
 * mean K x (dh / distance + gravity). `slopeShare` 1 gives Newton's matrix; 0 leaves out the derivatives of K
 * (modified Picard, Celia, Bouloutas & Zarba 1990, Water Resour. Res. 26:1483-1496).
 */
export function balanceInto(
  balance: Balance,
  matrix: GridMatrix,
  ground: Ground,
  edges: Edges,
  values: HeadValues,
  surface: Surface,
  sinks: Sinks,
  slopeShare: number,
): void {
  const { out } = balance;
  const { centre } = matrix;
  const cells = out.length;
  for (let c = 0; c < cells; c++) {
    out[c] = sinks.root[c];
    centre[c] = sinks.slope[c];
  }
  surfaceInto(balance, matrix, ground, edges, values, surface, sinks);
  sideInto(balance, matrix, ground, edges, values, slopeShare);
  downInto(balance, matrix, ground, edges, values, slopeShare);
  bottomInto(balance, matrix, ground, edges, values, slopeShare);
}

function sideInto(
  balance: Balance,
  matrix: GridMatrix,
  ground: Ground,
  edges: Edges,
  values: HeadValues,
  slopeShare: number,
): void {
  const { layers, lanes, thicknessCm, sideLengthCm, laneDistanceCm, laneEdgesCm } = ground.grid;
  const { headCm: h, conductivityCmPerH: k, conductivityByHeadPerH: dk, matricFluxCm2PerH: phi } = values;
  const { out, side, edge } = balance;
  const { centre, before, after } = matrix;
  const byPotential = edges.sideByPotential;
  const halfShare = 0.5 * slopeShare;
  const perHalf = 2 / (laneEdgesCm[lanes] - laneEdgesCm[lanes - 1]);
  for (let i = 0; i < layers; i++) {
    const first = i * lanes;
    for (let j = 0; j < lanes - 1; j++) {
      const c = first + j;
      const n = c + 1;
      const perDistance = (sideLengthCm[j] * thicknessCm[i]) / laneDistanceCm[j];
      let flow: number;
      let byInner: number;
      let byOuter: number;
      if (byPotential[c] === 1) {
        flow = (phi[c] - phi[n]) * perDistance;
        byInner = k[c] * perDistance;
        byOuter = -k[n] * perDistance;
      } else {
        const apart = (h[c] - h[n]) * perDistance;
        const mean = 0.5 * (k[c] + k[n]);
        flow = mean * apart;
        byInner = halfShare * dk[c] * apart + mean * perDistance;
        byOuter = halfShare * dk[n] * apart - mean * perDistance;
      }
      side[c] = flow;
      out[c] += flow;
      out[n] -= flow;
      centre[c] += byInner;
      after[c] = byOuter;
      before[n] = -byInner;
      centre[n] -= byOuter;
    }
    const last = first + lanes - 1;
    side[last] = 0;
    if (Number.isNaN(edges.outer.headCm[i])) continue;
    const area = sideLengthCm[lanes - 1] * thicknessCm[i];
    edgeFlowInto(edge, edges, edges.outer, i, values, last, perHalf, 0);
    side[last] = -edge.flow * area;
    out[last] -= edge.flow * area;
    centre[last] -= edge.slope * area;
  }
}

function downInto(
  balance: Balance,
  matrix: GridMatrix,
  ground: Ground,
  edges: Edges,
  values: HeadValues,
  slopeShare: number,
): void {
  const { layers, lanes, laneAreaCm2, thicknessCm } = ground.grid;
  const { headCm: h, conductivityCmPerH: k, conductivityByHeadPerH: dk, matricFluxCm2PerH: phi } = values;
  const { out, down } = balance;
  const { centre, above, below } = matrix;
  const byPotential = edges.downByPotential;
  const halfShare = 0.5 * slopeShare;
  for (let i = 0; i < layers - 1; i++) {
    const perDistance = 2 / (thicknessCm[i] + thicknessCm[i + 1]);
    for (let j = 0; j < lanes; j++) {
      const c = i * lanes + j;
      const b = c + lanes;
      const area = laneAreaCm2[j];
      const mean = 0.5 * (k[c] + k[b]);
      let flow: number;
      let byUpper: number;
      let byLower: number;
      if (byPotential[c] === 1) {
        flow = ((phi[c] - phi[b]) * perDistance + mean) * area;
        byUpper = (k[c] * perDistance + halfShare * dk[c]) * area;
        byLower = (halfShare * dk[b] - k[b] * perDistance) * area;
      } else {
        const gradient = (h[c] - h[b]) * perDistance + 1;
        flow = mean * gradient * area;
        byUpper = (halfShare * dk[c] * gradient + mean * perDistance) * area;
        byLower = (halfShare * dk[b] * gradient - mean * perDistance) * area;
      }
      down[c] = flow;
      out[c] += flow;
      out[b] -= flow;
      centre[c] += byUpper;
      below[c] = byLower;
      above[b] = -byUpper;
      centre[b] -= byLower;
    }
  }
}

function bottomInto(
  balance: Balance,
  matrix: GridMatrix,
  ground: Ground,
  edges: Edges,
  values: HeadValues,
  slopeShare: number,
): void {
  const { layers, lanes, cells, laneAreaCm2, thicknessCm } = ground.grid;
  const { out, down, edge } = balance;
  const { centre } = matrix;
  const perHalf = 2 / thicknessCm[layers - 1];
  for (let j = 0; j < lanes; j++) {
    const c = cells - lanes + j;
    const area = laneAreaCm2[j];
    down[c] = 0;
    if (edges.freeDrainage) {
      const free = values.conductivityCmPerH[c];
      const blocked = free > edges.mostDrainageCmPerH;
      down[c] = area * (blocked ? edges.mostDrainageCmPerH : free);
      if (!blocked) centre[c] += slopeShare * area * values.conductivityByHeadPerH[c];
    } else if (!Number.isNaN(edges.bottom.headCm[j])) {
      edgeFlowInto(edge, edges, edges.bottom, j, values, c, perHalf, -1);
      down[c] = -edge.flow * area;
      centre[c] -= edge.slope * area;
    }
    out[c] += down[c];
  }
}

/** Inflow of each lane with its derivatives, and evaporation. */
function surfaceInto(
  balance: Balance,
  matrix: GridMatrix,
  ground: Ground,
  edges: Edges,
  values: HeadValues,
  surface: Surface,
  sinks: Sinks,
): void {
  const { lanes, laneAreaCm2, thicknessCm } = ground.grid;
  const { out, top, edge } = balance;
  const { centre } = matrix;
  const perHalf = 2 / thicknessCm[0];
  matrix.extraCount = 0;
  for (let j = 0; j < lanes; j++) {
    if (!Number.isNaN(edges.top.headCm[j])) {
      edgeFlowInto(edge, edges, edges.top, j, values, j, perHalf, 1);
      top[j] = edge.flow * laneAreaCm2[j];
      centre[j] -= edge.slope * laneAreaCm2[j];
    } else {
      top[j] = surface.intake[j];
      if (surface.ponded[j] === 1) {
        centre[j] -= surface.capacitySlope[j];
      } else {
        pondInto(matrix, j, surface.outerPondFrom[j], surface.outerPondTo[j], surface.capacitySlope);
        pondInto(matrix, j, surface.innerPondFrom[j], surface.innerPondTo[j], surface.capacitySlope);
      }
    }
    out[j] += sinks.evaporation[j] - top[j];
  }
}

/** The lane where a pond ends takes what the pond's lanes leave, so it depends on each of them. */
function pondInto(matrix: GridMatrix, row: number, from: number, to: number, slope: Float64Array): void {
  let e = matrix.extraCount;
  for (let column = from; column <= to; column++) {
    matrix.extraRow[e] = row;
    matrix.extraColumn[e] = column;
    matrix.extraValue[e] = slope[column];
    e++;
  }
  matrix.extraCount = e;
}
