import { dateOf } from "../../numeric/day-number.js";
import type { StationAnswers } from "./answers.js";
import { repair } from "./body-rows.js";
import type { Repair } from "./station-report.js";
import { stationTime } from "./station-time.js";
import { ask, type Stop } from "./stop.js";

export interface OrderedRecords {
  /** Places of the rows in the order of time, without those left out. */
  readonly places: readonly number[];
  readonly repairs: readonly Repair[];
}

/**
 * Sorts the records by time and leaves out rows that stand twice with the same cells. Two rows of one time (and, in a long table, of one
 * series) with different cells are asked about.
 */
export function orderRecords(
  minutes: Float64Array,
  series: readonly string[],
  sameCells: (a: number, b: number) => boolean,
  lines: readonly number[],
  answers: StationAnswers,
): OrderedRecords | Stop {
  const n = minutes.length;
  let level = 0;
  let falling = 0;
  for (let i = 1; i < n; i++) {
    if (minutes[i] < minutes[i - 1]) falling++;
    else if (minutes[i] === minutes[i - 1]) level++;
  }
  const sorted = falling === 0;
  const all: number[] = [];
  for (let i = 0; i < n; i++) all.push(i);
  if (sorted && level === 0) return { places: all, repairs: [] };
  const order = sorted ? all : all.sort((a, b) => minutes[a] - minutes[b] || a - b);
  const repairs: Repair[] = [];
  if (!sorted)
    repairs.push({
      code: "rows-sorted",
      column: "",
      count: n,
      what: `${falling} rows were earlier than the row before; all were sorted by time`,
      lines: [],
    });
  const keep = answers.duplicates;
  const places: number[] = [];
  const dropped: number[] = [];
  /** Places of the time now looked at, by series. */
  const ofTime = new Map<string, number>();
  let time = Number.NaN;
  for (const i of order) {
    if (minutes[i] !== time) {
      time = minutes[i];
      ofTime.clear();
    }
    const key = series.length === 0 ? "" : series[i];
    const at = ofTime.get(key);
    if (at === undefined) {
      ofTime.set(key, places.length);
      places.push(i);
      continue;
    }
    if (!sameCells(places[at], i) && keep === undefined)
      return duplicateQuestion(minutes[i], lines[places[at]], lines[i]);
    if (keep === "last") places[at] = i;
    dropped.push(lines[i]);
  }
  if (dropped.length > 0)
    repairs.push(repair("duplicate-row", "", dropped, "rows of a time that was there already left out"));
  return { places, repairs };
}

const duplicateQuestion = (minutes: number, first: number, second: number): Stop =>
  ask(
    "duplicates",
    `${minutes % 1440 === 0 ? dateOf(minutes / 1440) : stationTime(minutes)} stands twice with different values. Which rows count?`,
    [
      { value: "first", meaning: "of rows of one time the first" },
      { value: "last", meaning: "of rows of one time the last" },
    ],
    [`line ${first}`, `line ${second}`],
  );
