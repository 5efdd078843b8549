import type { Column, Table } from "../water/result.js";

/** Columns of the hour table: name, unit, kind. The order is the order of storage. */
export const hourColumns = [
  ["rootZoneWater", "mm", "state"],
  ["valveOpen", "fraction", "flux"],
  ["rain", "mm", "flux"],
  ["wanted", "L", "flux"],
  ["transpired", "L", "flux"],
  ["belowRoots", "L", "flux"],
  ["thirstyShare", "fraction", "flux"],
  ["airlessShare", "fraction", "flux"],
] as const;

/** Columns of the day table. `thirsty`, `airless` and `fine` are root-hours and add up to 24. */
export const dayColumns = [
  ["et0", "mm", "flux"],
  ["rain", "mm", "flux"],
  ["applied", "L", "flux"],
  ["wanted", "L", "flux"],
  ["transpired", "L", "flux"],
  ["evaporated", "L", "flux"],
  ["belowRoots", "L", "flux"],
  ["bottom", "L", "flux"],
  ["runoff", "L", "flux"],
  ["heldByCanopy", "L", "flux"],
  ["heldByLayer", "L", "flux"],
  ["thirsty", "h", "flux"],
  ["airless", "h", "flux"],
  ["fine", "h", "flux"],
  ["thirstySeverity", "h", "flux"],
  ["airlessSeverity", "h", "flux"],
  ["rootZoneWater", "mm", "state"],
  ["storage", "L", "state"],
  ["residual", "L", "flux"],
] as const;

type Specification = readonly (readonly [string, string, Column["kind"]])[];

/** Rows of one table, filled while the run goes. `block` is what a snapshot carries; `at` gives each column by name. */
export interface Recorder<Name extends string> {
  readonly block: Float64Array;
  readonly table: Table;
  readonly at: Readonly<Record<Name, Float64Array>>;
}

/** @example recorder(dayColumns, "day", 30, 1).table.rows // 30 */
export function recorder<S extends Specification>(
  specification: S,
  rowLength: Table["rowLength"],
  rows: number,
  trees: number,
): Recorder<S[number][0]> {
  const perColumn = rows * trees;
  const block = new Float64Array(specification.length * perColumn);
  const columns = specification.map(
    ([name, unit, kind], k): Column => ({
      name,
      unit,
      kind,
      values: block.subarray(k * perColumn, (k + 1) * perColumn),
    }),
  );
  const at = Object.fromEntries(columns.map((c) => [c.name, c.values])) as Record<S[number][0], Float64Array>;
  return { block, table: { rowLength, rows, trees, columns }, at };
}
