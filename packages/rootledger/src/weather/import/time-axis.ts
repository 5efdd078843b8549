import { dateOf } from "../../numeric/day-number.js";
import type { StationAnswers } from "./answers.js";
import { repair } from "./body-rows.js";
import { type ClockChange, findClockChanges, toStandardTime } from "./clock-change.js";
import { clockResets } from "./clock-reset.js";
import { type LocalTime, offsetOf, toLocalTime } from "./local-time.js";
import { orderRecords } from "./order-records.js";
import { rejectedRow } from "./rejected-rows.js";
import { cellsOf } from "./row-cursor.js";
import { type LongTable, longTable } from "./series-of-rows.js";
import { type StampMeaning, stampMeaning } from "./stamp-meaning.js";
import type { StationFile } from "./station-file.js";
import type { Assumption, RejectedRow, Repair, StationReport, StationSite } from "./station-report.js";
import { stationTime } from "./station-time.js";
import { isStop, type Stop } from "./stop.js";
import { typicalStep } from "./typical-step.js";

/** The records in the order of time, in local standard time. */
export interface TimeAxis {
  /** Rows of the file, in the order of time. */
  readonly rows: readonly number[];
  /** One entry a row. */
  readonly minutes: Float64Array;
  readonly stepMinutes: number;
  readonly utcOffsetMinutes: number | undefined;
  readonly stamp: StampMeaning["stamp"];
  readonly long: LongTable | undefined;
  readonly clockChanges: StationReport["clockChanges"];
  readonly repairs: readonly Repair[];
  readonly rejected: readonly RejectedRow[];
  readonly assumptions: readonly Assumption[];
}

/** Brings the records of a file into order; rows that `isEvent` says are no records are left out. */
export function timeAxis(
  file: StationFile,
  site: StationSite,
  isEvent: (row: number) => boolean,
  answers: StationAnswers,
): TimeAxis | Stop {
  const { body, stamps } = file;
  const repairs: Repair[] = [];
  const resets = new Set(clockResets(stamps.minutes));
  const rejected = [...resets].map((i): RejectedRow => {
    const reason = `the clock was lost: ${stationTime(stamps.minutes[i])} is years from the other records`;
    return rejectedRow(body.rows, body.places[i], reason);
  });
  const events: number[] = [];
  let rows: number[] = [];
  for (let i = 0; i < body.places.length; i++) {
    if (Number.isNaN(stamps.minutes[i]) || resets.has(i)) continue;
    if (isEvent(i)) events.push(i);
    else rows.push(i);
  }
  if (events.length > 0)
    repairs.push(
      repair(
        "event-row",
        "",
        events.map((i) => body.rows.line(body.places[i])),
        "rows of events without any value left out",
      ),
    );
  if (mostlyFalling(rows, stamps.minutes)) rows = rows.reverse();
  const clock = picked(stamps.minutes, rows);
  const step = typicalStep(clock);
  const zoned = standardTime(file, site, rows, clock, step, answers);
  if (isStop(zoned)) return zoned;
  const { minutes, changes, local } = zoned;
  const rowPlaces = rows.map((i) => body.places[i]);
  const long = longTable(file.plans, body.rows, rowPlaces, minutes, file.style);
  const lines = rowPlaces.map((place) => body.rows.line(place));
  const same = (a: number, b: number): boolean =>
    sameCells(cellsOf(body.rows, rowPlaces[a]), cellsOf(body.rows, rowPlaces[b]));
  const ordered = orderRecords(minutes, long?.keys ?? [], same, lines, answers);
  if (isStop(ordered)) return ordered;
  const { places } = ordered;
  const times = picked(minutes, places);
  // Dates in no even steps are days with gaps.
  const stepMinutes = orOneDay(typicalStep(times, stamps.timed ? 0 : 0.5));
  const meaning = stampMeaning(evidence(file, stepMinutes, clock), answers);
  if (changes.length > 0) {
    const moved = zoned.moved;
    repairs.push({
      code: "clock-change",
      column: "",
      count: moved,
      what: "records of summer time moved back by an hour to standard time",
      lines: changes.map(({ at }) => lines[at]).slice(0, 8),
    });
  }
  return {
    rows: places.map((place) => rowPlaces[place]),
    minutes: times,
    stepMinutes,
    utcOffsetMinutes: local.utcOffsetMinutes,
    stamp: meaning.stamp,
    long:
      long === undefined
        ? undefined
        : {
            ...long,
            keys: places.map((p) => long.keys[p]),
            probes: long.probes.length === 0 ? [] : places.map((p) => long.probes[p]),
          },
    clockChanges: describedChanges(changes, clock),
    repairs: [...repairs, ...ordered.repairs],
    rejected,
    assumptions: [...local.assumptions, ...meaning.assumptions],
  };
}

