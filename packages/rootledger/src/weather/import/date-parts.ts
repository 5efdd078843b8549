import { dayNumberOf } from "../../numeric/day-number.js";
import type { Body } from "./body-rows.js";
import { type NumberStyle, readNumber } from "./read-number.js";
import { newStampParts, type StampParts, scanStamp } from "./scan-stamp.js";

/** How a date was written. */
export const dateKind = { none: 0, triple: 1, compact: 2, ordinal: 3, serial: 4, epoch: 5 } as const;

/** The dates of a column as they stand, one entry a row, before day and month are told apart. */
export interface DateColumn {
  readonly kind: Uint8Array;
  /** The three numbers of a date in their order; a serial or epoch number in the first. */
  readonly first: Float64Array;
  readonly second: Float64Array;
  readonly third: Float64Array;
  /** Digits of the first and third number, and which of the three was a month's name plus one, 0 if none. */
  readonly firstDigits: Uint8Array;
  readonly thirdDigits: Uint8Array;
  readonly monthName: Uint8Array;
  readonly separator: Uint8Array;
  /** Minutes of the day, 0 where no time was written, NaN where it is none. */
  readonly minute: Float64Array;
  readonly offsetMinutes: Float64Array;
  readonly timed: Uint8Array;
}

/** Reads every cell of a date column. */
export function readDateColumn({ rows, places }: Body, c: number, style: NumberStyle): DateColumn {
  const n = places.length;
  const column: DateColumn = {
    kind: new Uint8Array(n),
    first: new Float64Array(n),
    second: new Float64Array(n),
    third: new Float64Array(n),
    firstDigits: new Uint8Array(n),
    thirdDigits: new Uint8Array(n),
    monthName: new Uint8Array(n),
    separator: new Uint8Array(n),
    minute: new Float64Array(n),
    offsetMinutes: new Float64Array(n).fill(Number.NaN),
    timed: new Uint8Array(n),
  };
  const parts = newStampParts();
  for (let i = 0; i < n; i++) {
    rows.open(places[i]);
    const text = rows.cell(c);
    if (!scanStamp(text, parts)) continue;
    if (parts.count <= 2 && parts.monthAt < 0 && parts.hourAt < 0) readAsNumber(text, i, parts, column, style);
    else if (parts.digits[0] === 8 || parts.digits[0] === 7) readCompact(i, parts, column);
    else if (parts.count >= 3 && (parts.hourAt < 0 || parts.hourAt >= 3)) readTriple(i, parts, column);
    else if (parts.digits[0] === 4 && parts.digits[1] === 3) readOrdinal(i, parts, column);
  }
  return column;
}

function readTriple(i: number, parts: StampParts, column: DateColumn): void {
  const { values, digits, monthAt } = parts;
  if (digits[0] > 4 || digits[1] > 4 || digits[2] > 4 || monthAt > 2) return;
  column.kind[i] = dateKind.triple;
  column.first[i] = values[0];
  column.second[i] = values[1];
  column.third[i] = values[2];
  column.firstDigits[i] = digits[0];
  column.thirdDigits[i] = digits[2];
  column.monthName[i] = monthAt + 1;
  column.separator[i] = parts.separator;
  readTime(i, parts, 3, column);
}

/** YYYYMMDD or YYYYDDD, and perhaps a time behind it. */
function readCompact(i: number, parts: StampParts, column: DateColumn): void {
  const value = parts.values[0];
  if (parts.digits[0] === 8) setCompact(i, value, column);
  else setOrdinal(i, Math.floor(value / 1000), value % 1000, column);
  if (parts.count > 1) readTime(i, parts, 1, column);
}

function readOrdinal(i: number, parts: StampParts, column: DateColumn): void {
  setOrdinal(i, parts.values[0], parts.values[1], column);
  if (parts.count > 2) readTime(i, parts, 2, column);
}

function setCompact(i: number, value: number, column: DateColumn): void {
  column.kind[i] = dateKind.compact;
  column.first[i] = Math.floor(value / 10000);
  column.second[i] = Math.floor(value / 100) % 100;
  column.third[i] = value % 100;
}

