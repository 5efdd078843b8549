import { type DrawSource, defaultPriors, type EnsemblePlan, parseDraws, weatherYears } from "rootledger/chance";
import { type Comparison, parseWeatherRecord, type SiteWeather, treesOf } from "rootledger/scenario";
import { type EnsembleAsked, membersOf } from "./ensemble-flags.js";
import type { Io } from "./io.js";
import { type InputFault, readText } from "./read-input.js";
import { words } from "./words.js";

/** A plan and how many of its members to run, or what is wrong with the files that it names. */
export type PlanRead =
  | { readonly ok: true; readonly plan: EnsemblePlan; readonly members: number }
  | { readonly ok: false; readonly faults: readonly InputFault[] };

/** The plan of a comparison: default priors, or a table of draws; the years of a record beside the season's own. */
export async function readPlan(
  comparison: Comparison,
  input: unknown,
  asked: EnsembleAsked,
  io: Io,
): Promise<PlanRead> {
  const record = await readYears(comparison, input, asked.recordFile, io);
  const table = await readDraws(asked.drawsFile, io);
  if (!record.ok || !table.ok) {
    return { ok: false, faults: [...(record.ok ? [] : record.faults), ...(table.ok ? [] : table.faults)] };
  }
  const { years } = record;
  const priors = (): DrawSource => ({
    ...{ kind: "priors", seed: asked.seed },
    priors: defaultPriors(comparison, { weatherYears: years.length }),
  });
  const members = membersOf(asked, table.rows);
  if (table.rows !== undefined && members > table.rows) {
    const rule = words.drawRows(table.rows);
    return { ok: false, faults: [{ path: "--members", received: String(members), rule }] };
  }
  const trees = treesOf(comparison.block);
  return { ok: true, plan: { comparison, trees, draws: table.draws ?? priors(), weatherYears: years }, members };
}

type Years = { readonly ok: true; readonly years: readonly SiteWeather[] } | Refused;
type Table = { readonly ok: true; readonly draws?: DrawSource; readonly rows?: number } | Refused;

interface Refused {
  readonly ok: false;
  readonly faults: readonly InputFault[];
}

async function readYears(comparison: Comparison, input: unknown, file: string | undefined, io: Io): Promise<Years> {
  if (file === undefined) return { ok: true, years: [] };
  const text = await readText(file, io);
  if (!text.ok) return { ok: false, faults: [{ path: file, received: text.reason, rule: words.notReadable }] };
  const read = parseWeatherRecord(input, file, text.text);
  if (!read.ok) return read;
  const years = weatherYears(read.weather, comparison.season);
  if (years.length > 0) return { ok: true, years };
  const { startDate, days } = read.weather;
  return { ok: false, faults: [{ path: file, received: `${days} ${words.days} ${startDate}`, rule: words.noYears }] };
}

async function readDraws(file: string | undefined, io: Io): Promise<Table> {
  if (file === undefined) return { ok: true };
  const text = await readText(file, io);
  if (!text.ok) return { ok: false, faults: [{ path: file, received: text.reason, rule: words.notReadable }] };
  const read = parseDraws(text.text);
  if (read.ok) return { ok: true, draws: read.draws, rows: read.members };
  return { ok: false, faults: read.faults.map((fault) => ({ ...fault, path: `${file} ${fault.path}`.trim() })) };
}
