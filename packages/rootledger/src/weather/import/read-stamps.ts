import { dateOf, dayNumber, dayNumberOf } from "../../numeric/day-number.js";
import type { StationAnswers } from "./answers.js";
import type { Body } from "./body-rows.js";
import { commonEra, dayInOrder, findDateOrder } from "./date-order.js";
import { type DateColumn, dateKind, readDateColumn } from "./date-parts.js";
import { readClockColumn } from "./read-clock.js";
import type { NumberStyle } from "./read-number.js";
import type { Assumption } from "./station-report.js";
import { ask, isStop, type Stop } from "./stop.js";

/** Which columns make up the date and time of a row; -1 where there is none. */
export interface StampPlaces {
  readonly date: number;
  readonly time: number;
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly dayOfYear: number;
  /** From a title such as "Month: August 2019"; NaN if none. */
  readonly titleYear: number;
  readonly titleMonth: number;
  /** Header and unit row of the date column, where "dd/mm/yyyy" may stand. */
  readonly hint: string;
}

export interface StampsRead {
  /** Minutes by the file's own clock since the library's day 0; NaN where the row has no date. */
  readonly minutes: Float64Array;
  readonly offsetMinutes: Float64Array;
  readonly timed: boolean;
  readonly hour24: boolean;
  /** How dates were written, such as "D.M.Y". */
  readonly written: string;
  readonly assumptions: readonly Assumption[];
}

/** Reads the date and time of every row. */
export function readStamps(
  body: Body,
  places: StampPlaces,
  style: NumberStyle,
  answers: StationAnswers,
): StampsRead | Stop {
  const days = places.date >= 0 ? datesOfColumn(body, places, style, answers) : datesOfParts(body, places, style);
  if (isStop(days)) return days;
  const { minutes, offsetMinutes } = days;
  let { timed } = days;
  let hour24 = false;
  if (places.time >= 0) {
    const clock = readClockColumn(body, places.time);
    timed = true;
    for (let i = 0; i < minutes.length; i++) {
      minutes[i] = Math.floor(minutes[i] / 1440) * 1440 + clock.minute[i];
      if (!Number.isNaN(clock.offsetMinutes[i])) offsetMinutes[i] = clock.offsetMinutes[i];
      if (clock.minute[i] === 1440) hour24 = true;
    }
  }
  return { ...days, timed, hour24: hour24 || days.hour24 };
}

type Days = StampsRead;

function datesOfColumn(body: Body, places: StampPlaces, style: NumberStyle, answers: StationAnswers): Days | Stop {
  const column = readDateColumn(body, places.date, style);
  const count = body.places.length;
  const counts = new Array<number>(6).fill(0);
  let timed = false;
  let hour24 = false;
  for (let i = 0; i < count; i++) {
    counts[column.kind[i]]++;
    if (column.kind[i] !== dateKind.none && column.timed[i] === 1) timed = true;
    if (column.minute[i] === 1440) hour24 = true;
  }
  counts[dateKind.none] = 0;
  const kind = counts.indexOf(Math.max(...counts));
  const read = {
    offsetMinutes: column.offsetMinutes,
    timed,
    hour24,
    minutes: new Float64Array(count).fill(Number.NaN),
  };
  if (kind === dateKind.serial) return serialDates(column, read, places, answers);
  if (kind === dateKind.epoch) return epochDates(column, read);
  let written = kind === dateKind.compact ? "YYYYMMDD" : "year and day of the year";
  const assumptions: Assumption[] = [];
  let day = (i: number): number => dayNumberOf(commonEra(column.first[i]), column.second[i], column.third[i]);
  if (kind === dateKind.triple) {
    const found = findDateOrder(column, places.hint, answers);
    if (isStop(found)) return found;
    day = (i) => dayInOrder(column, i, found.order);
    written = [...found.order.toUpperCase()].join(
      String.fromCharCode(column.separator[column.kind.indexOf(kind)] || 0x20),
    );
    if (found.because !== "answered")
      assumptions.push({ key: "date-order", taken: found.order, because: found.because });
    assumptions.push(...yearAssumptions(column, found.order === "ymd" || found.order === "ydm"));
  } else if (kind === dateKind.ordinal) day = (i) => dayOfOrdinal(commonEra(column.first[i]), column.second[i]);
  for (let i = 0; i < count; i++) if (column.kind[i] === kind) read.minutes[i] = day(i) * 1440 + column.minute[i];
  return { ...read, written, assumptions };
}

