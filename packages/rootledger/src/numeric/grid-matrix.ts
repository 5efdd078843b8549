/**
 * Matrix of a five-point scheme on `rows` x `columns` points, point = row x columns + column: each unknown sees itself
 * and its four neighbours. `before` and `after` are the neighbours in the same row, `above` and `below` those in the
 * rows next to it; entries that would leave the grid must be 0. A few entries off this pattern may be listed as extras.
 */
export interface GridMatrix {
  readonly rows: number;
  readonly columns: number;
  readonly centre: Float64Array;
  readonly before: Float64Array;
  readonly after: Float64Array;
  readonly above: Float64Array;
  readonly below: Float64Array;
  /** Extras: matrix[extraRow[e], extraColumn[e]] += extraValue[e] for e < extraCount. */
  readonly extraRow: Int32Array;
  readonly extraColumn: Int32Array;
  readonly extraValue: Float64Array;
  extraCount: number;
}

/** Room for a matrix, all entries 0. @example gridMatrix({ rows: 3, columns: 2, extras: 0 }).centre.length // 6 */
export function gridMatrix(size: { rows: number; columns: number; extras: number }): GridMatrix {
  const points = size.rows * size.columns;
  return {
    rows: size.rows,
    columns: size.columns,
    centre: new Float64Array(points),
    before: new Float64Array(points),
    after: new Float64Array(points),
    above: new Float64Array(points),
    below: new Float64Array(points),
    extraRow: new Int32Array(size.extras),
    extraColumn: new Int32Array(size.extras),
    extraValue: new Float64Array(size.extras),
    extraCount: 0,
  };
}

/** out = matrix x. @example multiplyInto(out, matrix, x) */
export function multiplyInto(out: Float64Array, matrix: GridMatrix, x: Float64Array): void {
  const { columns, centre, before, after, above, below } = matrix;
  const points = centre.length;
  const last = points - columns;
  // Three stretches, so that the long middle one asks no questions: first row, rows between, last row.
  for (let p = 0; p < columns; p++) {
    let sum = centre[p] * x[p];
    if (p > 0) sum += before[p] * x[p - 1];
    if (p < points - 1) sum += after[p] * x[p + 1];
    if (p < last) sum += below[p] * x[p + columns];
    out[p] = sum;
  }
  for (let p = columns; p < last; p++) {
    out[p] =
      centre[p] * x[p] +
      before[p] * x[p - 1] +
      after[p] * x[p + 1] +
      above[p] * x[p - columns] +
      below[p] * x[p + columns];
  }
  for (let p = last > columns ? last : columns; p < points; p++) {
    let sum = centre[p] * x[p] + before[p] * x[p - 1] + above[p] * x[p - columns];
    if (p < points - 1) sum += after[p] * x[p + 1];
    out[p] = sum;
  }
  const { extraRow, extraColumn, extraValue, extraCount } = matrix;
  for (let e = 0; e < extraCount; e++) out[extraRow[e]] += extraValue[e] * x[extraColumn[e]];
}
