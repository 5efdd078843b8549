import type { NitrogenDoses } from "./injection.js";
import type { Amount, PumpLimits, WateringRule } from "./rule.js";

/** When the valve opens and for how long: a calendar of runs, or a rule that decides day by day. */
export interface Programme {
  readonly name: string;
  /** Empty beside a rule. */
  readonly runs: readonly Run[];
  readonly rule?: WateringRule;
  readonly limits?: PumpLimits;
  /** Replaces the block's emitter flow for this programme. */
  readonly emitterFlowLPerH?: number;
  /** Replaces the block's lines for this programme, roots grown along them. Left out: the block's own. */
  readonly lines?: ProgrammeLines;
  /** Nitrogen it brings. Left out: none. */
  readonly nitrogen?: NitrogenDoses;
}

/** Where a programme's own driplines lie. */
export interface ProgrammeLines {
  readonly offsetsM: readonly number[];
}

/** One kind of run of a calendar. */
export interface Run {
  /** Clock time of the first opening, hours since midnight. */
  readonly startH: number;
  readonly everyDays: number;
  /** Days after the season's start of the first run. */
  readonly firstDay: number;
  readonly pulses: number;
  readonly gapMinutes: number;
  /** Length of all pulses together, or the water they bring. */
  readonly amount: Amount;
}

/** Length of one pulse, h. @example pulseHours({ amount: { minutes: 120 }, pulses: 4 }, 32) // 0.5 */
export function pulseHours(run: Pick<Run, "amount" | "pulses">, treeFlowLPerH: number): number {
  return amountHours(run.amount, treeFlowLPerH) / run.pulses;
}

/** Hours of open valve that bring an amount. @example amountHours({ litresPerTree: 64 }, 32) // 2 */
export const amountHours = (amount: Amount, treeFlowLPerH: number): number =>
  "minutes" in amount ? amount.minutes / 60 : amount.litresPerTree / treeFlowLPerH;

/** Whether the valve's season is decided day by day, and not known beforehand. @example isDecided(scenario.programme) */
export const isDecided = ({ rule, limits }: Pick<Programme, "rule" | "limits">): boolean =>
  rule !== undefined || limits !== undefined;

/** Hours from the first opening of a run to its last closing. @example runSpanHours(run, 32) */
export const runSpanHours = (run: Run, treeFlowLPerH: number): number =>
  run.pulses * pulseHours(run, treeFlowLPerH) + ((run.pulses - 1) * run.gapMinutes) / 60;
