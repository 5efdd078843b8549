import { bisect } from "../numeric/bisect.js";
import { solveTridiagonal } from "../numeric/tridiagonal.js";
import type { SoilCurve } from "./curve.js";

/** One layer of a draining column. */
export interface DrainLayer {
  readonly curve: SoilCurve;
  readonly thicknessCm: number;
}

/** The column when the drain ends; one entry a cell, top down. */
export interface DrainedColumn {
  readonly cellCm: number;
  readonly depthCm: Float64Array;
  readonly headCm: Float64Array;
  readonly theta: Float64Array;
  /** Water that left through the bottom, cm. */
  readonly drainedCm: number;
  /** Water lost from the column less water that left, cm: what the solver did not account for. */
  readonly residualCm: number;
}

/** Start of the drain: saturated, yet at the edge of giving water, so that the solver has a slope to follow. */
const startHeadCm = -0.1;
const startLossFraction = 1e-5;
/**
 * Water stored per cm of head besides the pores, 1/cm: so little (100 cm, 0.00001) that it only keeps the equations
 * solvable where soil stays saturated under suction or below perched water.
 */
const elasticStorePerCm = 1e-7;
/** Water a cell may be out of balance in one step, cm. */
const balanceCm = 1e-9;

/**
 * Lets a covered column drain from saturation: no flow at the top, unit gradient at the bottom, Richards' equation
 * C dh/dt = d/dz[K (dh/dz - 1)] by finite volumes, backward Euler and Newton, K between cells the arithmetic mean.
 * This is the field measurement of field capacity (Veihmeyer & Hendrickson 1931) as a computation.
 * @throws RangeError when thickness, hours or cell size is not above 0, or a layer is not a whole number of cells.
 * @example drainCovered([{ curve, thicknessCm: 100 }], { hours: 48 }).headCm
 */
export function drainCovered(
  layers: readonly DrainLayer[],
  { hours, cellCm = 2.5 }: { readonly hours: number; readonly cellCm?: number },
): DrainedColumn {
  if (!(hours > 0)) throw new RangeError(`drainCovered requires hours above 0: got ${hours}`);
  const curves = cellCurves(layers, cellCm);
  const column = new Column(curves, cellCm);
  let doneH = 0;
  let stepH = 1e-4;
  while (doneH < hours) {
    const dtH = doneH + stepH > hours ? hours - doneH : stepH;
    const rounds = column.advance(dtH);
    if (rounds < 0) {
      stepH = dtH / 2;
      if (stepH < 1e-9) throw new RangeError("drainCovered requires a curve its solver can follow");
      continue;
    }
    doneH += dtH;
    stepH = rounds <= 5 ? dtH * 1.3 : rounds <= 9 ? dtH : dtH * 0.7;
    if (stepH > 1) stepH = 1;
  }
  return column.result();
}

function cellCurves(layers: readonly DrainLayer[], cellCm: number): SoilCurve[] {
  if (!(cellCm > 0)) throw new RangeError(`drainCovered requires cellCm above 0: got ${cellCm}`);
  const curves: SoilCurve[] = [];
  for (const { curve, thicknessCm } of layers) {
    const count = Math.round(thicknessCm / cellCm);
    if (!(count >= 1 && Math.abs(count * cellCm - thicknessCm) < 1e-6)) {
      throw new RangeError(
        `drainCovered requires each thicknessCm a whole number of cells of ${cellCm} cm: got ${thicknessCm}`,
      );
    }
    for (let i = 0; i < count; i++) curves.push(curve);
  }
  if (curves.length < 2) throw new RangeError("drainCovered requires at least two cells: got fewer");
  return curves;
}

const storedAt = (curve: SoilCurve, headCm: number): number => curve.thetaAt(headCm) + elasticStorePerCm * headCm;

/** Where a curve has lost a trace of its water: past an air entry, or -0.1 cm where air enters at once. */
function startHead(curve: SoilCurve): number {
  const pores = curve.thetaSaturated - curve.thetaResidual;
  const lost = (logSuction: number): number =>
    curve.thetaSaturated - curve.thetaAt(-Math.exp(logSuction)) - startLossFraction * pores;
  const atOnce = Math.log(-startHeadCm);
  return lost(atOnce) >= 0 ? startHeadCm : -Math.exp(bisect(lost, atOnce, Math.log(1e6)));
}

