import type { WaterMove } from "../../water/solute-flows.js";
import { type SoluteEdges, type SoluteTransport, soluteSums } from "../../water/solute-transport.js";
import { intakeContentsInto, type SurfaceWater } from "./surface-water.js";

/** Places in a book, mg per tree since the start. */
export const soluteBook = {
  withWater: 0,
  byHand: 1,
  takenUp: 2,
  bottom: 3,
  belowRoots: 4,
  runoff: 5,
  rootlessGround: 6,
  start: 7,
  takenUpToday: 8,
} as const;
const bookSize = 9;

/** What one solute of one tree carries from stretch to stretch; `block` holds it all. */
export interface SoluteStore {
  readonly block: Float64Array;
  /** By slice of the solute's grid, mg. */
  readonly massMg: Float64Array;
  /** Lying on the ground of each lane, mg. */
  readonly surfaceMg: Float64Array;
  readonly book: Float64Array;
}

/** @example soluteStore(256, 8).massMg.length // 256 */
export function soluteStore(slices: number, lanes: number): SoluteStore {
  const block = new Float64Array(slices + lanes + bookSize);
  return {
    block,
    massMg: block.subarray(0, slices),
    surfaceMg: block.subarray(slices, slices + lanes),
    book: block.subarray(slices + lanes),
  };
}

/** How a solute behaves at the edges. */
export interface SoluteKind {
  /** Share of the water's content that roots let in. */
  readonly uptakeShare: number;
  readonly mostUptakeMgPerDay: number;
  /** Content of water that rises through the bottom, mg/cm3. */
  readonly bottomMgPerCm3: number;
}

/** Moves one solute with one stretch of water and books it. */
export type SoluteMover = (store: SoluteStore, move: WaterMove, surface: SurfaceWater, lineMgPerCm3: number) => void;

/**
 * A mover for all trees of a run. What a full cell gives back to the surface lies on its lane until water enters again.
 *
 * @param rootless 1 for lanes without roots
 * @example soluteMover(transport, { uptakeShare: 0, mostUptakeMgPerDay: 0, bottomMgPerCm3: 0 }, rootless)
 */
export function soluteMover(transport: SoluteTransport, kind: SoluteKind, rootless: Uint8Array): SoluteMover {
  const { lanes, coarse } = transport.grid;
  const sums = soluteSums(lanes);
  const fromGround = new Float64Array(lanes);
  const edges: SoluteEdges = {
    intakeMgPerCm3: new Float64Array(lanes),
    bottomMgPerCm3: kind.bottomMgPerCm3,
    uptakeShare: kind.uptakeShare,
    mostUptakeMg: 0,
  };
  return (store, move, surface, lineMgPerCm3) => {
    const { massMg, surfaceMg, book } = store;
    const { laneAreaCm2 } = coarse;
    const pool = intakeContentsInto(edges.intakeMgPerCm3, fromGround, surface, lineMgPerCm3, surfaceMg, laneAreaCm2);
    edges.mostUptakeMg = kind.mostUptakeMgPerDay - book[soluteBook.takenUpToday];
    sums.enteredMg.fill(0);
    sums.returnedMg.fill(0);
    sums.uptakeMg = 0;
    sums.bottomMg = 0;
    sums.belowRootsMg = 0;
    transport.advance(massMg, move, edges, sums);
    book[soluteBook.withWater] += surface.emittedCm3 * lineMgPerCm3;
    book[soluteBook.runoff] += surface.runoffCm3 * pool;
    book[soluteBook.takenUp] += sums.uptakeMg;
    book[soluteBook.takenUpToday] += sums.uptakeMg;
    book[soluteBook.bottom] += sums.bottomMg;
    book[soluteBook.belowRoots] += sums.belowRootsMg;
    for (let j = 0; j < lanes; j++) {
      const entering = surface.faces.intakeCm3[j];
      const dissolved = entering > 0 ? entering * fromGround[j] : 0;
      surfaceMg[j] += sums.returnedMg[j] - dissolved;
      if (rootless[j] === 1) book[soluteBook.rootlessGround] += sums.enteredMg[j] - dissolved;
    }
  };
}

/** Lays mass on the ground, mg by lane. @example layOnGround(store, byLaneMg, rootless) */
export function layOnGround(store: SoluteStore, byLaneMg: Float64Array, rootless: Uint8Array): void {
  for (let j = 0; j < byLaneMg.length; j++) {
    store.surfaceMg[j] += byLaneMg[j];
    store.book[soluteBook.byHand] += byLaneMg[j];
    if (rootless[j] === 1) store.book[soluteBook.rootlessGround] += byLaneMg[j];
  }
}

/** @example massOf(store.massMg) */
export function massOf(values: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i];
  return sum;
}