function picked(values: Float64Array, places: readonly number[]): Float64Array {
  const out = new Float64Array(places.length);
  for (let k = 0; k < out.length; k++) out[k] = values[places[k]];
  return out;
}

const orOneDay = (step: number): number => (Number.isNaN(step) ? 1440 : step);

function mostlyFalling(rows: readonly number[], minutes: Float64Array): boolean {
  let falling = 0;
  let rising = 0;
  for (let k = 1; k < rows.length; k++) {
    if (minutes[rows[k]] < minutes[rows[k - 1]]) falling++;
    else if (minutes[rows[k]] > minutes[rows[k - 1]]) rising++;
  }
  return falling > rising;
}

const sameCells = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((cell, c) => cell === b[c]);

interface Standard {
  readonly minutes: Float64Array;
  readonly changes: readonly ClockChange[];
  readonly moved: number;
  readonly local: LocalTime;
}

/** Offsets or a named zone say how to come to standard time; without them, clock changes inside the record do. */
function standardTime(
  file: StationFile,
  site: StationSite,
  rows: readonly number[],
  clock: Float64Array,
  step: number,
  answers: StationAnswers,
): Standard | Stop {
  const { body, stamps, plans, places } = file;
  const minutes = clock.slice();
  const zone = plans
    .map(({ index, zoneMinutes }) => (index === places.date || index === places.time ? zoneMinutes : Number.NaN))
    .find((one) => !Number.isNaN(one));
  const offsets = picked(stamps.offsetMinutes, rows);
  const told = zone !== undefined || offsets.some((offset) => !Number.isNaN(offset));
  if (stamps.timed && (told || answers.zone !== undefined)) {
    const local = toLocalTime(minutes, offsets, zone ?? Number.NaN, site.longitudeDeg, answers);
    return { minutes, changes: [], moved: 0, local };
  }
  const local = {
    utcOffsetMinutes: answers["local-zone"] === undefined ? undefined : offsetOf(answers["local-zone"]),
    assumptions: [],
  };
  if (!stamps.timed) return { minutes, changes: [], moved: 0, local };
  const values = (k: number): string[] =>
    cellsOf(body.rows, body.places[rows[k]]).slice(Math.max(places.time, places.date) + 1);
  const same = (k: number): boolean => sameCells(values(k), values(k - 1));
  const lines = rows.map((i) => body.rows.line(body.places[i]));
  const ownStamps = plans.some(({ index, role }) => index === places.date && role.kind.startsWith("interval-"));
  if (ownStamps) return { minutes, changes: [], moved: 0, local };
  const changes = findClockChanges(minutes, step, same, lines, answers);
  if (isStop(changes)) return changes;
  const moved = toStandardTime(minutes, changes);
  return { minutes, changes, moved, local };
}

function evidence(file: StationFile, stepMinutes: number, clock: Float64Array): Parameters<typeof stampMeaning>[0] {
  const { plans, places, layout, block, stamps } = file;
  const dateRole = plans.find(({ index }) => index === places.date)?.role.kind;
  const ofDay = (minutes: number): number => ((minutes % 1440) + 1440) % 1440;
  return {
    stepMinutes,
    firstOfDay: ofDay(clock[0]),
    lastOfDay: ofDay(clock[clock.length - 1]),
    hour24: stamps.hour24,
    named: dateRole === "interval-start" ? "start" : dateRole === "interval-end" ? "end" : undefined,
    layout: layout?.stamp,
    hourBefore: block.names.some((name) => /hora ant|hour before|previous hour|past hour/i.test(name)),
  };
}

const describedChanges = (changes: readonly ClockChange[], clock: Float64Array): StationReport["clockChanges"] =>
  changes.map(({ at, kind }) => {
    const day = Math.floor(clock[at] / 1440);
    let recordsByTheClock = 0;
    for (const time of clock) if (Math.floor(time / 1440) === day) recordsByTheClock++;
    return { date: dateOf(day), kind, recordsByTheClock };
  });
