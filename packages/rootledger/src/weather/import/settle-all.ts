import type { StationAnswers } from "./answers.js";
import { repair } from "./body-rows.js";
import { applyEcccFlags } from "./eccc-flags.js";
import { flatRuns } from "./flat-runs.js";
import { isQuantity } from "./header-role.js";
import { rainSpike } from "./rain-spike.js";
import { type RawColumn, readValues } from "./read-values.js";
import { type SettledColumn, settleColumn } from "./settle-column.js";
import type { FileFacts } from "./settle-unit.js";
import { mark } from "./special-cell.js";
import type { StationFile } from "./station-file.js";
import type { Caution, Repair } from "./station-report.js";
import { stationTime } from "./station-time.js";
import { ask, isStop, type Stop } from "./stop.js";
import { markFrozen, markNotedZeros } from "./suspect-rows.js";
import type { TimeAxis } from "./time-axis.js";

export interface SettledFile {
  readonly raw: readonly RawColumn[];
  /** By the index of the column in the file; undefined where it is not kept. */
  readonly settled: readonly (SettledColumn | undefined)[];
  readonly repairs: readonly Repair[];
  readonly cautions: readonly Caution[];
}

/** Reads and settles every column of the rows in order. */
export function settleAll(file: StationFile, axis: TimeAxis, answers: StationAnswers): SettledFile | Stop {
  const { rows } = file.body;
  const lines = axis.rows.map((place) => rows.line(place));
  const textOf = (row: number, c: number): string => {
    rows.open(axis.rows[row]);
    return rows.cell(c).trim();
  };
  const raw = readValues(file.plans, rows, axis.rows, file.style, missingWords(answers));
  const repairs: Repair[] = [];
  const cautions: Caution[] = [];
  const facts = factsOf(file, raw, axis);
  const flags = file.layout?.flags === "eccc" ? file.plans.find(({ role }) => role.kind === "flag") : undefined;
  const settled: (SettledColumn | undefined)[] = [];
  for (const one of raw) {
    const { role, header } = one.plan;
    if (!isQuantity(role) || mostlyWords(one)) {
      settled.push(undefined);
      if (isQuantity(role))
        cautions.push({ code: "time-words", column: header, what: "holds words instead of numbers and is not read" });
      continue;
    }
    if (one.unreadable.length > 0) return unreadableQuestion(one, textOf, lines);
    if (flags !== undefined) {
      const estimated = applyEcccFlags(one, (row) => textOf(row, flags.index));
      if (estimated.length > 0)
        cautions.push({
          code: "suspect-value",
          column: header,
          what: `${estimated.length} values are estimates by their flag`,
        });
    }
    const column = settleColumn(role.quantity, one, { answers, facts, lines });
    if (column !== undefined && isStop(column)) return column;
    if (column === undefined)
      cautions.push({ code: "not-converted", column: header, what: "its unit cannot be told, and it is not kept" });
    settled.push(column);
  }
  const kept = settled.filter((column) => column !== undefined);
  const checked = crossChecks(kept, file, axis, textOf, lines, answers);
  if (isStop(checked)) return checked;
  for (const column of kept) {
    repairs.push(...column.repairs);
    cautions.push(...column.cautions);
  }
  return { raw, settled, repairs: [...repairs, ...checked.repairs], cautions: [...cautions, ...checked.cautions] };
}

/** Words and numbers of the answer "missing"; parted by semicolons where the numbers have decimal commas. */
function missingWords(answers: StationAnswers): ReadonlySet<string> {
  const text = answers.missing ?? "";
  const words = text.split(text.includes(";") ? ";" : ",").map((word) => word.trim().toLowerCase());
  return new Set(words.filter((word) => word !== ""));
}

const mostlyWords = ({ unreadable, values }: RawColumn): boolean => {
  let numbers = 0;
  for (const value of values) if (!Number.isNaN(value)) numbers++;
  return unreadable.length > numbers;
};

function factsOf(file: StationFile, raw: readonly RawColumn[], axis: TimeAxis): FileFacts {
  const us = ["F", "mph", "in", "0.01in", "ft/s"];
  const usUnits = [...file.plans.map(({ unit }) => unit?.id), ...raw.map(({ cellUnit }) => cellUnit?.id)].some(
    (id) => id !== undefined && us.includes(id),
  );
  const { minutes, stepMinutes } = axis;
  const covered = axis.long === undefined ? minutes.length : new Set(minutes).size;
  return { stepMinutes, usUnits, years: (covered * stepMinutes) / (365.25 * 1440) };
}

type TextOf = (row: number, c: number) => string;

