import type { FaceSums, Forcing, WaterEngine, WaterFluxes, WaterState } from "./engine.js";
import { soilLimitedEvaporation } from "./evaporation.js";
import type { Ground } from "./ground.js";
import { edgesOf } from "./richards-edges.js";
import { newton } from "./richards-newton.js";
import type { RichardsSetup } from "./richards-setup.js";
import { sinkProcesses } from "./richards-sinks.js";
import { emitterShares } from "./richards-surface.js";
import { type HeadCurves, headCurves, headOfTheta, thetaOfHead } from "./richards-table.js";
import { headValues } from "./richards-values.js";
import { uptakeInto } from "./uptake.js";

/** Counts of work and the flows through held heads, all since the engine was made. */
export interface RichardsWork {
  steps: number;
  rejectedSteps: number;
  rounds: number;
  /** Water that entered through lanes with a held surface head, cm3. */
  heldTopCm3: number;
  /** Water that left through an outer face with a held head, cm3. */
  heldOuterCm3: number;
}

export interface RichardsEngine extends WaterEngine {
  readonly work: RichardsWork;
}

const shortestStepH = 1e-7;
/** Change of theta that the flows at the start of a step may predict for it; only bounds the step after a sudden change. */
const predictedTheta = 0.05;

/**
 * Richards' equation in mixed form, backward Euler in time, finite volumes on the setup's own cells, full Newton. Uptake,
 * stress and evaporation are taken at the current Newton round. Theta is moved by the flows, so what Newton leaves
 * unbalanced (at most `balanceTheta` a step) is carried into the next step and the ledger closes to rounding.
 *
 * Keeps `state.headCm` and `state.stepH`; without them it starts from the heads that belong to theta.
 *
 * @throws RangeError in `advance` when even the shortest step finds no balance.
 * @example richardsEngine(setup).advance(state, forcing, 1, fluxes)
 */
