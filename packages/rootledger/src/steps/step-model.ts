import { sensorCell } from "../programme/sensor-cell.js";
import { demandOf } from "../scenario/demand.js";
import { evaporationOf } from "../scenario/evaporation-of.js";
import { type GridChoice, groundOf } from "../scenario/ground-of.js";
import { bringIntoForce } from "../scenario/limits-by-day.js";
import type { EngineMaker } from "../scenario/options.js";
import { bringRootsIntoForce } from "../scenario/roots-by-day.js";
import type { Scenario } from "../scenario/scenario.js";
import { storageCm3 } from "../scenario/tree-run.js";
import { cm3PerL, headFromTension, mmPerCm, tensionFromHead } from "../units.js";
import { bucketEngine } from "../water/bucket.js";
import { emptyFluxes, type Forcing, type WaterFluxes } from "../water/engine.js";
import type { Grid } from "../water/grid.js";
import { cellValues, type Ground, lookUpInto, thetaAtHead } from "../water/ground.js";
import { type PlainState, plainState, stateFromPlain } from "../water/state.js";
import { twoLimits } from "../water/stress.js";
import { requireForcing, type StepForcing } from "./step-forcing.js";

/** A moment of the ground as plain numbers, fit for JSON: all that the next step needs, and the books so far. */
export interface StepState {
  /** Hours since the start. */
  readonly timeH: number;
  /** Water content by cell (layer x lanes + lane), and an engine's own memory. */
  readonly water: PlainState;
  /** cm3 per tree since the start. */
  readonly book: StepBook;
}

/** All that came in, went out and was stored since the start, cm3 per tree. */
export interface StepBook {
  readonly startCm3: number;
  readonly emitterCm3: number;
  readonly rainCm3: number;
  readonly ownCm3: number;
  readonly transpirationCm3: number;
  readonly evaporationCm3: number;
  readonly runoffCm3: number;
  readonly bottomCm3: number;
  readonly storedCm3: number;
  /** start + in - out - stored. */
  readonly residualCm3: number;
}

/** What moved in one step: cm3 per tree, and hours by cell. */
export interface StepFluxes extends Readonly<Omit<WaterFluxes, "faces">> {
  /** Downward through the rooted depth. */
  readonly belowRootsCm3: number;
  /** Hours weighted by the share of roots concerned. */
  readonly airlessRootH: number;
  readonly thirstyRootH: number;
  /** What the step's own books lack, cm3. */
  readonly residualCm3: number;
}

/** The ground for a loop of one's own. */
export interface StepModel {
  /** Cells, edges and volumes: what the arrays stand for. */
  readonly grid: Grid;
  /** Ground of the tree, cm2: mm x ground / 10 are cm3 per tree. */
  readonly groundCm2: number;
  /** The profile at one tension, kPa, by default the scenario's start; or at a water content of one's own for each cell, m3/m3. */
  readonly initial: (from?: number | ArrayLike<number>) => StepState;
  /** Carries a state over `dtH` hours of constant forcing and returns what came of it; the state given is left as it was. */
  readonly step: (state: StepState, forcing: StepForcing, dtH: number) => { state: StepState; fluxes: StepFluxes };
  /** What a sensor in the mean of its cell reads: the observation operator of `sensorTraces`. */
  readonly observe: (
    state: StepState,
    place: { readonly depthCm: number; readonly fromLineCm: number },
  ) => { readonly theta: number; readonly tensionKPa: number };
}

const shortestStepH = 1 / 60;
const longestStepH = 24;

/**
 * The ground of a scenario for a loop of one's own: `next = step(state, forcing[t], dtH)`, from a minute to a day. Pure: the same state,
 * forcing and step give the same bits, a state goes through JSON and back unchanged, and steps of one hour need no other hour. Programme,
 * weather, salt and nitrogen of the scenario play no part; limits and roots that change by date follow the day on which a step begins.
 *
 * @throws RangeError if the scenario does not fit together; `step`, for a forcing or a length of step outside its range, and whatever an
 * own process is refused for.
 * @example const { initial, step } = stepModel(scenario); let state = initial(); for (const f of forcing) state = step(state, f, 1).state;
 */
