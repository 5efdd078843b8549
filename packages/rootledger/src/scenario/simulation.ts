import { isDecided } from "../programme/programme.js";
import { headFromTension } from "../units.js";
import { bucketEngine } from "../water/bucket.js";
import type { WaterEngine } from "../water/engine.js";
import { thetaAtHead } from "../water/ground.js";
import type { Result, RunStatus, TreeName } from "../water/result.js";
import { type PlainState, plainState, restoreState, stateFromPlain } from "../water/state.js";
import { twoLimits } from "../water/stress.js";
import { type Demand, demandOf } from "./demand.js";
import { evaporationOf } from "./evaporation-of.js";
import { groundOf, type Prepared } from "./ground-of.js";
import { bookHour, ledgerSize } from "./hour-ledger.js";
import type { EngineMaker, SimulateOptions } from "./options.js";
import { dayColumns, hourColumns, type Recorder, recorder } from "./recorder.js";
import { resultOf } from "./result-of.js";
import type { Scenario } from "./scenario.js";
import { type SeasonParts, seasonParts } from "./season-parts.js";
import { type Settling, settle } from "./settle.js";
import { hasSolutes, type SolutesInRun } from "./solutes-in-run.js";
import { supplyOf } from "./supply.js";
import { carryTrees, momentsUpTo, storageCm3, type TreeRun, treeRun } from "./tree-run.js";
import { calendarValve, type Valve, type ValveMaker, type ValveSnapshot } from "./valve.js";

/** Everything a run carries from hour to hour. */
export interface Progress {
  readonly scenario: Scenario;
  readonly prepared: Prepared;
  readonly demand: Demand;
  readonly engineName: WaterEngine["name"];
  readonly valve: Valve;
  readonly treeNames: readonly TreeName[];
  readonly trees: readonly TreeRun[];
  readonly settling: Settling;
  readonly solutes: SolutesInRun | undefined;
  readonly startCm3: Float64Array;
  /** Water in all cells at this moment, by tree. */
  readonly storedCm3: Float64Array;
  readonly hours: Recorder<(typeof hourColumns)[number][0]>;
  readonly days: Recorder<(typeof dayColumns)[number][0]>;
  readonly ledger: Float64Array;
  /** `[tree * cells + cell]` hours since the start. */
  readonly airlessH: Float64Array;
  readonly thirstyH: Float64Array;
  readonly parts: SeasonParts;
  /** `[((tree * parts + part) * 3 + kind) * cells + cell]`; kind 0 all roots, 1 thirsty, 2 airless. */
  readonly rootHours: Float64Array;
  readonly cellTheta: Float64Array;
  readonly cellWindow: { readonly fromHour: number; readonly hours: number };
  /** Which tree is the mean one, or -1. */
  readonly meanTree: number;
  hour: number;
  status: RunStatus;
}

/** The state of a run at a whole hour, plain data: numbers and arrays of numbers. */
export interface Snapshot {
  readonly hour: number;
  readonly states: readonly PlainState[];
  readonly storedCm3: readonly number[];
  readonly ledger: readonly number[];
  readonly hours: readonly number[];
  readonly days: readonly number[];
  readonly airlessH: readonly number[];
  readonly thirstyH: readonly number[];
  readonly rootHours: readonly number[];
  readonly cellTheta: readonly number[];
  readonly solutes?: readonly number[];
  /** Of a programme that decides day by day. */
  readonly valve?: ValveSnapshot;
}

/** A season that goes step by step. */
export interface Simulation {
  /** How it stands. */
  readonly status: () => RunStatus | { readonly kind: "running" };
  /** Hours since the first midnight. */
  readonly hour: () => number;
  /** Carries every tree over one hour. @throws Error if the run has ended. */
  readonly step: () => void;
  /** All that a restart needs. */
  readonly snapshot: () => Snapshot;
  /**
   * Puts the run back to a snapshot of the same scenario and options; what follows is bit-equal. The programme may be another
   * one: the run then goes on from that state under its own.
   */
  readonly restore: (snapshot: Snapshot) => void;
  /** The trees as they stand after the last step, to be read and not changed. */
  readonly trees: () => readonly Pick<TreeRun, "name" | "state" | "fluxes">[];
  /** What is known so far; complete once the status is `finished`. */
  readonly result: () => Result;
}

/**
 * A season that is carried hour by hour. `simulate` is the loop over `step`.
 *
 * @throws RangeError if the scenario does not fit together (`parseScenario` reports such faults with their path), or asks
 * for Richards' equation and no engine is given.
 * @example const run = createSimulation(scenario); while (run.status().kind === "running") run.step();
 */
