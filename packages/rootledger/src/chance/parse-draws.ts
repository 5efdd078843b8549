import { csvParseRows } from "d3-dsv";
import type { DrawSource } from "./draw.js";
import type { UnknownId } from "./prior.js";
import { whatToMeasure } from "./what-to-measure.js";

/** Something in a table of draws that stops its use. */
export interface DrawsFault {
  readonly code:
    | "empty-file"
    | "unknown-column"
    | "duplicate-column"
    | "wrong-cell-count"
    | "not-a-number"
    | "too-many-faults";
  /** Where, like "line 3, kcb"; "" for the file as a whole. */
  readonly path: string;
  readonly received: string;
  readonly rule: string;
}

/** Draws, or every fault of their table. */
export type ParsedDraws =
  | { readonly ok: true; readonly draws: Extract<DrawSource, { kind: "own" }>; readonly members: number }
  | { readonly ok: false; readonly faults: readonly DrawsFault[] };

const mostFaults = 20;
const decimalNumber = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/;
const known = Object.keys(whatToMeasure) as UnknownId[];

/**
 * Reads a table of draws of one's own: comma separated, a header of unknowns, one row a member, in the units of the priors. The
 * rows carry whatever correlations their maker gave them. Never throws; the first twenty faults are returned at once.
 *
 * @example parseDraws("kcb,root-depth\n0.9,55\n1.1,40\n") // { ok: true, members: 2, ... }
 */
export function parseDraws(text: string): ParsedDraws {
  const rows = csvParseRows(text.replace(/^\uFEFF/, ""))
    .map((cells, i) => ({ cells: cells.map((cell) => cell.trim()), line: i + 1 }))
    .filter(({ cells }) => cells.length > 1 || cells[0] !== "");
  const faults: DrawsFault[] = [];
  const [header, ...members] = rows;
  if (header === undefined || members.length === 0) {
    const rule = "must have a header row and at least one row of draws";
    return { ok: false, faults: [{ code: "empty-file", path: "", received: `${rows.length} rows`, rule }] };
  }
  header.cells.forEach((name, i) => {
    const path = `line ${header.line}`;
    if (!known.some((id) => id === name)) {
      faults.push({ code: "unknown-column", path, received: name, rule: `must be an unknown: ${known.join(", ")}` });
    } else if (header.cells.indexOf(name) < i) {
      faults.push({ code: "duplicate-column", path, received: name, rule: "must come once" });
    }
  });
  const width = header.cells.length;
  const values = new Float64Array(members.length * width);
  members.forEach(({ cells, line }, row) => {
    if (cells.length !== width) {
      const rule = `must have ${width} cells like the header`;
      faults.push({ code: "wrong-cell-count", path: `line ${line}`, received: String(cells.length), rule });
      return;
    }
    cells.forEach((cell, i) => {
      const value = decimalNumber.test(cell) ? Number(cell) : Number.NaN;
      values[row * width + i] = value;
      if (Number.isFinite(value)) return;
      const path = `line ${line}, ${header.cells[i]}`;
      faults.push({ code: "not-a-number", path, received: cell, rule: "must be a number with a decimal point" });
    });
  });
  if (faults.length === 0) {
    const ids = header.cells.flatMap((name) => known.filter((id) => id === name));
    return { ok: true, draws: { kind: "own", ids, values }, members: members.length };
  }
  const rest = faults.length - mostFaults;
  const more = { code: "too-many-faults", path: "", received: `${rest} more`, rule: "must be mended first" } as const;
  return { ok: false, faults: rest > 0 ? [...faults.slice(0, mostFaults), more] : faults };
}
