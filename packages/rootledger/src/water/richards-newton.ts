import { solveInto, solverRoom } from "../numeric/bicgstab.js";
import { gridMatrix } from "../numeric/grid-matrix.js";
import type { Forcing } from "./engine.js";
import type { Ground } from "./ground.js";
import { type Balance, balanceInto, balanceOf } from "./richards-balance.js";
import { type Edges, surfaceCapacity } from "./richards-edges.js";
import type { SinkProcesses } from "./richards-sinks.js";
import { type EmitterShares, type Surface, spreadOffered, surfaceOf } from "./richards-surface.js";
import { driestHeadCm, type HeadCurves, headOfTheta, thetaOfHead } from "./richards-table.js";
import { type HeadValues, lookUpByHead } from "./richards-values.js";

/** One implicit step and what it needs to know. */
export interface Newton {
  readonly balance: Balance;
  readonly surface: Surface;
  /** Flows of all faces at the heads in `values`; returns nothing, fills `balance`, `surface` and the sinks. */
  evaluate(forcing: Forcing): void;
  /**
   * Looks for heads whose theta is the old one plus what flows in during the step. Starts from `values.headCm` and leaves
   * the answer there. Returns the rounds it took, or -1 when it did not get there.
   */
  solve(thetaOld: Float64Array, forcing: Forcing, dtH: number, balanceTheta: number): number;
}

export interface NewtonParts {
  readonly ground: Ground;
  readonly curves: readonly HeadCurves[];
  readonly values: HeadValues;
  readonly edges: Edges;
  readonly shares: EmitterShares;
  readonly sinks: SinkProcesses;
  readonly innerEdge: "mirror" | "open";
}

const mostRounds = 14;
/**
 * Rounds after which the derivatives of K are left out (modified Picard); also when no part of Newton's step helps, as where
 * K leaps within a hair of saturation. Slower, but it then needs no descent to go on.
 */
const newtonRounds = 9;
const mostHalvings = 10;
/** Rounds in which a full step may raise the imbalance if it moves the pond. */
const pondRounds = 6;
/** A dry cell must balance more closely, so that what is carried over stays small beside what it holds; but not without end. */
const leastFilled = 0.1;
/**
 * Keep the matrix regular where soil is all but empty, and where it is full and enclosed (there with about the storage of
 * water and grains under pressure). They touch the way to the answer, not the answer.
 */
const leastCapacityPerCm = 1e-11;
const leastFullCapacityPerCm = 1e-7;
/** Move of the bounded head, in half heads, from which the water it stands for is looked up. */
const largeMove = 0.25;
const solverLimits = { tolerance: 1e-3, most: 200 };

