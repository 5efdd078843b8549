import { faceContentsInto } from "./solute-faces.js";
import { flowsInto, soluteFlows, type WaterMove } from "./solute-flows.js";
import type { SoluteGrid } from "./solute-grid.js";
import { exchangeInto, type Spreading } from "./solute-spread.js";

/** What crosses the edges during one stretch. */
export interface SoluteEdges {
  /** Content of the water that enters each lane from the surface, mg/cm3. */
  readonly intakeMgPerCm3: Float64Array;
  /** Content of water that rises through the bottom, mg/cm3. */
  bottomMgPerCm3: number;
  /** Share of the soil water's content that roots let in: 0 for salt that they keep out, 1 for nitrate. */
  uptakeShare: number;
  /** Most that the tree takes in the stretch, mg. */
  mostUptakeMg: number;
}

/** Sums since last cleared, mg per tree. */
export interface SoluteSums {
  /** Entered from the surface, by lane. */
  readonly enteredMg: Float64Array;
  /** Given back to the surface by full cells, by lane. */
  readonly returnedMg: Float64Array;
  uptakeMg: number;
  /** Through the bottom, net downward. */
  bottomMg: number;
  /** Through the lower edge of the rooted slices, net downward. */
  belowRootsMg: number;
  steps: number;
}

/** A solute that moves with the water. */
export interface SoluteTransport {
  readonly grid: SoluteGrid;
  /** Moves what is dissolved with one stretch of water. Changes `massMg` (by slice) and adds to `sums`. */
  advance(massMg: Float64Array, move: WaterMove, edges: SoluteEdges, sums: SoluteSums): void;
}

/** What a solute's movement follows from. */
export interface TransportSetup {
  readonly grid: SoluteGrid;
  readonly spreading: Spreading;
  /** By cell of the water's grid. */
  readonly thetaSaturated: Float64Array;
  /** Layers of the water's grid that hold roots. */
  readonly rootedLayers: number;
}

/** Largest part of a slice's water that may leave or be exchanged in one step; half keeps every content between its neighbours'. */
const mostShare = 0.45;

/** @example soluteSums(8).bottomMg // 0 */
export const soluteSums = (lanes: number): SoluteSums => ({
  enteredMg: new Float64Array(lanes),
  returnedMg: new Float64Array(lanes),
  uptakeMg: 0,
  bottomMg: 0,
  belowRootsMg: 0,
  steps: 0,
});

/**
 * Moves a solute with the water that an engine moved: d(theta C)/dt = div(theta D grad C) - div(q C) - uptake, finite volumes on slices of the
 * water's cells, explicit steps as long as the flows allow. What leaves a slice enters the next, so the account closes to rounding.
 *
 * @throws RangeError in `advance` where water flows through a cell that holds none.
 * @example soluteTransport({ grid, spreading: usualSpreading, thetaSaturated, rootedLayers: 5 }).advance(mass, move, edges, sums)
 */
