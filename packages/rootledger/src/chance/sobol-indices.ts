import { chanceStream } from "../numeric/chance-stream.js";

/** Points of the unit cube: for each of `base` rows, A, B and then A with each unknown in turn from B. */
export interface SobolDesign {
  readonly unknowns: number;
  readonly base: number;
  readonly points: Float64Array;
}

/** Shares of an answer's variance that one unknown explains. */
export interface SobolIndices {
  /** Share of the answer's variance that knowing this unknown alone would take away. */
  readonly first: number;
  /** Share that would stay if all the others were known. */
  readonly total: number;
}

/**
 * The radial sample of Saltelli et al. (2010), Computer Physics Communications 181:259-270: unknowns + 2 runs for each of
 * `base` rows. A row depends on the seed and its number alone.
 *
 * @throws RangeError unless unknowns and base are whole numbers above 0.
 * @example sobolDesign(3, 10, 1).points.length // 150
 */
export function sobolDesign(unknowns: number, base: number, seed: string | number): SobolDesign {
  for (const count of [unknowns, base]) {
    if (!(Number.isInteger(count) && count > 0)) {
      throw new RangeError(`sobolDesign requires whole numbers above 0: got ${unknowns}, ${base}`);
    }
  }
  const points = new Float64Array(base * (unknowns + 2) * unknowns);
  for (let row = 0; row < base; row++) {
    const { uniform } = chanceStream(seed, row, "sobol");
    const a = Float64Array.from({ length: unknowns }, uniform);
    const b = Float64Array.from({ length: unknowns }, uniform);
    const first = row * (unknowns + 2) * unknowns;
    points.set(a, first);
    points.set(b, first + unknowns);
    for (let i = 0; i < unknowns; i++) {
      const at = first + (2 + i) * unknowns;
      points.set(a, at);
      points[at + i] = b[i];
    }
  }
  return { unknowns, base, points };
}

/**
 * First-order indices by Saltelli et al. (2010), table 2 (b): mean of f(B) (f(A with B's) - f(A)) over the variance; total ones
 * by Jansen (1999), Computer Physics Communications 117:35-43: mean of (f(A) - f(A with B's))^2 / 2 over the variance. The
 * answers are centred first, which changes neither and lessens the noise. Both are estimates and may stray below 0. Rows
 * with a point without an answer (NaN) are left out.
 *
 * @param answers one for each point of the design
 * @throws RangeError if their number is not that of the points.
 * @example sobolIndices(design, answers)[0].total
 */
export function sobolIndices({ unknowns, base, points }: SobolDesign, answers: Float64Array): SobolIndices[] {
  if (answers.length * unknowns !== points.length) {
    throw new RangeError(`sobolIndices requires ${points.length / unknowns} answers: got ${answers.length}`);
  }
  const width = unknowns + 2;
  const rows: Float64Array[] = [];
  for (let row = 0; row < base; row++) {
    const part = answers.subarray(row * width, (row + 1) * width);
    if (!part.some(Number.isNaN)) rows.push(part);
  }
  const n = rows.length;
  let mean = 0;
  for (const row of rows) mean += (row[0] + row[1]) / (2 * n);
  let variance = 0;
  for (const row of rows) variance += ((row[0] - mean) * (row[0] - mean) + (row[1] - mean) * (row[1] - mean)) / (2 * n);
  return Array.from({ length: unknowns }, (_, i) => {
    if (!(variance > 0)) return { first: 0, total: 0 };
    let first = 0;
    let total = 0;
    for (const row of rows) {
      const change = row[2 + i] - row[0];
      first += (row[1] - mean) * change;
      total += change * change;
    }
    return { first: first / n / variance, total: total / (2 * n) / variance };
  });
}
