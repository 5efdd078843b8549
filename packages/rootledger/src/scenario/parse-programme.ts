import { type Programme, pulseHours, type Run, runSpanHours } from "../programme/programme.js";
import type { DefaultUsed } from "../water/result.js";
import { type Fault, fault } from "./faults.js";
import { amountFaults, amountOf } from "./parse-amount.js";
import { filledPumpLimits, pumpLimitFaults, startFaults } from "./parse-pump-limits.js";
import { clockFaults, filledClock, filledRule, ruleFaults, type SensorPlace } from "./parse-rule.js";
import { filledNitrogen, nitrogenFaults } from "./parse-solutes.js";
import type { ProgrammeFile, RunFile } from "./schema-programme.js";

/** What a run cannot be checked without; undefined where the file's own is not readable. */
export interface RunPlace extends SensorPlace {
  readonly startDate: string | undefined;
  /** Ground of one tree, m2. */
  readonly groundM2: number | undefined;
  /** Open emitters per tree. */
  readonly emittersPerTree: number | undefined;
  readonly emitterFlowLPerH: number | undefined;
}

/** What the shape of a programme cannot say: amounts, gaps, runs that overlap. */
export function programmeFaults(file: ProgrammeFile, path: string, place: RunPlace): Fault[] {
  const { runs, rule, limits } = file;
  const found: Fault[] = [];
  if ((runs === undefined) === (rule === undefined)) {
    found.push(fault("exactly-one-of", path, file, { options: "runs, rule" }));
  }
  runs?.forEach((run, i) => {
    found.push(...runFaults(run, `${path}.runs[${i}]`, place.seasonDays));
  });
  if (rule) found.push(...ruleFaults(rule, `${path}.rule`, place));
  if (limits) found.push(...pumpLimitFaults(limits, `${path}.limits`), ...startFaults(file, path));
  const readable = found.length === 0;
  return [
    ...found,
    ...(readable ? overlapFaults(file, path, place) : []),
    ...doseFaults(file, path, place, readable ? openMinutes(file, path, place) : undefined),
  ];
}

function doseFaults(
  { nitrogen }: ProgrammeFile,
  path: string,
  { startDate, seasonDays: days }: RunPlace,
  runMinutes: readonly number[] | undefined,
): Fault[] {
  if (nitrogen === undefined) return [];
  const season = startDate === undefined || days === undefined ? undefined : { startDate, days };
  return nitrogenFaults(nitrogen, `${path}.nitrogen`, { season, runMinutes });
}

/** Minutes that the valve is open in each run; undefined where a run's water cannot be turned into time. */
function openMinutes(file: ProgrammeFile, path: string, place: RunPlace): number[] | undefined {
  const flow = flowOf(file, place);
  if (flow === undefined) return undefined;
  return runsOf(file, path, place).map((run) => run.pulses * pulseHours(run, flow) * 60);
}

/** Flow of a tree, L/h; 1 where no run needs it; undefined where it, or ground that a run needs, cannot be read. */
function flowOf({ runs = [], emitterFlowLPerH }: ProgrammeFile, place: RunPlace): number | undefined {
  if (runs.some((run) => run.mm !== undefined || run.m3PerHa !== undefined) && place.groundM2 === undefined)
    return undefined;
  if (runs.every((run) => run.minutes !== undefined)) return 1;
  const flow = emitterFlowLPerH ?? place.emitterFlowLPerH;
  return flow === undefined || place.emittersPerTree === undefined ? undefined : flow * place.emittersPerTree;
}

const runsOf = ({ name, runs }: ProgrammeFile, path: string, { groundM2 = 1 }: RunPlace): readonly Run[] =>
  filledProgramme({ name, runs }, path, groundM2, []).runs;

const runFaults = (run: RunFile, path: string, seasonDays: number | undefined): Fault[] => [
  ...amountFaults(run, path, "needed"),
  ...clockFaults(run, path, seasonDays),
];

/** Pairs of runs of which one opens while the other is still on, counting the gaps between pulses as on; each pair once. */
function overlapFaults(file: ProgrammeFile, path: string, place: RunPlace): Fault[] {
  const treeFlowLPerH = flowOf(file, place);
  if (place.seasonDays === undefined || treeFlowLPerH === undefined) return [];
  const openings: { readonly day: number; readonly onH: number; readonly offH: number; readonly run: number }[] = [];
  runsOf(file, path, place).forEach((run, i) => {
    const spanH = runSpanHours(run, treeFlowLPerH);
    for (let day = run.firstDay; day < (place.seasonDays ?? 0); day += run.everyDays) {
      const onH = day * 24 + run.startH;
      openings.push({ day, onH, offH: onH + spanH, run: i });
    }
  });
  openings.sort((a, b) => a.onH - b.onH || a.run - b.run);
  const found = new Map<string, Fault>();
  let latest = openings[0];
  for (const opening of openings.slice(1)) {
    const pair = `${latest.run} ${opening.run}`;
    if (opening.onH < latest.offH - 1e-9 && !found.has(pair)) {
      const other = latest.run === opening.run ? "its own run before" : `runs[${latest.run}]`;
      const start = file.runs?.[opening.run].start;
      found.set(pair, fault("runs-overlap", `${path}.runs[${opening.run}].start`, start, { day: opening.day, other }));
    }
    if (opening.offH > latest.offH) latest = opening;
  }
  return [...found.values()];
}

/**
 * A programme with its defaults filled in; its runs must have an amount.
 *
 * @param groundM2 ground of one tree
 */
export function filledProgramme(file: ProgrammeFile, path: string, groundM2: number, used: DefaultUsed[]): Programme {
  const { name, rule, limits, emitterFlowLPerH, lines, nitrogen } = file;
  const runs = (file.runs ?? []).map(
    (run, i): Run => ({
      ...filledClock(run, `${path}.runs[${i}]`, used),
      amount: amountOf(run, groundM2) ?? { minutes: 0 },
    }),
  );
  return {
    name,
    runs,
    ...(rule === undefined ? {} : { rule: filledRule(rule, `${path}.rule`, groundM2, used) }),
    ...(limits === undefined ? {} : { limits: filledPumpLimits(limits) }),
    ...(emitterFlowLPerH === undefined ? {} : { emitterFlowLPerH }),
    ...(lines === undefined ? {} : { lines }),
    ...(nitrogen === undefined ? {} : { nitrogen: filledNitrogen(nitrogen, `${path}.nitrogen`, used) }),
  };
}
