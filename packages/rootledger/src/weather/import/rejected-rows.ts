import { cellsOf, type RowCursor } from "./row-cursor.js";
import type { RejectedRow } from "./station-report.js";

/** Rows that were not read: all counted, the first of them kept with their text. */
export interface RejectedRows {
  readonly count: number;
  readonly first: readonly RejectedRow[];
}

/** How many are kept; own choice, more are no help to anybody. */
export const mostRejectedKept = 200;

export const rejectedRow = (rows: RowCursor, r: number, reason: string): RejectedRow => ({
  line: rows.line(r),
  text: cellsOf(rows, r).join(" ").slice(0, 80),
  reason,
});
