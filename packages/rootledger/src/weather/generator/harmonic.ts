import { daysPerYear } from "../../numeric/day-number.js";
import { solve } from "../../numeric/small-matrix.js";

/** A yearly course: mean + sum over k of cos[k-1] cos(2 pi k t / 365.2425) + sin[k-1] sin(2 pi k t / 365.2425), t the day of the year. */
export interface Harmonic {
  readonly mean: number;
  readonly cos: readonly number[];
  readonly sin: readonly number[];
}

/** @example harmonicAt({ mean: 10, cos: [5], sin: [0] }, 365.2425) // 15 */
export function harmonicAt({ mean, cos, sin }: Harmonic, dayOfYear: number): number {
  let value = mean;
  for (let k = 0; k < cos.length; k++) {
    const angle = (2 * Math.PI * (k + 1) * dayOfYear) / daysPerYear;
    value += cos[k] * Math.cos(angle) + sin[k] * Math.sin(angle);
  }
  return value;
}

/** The course of `count` harmonics nearest to the values (least squares); NaN values are left out. The plain mean where there are too few of them. */
export function fitHarmonic(
  values: Float64Array,
  dayOfYear: Int16Array,
  use: (d: number) => boolean,
  count: number,
): Harmonic {
  const size = 1 + 2 * count;
  const normal = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const right = Array.from({ length: size }, () => [0]);
  const basis = new Array<number>(size).fill(1);
  let n = 0;
  let sum = 0;
  for (let d = 0; d < values.length; d++) {
    if (Number.isNaN(values[d]) || !use(d)) continue;
    n++;
    sum += values[d];
    for (let k = 0; k < count; k++) {
      const angle = (2 * Math.PI * (k + 1) * dayOfYear[d]) / daysPerYear;
      basis[1 + 2 * k] = Math.cos(angle);
      basis[2 + 2 * k] = Math.sin(angle);
    }
    for (let i = 0; i < size; i++) {
      right[i][0] += basis[i] * values[d];
      for (let j = 0; j < size; j++) normal[i][j] += basis[i] * basis[j];
    }
  }
  const solved = n >= 10 * size ? solve(normal, right) : undefined;
  if (solved === undefined) return { mean: n === 0 ? Number.NaN : sum / n, cos: [], sin: [] };
  const at = (i: number): number => solved[i][0];
  return {
    mean: at(0),
    cos: Array.from({ length: count }, (_, k) => at(1 + 2 * k)),
    sin: Array.from({ length: count }, (_, k) => at(2 + 2 * k)),
  };
}
