import type { Programme } from "../programme/programme.js";
import { pulseHours } from "../programme/programme.js";
import type { Question } from "./comparison.js";

/**
 * What a second programme changes against a first. Programmes of the same litres that differ in one of these ask one
 * question; more than one means the comparison cannot say which of them made the difference.
 *
 * @param treeFlowLPerH flow of all emitters of a tree under each programme
 * @example questionsBetween(daily, fourPulses, 32, 32) // ["pulses"]
 */
export function questionsBetween(
  from: Programme,
  to: Programme,
  fromFlowLPerH: number,
  toFlowLPerH: number,
): readonly Question[] {
  const questions: Question[] = [];
  if (!sameData(from.limits, to.limits)) questions.push("limits");
  const sameLines = sameData(from.lines, to.lines);
  if (!sameLines) questions.push("lines");
  // Other lines bring another flow of themselves; an emitter of another kind is a question of its own.
  const emitters = sameLines
    ? differ(fromFlowLPerH, toFlowLPerH, 0.001)
    : from.emitterFlowLPerH !== to.emitterFlowLPerH;
  if (from.rule !== undefined || to.rule !== undefined) {
    if (!sameData(from.rule, to.rule)) questions.push("rule");
    if (emitters) questions.push("emitter-flow");
    if (!sameData(from.nitrogen, to.nitrogen)) questions.push("nitrogen");
    return questions;
  }
  const a = rhythm(from, fromFlowLPerH);
  const b = rhythm(to, toFlowLPerH);
  if (differ(a.litresPerDay, b.litresPerDay, 0.01)) questions.push("amount");
  if (differ(a.daysBetween, b.daysBetween, 0.001)) questions.push("interval");
  if (differ(a.pulses, b.pulses, 0.001)) questions.push("pulses");
  else if (a.pulses > 1 && differ(a.gapMinutes, b.gapMinutes, 0.001)) questions.push("gap");
  if (emitters) questions.push("emitter-flow");
  if (a.startsH !== b.startsH) questions.push("start-time");
  if (!sameData(from.nitrogen, to.nitrogen)) questions.push("nitrogen");
  return questions;
}

/** Whether two pieces of plain data are alike; own functions are alike if they are the same one. */
function sameData(a: unknown, b: unknown): boolean {
  if (a === b || typeof a !== "object" || typeof b !== "object" || a === null || b === null) return a === b;
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].every((key) => sameData(Reflect.get(a, key), Reflect.get(b, key)));
}

interface Rhythm {
  readonly litresPerDay: number;
  readonly daysBetween: number;
  readonly pulses: number;
  readonly gapMinutes: number;
  readonly startsH: string;
}

/** Means over the runs of a programme, weighted by how often each comes. */
function rhythm(programme: Programme, treeFlowLPerH: number): Rhythm {
  let litres = 0;
  let openings = 0;
  let pulses = 0;
  let gap = 0;
  for (const run of programme.runs) {
    const perDay = 1 / run.everyDays;
    openings += perDay;
    litres += perDay * run.pulses * pulseHours(run, treeFlowLPerH) * treeFlowLPerH;
    pulses += perDay * run.pulses;
    gap += perDay * run.gapMinutes;
  }
  return {
    litresPerDay: litres,
    daysBetween: openings > 0 ? 1 / openings : Number.POSITIVE_INFINITY,
    pulses: openings > 0 ? pulses / openings : 0,
    gapMinutes: openings > 0 ? gap / openings : 0,
    startsH: [...new Set(programme.runs.map((run) => run.startH))].sort((x, y) => x - y).join(" "),
  };
}

function differ(a: number, b: number, tolerance: number): boolean {
  if (a === b) return false;
  return Math.abs(a - b) > tolerance * Math.max(Math.abs(a), Math.abs(b));
}