export function soluteTransport(setup: TransportSetup): SoluteTransport {
  const { grid, spreading, thetaSaturated, rootedLayers } = setup;
  const { slices, lanes, cells, layerOf } = grid;
  const flows = soluteFlows(grid);
  const exchange = { down: new Float64Array(cells), side: new Float64Array(cells) };
  const water = new Float64Array(cells);
  const content = new Float64Array(cells);
  const downContent = new Float64Array(cells);
  const sideContent = new Float64Array(cells);
  let lastRooted = -1;
  for (let s = 0; s < slices; s++) if (layerOf[s] < rootedLayers) lastRooted = s;

  function advance(massMg: Float64Array, move: WaterMove, edges: SoluteEdges, sums: SoluteSums): void {
    if (!(move.hours > 0)) return;
    flowsInto(flows, grid, move);
    exchangeInto(exchange, grid, flows, spreading, thetaSaturated);
    const steps = Math.ceil((move.hours * fastest(move.hours, edges.uptakeShare)) / mostShare) || 1;
    const stepH = move.hours / steps;
    for (let n = 0; n < steps; n++) {
      for (let f = 0; f < cells; f++) {
        water[f] = flows.waterCm3[f] + flows.gainCm3PerH[f] * stepH * n;
        content[f] = massMg[f] / water[f];
      }
      faceContentsInto(downContent, sideContent, content, grid, flows, water, stepH);
      carry(massMg, edges, sums, stepH);
      takeUp(massMg, edges, sums, stepH, edges.mostUptakeMg / steps);
    }
    sums.steps += steps;
  }

  /** Fastest share of any slice's water that leaves it, 1/h. */
  function fastest(hours: number, uptakeShare: number): number {
    const { down, side, uptake, waterCm3, gainCm3PerH, intake, crack } = flows;
    let most = 0;
    for (let s = 0; s < slices; s++) {
      for (let j = 0; j < lanes; j++) {
        const f = s * lanes + j;
        const a = exchange.down[f] + exchange.side[f];
        let leaving = a + uptake[f] * uptakeShare;
        if (down[f] > 0) leaving += down[f];
        if (side[f] > 0) leaving += side[f];
        if (s > 0) leaving += exchange.down[f - lanes] + (down[f - lanes] < 0 ? -down[f - lanes] : 0);
        if (j > 0) leaving += exchange.side[f - 1] + (side[f - 1] < 0 ? -side[f - 1] : 0);
        if (s === 0) leaving += crack[j] + (intake[j] < 0 ? -intake[j] : 0);
        const after = waterCm3[f] + gainCm3PerH[f] * hours;
        const least = after < waterCm3[f] ? after : waterCm3[f];
        if (leaving > 0 && !(least > 0)) {
          throw new RangeError(
            `soluteTransport requires water where water flows: got ${least} cm3 in slice ${s}, lane ${j}`,
          );
        }
        if (leaving > most * least) most = leaving / least;
      }
    }
    return most;
  }

  function carry(massMg: Float64Array, edges: SoluteEdges, sums: SoluteSums, stepH: number): void {
    const { down, side, intake, crack, crackFrom, crackTo } = flows;
    for (let s = 0; s < slices; s++) {
      const bottom = s + 1 === slices;
      for (let j = 0; j < lanes; j++) {
        const f = s * lanes + j;
        let moved = down[f] * (bottom && down[f] < 0 ? edges.bottomMgPerCm3 : downContent[f]);
        if (!bottom) moved += exchange.down[f] * (content[f] - content[f + lanes]);
        moved *= stepH;
        massMg[f] -= moved;
        if (bottom) sums.bottomMg += moved;
        else massMg[f + lanes] += moved;
        if (s === lastRooted) sums.belowRootsMg += moved;
        if (j + 1 < lanes) {
          const across = (side[f] * sideContent[f] + exchange.side[f] * (content[f] - content[f + 1])) * stepH;
          massMg[f] -= across;
          massMg[f + 1] += across;
        }
      }
    }
    for (let j = 0; j < lanes; j++) {
      if (intake[j] >= 0) {
        const entered = intake[j] * edges.intakeMgPerCm3[j] * stepH;
        massMg[j] += entered;
        sums.enteredMg[j] += entered;
      } else {
        const returned = -intake[j] * content[j] * stepH;
        massMg[j] -= returned;
        sums.returnedMg[j] += returned;
      }
      if (crack[j] === 0) continue;
      const cracked = crack[j] * (intake[j] > 0 ? edges.intakeMgPerCm3[j] : content[j]) * stepH;
      massMg[j] -= cracked;
      const each = cracked / (crackTo - crackFrom);
      for (let s = crackFrom; s < crackTo; s++) massMg[s * lanes + j] += each;
      if (crackFrom > lastRooted) sums.belowRootsMg += cracked;
    }
  }

  function takeUp(massMg: Float64Array, edges: SoluteEdges, sums: SoluteSums, stepH: number, mostMg: number): void {
    if (edges.uptakeShare === 0) return;
    const { uptake } = flows;
    const perContent = edges.uptakeShare * stepH;
    let offered = 0;
    for (let f = 0; f < cells; f++) offered += uptake[f] * content[f] * perContent;
    if (offered === 0) return;
    const kept = offered > mostMg ? mostMg / offered : 1;
    for (let f = 0; f < cells; f++) massMg[f] -= uptake[f] * content[f] * perContent * kept;
    sums.uptakeMg += offered * kept;
  }

  return { grid, advance };
}