function unreadableQuestion(raw: RawColumn, textOf: TextOf, lines: readonly number[]): Stop {
  const { index, header } = raw.plan;
  const words = [...new Set(raw.unreadable.slice(0, 1000).map((i) => textOf(i, index)))].slice(0, 5);
  return ask(
    "missing",
    `In "${header}" ${raw.unreadable.length} cells hold no number: ${words.join(", ").slice(0, 200)}. Do they mean "no value"?`,
    [
      {
        value: words.join(words.some((word) => word.includes(",")) ? ";" : ","),
        meaning: "no value; list all words and numbers that mean this, parted by commas",
      },
    ],
    raw.unreadable.slice(0, 5).map((i) => `line ${lines[i]}: ${textOf(i, index).slice(0, 40)}`),
  );
}

/** Checks that look at more than one value or column: notes, frozen soil, stuck sensors, lone storms, suspects that are to be dropped. */
function crossChecks(
  kept: readonly SettledColumn[],
  file: StationFile,
  axis: TimeAxis,
  textOf: TextOf,
  lines: readonly number[],
  answers: StationAnswers,
): { readonly repairs: readonly Repair[]; readonly cautions: readonly Caution[] } | Stop {
  const repairs: Repair[] = [];
  const cautions: Caution[] = [];
  const notes = file.plans.filter(({ role }) => role.kind === "notes");
  const hasNote = (row: number): boolean => notes.some(({ index }) => textOf(row, index) !== "");
  const noted = notes.length === 0 ? [] : Array.from(lines.keys()).filter(hasNote);
  if (noted.length > 0) {
    const first = noted.slice(0, 3).map(
      (row) =>
        `line ${lines[row]}: ${notes
          .map(({ index }) => textOf(row, index))
          .join(" ")
          .slice(0, 60)}`,
    );
    cautions.push({
      code: "rows-with-notes",
      column: notes.map(({ header }) => header).join(", "),
      what: `${noted.length} rows have notes (${first.join("; ")})`,
    });
  }
  for (const column of kept) {
    const { header, depthCm } = column.plan;
    if (column.quantity === "soilTensionKPa") {
      const zeros = markNotedZeros(column, hasNote);
      if (zeros.length > 0)
        cautions.push({
          code: "suspect-value",
          column: header,
          what: `0 in rows with a note (line ${zeros
            .map((row) => lines[row])
            .slice(0, 5)
            .join(", ")}): marked as suspect`,
        });
    }
    if (column.quantity === "soilMoistureM3PerM3") {
      const frozen = markFrozen(
        column,
        depthCm,
        kept.filter(({ quantity }) => quantity === "soilTempC"),
      );
      if (frozen.length > 0)
        cautions.push({
          code: "soil-frozen",
          column: header,
          what: `${frozen.length} records in soil at or below 0.5 C marked as suspect`,
        });
    }
    const spike = column.quantity === "rainMm" ? rainSpike(column.values) : -1;
    if (spike >= 0) {
      const { role } = column.plan;
      const told = answers.spikes ?? (isQuantity(role) && role.canonical ? "keep" : undefined);
      const text = `line ${lines[spike]}: ${column.values[spike]} mm on ${stationTime(axis.minutes[spike])}`;
      if (told === undefined) return spikeQuestion(header, text);
      if (told === "missing") {
        column.values[spike] = Number.NaN;
        column.marks[spike] = mark.missing;
        repairs.push(repair("spike", header, [lines[spike]], "a lone storm taken as missing"));
      } else cautions.push({ code: "spike", column: header, what: `${text}: kept` });
    }
    if (axis.long === undefined) {
      for (const { from, to, value } of flatRuns(column, axis.stepMinutes)) {
        cautions.push({
          code: "flat-run",
          column: header,
          what: `${value} from ${stationTime(axis.minutes[from])} to ${stationTime(axis.minutes[to])} without change: a stuck sensor?`,
        });
      }
    }
    if (answers.suspect === "missing") {
      const dropped: number[] = [];
      column.marks.forEach((one, i) => {
        if (one !== mark.suspect) return;
        column.values[i] = Number.NaN;
        column.marks[i] = mark.missing;
        dropped.push(lines[i]);
      });
      if (dropped.length > 0)
        repairs.push(repair("suspect-dropped", header, dropped, "suspect values taken as missing"));
    }
  }
  return { repairs, cautions };
}

const spikeQuestion = (header: string, text: string): Stop =>
  ask(
    "spikes",
    `"${header}" has one record far above all others. Did it rain so much?`,
    [
      { value: "keep", meaning: "it did" },
      { value: "missing", meaning: "an error: the record becomes missing" },
    ],
    [text],
  );
