import { dayNumberOf } from "../../numeric/day-number.js";
import type { StationAnswers } from "./answers.js";
import { type DateColumn, dateKind } from "./date-parts.js";
import { ask, fault, type Stop } from "./stop.js";

export type DateOrder = "dmy" | "mdy" | "ymd" | "ydm";

export interface OrderFound {
  readonly order: DateOrder;
  /** What told the order. */
  readonly because: string;
}

const places: Readonly<Record<DateOrder, readonly [year: number, month: number, day: number]>> = {
  dmy: [2, 1, 0],
  mdy: [2, 0, 1],
  ymd: [0, 1, 2],
  ydm: [0, 2, 1],
};

/** Two-digit years: 69-99 are 1969-1999, 00-68 are 2000-2068, as POSIX (IEEE Std 1003.1, strptime) has it. */
const fullYear = (year: number, digits: number): number => (digits > 2 ? year : year + (year < 69 ? 2000 : 1900));

/** Day number of a row in an order; NaN where there is no such day. */
export function dayInOrder(column: DateColumn, i: number, order: DateOrder): number {
  const numbers = [column.first[i], column.second[i], column.third[i]];
  const [year, month, day] = places[order];
  const digits = year === 0 ? column.firstDigits[i] : column.thirdDigits[i];
  return dayNumberOf(commonEra(fullYear(numbers[year], digits)), numbers[month], numbers[day]);
}

/** Years of the Thai calendar are 543 ahead; no record of weather is from 2400 to 2700 of the common era. */
export const commonEra = (year: number): number => (year >= 2400 && year <= 2700 ? year - 543 : year);

/**
 * One order of day, month and year for the whole column, from all its rows; if all rows fit both and neither the signs nor the run of the
 * rows tells, the file is asked about. Rows are never read in different orders.
 */
export function findDateOrder(column: DateColumn, hint: string, answers: StationAnswers): OrderFound | Stop {
  const rows: number[] = [];
  let yearFirst = 0;
  let named = 0;
  let dotted = 0;
  for (let i = 0; i < column.kind.length; i++) {
    if (column.kind[i] !== dateKind.triple) continue;
    rows.push(i);
    if (column.firstDigits[i] > 2) yearFirst++;
    if (column.monthName[i] > 0) named++;
    if (column.separator[i] === 0x2e) dotted++;
  }
  const most = rows.length / 2;
  if (named > most) return namedOrder(column, rows);
  const valid = (order: DateOrder): number =>
    rows.reduce((count, i) => count + (Number.isNaN(dayInOrder(column, i, order)) ? 0 : 1), 0);
  if (yearFirst > most) {
    const straight = valid("ymd");
    return straight >= 0.9 * rows.length || straight >= valid("ydm")
      ? { order: "ymd", because: "the year stands first" }
      : { order: "ydm", because: "the year stands first and the number after it exceeds 12" };
  }
  const fits = { dmy: valid("dmy"), mdy: valid("mdy") };
  const answer = answers["date-order"];
  if (answer === "dmy" || answer === "mdy" || answer === "ymd") return { order: answer, because: "answered" };
  const least = 0.9 * rows.length;
  if (fits.dmy < least && fits.mdy < least) {
    if (valid("ymd") >= least) return { order: "ymd", because: "only with the year first all rows are dates" };
    const line = rows.find((i) => Number.isNaN(dayInOrder(column, i, fits.dmy >= fits.mdy ? "dmy" : "mdy"))) ?? rows[0];
    return fault(
      "mixed-date-orders",
      "date",
      shown(column, line),
      "must have day and month in the same order in all rows",
    );
  }
  if (fits.dmy !== fits.mdy) {
    return fits.dmy > fits.mdy
      ? { order: "dmy", because: "the second number never exceeds 12, the first does" }
      : { order: "mdy", because: "the first number never exceeds 12, the second does" };
  }
  return unclearOrder(column, rows, dotted > most, hint);
}

function unclearOrder(column: DateColumn, rows: readonly number[], dotted: boolean, hint: string): OrderFound | Stop {
  const said = /([dtj]{1,2}|mm?|[yaj]{2,4})[./ -]([dtj]{1,2}|mm?)[./ -]/i.exec(hint);
  if (said) {
    const order = /^m/i.test(said[1]) ? "mdy" : /^[ya]/i.test(said[1]) ? "ymd" : "dmy";
    return { order, because: `the header says ${said[0].slice(0, -1)}` };
  }
  if (rows.every((i) => column.first[i] === column.second[i]))
    return { order: "dmy", because: "day and month are the same number in every row" };
  if (dotted) return { order: "dmy", because: "points between the numbers: the day is written first" };
  const timed = rows.some((i) => column.timed[i] === 1);
  const dmy = pathDays(column, rows, "dmy");
  const mdy = pathDays(column, rows, "mdy");
  // Dates a month apart, always on the same day, may be days or months: the run of the rows does not tell.
  const constant = (numbers: Float64Array): boolean => rows.every((i) => numbers[i] === numbers[rows[0]]);
  if (timed || !(constant(column.first) || constant(column.second))) {
    if (mdy > 5 * dmy) return { order: "dmy", because: "so read, the rows follow one another evenly" };
    if (dmy > 5 * mdy) return { order: "mdy", because: "so read, the rows follow one another evenly" };
  }
  return orderQuestion(column, rows);
}

/** Days passed through from row to row, forwards and backwards. */
function pathDays(column: DateColumn, rows: readonly number[], order: DateOrder): number {
  let path = 0;
  for (let k = 1; k < rows.length; k++)
    path += Math.abs(dayInOrder(column, rows[k], order) - dayInOrder(column, rows[k - 1], order));
  return path;
}

function orderQuestion(column: DateColumn, rows: readonly number[]): Stop {
  const telling = rows.filter((i) => column.first[i] !== column.second[i]);
  const example = shown(column, telling[0]);
  const [a, b] = [column.first[telling[0]], column.second[telling[0]]];
  const year = fullYear(column.third[telling[0]], column.thirdDigits[telling[0]]);
  const iso = (month: number, day: number): string =>
    `${year}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
  return ask(
    "date-order",
    `Day and month can be read both ways in every row (${telling.length} of ${rows.length} rows differ by it). Which stands first?`,
    [
      { value: "dmy", meaning: `day first: ${example} is ${iso(b, a)}` },
      { value: "mdy", meaning: `month first: ${example} is ${iso(a, b)}` },
    ],
    telling.slice(0, 5).map((i) => shown(column, i)),
  );
}

/** The three numbers as they stand in the file. */
function shown(column: DateColumn, i: number): string {
  const sign = String.fromCharCode(column.separator[i] || 0x20);
  const two = (value: number): string => String(value).padStart(2, "0");
  return [two(column.first[i]), two(column.second[i]), two(column.third[i])].join(sign);
}

function namedOrder(column: DateColumn, rows: readonly number[]): OrderFound {
  const i = rows.find((row) => column.monthName[row] > 0) ?? rows[0];
  const because = "the month is a name";
  if (column.monthName[i] === 1) return { order: "mdy", because };
  if (column.monthName[i] === 2) return { order: column.firstDigits[i] > 2 ? "ymd" : "dmy", because };
  return { order: column.firstDigits[i] > 2 ? "ydm" : "dmy", because };
}
