import { type Programme, pulseHours, type Run, runSpanHours } from "../programme/programme.js";
import type { DefaultUsed } from "../water/result.js";
import { defaults } from "./defaults.js";
import { type Fault, fault } from "./faults.js";
import { pick } from "./parse-default.js";
import { filledNitrogen, nitrogenFaults } from "./parse-solutes.js";
import type { ProgrammeFile, RunFile } from "./schema-programme.js";

/** What a run cannot be checked without; undefined where the file's own is not readable. */
export interface RunPlace {
  readonly seasonDays: number | undefined;
  readonly startDate: string | undefined;
  /** Open emitters per tree. */
  readonly emittersPerTree: number | undefined;
  readonly emitterFlowLPerH: number | undefined;
}

/** What the shape of a programme cannot say: amounts, gaps, runs that overlap. */
export function programmeFaults(file: ProgrammeFile, path: string, place: RunPlace): Fault[] {
  const found = file.runs.flatMap((run, i) => runFaults(run, `${path}.runs[${i}]`, place.seasonDays));
  const overlaps = found.length > 0 ? found : overlapFaults(file, path, place);
  if (file.nitrogen === undefined) return overlaps;
  const { startDate, seasonDays: days } = place;
  const season = startDate === undefined || days === undefined ? undefined : { startDate, days };
  const runMinutes = found.length > 0 ? undefined : openMinutes(file, path, place);
  return [...overlaps, ...nitrogenFaults(file.nitrogen, `${path}.nitrogen`, { season, runMinutes })];
}

/** Minutes that the valve is open in each run; undefined where a run's litres cannot be turned into time. */
function openMinutes(file: ProgrammeFile, path: string, place: RunPlace): number[] | undefined {
  const flow = flowOf(file, place);
  if (flow === undefined) return undefined;
  return filledProgramme({ name: file.name, runs: file.runs }, path, []).runs.map(
    (run) => run.pulses * pulseHours(run, flow) * 60,
  );
}

/** Flow of a tree, L/h; 1 where no run needs it. */
function flowOf(file: ProgrammeFile, place: RunPlace): number | undefined {
  if (!file.runs.some((run) => run.litresPerTree !== undefined)) return 1;
  const flow = file.emitterFlowLPerH ?? place.emitterFlowLPerH;
  return flow === undefined || place.emittersPerTree === undefined ? undefined : flow * place.emittersPerTree;
}

function runFaults(run: RunFile, path: string, seasonDays: number | undefined): Fault[] {
  const found: Fault[] = [];
  if ((run.minutes === undefined) === (run.litresPerTree === undefined)) {
    found.push(fault("exactly-one-of", path, run, { options: "minutes, litresPerTree" }));
  }
  const pulses = run.pulses ?? defaults.pulses.value;
  if (pulses > 1 && run.gapMinutes === undefined)
    found.push(fault("gap-missing", `${path}.gapMinutes`, undefined, { pulses }));
  if (seasonDays !== undefined && run.firstDay !== undefined && run.firstDay >= seasonDays) {
    found.push(fault("run-outside-season", `${path}.firstDay`, run.firstDay, { last: seasonDays - 1 }));
  }
  return found;
}

/** Pairs of runs of which one opens while the other is still on, counting the gaps between pulses as on; each pair once. */
function overlapFaults(file: ProgrammeFile, path: string, place: RunPlace): Fault[] {
  const treeFlowLPerH = flowOf(file, place);
  if (place.seasonDays === undefined || treeFlowLPerH === undefined) return [];
  const { runs } = filledProgramme({ name: file.name, runs: file.runs }, path, []);
  const openings: { readonly day: number; readonly onH: number; readonly offH: number; readonly run: number }[] = [];
  runs.forEach((run, i) => {
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
      const start = file.runs[opening.run].start;
      found.set(pair, fault("runs-overlap", `${path}.runs[${opening.run}].start`, start, { day: opening.day, other }));
    }
    if (opening.offH > latest.offH) latest = opening;
  }
  return [...found.values()];
}

/** A programme with its defaults filled in; its runs must have an amount. */
export function filledProgramme(file: ProgrammeFile, path: string, used: DefaultUsed[]): Programme {
  const runs = file.runs.map((run, i): Run => {
    const at = `${path}.runs[${i}]`;
    return {
      startH: clockHours(run.start),
      everyDays: run.everyDays,
      firstDay: pick(used, `${at}.firstDay`, run.firstDay, defaults.firstDay),
      pulses: pick(used, `${at}.pulses`, run.pulses, defaults.pulses),
      gapMinutes: run.gapMinutes ?? 0,
      amount: run.minutes === undefined ? { litresPerTree: run.litresPerTree ?? 0 } : { minutes: run.minutes },
    };
  });
  const { name, emitterFlowLPerH, nitrogen } = file;
  return {
    name,
    runs,
    ...(emitterFlowLPerH === undefined ? {} : { emitterFlowLPerH }),
    ...(nitrogen === undefined ? {} : { nitrogen: filledNitrogen(nitrogen, `${path}.nitrogen`, used) }),
  };
}

/** "06:30" as 6.5. */
function clockHours(clock: string): number {
  const [hours, minutes] = clock.split(":").map(Number);
  return hours + minutes / 60;
}
