import type { DecidedInjection } from "../programme/decided-injection.js";
import type { Measure, SolutesResult, TreeName } from "../water/result.js";
import type { StressProcess, TreeLimits } from "../water/stress.js";
import type { Prepared } from "./ground-of.js";
import type { Scenario } from "./scenario.js";
import type { StretchObserver } from "./tree-run.js";

/** What a run tells the part that moves what is dissolved. */
export interface SolutesSetup {
  readonly scenario: Scenario;
  readonly prepared: Prepared;
  readonly treeNames: readonly TreeName[];
  /** The tree's limits as they are in force at any moment. */
  readonly limits: TreeLimits;
}

/** What is dissolved in the water of a run, moved after every stretch of it. */
export interface SolutesInRun {
  /** Moments at which the content of the emitters' water changes, or something is laid on the ground. */
  readonly breaksH: readonly number[];
  /** Doses through the water of a valve that is decided day by day; the valve tells it what it opens. */
  readonly injection?: DecidedInjection;
  /** The stress of the tree with what salt adds to it. */
  readonly stress: (base: StressProcess) => StressProcess;
  readonly observers: readonly StretchObserver[];
  /** All that a restart needs. */
  readonly snapshot: () => readonly number[];
  /** Goes back to a snapshot. */
  readonly restore: (from: readonly number[]) => void;
  /** What was dissolved in the water. */
  readonly result: (theta: readonly Float64Array[]) => SolutesResult;
  /** Measures of salt and nitrogen. */
  readonly measures: (hours: number) => readonly Measure[];
  /** What is to be said of them. */
  readonly notes: () => readonly string[];
}

/** Undefined where the scenario has neither salt nor nitrogen. */
export type SolutesMaker = (setup: SolutesSetup) => SolutesInRun | undefined;

/** Whether a scenario has salt or nitrogen to move. @example hasSolutes(scenario) */
export const hasSolutes = ({ block, programme }: Pick<Scenario, "block" | "programme">): boolean =>
  block.salt !== undefined || block.nitrogen !== undefined || programme.nitrogen !== undefined;