class Column {
  readonly #curves: readonly SoilCurve[];
  readonly #cellCm: number;
  readonly #head: Float64Array;
  readonly #store: Float64Array;
  readonly #trial: Float64Array;
  readonly #from: Float64Array;
  readonly #change: Float64Array;
  readonly #k: Float64Array;
  readonly #dk: Float64Array;
  readonly #lower: Float64Array;
  readonly #diagonal: Float64Array;
  readonly #upper: Float64Array;
  readonly #right: Float64Array;
  readonly #startCm: number;
  #drainedCm = 0;

  constructor(curves: readonly SoilCurve[], cellCm: number) {
    const count = curves.length;
    this.#curves = curves;
    this.#cellCm = cellCm;
    this.#head = Float64Array.from(curves, startHead);
    this.#store = Float64Array.from(curves, (curve, i) => storedAt(curve, this.#head[i]));
    this.#trial = new Float64Array(count);
    this.#from = new Float64Array(count);
    this.#change = new Float64Array(count);
    this.#k = new Float64Array(count);
    this.#dk = new Float64Array(count);
    this.#lower = new Float64Array(count);
    this.#diagonal = new Float64Array(count);
    this.#upper = new Float64Array(count);
    this.#right = new Float64Array(count);
    this.#startCm = this.#storageCm();
  }

  /** One implicit step; the Newton rounds it took, or -1 when it did not converge and nothing changed. */
  advance(dtH: number): number {
    const count = this.#head.length;
    this.#trial.set(this.#head);
    let worst = this.#assemble(dtH);
    for (let round = 1; round <= 14; round++) {
      solveTridiagonal(this.#lower, this.#diagonal, this.#upper, this.#right);
      this.#change.set(this.#right);
      this.#from.set(this.#trial);
      const before = worst;
      for (let share = 1; share > 0.02; share /= 2) {
        for (let i = 0; i < count; i++) this.#trial[i] = this.#from[i] + share * this.#change[i];
        worst = this.#assemble(dtH);
        if (worst < before) break;
      }
      if (!(worst < before)) return -1;
      if (worst < balanceCm) {
        this.#drainedCm += this.#k[count - 1] * dtH;
        this.#head.set(this.#trial);
        for (let i = 0; i < count; i++) this.#store[i] = storedAt(this.#curves[i], this.#head[i]);
        return round;
      }
    }
    return -1;
  }

  /** Fills the Newton system for the trial heads; the largest imbalance of a cell, cm. */
  #assemble(dtH: number): number {
    const count = this.#head.length;
    const dz = this.#cellCm;
    for (let i = 0; i < count; i++) {
      const h = this.#trial[i];
      const reach = 1e-5 * (1 - h);
      const curve = this.#curves[i];
      this.#k[i] = curve.conductivityAt(h);
      this.#dk[i] = (curve.conductivityAt(h + reach) - curve.conductivityAt(h - reach)) / (2 * reach);
      this.#lower[i] = 0;
      this.#upper[i] = 0;
      this.#diagonal[i] = (curve.capacityAt(h) + elasticStorePerCm) * dz;
      this.#right[i] = -(storedAt(curve, h) - this.#store[i]) * dz;
    }
    for (let i = 0; i + 1 < count; i++) {
      const gradient = (this.#trial[i] - this.#trial[i + 1]) / dz + 1;
      const mean = (this.#k[i] + this.#k[i + 1]) / 2;
      const flow = mean * gradient * dtH;
      const byAbove = ((this.#dk[i] / 2) * gradient + mean / dz) * dtH;
      const byBelow = ((this.#dk[i + 1] / 2) * gradient - mean / dz) * dtH;
      this.#right[i] -= flow;
      this.#right[i + 1] += flow;
      this.#diagonal[i] += byAbove;
      this.#upper[i] += byBelow;
      this.#lower[i + 1] -= byAbove;
      this.#diagonal[i + 1] -= byBelow;
    }
    const last = count - 1;
    this.#right[last] -= this.#k[last] * dtH;
    this.#diagonal[last] += this.#dk[last] * dtH;
    let worst = 0;
    for (let i = 0; i < count; i++) {
      const size = Math.abs(this.#right[i]);
      if (!(size <= worst)) worst = size;
    }
    return worst;
  }

  #storageCm(): number {
    let sum = 0;
    for (const store of this.#store) sum += store * this.#cellCm;
    return sum;
  }

  result(): DrainedColumn {
    return {
      cellCm: this.#cellCm,
      depthCm: Float64Array.from(this.#head, (_, i) => (i + 0.5) * this.#cellCm),
      headCm: this.#head.slice(),
      theta: Float64Array.from(this.#head, (h, i) => this.#curves[i].thetaAt(h)),
      drainedCm: this.#drainedCm,
      residualCm: this.#startCm - this.#storageCm() - this.#drainedCm,
    };
  }
}
