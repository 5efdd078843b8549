import { type EmitterSchedule, emitterSchedule } from "../programme/emitter-schedule.js";
import { valveEvents } from "../programme/valve-events.js";
import type { TreeName } from "../water/result.js";
import type { WateringBook } from "../water/watering-book.js";
import { type Demand, forcingBreaks } from "./demand.js";
import type { Prepared } from "./ground-of.js";
import type { Scenario } from "./scenario.js";
import type { SolutesInRun } from "./solutes-in-run.js";
import { type TreeRun, timelineOf } from "./tree-run.js";

/** What the valve does, known for the whole season or decided day by day; all trees of the line share it. */
export interface Valve {
  /** Openings and closings known so far, hours since the season's start: on, off, on, off ... */
  valveH: Float64Array;
  /** What leaves the emitters until the next decision, or all season. */
  schedule: EmitterSchedule;
  /** Moments at which forcing changes, rising: until the next decision, or all season. */
  timeline: Float64Array;
  /** Place in the timeline where the next hour begins. */
  place: number;
  /** Left out where all openings are known beforehand. */
  readonly decided?: DecidedParts;
}

/** What a valve that is decided day by day adds. */
export interface DecidedParts {
  /** Length of a settling cycle. */
  readonly cycleDays: number;
  /** Before an hour is carried: decides, if it is time to. */
  readonly before: (hour: number, trees: readonly TreeRun[]) => void;
  /** After an hour was carried by every tree. */
  readonly after: (hour: number, trees: readonly TreeRun[]) => void;
  /** Back to the first midnight: no opening and no cut yet; what the rule remembers stays. */
  readonly restart: (trees: readonly TreeRun[]) => void;
  readonly book: () => WateringBook;
  readonly snapshot: () => ValveSnapshot;
  /** From a run without such a valve: nothing was opened yet. */
  readonly restore: (hour: number, from: ValveSnapshot | undefined, trees: readonly TreeRun[]) => void;
}

/** A decided valve as plain data. */
export interface ValveSnapshot {
  readonly valveH: readonly number[];
  /** Sums since the last decision, and what the rule remembers. */
  readonly sums: readonly number[];
  readonly memory: readonly number[];
  readonly book: WateringBook;
  /** Doses through the water so far. */
  readonly injection?: readonly number[];
}

export interface ValvePlace {
  readonly scenario: Scenario;
  readonly prepared: Prepared;
  readonly demand: Demand;
  readonly trees: readonly TreeName[];
  /** What is dissolved in the water: its moments, and the doses that it brings to runs decided day by day. */
  readonly solutes: Pick<SolutesInRun, "breaksH" | "injection"> | undefined;
}

/** Makes a valve for a programme with a rule or limits. */
export type ValveMaker = (place: ValvePlace) => Valve;

/** The valve of a calendar without limits. @throws RangeError as `valveEvents`. @example calendarValve({ scenario, prepared, demand, trees, solutes }).timeline */
export const calendarValve: ValveMaker = ({ scenario, prepared: { treeFlowLPerH }, demand, solutes }) => {
  const { days } = scenario.season;
  const valveH = valveEvents(scenario.programme, days, treeFlowLPerH);
  const schedule = emitterSchedule(valveH, treeFlowLPerH, scenario.block.lines.drainOut);
  const breaks = [...forcingBreaks(demand, 0, days), ...(solutes?.breaksH ?? [])];
  return { valveH, schedule, timeline: timelineOf(schedule.momentsH, breaks, 0, days * 24), place: 0 };
};