function setOrdinal(i: number, year: number, day: number, column: DateColumn): void {
  column.kind[i] = dateKind.ordinal;
  column.first[i] = year;
  column.second[i] = day;
}

/** A cell that is one number: run together, ordinal, a spreadsheet's day count or seconds since 1970. */
function readAsNumber(text: string, i: number, parts: StampParts, column: DateColumn, style: NumberStyle): void {
  const { values, digits, count } = parts;
  const value = values[0];
  const whole = count === 1 && !text.includes("-") && !text.includes("+");
  const ordinal = count === 2 && digits[0] === 4 && digits[1] === 3 && parts.separator === 0x2d;
  if (ordinal) setOrdinal(i, value, values[1], column);
  else if (count === 2 && digits[0] === 8) readCompact(i, parts, column);
  else if (whole && digits[0] >= 7 && digits[0] <= 14) readDigits(i, value, digits[0], column);
  else {
    const number = readNumber(text, style);
    if (!(number >= 15000 && number < 80000)) return;
    column.kind[i] = dateKind.serial;
    column.first[i] = number;
    column.timed[i] = Number.isInteger(number) ? 0 : 1;
  }
}

/** Digits without a sign between them, by how many there are. */
function readDigits(i: number, value: number, digits: number, column: DateColumn): void {
  if (digits === 7) setOrdinal(i, Math.floor(value / 1000), value % 1000, column);
  else if (digits === 8) setCompact(i, value, column);
  else if (digits === 12 || digits === 14 || (digits === 10 && looksLikeHourStamp(value))) {
    const minutes = digits === 14 ? Math.floor(value / 100) : digits === 12 ? value : value * 100;
    setCompact(i, Math.floor(minutes / 10000), column);
    setClock(i, Math.floor(minutes / 100) % 100, minutes % 100, digits === 14 ? value % 100 : 0, column);
  } else if (digits === 10 || digits === 13) {
    column.kind[i] = dateKind.epoch;
    column.first[i] = digits === 13 ? value / 1000 : value;
    column.timed[i] = 1;
  }
}

/** 2024033013 is an hour of 2024 before it is a second of 2034. */
function looksLikeHourStamp(value: number): boolean {
  const day = Math.floor(value / 100);
  const year = Math.floor(day / 10000);
  return (
    year >= 1900 &&
    year < 2100 &&
    value % 100 <= 24 &&
    !Number.isNaN(dayNumberOf(year, Math.floor(day / 100) % 100, day % 100))
  );
}

function readTime(i: number, parts: StampParts, from: number, column: DateColumn): void {
  column.offsetMinutes[i] = parts.offsetMinutes;
  if (parts.count <= from) return;
  const { values, digits, count } = parts;
  if (count === from + 1 && digits[from] >= 3 && parts.half === 0) {
    const value = values[from];
    if (digits[from] <= 4) setClock(i, Math.floor(value / 100), value % 100, 0, column);
    else setClock(i, Math.floor(value / 10000), Math.floor(value / 100) % 100, value % 100, column);
    return;
  }
  const minutes = count > from + 1 ? values[from + 1] : 0;
  const seconds = count > from + 2 ? values[from + 2] : 0;
  setClock(i, hourOf(values[from], parts.half), minutes, seconds, column);
}

/** The hour by the 24-hour clock: 12 AM is 0, 12 PM is 12. NaN where a 12-hour clock has no such hour. */
export const hourOf = (hour: number, half: number): number =>
  half === 0 ? hour : hour < 1 || hour > 12 ? Number.NaN : (hour % 12) + (half === 2 ? 12 : 0);

/** Minutes of the day, 24:00 included; NaN for no time of day. */
export const minuteOfDay = (hour: number, minute: number, second: number): number =>
  hour >= 0 && (hour < 24 || (hour === 24 && minute === 0 && second === 0)) && minute < 60 && second < 61
    ? hour * 60 + minute + second / 60
    : Number.NaN;

function setClock(i: number, hour: number, minute: number, second: number, column: DateColumn): void {
  column.timed[i] = 1;
  column.minute[i] = minuteOfDay(hour, minute, second);
}
