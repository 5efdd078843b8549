import type { Forcing } from "./engine.js";
import type { EvaporationProcess } from "./evaporation.js";
import type { Ground } from "./ground.js";
import { driestHeadCm } from "./richards-table.js";
import { type HeadValues, slopeByTheta } from "./richards-values.js";
import type { Stress, StressProcess } from "./stress.js";
import type { RootZone, UptakeProcess } from "./uptake.js";

/** What leaves the cells through roots and surface, cm3/h, and how fast that grows with each cell's own head. */
export interface Sinks {
  readonly root: Float64Array;
  readonly evaporation: Float64Array;
  readonly slope: Float64Array;
  readonly factors: Stress;
}

/** Evaluates the sinks at the heads that stand in the values given when it was made. */
export interface SinkProcesses {
  readonly sinks: Sinks;
  evaluate(forcing: Forcing): void;
  /** Thirst, air and class of every cell alone, for the sums of an accepted step. */
  classify(): void;
}

/** Relative step of the difference by head. */
const reach = 1e-3;
/**
 * Evaporation fades out over this much water above the driest theta that a head can stand for: half the water at 1500 kPa
 * (the process's own end) lies beyond that in fine soils. Our choice, no source; narrow beside what such a cell holds.
 */
const lastTheta = 0.005;

/**
 * Uptake and evaporation by the same processes as the bucket, taken at the heads of the current Newton round. The
 * derivative is a difference with every head a little drier at once, so it holds for cells that depend on themselves;
 * a coupling through compensation only costs rounds. A sink that falls as its cell wets gets no derivative.
 */
export function sinkProcesses(
  ground: Ground,
  values: HeadValues,
  roots: RootZone,
  stress: StressProcess,
  takeUp: UptakeProcess,
  evaporate: EvaporationProcess,
): SinkProcesses {
  const { cells, lanes } = ground.grid;
  const sinks: Sinks = {
    root: new Float64Array(cells),
    evaporation: new Float64Array(lanes),
    slope: new Float64Array(cells),
    factors: emptyStress(cells),
  };
  const drierFactors = emptyStress(cells);
  const drierRoot = new Float64Array(cells);
  const drierEvaporation = new Float64Array(lanes);
  const drierTheta = new Float64Array(cells);
  const drierHead = new Float64Array(cells);
  const drier = { ...values, headCm: drierHead };
  const driestTheta = Float64Array.from({ length: lanes }, (_, j) =>
    ground.tables[ground.material[j]].curve.thetaAt(-driestHeadCm),
  );
  const { headCm, theta, capacityPerCm } = values;

  function evaluate(forcing: Forcing): void {
    const { root, evaporation, slope, factors } = sinks;
    let evaporating = 0;
    for (let j = 0; j < lanes; j++) evaporating += forcing.evaporationCm3PerH[j];
    for (let c = 0; c < cells; c++) {
      const h = headCm[c];
      const step = h < -1 ? -reach * h : reach;
      drierHead[c] = h - step;
      drierTheta[c] = theta[c] - capacityPerCm[c] * step;
      slope[c] = 0;
    }
    if (forcing.transpirationCm3PerH > 0) {
      slopeByTheta(values);
      stress(factors, ground, theta, values);
      takeUp(root, roots, factors, forcing);
      stress(drierFactors, ground, drierTheta, drier);
      takeUp(drierRoot, roots, drierFactors, forcing);
      for (let c = 0; c < cells; c++) {
        const change = (root[c] - drierRoot[c]) / (headCm[c] - drierHead[c]);
        if (change > 0) slope[c] = change;
      }
    } else {
      root.fill(0);
    }
    if (evaporating > 0) {
      evaporate(evaporation, theta, forcing.evaporationCm3PerH);
      fade(evaporation, theta);
      evaporate(drierEvaporation, drierTheta, forcing.evaporationCm3PerH);
      fade(drierEvaporation, drierTheta);
      for (let j = 0; j < lanes; j++) {
        const change = (evaporation[j] - drierEvaporation[j]) / (headCm[j] - drierHead[j]);
        if (change > 0) slope[j] += change;
      }
    } else {
      evaporation.fill(0);
    }
  }

  function fade(evaporation: Float64Array, at: Float64Array): void {
    for (let j = 0; j < lanes; j++) {
      const left = at[j] - driestTheta[j];
      if (left < lastTheta) evaporation[j] *= left > 0 ? left / lastTheta : 0;
    }
  }

  function classify(): void {
    slopeByTheta(values);
    stress(sinks.factors, ground, theta, values);
  }

  return { sinks, evaluate, classify };
}

const emptyStress = (cells: number): Stress => ({
  thirst: new Float64Array(cells),
  air: new Float64Array(cells),
  state: new Uint8Array(cells),
});
