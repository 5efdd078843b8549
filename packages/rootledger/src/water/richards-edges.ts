import type { BottomEdge } from "./bottom.js";
import type { Ground } from "./ground.js";
import type { OuterEdge, RichardsOptions, TopEdge } from "./richards-setup.js";
import type { Surface } from "./richards-surface.js";
import type { HeadCurves } from "./richards-table.js";
import { type HeadValues, headValues, lookUpByHead } from "./richards-values.js";

/** A head held at an edge, and what each cell along that edge makes of it: K (cm/h) and matric flux potential (cm2/h). */
export interface HeldHead {
  /** Head by cell of the edge, cm; NaN where none is held. */
  readonly headCm: Float64Array;
  readonly conductivityCmPerH: Float64Array;
  readonly matricFluxCm2PerH: Float64Array;
}

/** Edges and faces prepared for the loop. */
export interface Edges {
  readonly freeDrainage: boolean;
  /** Most that may drain freely, cm/h. */
  readonly mostDrainageCmPerH: number;
  /** By lane. */
  readonly bottom: HeldHead;
  /** By layer. */
  readonly outer: HeldHead;
  /** By lane; where none is held the lane takes what is offered. */
  readonly top: HeldHead;
  /** Inflow at zero surface head: K and potential of each lane's soil at saturation. */
  readonly full: HeldHead;
  /** 1 where the lower, the outer face of a cell and the edges use the potential; 0 where they use the mean K. */
  readonly downByPotential: Uint8Array;
  readonly sideByPotential: Uint8Array;
  readonly edgeByPotential: boolean;
}

export interface EdgeChoice {
  readonly bottom: BottomEdge;
  readonly outer: OuterEdge;
  readonly top: TopEdge;
  readonly between: NonNullable<RichardsOptions["between"]>;
}

/** @example edgesOf(ground, curves, { bottom: { kind: "free-drainage" }, outer: { kind: "closed" }, top: { kind: "offered" }, between: "potential" }) */
export function edgesOf(ground: Ground, curves: readonly HeadCurves[], choice: EdgeChoice): Edges {
  const { lanes, layers, cells } = ground.grid;
  const { material } = ground;
  const { bottom, outer, top, between } = choice;
  const held = (cellsOfEdge: readonly number[], headOf: (position: number) => number): HeldHead => {
    const values = headValues(cellsOfEdge.length);
    cellsOfEdge.forEach((_, position) => {
      values.headCm[position] = headOf(position);
    });
    lookUpByHead(
      values,
      curves,
      Uint8Array.from(cellsOfEdge, (cell) => material[cell]),
    );
    return values;
  };
  const topCells = Array.from({ length: lanes }, (_, j) => j);
  const bottomCells = topCells.map((j) => cells - lanes + j);
  const outerCells = Array.from({ length: layers }, (_, i) => (i + 1) * lanes - 1);
  const alike = (a: number, b: number): number => (between === "potential" && material[a] === material[b] ? 1 : 0);
  return {
    freeDrainage: bottom.kind === "free-drainage" || bottom.kind === "impeding",
    mostDrainageCmPerH: bottom.kind === "impeding" ? bottom.conductivityCmPerH : Number.POSITIVE_INFINITY,
    bottom: held(bottomCells, () => (bottom.kind === "head" ? bottom.headCm : Number.NaN)),
    outer: held(outerCells, () => (outer.kind === "head" ? outer.headCm : Number.NaN)),
    top: held(topCells, (j) => (top.kind === "head" ? (top.headCm[j] ?? Number.NaN) : Number.NaN)),
    full: held(topCells, () => 0),
    downByPotential: Uint8Array.from({ length: cells }, (_, c) => (c + lanes < cells ? alike(c, c + lanes) : 0)),
    sideByPotential: Uint8Array.from({ length: cells }, (_, c) => (c + 1 < cells ? alike(c, c + 1) : 0)),
    edgeByPotential: between === "potential",
  };
}

/** A flow per unit of face, cm/h, into the cell from an edge, and its derivative by the cell's head. */
export interface EdgeFlow {
  flow: number;
  slope: number;
}

/**
 * Flow from a held head at the edge into a cell half a cell away: matric part and gravity (1 downward, 0 sideways,
 * -1 where inward is upward). By potential: (Phi_edge - Phi_cell) / half + gravity x mean K. By mean K:
 * mean K x ((h_edge - h_cell) / half + gravity).
 */
export function edgeFlowInto(
  out: EdgeFlow,
  edges: Edges,
  held: HeldHead,
  position: number,
  values: HeadValues,
  cell: number,
  perHalf: number,
  gravity: number,
): void {
  const k = values.conductivityCmPerH[cell];
  const dk = values.conductivityByHeadPerH[cell];
  const mean = 0.5 * (k + held.conductivityCmPerH[position]);
  if (edges.edgeByPotential) {
    out.flow = (held.matricFluxCm2PerH[position] - values.matricFluxCm2PerH[cell]) * perHalf + gravity * mean;
    out.slope = 0.5 * gravity * dk - k * perHalf;
  } else {
    const gradient = (held.headCm[position] - values.headCm[cell]) * perHalf + gravity;
    out.flow = mean * gradient;
    out.slope = 0.5 * dk * gradient - mean * perHalf;
  }
}

/** What each lane takes at most: the inflow under a surface head of exactly zero. Writes it with its derivative. */
export function surfaceCapacity(
  surface: Surface,
  room: EdgeFlow,
  ground: Ground,
  edges: Edges,
  values: HeadValues,
): void {
  const { lanes, laneAreaCm2, thicknessCm } = ground.grid;
  const perHalf = 2 / thicknessCm[0];
  for (let j = 0; j < lanes; j++) {
    if (!Number.isNaN(edges.top.headCm[j])) {
      surface.capacity[j] = 0;
      surface.capacitySlope[j] = 0;
      continue;
    }
    edgeFlowInto(room, edges, edges.full, j, values, j, perHalf, 1);
    surface.capacity[j] = laneAreaCm2[j] * room.flow;
    surface.capacitySlope[j] = laneAreaCm2[j] * room.slope;
  }
}