export function stepModel(
  scenario: Scenario,
  { engine: makeEngine = bucketEngine, ...choice }: GridChoice & { readonly engine?: EngineMaker } = {},
): StepModel {
  const prepared = groundOf(scenario, choice);
  const { grid, ground, lines, roots, rootsByDay, bottom, cracks, groundCm2, rootedLayers } = prepared;
  const { limits } = demandOf(scenario, prepared);
  const { laneAreaCm2 } = grid;
  const engine = makeEngine({
    ...{ ground, lines, roots, bottom, innerEdge: "mirror", stress: twoLimits(limits.inForce) },
    ...(cracks === undefined ? {} : { bypass: cracks }),
    ...evaporationOf(scenario),
  });
  const changing = limits.days.length > 1 || rootsByDay.days.length > 1;

  function initial(from: number | ArrayLike<number> = scenario.start.tensionKPa): StepState {
    const theta = typeof from === "number" ? thetaAtHead(ground, headFromTension(from)) : ownTheta(from, ground);
    const startCm3 = storageCm3(theta, grid);
    const nothing = { emitterCm3: 0, rainCm3: 0, ownCm3: 0, transpirationCm3: 0, evaporationCm3: 0, runoffCm3: 0 };
    const book = { startCm3, ...nothing, bottomCm3: 0, storedCm3: startCm3, residualCm3: 0 };
    return { timeH: 0, water: plainState({ timeH: 0, theta }), book };
  }

  function forcingOf(asked: StepForcing): Forcing {
    requireForcing(asked);
    const { emitterLPerH = 0, rainMmPerH = 0, transpirationMmPerH = 0, evaporationMmPerH = 0 } = asked;
    const onLane = (mmPerH: number): Float64Array => laneAreaCm2.map((areaCm2) => (mmPerH / mmPerCm) * areaCm2);
    return {
      emitterCm3PerH: emitterLPerH * cm3PerL,
      rainCm3PerH: onLane(rainMmPerH),
      evaporationCm3PerH: onLane(evaporationMmPerH),
      transpirationCm3PerH: (transpirationMmPerH / mmPerCm) * groundCm2,
    };
  }

  function step(from: StepState, asked: StepForcing, dtH: number): { state: StepState; fluxes: StepFluxes } {
    if (!(dtH >= shortestStepH * (1 - 1e-9) && dtH <= longestStepH)) {
      throw new RangeError(`step requires a length from 1/60 to 24 h: got ${dtH}`);
    }
    const day = Math.floor(from.timeH / 24);
    if (changing && !(day >= 0 && day < scenario.season.days)) {
      throw new RangeError(`step requires a day of the season, where limits or roots follow it: got day ${day}`);
    }
    bringIntoForce(limits, day);
    bringRootsIntoForce(rootsByDay, day);
    const state = stateFromPlain(from.water);
    const fluxes = emptyFluxes(grid);
    state.timeH = from.timeH;
    engine.advance(state, forcingOf(asked), from.timeH + dtH, fluxes);
    const storedCm3 = storageCm3(state.theta, grid);
    if (!Number.isFinite(storedCm3)) throw new RangeError(`step requires finite states: got ${storedCm3} cm3 stored`);
    const book = booked(from.book, fluxes, storedCm3);
    return {
      state: { timeH: from.timeH + dtH, water: plainState(state), book },
      fluxes: described(from, fluxes, storedCm3),
    };
  }

  function described(from: StepState, fluxes: WaterFluxes, storedCm3: number): StepFluxes {
    let airlessRootH = 0;
    let thirstyRootH = 0;
    for (let c = 0; c < grid.cells; c++) {
      airlessRootH += roots.share[c] * fluxes.airlessH[c];
      thirstyRootH += roots.share[c] * fluxes.thirstyH[c];
    }
    const belowRootsCm3 = fluxes.downwardCm3[rootedLayers - 1];
    const residualCm3 = from.book.storedCm3 + broughtIn(fluxes) - tookOut(fluxes) - storedCm3;
    return { ...fluxes, belowRootsCm3, airlessRootH, thirstyRootH, residualCm3 };
  }

  const values = cellValues(grid.cells);
  return {
    grid,
    groundCm2,
    initial,
    step,
    observe: ({ water }, place) => {
      const cell = sensorCell(grid, prepared.lineAtCm[0], place);
      lookUpInto(values, ground, Float64Array.from(water.theta));
      return { theta: water.theta[cell], tensionKPa: tensionFromHead(values.headCm[cell]) };
    },
  };
}

/** @throws RangeError unless there is a value for each cell, above its residual theta and not above saturation. */
function ownTheta(given: ArrayLike<number>, { grid, thetaResidual, thetaSaturated }: Ground): Float64Array {
  if (given.length !== grid.cells) {
    throw new RangeError(`initial requires theta of ${grid.cells} cells: got ${given.length}`);
  }
  const theta = Float64Array.from(given);
  const wrong = theta.findIndex((value, c) => !(value > thetaResidual[c] && value <= thetaSaturated[c]));
  if (wrong < 0) return theta;
  const range = `${thetaResidual[wrong]} to ${thetaSaturated[wrong]}`;
  throw new RangeError(`initial requires theta within ${range} in cell ${wrong}: got ${theta[wrong]}`);
}

type Moved = Pick<
  WaterFluxes,
  "emitterCm3" | "rainCm3" | "ownCm3" | "transpirationCm3" | "evaporationCm3" | "runoffCm3" | "bottomCm3"
>;

const broughtIn = (moved: Moved): number => moved.emitterCm3 + moved.rainCm3 + moved.ownCm3;
const tookOut = (moved: Moved): number =>
  moved.transpirationCm3 + moved.evaporationCm3 + moved.runoffCm3 + moved.bottomCm3;

function booked(book: StepBook, fluxes: Moved, storedCm3: number): StepBook {
  const sums = {
    emitterCm3: book.emitterCm3 + fluxes.emitterCm3,
    rainCm3: book.rainCm3 + fluxes.rainCm3,
    ownCm3: book.ownCm3 + fluxes.ownCm3,
    transpirationCm3: book.transpirationCm3 + fluxes.transpirationCm3,
    evaporationCm3: book.evaporationCm3 + fluxes.evaporationCm3,
    runoffCm3: book.runoffCm3 + fluxes.runoffCm3,
    bottomCm3: book.bottomCm3 + fluxes.bottomCm3,
  };
  const residualCm3 = book.startCm3 + broughtIn(sums) - tookOut(sums) - storedCm3;
  return { startCm3: book.startCm3, ...sums, storedCm3, residualCm3 };
}
