import type { NitrogenDoses } from "./injection.js";

/** A calendar of runs, the same rule every season. */
export interface Programme {
  readonly name: string;
  readonly runs: readonly Run[];
  /** Replaces the block's emitter flow for this programme. */
  readonly emitterFlowLPerH?: number;
  /** Nitrogen it brings. Left out: none. */
  readonly nitrogen?: NitrogenDoses;
}

export interface Run {
  /** Clock time of the first opening, hours since midnight. */
  readonly startH: number;
  readonly everyDays: number;
  /** Days after the season's start of the first run. */
  readonly firstDay: number;
  readonly pulses: number;
  readonly gapMinutes: number;
  /** Length of all pulses together, or the water they bring. */
  readonly amount: { readonly minutes: number } | { readonly litresPerTree: number };
}

/** Length of one pulse, h. @example pulseHours({ amount: { minutes: 120 }, pulses: 4 }, 32) // 0.5 */
export function pulseHours(run: Pick<Run, "amount" | "pulses">, treeFlowLPerH: number): number {
  const totalH = "minutes" in run.amount ? run.amount.minutes / 60 : run.amount.litresPerTree / treeFlowLPerH;
  return totalH / run.pulses;
}

/** Hours from the first opening of a run to its last closing. @example runSpanHours(run, 32) */
export const runSpanHours = (run: Run, treeFlowLPerH: number): number =>
  run.pulses * pulseHours(run, treeFlowLPerH) + ((run.pulses - 1) * run.gapMinutes) / 60;