export function richardsEngine(setup: RichardsSetup): RichardsEngine {
  const { ground, lines, roots, innerEdge, stress, options = {} } = setup;
  const { layers, lanes, cells, volumeCm3 } = ground.grid;
  const thetaError = options.thetaErrorPerStep ?? 0.01;
  const balanceTheta = options.balanceTheta ?? 1e-5;
  const longestStepH = options.longestStepH ?? 1;
  const curves = curvesOf(ground);
  const values = headValues(cells);
  const edges = edgesOf(ground, curves, {
    bottom: setup.bottom ?? { kind: "free-drainage" },
    outer: setup.outer ?? { kind: "closed" },
    top: setup.top ?? { kind: "offered" },
    between: options.between ?? "potential",
  });
  const sinks = sinkProcesses(
    ground,
    values,
    roots,
    stress,
    setup.uptake ?? uptakeInto,
    setup.evaporation ?? soilLimitedEvaporation(ground),
  );
  const shares = emitterShares(ground.grid, lines, options.emitterHalfWidthCm ?? 2);
  const step = newton({ ground, curves, values, edges, shares, sinks, innerEdge });
  const { balance, surface } = step;
  const rate = new Float64Array(cells);
  const work: RichardsWork = { steps: 0, rejectedSteps: 0, rounds: 0, heldTopCm3: 0, heldOuterCm3: 0 };

  function advance(state: WaterState, forcing: Forcing, untilH: number, fluxes: WaterFluxes): void {
    const { theta } = state;
    state.headCm ??= headsOf(ground, curves, theta);
    const head = state.headCm;
    let next = state.stepH ?? longestStepH;
    values.headCm.set(head);
    step.evaluate(forcing);
    const byFlows = predictedTheta / ratesInto();
    if (byFlows < next) next = byFlows;
    while (untilH - state.timeH > 1e-9) {
      const leftH = untilH - state.timeH;
      let dtH = next < longestStepH ? next : longestStepH;
      if (dtH >= leftH * (1 - 1e-9)) dtH = leftH;
      else if (dtH > 0.5 * leftH) dtH = 0.5 * leftH;
      const rounds = step.solve(theta, forcing, dtH, balanceTheta);
      const error = rounds < 0 ? Infinity : stepError(dtH);
      if (error > 3 * thetaError && dtH > shortestStepH) {
        work.rejectedSteps++;
        values.headCm.set(head);
        next = dtH * (rounds < 0 ? 0.25 : shrink(thetaError / error, 0.25, 0.7));
        continue;
      }
      if (rounds < 0) {
        throw new RangeError(
          `richardsEngine requires a soil its solver can follow: no balance in ${dtH} h at ${state.timeH} h`,
        );
      }
      head.set(values.headCm);
      for (let c = 0; c < cells; c++) theta[c] -= (balance.out[c] * dtH) / volumeCm3[c];
      addUp(fluxes, forcing, dtH);
      ratesInto();
      state.timeH = dtH === leftH ? untilH : state.timeH + dtH;
      work.steps++;
      work.rounds += rounds;
      const wanted = dtH * shrink(thetaError / error, 0.4, growth(rounds));
      // A step cut short by the end of the period says nothing against the longer one that was due.
      next = dtH === leftH && wanted < next && error < thetaError ? next : wanted;
    }
    state.stepH = next;
  }

  /** Rate of change of theta by cell at the current flows; returns the fastest. */
  function ratesInto(): number {
    let fastest = 1e-9;
    for (let c = 0; c < cells; c++) {
      rate[c] = -balance.out[c] / volumeCm3[c];
      const pace = rate[c] < 0 ? -rate[c] : rate[c];
      if (pace > fastest) fastest = pace;
    }
    return fastest;
  }

  /**
   * Largest difference between backward Euler and the trapezoid rule over the step, half the change of rate times the step:
   * Kavetski, Binning & Sloan (2001), Adv. Water Resour. 24:595-605.
   */
  function stepError(dtH: number): number {
    let worst = 1e-12;
    for (let c = 0; c < cells; c++) {
      const change = -balance.out[c] / volumeCm3[c] - rate[c];
      const size = change < 0 ? -change : change;
      if (size > worst) worst = size;
    }
    return 0.5 * dtH * worst;
  }

  function addUp(fluxes: WaterFluxes, forcing: Forcing, dtH: number): void {
    const { root, evaporation, factors } = sinks.sinks;
    sinks.classify();
    for (let c = 0; c < cells; c++) {
      const taken = root[c] * dtH;
      fluxes.uptakeCm3[c] += taken;
      fluxes.transpirationCm3 += taken;
      if (factors.state[c] === 2) {
        fluxes.airlessH[c] += dtH;
        fluxes.airlessSeverityH[c] += dtH * (1 - factors.air[c]);
      } else if (factors.state[c] === 1) {
        fluxes.thirstyH[c] += dtH;
        fluxes.thirstySeverityH[c] += dtH * (1 - factors.thirst[c]);
      }
    }
    for (let i = 0; i < layers; i++) {
      let sum = 0;
      for (let j = 0; j < lanes; j++) sum += balance.down[i * lanes + j];
      fluxes.downwardCm3[i] += sum * dtH;
      if (i === layers - 1) fluxes.bottomCm3 += sum * dtH;
      work.heldOuterCm3 += balance.side[i * lanes + lanes - 1] * dtH;
    }
    for (let j = 0; j < lanes; j++) {
      fluxes.evaporationCm3 += evaporation[j] * dtH;
      fluxes.rainCm3 += forcing.rainCm3PerH[j] * dtH;
      if (!Number.isNaN(edges.top.headCm[j])) work.heldTopCm3 += balance.top[j] * dtH;
      else if (surface.ponded[j] === 1) fluxes.pondedH[j] += dtH;
    }
    fluxes.emitterCm3 += forcing.emitterCm3PerH * dtH;
    fluxes.runoffCm3 += surface.runoffCm3PerH * dtH;
    fluxes.subSteps += 1;
    if (fluxes.faces !== undefined) addFaces(fluxes.faces, dtH);
  }

  function addFaces(sums: FaceSums, dtH: number): void {
    for (let c = 0; c < cells; c++) {
      sums.downCm3[c] += balance.down[c] * dtH;
      sums.sideCm3[c] += balance.side[c] * dtH;
    }
    for (let j = 0; j < lanes; j++) {
      sums.intakeCm3[j] += balance.top[j] * dtH;
      sums.evaporationCm3[j] += sinks.sinks.evaporation[j] * dtH;
    }
  }

  return { name: "richards", work, advance };
}

/** How much longer the next step may be: many rounds are a sign that a longer one would not balance. */
const growth = (rounds: number): number => (rounds <= 3 ? 1.5 : rounds <= 5 ? 1.2 : rounds <= 7 ? 1 : 0.8);

/** Factor for the next step: 0.9 of the root of the wanted over the found error, within limits. */
function shrink(ratio: number, least: number, most: number): number {
  const factor = 0.9 * Math.sqrt(ratio);
  return factor < least ? least : factor > most ? most : factor;
}

const curvesOf = (ground: Ground): readonly HeadCurves[] => ground.tables.map((table) => headCurves(table.curve));

function headsOf(ground: Ground, curves: readonly HeadCurves[], theta: Float64Array): Float64Array {
  return Float64Array.from(theta, (value, c) => headOfTheta(curves[ground.material[c]], value));
}

/** A state at given heads, cm; positive where the soil is under pressure. @example stateAtHeads(ground, heads) */
export function stateAtHeads(ground: Ground, headCm: Float64Array): WaterState {
  const curves = curvesOf(ground);
  return {
    timeH: 0,
    theta: Float64Array.from(headCm, (h, c) => thetaOfHead(curves[ground.material[c]], h)),
    headCm: Float64Array.from(headCm),
  };
}
