import type { QuantityName } from "./quantity.js";

/** Something the file does not say outright, and what it was taken for. */
export interface Assumption {
  /** The key under which another answer can be given; "" where there is none. */
  readonly key: string;
  readonly taken: string;
  readonly because: string;
}

/** A change to what the file says, never made without a count. */
export interface Repair {
  readonly code: RepairCode;
  /** Header of the column, "" for whole rows. */
  readonly column: string;
  readonly count: number;
  readonly what: string;
  /** Lines of the first few. */
  readonly lines: readonly number[];
}

/** What was changed while reading. */
export type RepairCode =
  | "duplicate-row"
  | "repeated-header"
  | "totals-row"
  | "event-row"
  | "comment-row"
  | "rows-sorted"
  | "clock-change"
  | "missing-code"
  | "humidity-above-100"
  | "night-radiation"
  | "cumulative-rain"
  | "accumulated-rain"
  | "other-decimal-sign"
  | "sign-turned"
  | "flagged-value"
  | "out-of-range"
  | "spike"
  | "fraction-and-percent"
  | "suspect-dropped"
  | "gap-filled";

/** Something odd that was left as it is. */
export interface Caution {
  readonly code:
    | "flat-run"
    | "spike"
    | "sensor-change"
    | "soil-frozen"
    | "suspect-value"
    | "rows-with-notes"
    | "wind-unit"
    | "wind-height"
    | "second-column"
    | "radiation-hours"
    | "not-converted"
    | "time-words";
  readonly column: string;
  readonly what: string;
}

/** One column of the file, as understood. */
export interface ColumnReport {
  readonly header: string;
  /** Name under which it is kept; "" if it is not. */
  readonly keptAs: string;
  readonly quantity: QuantityName | undefined;
  /** Unit of the file, and where it was found. */
  readonly unit: string;
  readonly unitFrom: "header" | "unit row" | "title" | "layout" | "cells" | "answer" | "assumed" | "none";
  readonly values: number;
  readonly missing: number;
  readonly trace: number;
  readonly accumulating: number;
  readonly censored: number;
  readonly suspect: number;
  /** Words that stand in the place of numbers, with their counts. */
  readonly words: Readonly<Record<string, number>>;
}

/** A row that was not read, and why. */
export interface RejectedRow {
  readonly line: number;
  readonly text: string;
  readonly reason: string;
}

/** What a file says of its station. */
export interface StationSite {
  readonly name?: string;
  readonly latitudeDeg?: number;
  readonly longitudeDeg?: number;
  readonly elevationM?: number;
  readonly windHeightM?: number;
}

/** What was understood of a file. */
export interface StationReport {
  readonly encoding: string;
  readonly layout: string;
  readonly delimiter: string;
  readonly decimal: string;
  readonly thousands: string;
  /** Lines before the first record: titles, names, units. */
  readonly headerLines: number;
  readonly dates: string;
  /** Hours that local standard time is ahead of UTC; undefined where the file does not say. */
  readonly utcOffsetH: number | undefined;
  readonly stamp: "start" | "end" | "day";
  readonly records: number;
  /** Local standard time, ISO. */
  readonly first: string;
  readonly last: string;
  readonly stepMinutes: number;
  /** Stamps that are not there between the first and the last. */
  readonly absentStamps: number;
  /** Days on which the clock changed, with the records of that day by the clock. */
  readonly clockChanges: readonly {
    readonly date: string;
    readonly kind: "back" | "forward";
    readonly recordsByTheClock: number;
  }[];
  readonly columns: readonly ColumnReport[];
  readonly site: StationSite;
  readonly assumptions: readonly Assumption[];
  readonly repairs: readonly Repair[];
  readonly cautions: readonly Caution[];
  readonly rejectedRows: readonly RejectedRow[];
  readonly rejectedCount: number;
  /** The first records as they were understood. */
  readonly preview: readonly string[];
}