export function createSimulation(scenario: Scenario, options: SimulateOptions = {}): Simulation {
  const prepared = groundOf(scenario, options);
  const demand = demandOf(scenario, prepared);
  const treeNames = options.trees ?? ["mean"];
  const solutes = solutesOf(scenario, prepared, demand, treeNames, options);
  const makeValve = isDecided(scenario.programme) ? (options.valve ?? noValve) : calendarValve;
  const valve = makeValve({ scenario, prepared, demand, trees: treeNames, solutes });
  const endH = scenario.season.days * 24;
  const { ground, lines, roots, bottom, cracks } = prepared;
  const makeEngine = options.engine ?? bucketUnlessAsked(scenario);
  const engine: WaterEngine = makeEngine({
    ground,
    lines,
    roots,
    innerEdge: "mirror",
    stress: solutes === undefined ? twoLimits(demand.limits.inForce) : solutes.stress(twoLimits(demand.limits.inForce)),
    bottom,
    ...(cracks === undefined ? {} : { bypass: cracks }),
    ...evaporationOf(scenario),
    ...(options.thetaDoubtPerStep === undefined ? {} : { thetaDoubtPerStep: options.thetaDoubtPerStep }),
  });
  const initial = thetaAtHead(ground, headFromTension(scenario.start.tensionKPa));
  const trees = treeNames.map((name) =>
    treeRun(name, prepared, supplyOf(name, valve.schedule, prepared, scenario.block.lines), initial),
  );
  const settling = settle(scenario, prepared, demand, valve, engine, trees);
  trees.forEach((tree, t) => {
    const observer = solutes?.observers[t];
    if (observer !== undefined) tree.observer = observer;
  });
  const stored = Float64Array.from(trees, (tree) => storageCm3(tree.state.theta, prepared.grid));
  const window = options.cells ?? { fromHour: 0, hours: 0 };
  const cells = prepared.grid.cells;
  const parts = seasonParts(scenario, options.partOfDay);
  const now: Progress = {
    scenario,
    prepared,
    demand,
    engineName: engine.name,
    valve,
    treeNames,
    trees,
    settling,
    solutes,
    startCm3: stored.slice(),
    storedCm3: stored,
    hours: recorder(hourColumns, "hour", endH, trees.length),
    days: recorder(dayColumns, "day", scenario.season.days, trees.length),
    ledger: new Float64Array(ledgerSize * trees.length),
    airlessH: new Float64Array(cells * trees.length),
    thirstyH: new Float64Array(cells * trees.length),
    parts,
    rootHours: new Float64Array(cells * 3 * parts.names.length * trees.length),
    cellTheta: new Float64Array(window.hours * cells),
    cellWindow: window,
    meanTree: treeNames.indexOf("mean"),
    hour: 0,
    status:
      settling.failure === undefined ? { kind: "finished" } : { kind: "failed", hour: 0, message: settling.failure },
  };
  let running = settling.failure === undefined;

  function fail(message: string): void {
    running = false;
    now.status = { kind: "failed", hour: now.hour, message };
  }

  function step(): void {
    if (!running) throw new Error(`step requires a running simulation: it ended at hour ${now.hour}`);
    const failure = carryTrees(trees, engine, prepared, demand, valve, now.hour);
    if (failure !== undefined) {
      fail(failure);
      return;
    }
    for (let t = 0; t < trees.length; t++) {
      if (bookHour(now, t)) continue;
      fail(`a state of the ${treeNames[t]} tree is not a finite number`);
      return;
    }
    now.hour += 1;
    if (now.hour >= endH) running = false;
  }

  function snapshot(): Snapshot {
    return {
      hour: now.hour,
      states: trees.map((tree) => plainState(tree.state)),
      storedCm3: Array.from(now.storedCm3),
      ledger: Array.from(now.ledger),
      hours: Array.from(now.hours.block),
      days: Array.from(now.days.block),
      airlessH: Array.from(now.airlessH),
      thirstyH: Array.from(now.thirstyH),
      rootHours: Array.from(now.rootHours),
      cellTheta: Array.from(now.cellTheta),
      ...(solutes && { solutes: solutes.snapshot() }),
      ...(valve.decided && { valve: valve.decided.snapshot() }),
    };
  }

  function restore(from: Snapshot): void {
    if (from.states.length !== trees.length || from.hours.length !== now.hours.block.length) {
      throw new RangeError("restore requires a snapshot of the same scenario and options: its sizes differ");
    }
    trees.forEach((tree, t) => {
      restoreState(tree.state, stateFromPlain(from.states[t]));
    });
    now.storedCm3.set(from.storedCm3);
    now.ledger.set(from.ledger);
    now.hours.block.set(from.hours);
    now.days.block.set(from.days);
    now.airlessH.set(from.airlessH);
    now.thirstyH.set(from.thirstyH);
    now.rootHours.set(from.rootHours);
    now.cellTheta.set(from.cellTheta);
    solutes?.restore(from.solutes ?? []);
    now.hour = from.hour;
    valve.decided?.restore(from.hour, from.valve, trees);
    valve.place = momentsUpTo(valve.timeline, from.hour);
    now.status = { kind: "finished" };
    running = from.hour < endH;
  }

  return {
    status: () => (running ? { kind: "running" } : now.status),
    hour: () => now.hour,
    step,
    snapshot,
    restore,
    trees: () => trees,
    result: () => resultOf(now, running),
  };
}

function solutesOf(
  scenario: Scenario,
  prepared: Prepared,
  demand: Demand,
  treeNames: readonly TreeName[],
  options: SimulateOptions,
): SolutesInRun | undefined {
  if (!hasSolutes(scenario)) return undefined;
  if (options.solutes !== undefined)
    return options.solutes({ scenario, prepared, treeNames, limits: demand.limits.inForce });
  return needed("solutes", "salt or nitrogen", "seasonSolutes");
}

function bucketUnlessAsked(scenario: Scenario): EngineMaker {
  if (scenario.engine !== "richards") return bucketEngine;
  return needed("engine", 'engine "richards"', "engineOf(scenario)");
}

const noValve: ValveMaker = () => needed("valve", "a programme that decides", "decidedValve");

/** What simulate leaves out of its bundle unless it is passed in. */
function needed(option: string, what: string, pass: string): never {
  throw new RangeError(
    `simulate requires options.${option} for a scenario with ${what}: pass ${pass} of rootledger/scenario`,
  );
}
