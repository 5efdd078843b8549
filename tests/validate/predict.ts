import type { DayBlock } from "rootledger/calibrate";
import { blocksOf, isSeen } from "./blocks.js";
import type { StationRecord } from "./station-record.js";

/** Anything that can be set to readings and carried over days by the weather alone. */
export interface Carried {
  start(readings: readonly number[]): void;
  run(out: readonly Float64Array[], from: number, to: number): void;
}

/** A seen block begins at the readings of its own first day; no unseen day is ever looked at. */
export function predictSeen(record: StationRecord, carried: Carried): Float64Array[] {
  const out = emptyOut(record);
  for (const { from, to, use } of blocksOf(record.days)) {
    if (use === "test") continue;
    carried.start(firstReadings(record, from, to));
    carried.run(out, from, to);
  }
  return out;
}

/** Each unseen block is predicted from the last readings of the seen block before it, by the weather alone. */
export function predictUnseen(record: StationRecord, carried: Carried): Float64Array[] {
  const out = emptyOut(record);
  let before: DayBlock | undefined;
  for (const block of blocksOf(record.days)) {
    if (block.use === "test" && before !== undefined) {
      const { day, readings } = lastReadings(record, before);
      carried.start(readings);
      carried.run(out, day + 1, block.to);
      for (const column of out) column.fill(Number.NaN, day + 1, block.from);
    }
    before = block;
  }
  return out;
}

/** From the readings of the first day to the end of the record without another look. */
export function predictFreely(record: StationRecord, carried: Carried): Float64Array[] {
  const out = emptyOut(record);
  carried.start(firstReadings(record, 0, record.days));
  carried.run(out, 0, record.days);
  return out;
}

const emptyOut = (record: StationRecord): Float64Array[] =>
  record.theta.map(() => new Float64Array(record.days).fill(Number.NaN));

const firstReadings = (record: StationRecord, from: number, to: number): number[] =>
  record.theta.map((column) => column.slice(from, to).find((t) => !Number.isNaN(t)) ?? meanOf(column));

/** The last day of a block on which every probe gave a reading; without one, each probe's last reading and the block's end. */
function lastReadings(record: StationRecord, block: DayBlock): { readonly day: number; readonly readings: number[] } {
  for (let day = block.to - 1; day >= block.from; day--) {
    const readings = record.theta.map((column) => column[day]);
    if (readings.every((t) => !Number.isNaN(t))) return { day, readings };
  }
  const last = (column: Float64Array): number | undefined =>
    Array.from(column.slice(block.from, block.to))
      .filter((t) => !Number.isNaN(t))
      .pop();
  return { day: block.to - 1, readings: record.theta.map((column) => last(column) ?? meanOf(column)) };
}

/** Mean of the seen days, where a probe was silent for a whole block. */
function meanOf(column: Float64Array): number {
  const read = column.filter((t, d) => isSeen(d) && !Number.isNaN(t));
  return read.reduce((sum, t) => sum + t, 0) / read.length;
}
