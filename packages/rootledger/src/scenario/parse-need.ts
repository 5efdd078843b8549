import { z } from "zod";
import type { NeedCover } from "../tree/need-area.js";
import type { Practice } from "../tree/practice.js";
import type { NeedPeriod, NeedQuestion } from "../tree/water-need.js";
import type { DefaultUsed } from "../water/result.js";
import { type Fault, fault } from "./faults.js";
import { needDefaults } from "./need-defaults.js";
import { type NeedPeriodsRead, periodsFromWeather } from "./need-weather.js";
import { pick } from "./parse-default.js";
import { shapeFaults } from "./parse-issues.js";
import { type NeedFile, type NeedPeriodFile, needSchema, type PracticeFile } from "./schema-need.js";

/** A question of need, or every fault of its file. */
export type ParsedNeed =
  | {
      readonly ok: true;
      readonly name: string;
      readonly question: NeedQuestion;
      readonly practice: readonly Practice[];
      /** Scenario file in whose season the practices are to be run; see `practiceAccounts`. */
      readonly scenario?: string;
      /** What was seen in the weather file and left as it is; empty without one. */
      readonly notes: readonly string[];
      readonly defaultsUsed: readonly DefaultUsed[];
    }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Checks a need file and fills in its defaults, each of which is listed. Never throws; every fault is returned at once.
 *
 * @param input the parsed JSON
 * @param files text of the weather file it names, if it names one; see `filesNamed`
 * @example parseNeed({ format: 1, name: "block", treeSpacingM: 4, rowSpacingM: 6, reference: { kind: "et0" }, periods: [{ name: "January", days: 31, referenceMmPerDay: 7, coefficient: 0.7 }] }).ok // true
 */
export function parseNeed(input: unknown, files: Readonly<Record<string, string>> = {}): ParsedNeed {
  const shape = shapeFaults(needSchema, input);
  if (shape.length > 0) return { ok: false, faults: shape };
  const file = needSchema.parse(input);
  const used: DefaultUsed[] = [];
  const cover = coverOf(file, used);
  const read = periodsOf(file, files, used);
  const faults = [
    ...missingSizes(file, cover),
    ...(read.ok ? unknownPeriods(file, read.periods) : read.faults),
    ...referenceFaults(file),
  ];
  if (faults.length > 0 || !read.ok) return { ok: false, faults };
  const question: NeedQuestion = {
    tree: treeOf(file, file.canopyDiameterM),
    cover,
    reference: file.reference,
    periods: read.periods,
    hotDayRatio: read.periods.every(({ hotDayMmPerDay }) => hotDayMmPerDay !== undefined)
      ? 1
      : pick(used, "hotDayRatio", file.hotDayRatio, needDefaults.hotDayRatio),
    efficiencyFraction: pick(used, "efficiencyFraction", file.efficiencyFraction, needDefaults.efficiencyFraction),
    leachingFraction: pick(used, "leachingFraction", file.leachingFraction, needDefaults.leachingFraction),
  };
  const practice = (file.practice ?? []).map(practiceOf);
  const { name, scenario } = file;
  if (scenario !== undefined && practice.length === 0) {
    const terms = { expected: "a list, for the scenario to run" };
    return { ok: false, faults: [fault("missing", "practice", undefined, terms)] };
  }
  return {
    ok: true,
    ...{ name, question, practice, notes: read.notes, defaultsUsed: used },
    ...(scenario === undefined ? {} : { scenario }),
  };
}

/** JSON Schema (draft 2020-12) of the need file. @example needJsonSchema().required */
export const needJsonSchema = (): z.core.JSONSchema.BaseSchema => z.toJSONSchema(needSchema);

function periodsOf(file: NeedFile, files: Readonly<Record<string, string>>, used: DefaultUsed[]): NeedPeriodsRead {
  const { periods, weather } = file;
  if (periods !== undefined && weather === undefined) return { ok: true, periods: periods.map(periodOf), notes: [] };
  if (periods === undefined && weather !== undefined) return periodsFromWeather(weather, files, used);
  const terms = { expected: "a list of spans, or weather in its place" };
  const one =
    periods === undefined
      ? fault("missing", "periods", undefined, terms)
      : fault("exactly-one-of", "periods", periods, { options: "periods, weather" });
  return { ok: false, faults: [one] };
}

/** A weather file gives ET0. */
function referenceFaults({ weather, reference }: NeedFile): Fault[] {
  if (weather === undefined || reference.kind === "et0") return [];
  const terms = { other: "weather", reason: "a weather file gives ET0, so only the kind et0 goes with it" };
  return [fault("not-beside", "reference.kind", reference.kind, terms)];
}

function coverOf(file: NeedFile, used: DefaultUsed[]): NeedCover {
  if (file.cover !== undefined) return file.cover;
  const entry = file.canopyDiameterM === undefined ? needDefaults.coverWithoutCanopy : needDefaults.coverWithCanopy;
  return { rule: pick<"canopy-ground" | "whole-ground">(used, "cover.rule", undefined, entry) };
}

/** Sizes that the cover rule needs, by rule. */
function missingSizes(file: NeedFile, { rule }: NeedCover): Fault[] {
  const missing = (field: "treeSpacingM" | "rowSpacingM" | "canopyDiameterM" | "heightM"): Fault[] =>
    file[field] === undefined ? [fault("missing", field, undefined, { expected: `a length in m, for ${rule}` })] : [];
  const oneSpacing = (file.treeSpacingM === undefined) !== (file.rowSpacingM === undefined);
  const spacing = [...missing("treeSpacingM"), ...missing("rowSpacingM")];
  if (rule === "canopy-ground") return [...missing("canopyDiameterM"), ...(oneSpacing ? spacing : [])];
  if (rule === "whole-ground" || rule === "stated-cover") return spacing;
  return [...spacing, ...missing("canopyDiameterM"), ...(rule.endsWith("density") ? missing("heightM") : [])];
}

function unknownPeriods({ practice }: NeedFile, periods: readonly NeedPeriod[]): Fault[] {
  const options = periods.map(({ name }) => name);
  return (practice ?? []).flatMap(({ period }, i) =>
    period === undefined || options.includes(period)
      ? []
      : [fault("not-one-of", `practice[${i}].period`, period, { options: options.join(", ") })],
  );
}

function treeOf(file: NeedFile, canopyDiameterM: number | undefined): NeedQuestion["tree"] {
  const { treeSpacingM, rowSpacingM, heightM } = file;
  return {
    ...(treeSpacingM === undefined || rowSpacingM === undefined ? {} : { spacing: { treeSpacingM, rowSpacingM } }),
    ...(canopyDiameterM === undefined ? {} : { canopyDiameterM }),
    ...(heightM === undefined ? {} : { heightM }),
  };
}

const periodOf = (file: NeedPeriodFile): NeedPeriod => ({
  name: file.name,
  days: file.days,
  referenceMmPerDay: file.referenceMmPerDay,
  coefficient: file.coefficient,
  ...(file.hotDayMmPerDay === undefined ? {} : { hotDayMmPerDay: file.hotDayMmPerDay }),
  ...(file.usefulRainLPerTree === undefined ? {} : { usefulRainLPerTree: file.usefulRainLPerTree }),
});

const practiceOf = ({ name, litresPerTreePerDay, period, canopyDiameterM, rootedShare }: PracticeFile): Practice => ({
  name,
  litresPerTreePerDay,
  ...(period === undefined ? {} : { period }),
  ...(canopyDiameterM === undefined ? {} : { canopyDiameterM }),
  ...(rootedShare === undefined ? {} : { rootedShare }),
});
