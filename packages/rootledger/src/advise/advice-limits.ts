import { applyLimits } from "../programme/apply-limits.js";
import { type Programme, pulseHours, runSpanHours } from "../programme/programme.js";
import { shortestUsefulPulse } from "../programme/shortest-pulse.js";
import type { CutReason } from "../water/watering-book.js";
import { type AdviceCase, treeFlow } from "./advice-case.js";

/**
 * Why a candidate is not tried or not kept: a limit would cut it; its pulses would mostly fill the lines (`fill`); it would not
 * bring today's water (`water-differs`); it could not be run (`failed`).
 */
export type CandidateCut = CutReason | "fill" | "water-differs" | "failed";

/** Most of a pulse that may go into filling lines that drain. Our choice, no source. */
const mostFillFraction = 0.2;
/** What rounding makes of minutes and litres. */
const noMinutes = 1e-6;

/**
 * The limit that a calendar would break in the days of the case, if any. Rain is left out: days skipped for rain are part of the
 * season, not a breach.
 *
 * @example limitBroken(programme, 0, ready) // "longest-run"
 */
export function limitBroken(programme: Programme, linesAt: number, ready: AdviceCase): CandidateCut | undefined {
  const { scenario, limits, fromDay, days } = ready;
  const { treeSpacingM, rowSpacingM } = scenario.block;
  const lines = ready.lines[linesAt];
  const flow = treeFlow(lines, treeSpacingM);
  const { skipFromRainMm: _, ...standing } = limits;
  for (const run of programme.runs) {
    if (runSpanHours(run, flow) > run.everyDays * 24 + noMinutes) return "overlap";
    if (lines.drainOut !== undefined && pulseHours(run, flow) * 60 < shortestOf(run.gapMinutes, lines.drainOut, flow))
      return "fill";
  }
  const valveH: number[] = [];
  for (let day = 0; day < fromDay + days; day++) {
    const asked = programme.runs
      .filter(({ firstDay, everyDays }) => day >= firstDay && (day - firstDay) % everyDays === 0)
      .sort((a, b) => a.startH - b.startH)
      .map((run) => ({ ...run, minutes: run.pulses * pulseHours(run, flow) * 60 }));
    const { openingsH, cuts } = applyLimits(asked, standing, {
      ...{ day, rainMm: 0, valveH, untilH: Number.POSITIVE_INFINITY },
      ...{ treeFlowLPerH: flow, groundM2: treeSpacingM * rowSpacingM },
    });
    const cut = cuts.find(({ reason, minutes }) => reason === "fewer-pulses" || minutes > noMinutes);
    if (cut !== undefined) return cut.reason;
    valveH.push(...openingsH);
  }
  return undefined;
}

function shortestOf(
  gapMinutes: number,
  { contentLPerTree, drainHours }: { readonly contentLPerTree: number; readonly drainHours: number },
  flow: number,
): number {
  return shortestUsefulPulse({
    ...{ fillMinutes: (contentLPerTree / flow) * 60, drainMinutes: drainHours * 60, gapMinutes, mostFillFraction },
    ...{ dayMinutes: 0, availableMinutes: 0, airBackMinutes: 0 },
  }).minutes;
}
