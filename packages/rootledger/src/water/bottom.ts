import type { Ground } from "./ground.js";

/**
 * Lower edge of the ground. `free-drainage`: unit gradient. `closed`: nothing passes. `head`: head held at the lower face,
 * cm (0: a water table there), water may rise. `impeding`: drains freely until the layer below can take no more.
 */
export type BottomEdge =
  | { readonly kind: "free-drainage" }
  | { readonly kind: "closed" }
  | { readonly kind: "head"; readonly headCm: number }
  | { readonly kind: "impeding"; readonly conductivityCmPerH: number };

/** The bottom edge prepared for the loop: one of three laws and its numbers. */
export interface BottomLaw {
  /** 0: K up to `mostCmPerH`; 1: towards a held head. */
  readonly law: 0 | 1;
  readonly mostCmPerH: number;
  /** By lane, of the soil at the bottom: its conductivity and matric flux potential at the held head. */
  readonly heldConductivityCmPerH: Float64Array;
  readonly heldPotentialCm2PerH: Float64Array;
}

/** @example bottomLaw({ kind: "free-drainage" }, ground).mostCmPerH // Infinity */
export function bottomLaw(edge: BottomEdge, ground: Ground): BottomLaw {
  const { lanes, cells } = ground.grid;
  const heldConductivityCmPerH = new Float64Array(lanes);
  const heldPotentialCm2PerH = new Float64Array(lanes);
  if (edge.kind === "head") {
    for (let j = 0; j < lanes; j++) {
      const table = ground.tables[ground.material[cells - lanes + j]];
      const { curve, intervals } = table;
      const theta = curve.thetaAt(edge.headCm);
      const point = ((theta - table.thetaResidual) / (table.thetaSaturated - table.thetaResidual)) * intervals;
      const k = point >= intervals ? intervals - 1 : Math.floor(point);
      const part = point - k;
      const between = (column: Float64Array): number => column[k] + part * (column[k + 1] - column[k]);
      heldConductivityCmPerH[j] = between(table.conductivityCmPerH);
      heldPotentialCm2PerH[j] = between(table.matricFluxCm2PerH);
    }
  }
  return {
    law: edge.kind === "head" ? 1 : 0,
    mostCmPerH:
      edge.kind === "closed" ? 0 : edge.kind === "impeding" ? edge.conductivityCmPerH : Number.POSITIVE_INFINITY,
    heldConductivityCmPerH,
    heldPotentialCm2PerH,
  };
}

/**
 * Flow out of the bottom of one lane, cm/h, negative where water rises.
 *
 * @param halfCm half thickness of the bottom layer
 */
export function bottomFlow(law: BottomLaw, lane: number, k: number, potential: number, halfCm: number): number {
  if (law.law === 0) return k < law.mostCmPerH ? k : law.mostCmPerH;
  return 0.5 * (k + law.heldConductivityCmPerH[lane]) + (potential - law.heldPotentialCm2PerH[lane]) / halfCm;
}
