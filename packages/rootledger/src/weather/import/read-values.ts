import type { ColumnPlan } from "./column-plan.js";
import { isQuantity } from "./header-role.js";
import { quantities } from "./quantity.js";
import { type NumberStyle, readNumber } from "./read-number.js";
import type { RowCursor } from "./row-cursor.js";
import { isMissingWord, mark, specialCell } from "./special-cell.js";
import { type Unit, unitOf } from "./unit.js";

/** The cells of one column as numbers of the file's own unit. */
export interface RawColumn {
  readonly plan: ColumnPlan;
  /** NaN where there is no number. */
  readonly values: Float64Array;
  readonly marks: Uint8Array;
  /** Words in the place of numbers, and how often. */
  readonly words: Map<string, number>;
  /** Rows whose cell has a meaning that must be asked for. */
  readonly unreadable: number[];
  /** Rows with the other decimal sign, or with a letter behind the number. */
  readonly strayDecimal: number[];
  readonly flagged: number[];
  /** A unit written in the cells themselves. */
  cellUnit: Unit | undefined;
}

const mostWords = 20;

/** Reads the columns of the rows at `places`; `meansMissing` are the words and numbers that the owner of the file says are no values. */
export function readValues(
  plans: readonly ColumnPlan[],
  rows: RowCursor,
  places: readonly number[],
  style: NumberStyle,
  meansMissing: ReadonlySet<string>,
): RawColumn[] {
  const columns = plans.map((plan) => newColumn(plan, places.length));
  const kept = columns.filter(({ plan }) => isQuantity(plan.role));
  const counted = columns.filter(({ plan }) => plan.role.kind === "other" || plan.role.kind === "time");
  for (let i = 0; i < places.length; i++) {
    rows.open(places[i]);
    for (const raw of kept) readCell(raw, i, rows, style, meansMissing);
    for (const raw of counted) countWord(raw, i, rows, style);
  }
  return columns;
}

function newColumn(plan: ColumnPlan, length: number): RawColumn {
  return {
    plan,
    values: new Float64Array(length).fill(Number.NaN),
    marks: new Uint8Array(length),
    words: new Map(),
    unreadable: [],
    strayDecimal: [],
    flagged: [],
    cellUnit: undefined,
  };
}

function readCell(
  raw: RawColumn,
  i: number,
  rows: RowCursor,
  style: NumberStyle,
  meansMissing: ReadonlySet<string>,
): void {
  const { index } = raw.plan;
  if (rows.isEmpty(index)) {
    raw.marks[i] = mark.missing;
    return;
  }
  const value = rows.number(index, style);
  const certain =
    !Number.isNaN(value) && (meansMissing.size === 0 || !meansMissing.has(rows.cell(index).trim().toLowerCase()));
  if (certain) raw.values[i] = value;
  else readOdd(rows.cell(index), i, raw, style, meansMissing);
}

/** Of a column that is not kept only the missing cells, the numbers and the words are counted; dates and stations not even that. */
function countWord(raw: RawColumn, i: number, rows: RowCursor, style: NumberStyle): void {
  const { index } = raw.plan;
  if (rows.isEmpty(index)) {
    raw.marks[i] = mark.missing;
    return;
  }
  const value = rows.number(index, style);
  raw.values[i] = value;
  if (!Number.isNaN(value)) return;
  const text = rows.cell(index);
  if (isMissingWord(text)) raw.marks[i] = mark.missing;
  else if (text.charCodeAt(0) >= 0x41) tally(raw, text.trim());
}

function readOdd(text: string, i: number, raw: RawColumn, style: NumberStyle, meansMissing: ReadonlySet<string>): void {
  const word = text.trim().toLowerCase();
  if (meansMissing.has(word)) {
    raw.marks[i] = mark.missing;
    return;
  }
  const value = readNumber(text, style);
  if (!Number.isNaN(value)) {
    raw.values[i] = value;
    return;
  }
  const special = specialCell(text);
  const quantity = isQuantity(raw.plan.role) ? quantities[raw.plan.role.quantity] : undefined;
  if (special?.kind === "missing") raw.marks[i] = mark.missing;
  else if (special?.kind === "trace" && quantity?.dimension === "depth") {
    raw.marks[i] = mark.trace;
    raw.values[i] = 0;
  } else if (special?.kind === "accumulating" && quantity?.dimension === "depth") raw.marks[i] = mark.accumulating;
  else if (special?.kind === "calm" && quantity?.dimension === "speed") raw.values[i] = 0;
  else if (
    special !== undefined &&
    "rest" in special &&
    readWithSign(special.rest, special.kind, special.flag, i, raw, style)
  )
    return;
  else readOther(text, i, raw, style);
  if (special !== undefined && word !== "" && quantity !== undefined) tally(raw, word);
}

/** ">80", "12.5?" and "3.4 E". */
function readWithSign(
  rest: string,
  kind: "above" | "below" | "flagged" | "suspect",
  flag: string,
  i: number,
  raw: RawColumn,
  style: NumberStyle,
): boolean {
  const value = readNumber(rest, style);
  if (Number.isNaN(value) || (kind === "flagged" && unitInCell(flag, raw) !== undefined)) return false;
  if (kind === "flagged" && flag === "m") {
    raw.marks[i] = mark.missing;
    return true;
  }
  raw.values[i] = value;
  raw.marks[i] = kind === "above" ? mark.above : kind === "below" ? mark.below : mark.suspect;
  if (kind === "flagged") {
    raw.flagged.push(i);
    if (flag === "t" && value === 0) raw.marks[i] = mark.trace;
  }
  return true;
}

function readOther(text: string, i: number, raw: RawColumn, style: NumberStyle): void {
  const other = readNumber(text, { decimal: style.decimal === "." ? "," : ".", thousands: "" });
  if (!Number.isNaN(other) && isQuantity(raw.plan.role)) {
    raw.values[i] = other;
    raw.marks[i] = mark.suspect;
    raw.strayDecimal.push(i);
    return;
  }
  const withUnit = /^\s*([+\-\u2212]?[\d.,]*\d)\s*([^\d\s].{0,12})$/.exec(text);
  const unit = withUnit === null ? undefined : unitInCell(withUnit[2], raw);
  if (withUnit !== null && unit !== undefined && (raw.cellUnit === undefined || raw.cellUnit === unit)) {
    const value = readNumber(withUnit[1], style);
    if (!Number.isNaN(value)) {
      raw.values[i] = value;
      raw.cellUnit = unit;
      return;
    }
  }
  raw.unreadable.push(i);
  tally(raw, text.trim());
}

const unitInCell = (text: string, raw: RawColumn): Unit | undefined =>
  isQuantity(raw.plan.role) ? unitOf(text, quantities[raw.plan.role.quantity].dimension) : undefined;

function tally(raw: RawColumn, word: string): void {
  const key = word.slice(0, 40);
  const count = raw.words.get(key);
  if (count !== undefined) raw.words.set(key, count + 1);
  else if (raw.words.size < mostWords) raw.words.set(key, 1);
}
