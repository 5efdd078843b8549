import type { EngineMaker } from "../scenario/options.js";
import { bucketEngine } from "../water/bucket.js";
import type { Forcing, WaterEngine, WaterFluxes, WaterState } from "../water/engine.js";
import { type EvaporationProcess, soilLimitedEvaporation } from "../water/evaporation.js";
import type { Ground } from "../water/ground.js";
import type { Stress, StressProcess } from "../water/stress.js";
import { type UptakeProcess, uptakeInto } from "../water/uptake.js";
import { type SourceProcess, sourceMover } from "./own-source.js";
import { checkDrawn, checkEvaporated, checkStress } from "./slot-checks.js";

/** What a slot may read; the arrays are the engine's own and change from call to call. By cell unless said otherwise. */
export interface ProcessView {
  /** Start of the stretch of constant forcing that is being carried, hours since the start. */
  readonly hour: number;
  readonly ground: Ground;
  /** Water content, m3/m3. */
  readonly theta: Float64Array;
  /** Matric head, cm, negative in unsaturated soil. */
  readonly headCm: Float64Array;
  /** Share of the tree's roots; sums to 1. */
  readonly rootShare: Float64Array;
  /** Factors of the stress slot, 0 to 1. */
  readonly thirst: Float64Array;
  readonly air: Float64Array;
  /** Most that the tree would transpire, cm3/h. */
  readonly demandCm3PerH: number;
  /** Most that the bare soil could lose, cm3/h by lane. */
  readonly evaporationCm3PerH: Float64Array;
}

/** Own functions in place of the engine's. Each writes into the array it is given, which is not cleared for it; the engine moves the water. */
export interface OwnProcesses {
  /** Factors between 0 and 1 by cell, and the class that its hours count as: 0 fine, 1 thirsty, 2 airless. */
  readonly stress?: (out: Stress, view: ProcessView) => void;
  /** Water taken by roots, cm3/h by cell, 0 or more, at most the demand in all. */
  readonly uptake?: (outCm3PerH: Float64Array, view: ProcessView) => void;
  /** Evaporation from the top cell of each lane, cm3/h, 0 or more. */
  readonly evaporation?: (outCm3PerH: Float64Array, view: ProcessView) => void;
  /** Water added (above 0) or taken (below 0), cm3/h by cell; asked at the start of each stretch of at most an hour and booked as `ownCm3`. */
  readonly source?: SourceProcess;
}

/**
 * The bucket engine with own processes in its slots, to be given to `simulate`, `createSimulation` or `stepModel` as `engine`. Slots left
 * out keep their default. No process may ask of a cell in an hour, the longest step, more than it holds above its residual theta; a source
 * may not add more than there is room for. What breaks a rule ends a run as `failed`, naming slot, cell, hour and value; nothing is cut
 * to fit. It takes the place of the engine that a scenario names: also one for Richards' equation is then run by buckets, and its result says so.
 *
 * @throws RangeError from the engine's `advance`, with a `fault`; without one for a source beside salt or nitrogen.
 * @example simulate(scenario, { engine: ownProcesses({ uptake: (out, v) => out.forEach((_, c) => { out[c] = v.demandCm3PerH * v.rootShare[c] * v.thirst[c]; }) }) })
 */
export function ownProcesses(own: OwnProcesses): EngineMaker {
  return (setup) => {
    const { ground, roots } = setup;
    const { cells, lanes } = ground.grid;
    const view: { -readonly [K in keyof ProcessView]: ProcessView[K] } = {
      ...{ hour: 0, ground, demandCm3PerH: 0, rootShare: roots.share },
      theta: new Float64Array(cells),
      headCm: new Float64Array(cells),
      thirst: new Float64Array(cells),
      air: new Float64Array(cells),
      evaporationCm3PerH: new Float64Array(lanes),
    };
    const stress: StressProcess = (out, of, theta, values) => {
      view.theta = theta;
      view.headCm = values.headCm;
      if (own.stress === undefined) setup.stress(out, of, theta, values);
      else {
        own.stress(out, view);
        checkStress(out, view.hour);
      }
      view.thirst = out.thirst;
      view.air = out.air;
    };
    const usualUptake = setup.uptake ?? uptakeInto;
    const uptake: UptakeProcess = (sink, zone, factors, forcing) => {
      view.demandCm3PerH = forcing.transpirationCm3PerH;
      if (own.uptake === undefined) return usualUptake(sink, zone, factors, forcing);
      own.uptake(sink, view);
      checkDrawn(sink, view);
    };
    const usualEvaporation = setup.evaporation ?? (setup.evaporationOn ?? soilLimitedEvaporation)(ground);
    const evaporation: EvaporationProcess = (out, theta, potential) => {
      view.evaporationCm3PerH = potential;
      if (own.evaporation === undefined) return usualEvaporation(out, theta, potential);
      view.theta = theta;
      own.evaporation(out, view);
      checkEvaporated(out, view);
    };
    const engine = bucketEngine({ ...setup, stress, uptake, evaporation });
    const moveSource = own.source && sourceMover(ground, own.source);

    function advance(state: WaterState, forcing: Forcing, untilH: number, fluxes: WaterFluxes): void {
      view.hour = state.timeH;
      view.demandCm3PerH = forcing.transpirationCm3PerH;
      if (moveSource === undefined) {
        engine.advance(state, forcing, untilH, fluxes);
        return;
      }
      if (fluxes.faces !== undefined)
        throw new RangeError("a source requires a run without salt and nitrogen: got both");
      while (state.timeH < untilH) {
        const toH = untilH - state.timeH > 1 + 1e-9 ? state.timeH + 1 : untilH;
        view.hour = state.timeH;
        moveSource(state, toH, roots.share, forcing.transpirationCm3PerH, fluxes);
        engine.advance(state, forcing, toH, fluxes);
      }
    }
    return { name: "bucket", advance } satisfies WaterEngine;
  };
}
