import type { WaterSetup } from "./bucket.js";

/** Outer edge of the ground: a mirror plane or a wall, or a head held at the outer face of the last lane, cm. */
export type OuterEdge = { readonly kind: "closed" } | { readonly kind: "head"; readonly headCm: number };

/** Soil surface: every lane takes the water offered to it, except those whose surface head is held (cm; null: not held). */
export type TopEdge =
  | { readonly kind: "offered" }
  | { readonly kind: "head"; readonly headCm: readonly (number | null)[] };

/** How hard the solver works. */
export interface RichardsOptions {
  /**
   * Flow between cells of one soil: `potential` (default) takes the matric part from the difference of matric flux
   * potential, `mean` from the arithmetic mean K and the difference of heads. Both tend to the same answer; in the grid
   * study the first reached it with 34 lanes, the second came as near with about 300. Between two soils it is the mean.
   */
  readonly between?: "potential" | "mean";
  /** Estimated error of theta that one time step may make in one cell, m3/m3; default 0.01. */
  readonly thetaErrorPerStep?: number;
  /**
   * Water a cell may be out of balance when a step is accepted, as a change of theta over the filled share of its mobile pores,
   * m3/m3; default 1e-5. It is carried over, not lost.
   */
  readonly balanceTheta?: number;
  /** Longest time step, h; default 1. */
  readonly longestStepH?: number;
  /** Emitter water enters the lanes that end within this distance of the line, and at least one, cm; default 2. */
  readonly emitterHalfWidthCm?: number;
}

/** The scenario's ground, roots, lines and processes, with the edges and the solver's options. */
export interface RichardsSetup extends Omit<WaterSetup, "thetaDoubtPerStep" | "bypass"> {
  /** Default closed. */
  readonly outer?: OuterEdge;
  /** Default offered. */
  readonly top?: TopEdge;
  readonly options?: RichardsOptions;
}