function yearAssumptions(column: DateColumn, yearFirst: boolean): Assumption[] {
  const years = yearFirst ? column.first : column.third;
  const digits = yearFirst ? column.firstDigits : column.thirdDigits;
  const i = column.kind.indexOf(dateKind.triple);
  if (i < 0) return [];
  if (digits[i] <= 2)
    return [{ key: "", taken: "two-digit years 69-99 are 1969-1999, 00-68 are 2000-2068", because: "POSIX" }];
  if (years[i] !== commonEra(years[i]))
    return [{ key: "", taken: "years less 543", because: `the year ${years[i]} is of the Thai calendar` }];
  return [];
}

/** Day of a year; day 366 of a common year is none, and never 1 January of the next. */
const dayOfOrdinal = (year: number, day: number): number => {
  const first = dayNumberOf(year, 1, 1);
  return day >= 1 && day <= dayNumberOf(year, 12, 31) - first + 1 ? first + day - 1 : Number.NaN;
};

/**
 * Day counts of spreadsheets. The 1900 system counts 1900-01-01 as 1 and has a 29 February 1900, so that from March 1900 on day 1 is in effect
 * 1899-12-31; the 1904 system counts 1904-01-01 as 0. Source: ECMA-376 part 1, 18.17.4.1.
 */
function serialDates(
  column: DateColumn,
  read: Pick<Days, "minutes" | "offsetMinutes" | "timed" | "hour24">,
  places: StampPlaces,
  answers: StationAnswers,
): Days | Stop {
  const zero = { "1900": dayNumber("1899-12-30"), "1904": dayNumber("1904-01-01") };
  const first = column.kind.indexOf(dateKind.serial);
  const dateIn = (system: "1900" | "1904"): string => dateOf(zero[system] + Math.floor(column.first[first]));
  const year = places.titleYear;
  let system: "1900" | "1904" = "1900";
  let because = "the usual system";
  if (answers["serial-dates"] === "1904" || answers["serial-dates"] === "1900") {
    system = answers["serial-dates"];
    because = "answered";
  } else if (!Number.isNaN(year) && Math.abs(Number(dateIn("1900").slice(0, 4)) - year) > 1) {
    return ask(
      "serial-dates",
      `Dates are day counts of a spreadsheet, and in the usual system they are far from ${year}, the year named above the table.`,
      (["1900", "1904"] as const).map((value) => ({ value, meaning: `${column.first[first]} is ${dateIn(value)}` })),
    );
  }
  for (let i = 0; i < read.minutes.length; i++) {
    if (column.kind[i] !== dateKind.serial) continue;
    // A second is 1/86 400 of a day, more than a spreadsheet's rounding.
    read.minutes[i] = zero[system] * 1440 + Math.round(column.first[i] * 86400) / 60;
  }
  const other = system === "1900" ? "1904" : "1900";
  const assumption = {
    key: "serial-dates",
    taken: system,
    because: `${because}: ${column.first[first]} is ${dateIn(system)}; in the ${other} system it is ${dateIn(other)}`,
  };
  return { ...read, written: `spreadsheet day count, ${system} system`, assumptions: [assumption] };
}

function epochDates(column: DateColumn, read: Pick<Days, "minutes" | "offsetMinutes" | "timed" | "hour24">): Days {
  const zero = dayNumber("1970-01-01") * 1440;
  for (let i = 0; i < read.minutes.length; i++) {
    if (column.kind[i] !== dateKind.epoch) continue;
    read.minutes[i] = zero + Math.round(column.first[i]) / 60;
    read.offsetMinutes[i] = 0;
  }
  return { ...read, written: "seconds since 1970-01-01 UTC", assumptions: [] };
}

/** Dates from columns of year, month and day, or year and day of the year. */
function datesOfParts({ rows, places: at }: Body, places: StampPlaces, style: NumberStyle): Days {
  const minutes = new Float64Array(at.length);
  const whole = (c: number, otherwise: number): number => {
    const value = c < 0 ? otherwise : rows.number(c, style);
    return Number.isInteger(value) && value >= 0 ? value : Number.NaN;
  };
  for (let i = 0; i < at.length; i++) {
    rows.open(at[i]);
    const year = commonEra(whole(places.year, places.titleYear));
    const day =
      places.dayOfYear >= 0
        ? dayOfOrdinal(year, whole(places.dayOfYear, Number.NaN))
        : dayNumberOf(year, whole(places.month, places.titleMonth), whole(places.day, Number.NaN));
    minutes[i] = day * 1440;
  }
  const written =
    places.dayOfYear >= 0
      ? "year and day of the year"
      : places.year >= 0
        ? "year, month and day"
        : "day, with month and year from the title";
  const offsetMinutes = new Float64Array(at.length).fill(Number.NaN);
  return { minutes, offsetMinutes, timed: false, hour24: false, written, assumptions: [] };
}