/** @example newton(parts).solve(thetaOld, forcing, 0.1, 1e-6) */
export function newton(parts: NewtonParts): Newton {
  const { ground, curves, values, edges, shares, sinks, innerEdge } = parts;
  const { layers, lanes, cells, volumeCm3 } = ground.grid;
  const { material, thetaResidual, thetaSaturated } = ground;
  const matrix = gridMatrix({ rows: layers, columns: lanes, extras: 2 * lanes });
  const room = solverRoom(cells);
  const balance = balanceOf(layers, lanes);
  const surface = surfaceOf(lanes);
  const residual = new Float64Array(cells);
  const step = new Float64Array(cells);
  const headBefore = new Float64Array(cells);
  const pondedBefore = new Uint8Array(lanes);
  const thetaBefore = new Float64Array(cells);
  const capacityUsed = new Float64Array(cells);
  const thetaDriest = Float64Array.from(material, (m) => thetaOfHead(curves[m], -driestHeadCm));
  let slopeShare = 1;

  function evaluate(forcing: Forcing): void {
    lookUpByHead(values, curves, material);
    sinks.evaluate(forcing);
    surfaceCapacity(surface, balance.edge, ground, edges, values);
    spreadOffered(surface, shares, forcing.emitterCm3PerH, forcing.rainCm3PerH, innerEdge);
    balanceInto(balance, matrix, ground, edges, values, surface, sinks.sinks, slopeShare);
  }

  /**
   * Fills the residual (cm3/h, with its sign turned for the right side) and returns the sum of its squares. What earlier
   * steps left a cell short of its driest theta (less than `balanceTheta` each) no head can stand for: it is not asked for
   * here and is made good by what flows in.
   */
  function misfit(thetaOld: Float64Array, forcing: Forcing, dtH: number): number {
    evaluate(forcing);
    const { theta } = values;
    const { out } = balance;
    const perH = 1 / dtH;
    let squares = 0;
    for (let c = 0; c < cells; c++) {
      const old = thetaOld[c] < thetaDriest[c] ? thetaDriest[c] : thetaOld[c];
      const r = (theta[c] - old) * volumeCm3[c] * perH + out[c];
      residual[c] = -r;
      squares += r * r;
    }
    return squares;
  }

  function pondMoved(): boolean {
    for (let j = 0; j < lanes; j++) if (surface.ponded[j] !== pondedBefore[j]) return true;
    return false;
  }

  /** Largest imbalance of a cell, as a change of theta over the share of its pores that hold mobile water. */
  function worstTheta(dtH: number): number {
    const { theta } = values;
    let worst = 0;
    for (let c = 0; c < cells; c++) {
      const r = residual[c] < 0 ? -residual[c] : residual[c];
      const filled = (theta[c] - thetaResidual[c]) / (thetaSaturated[c] - thetaResidual[c]);
      const scaled = (r * dtH) / (volumeCm3[c] * (filled > leastFilled ? filled : leastFilled));
      if (!(scaled <= worst)) worst = scaled;
    }
    return worst;
  }

  function solve(thetaOld: Float64Array, forcing: Forcing, dtH: number, balanceTheta: number): number {
    const { headCm, capacityPerCm } = values;
    const { centre } = matrix;
    slopeShare = 1;
    let picard = false;
    let squares = misfit(thetaOld, forcing, dtH);
    for (let round = 0; round <= mostRounds; round++) {
      if (!Number.isFinite(squares)) return -1;
      if (worstTheta(dtH) < balanceTheta) return round;
      if (round === mostRounds) return -1;
      const perH = 1 / dtH;
      for (let c = 0; c < cells; c++) {
        const halfTheta = 0.5 * (thetaResidual[c] + thetaSaturated[c]);
        const least = values.theta[c] > halfTheta ? leastFullCapacityPerCm : leastCapacityPerCm;
        capacityUsed[c] = capacityPerCm[c] > least ? capacityPerCm[c] : least;
        centre[c] += volumeCm3[c] * capacityUsed[c] * perH;
      }
      if (solveInto(step, matrix, residual, room, solverLimits) < 0) return -1;
      headBefore.set(headCm);
      pondedBefore.set(surface.ponded);
      thetaBefore.set(values.theta);
      const before = squares;
      slopeShare = picard || round + 1 >= newtonRounds ? 0 : 1;
      let share = 1;
      for (let halving = 0; ; halving++) {
        moveHeads(share);
        squares = misfit(thetaOld, forcing, dtH);
        if (squares < before * (1 - 0.1 * share)) break;
        // Where the pond has moved the balance has other branches now; the next round starts from them.
        if (halving === 0 && round < pondRounds && pondMoved()) break;
        if (picard) break;
        if (halving === mostHalvings) {
          picard = true;
          slopeShare = 0;
          headCm.set(headBefore);
          squares = misfit(thetaOld, forcing, dtH);
          break;
        }
        share *= 0.5;
      }
    }
    return -1;
  }

  /**
   * Adds the step to the heads in a bounded measure of them, p = h / (1 + |h| / halfHead): equal steps of p move about equal
   * amounts of water from dry to wet, so a dry cell in front of a wetting front does not overshoot. A large step towards
   * wet goes no further than the water it stands for fills the cell, and no unsaturated cell passes zero head at once.
   * Source of the transform: Williams, Miller & Kelley (2000), Water Resour. Res. 36:2107-2120 (form IT2).
   */
  function moveHeads(share: number): void {
    const { headCm } = values;
    for (let c = 0; c < cells; c++) {
      const h = headBefore[c];
      const d = share * step[c];
      if (h >= 0 && h + d >= 0) {
        headCm[c] = h + d;
        continue;
      }
      const soil = curves[material[c]];
      const half = soil.halfHeadCm;
      const narrowing = h < 0 ? 1 / (1 - h / half) : 1;
      const p = h * narrowing;
      let next = p + d * narrowing * narrowing;
      if (next <= -half) next = 0.5 * (p - half);
      let moved = next < 0 ? next / (1 + next / half) : 0;
      if (next - p > largeMove * half || (d > 0 && capacityUsed[c] === leastCapacityPerCm)) {
        const filled = headOfTheta(soil, thetaBefore[c] + capacityUsed[c] * d);
        if (filled < moved || capacityUsed[c] === leastCapacityPerCm) moved = filled;
      }
      headCm[c] = moved;
    }
  }

  return { balance, surface, evaluate, solve };
}
