import { normalQuantile, normalShare } from "../../numeric/normal-share.js";
import type { DrawnColumn, RankedVariable } from "./generator-fit.js";
import { fitHarmonic, harmonicAt } from "./harmonic.js";

/** Evenly spaced shares at which a distribution is kept. */
const kept = 41;

/** Fewer days of a month and state take the distribution of all days of the month. Own choice. */
const fewDays = 20;

/** A course never counts as less than this share of its mean: at the polar night there is nothing to take a share of. */
const leastShare = 0.01;

const courseAt = ({ course }: Pick<RankedVariable, "course">, dayOfYear: number): number => {
  const value = harmonicAt(course, dayOfYear);
  const least = leastShare * course.mean;
  return value > least ? value : least;
};

/**
 * Fits a column that is not normal, such as sunshine: its distribution in each month, on dry and on wet days, as shares of a smooth yearly course.
 * Returns it with the normal score of every day, the z below which as large a share of the normal distribution lies as of the days of that month and state.
 */
export function fitRanked(
  values: Float64Array,
  column: DrawnColumn,
  state: Int8Array,
  dayOfYear: Int16Array,
  monthOf: Uint8Array,
): { readonly variable: RankedVariable; readonly scores: Float64Array } {
  const course = fitHarmonic(values, dayOfYear, () => true, 2);
  const shares = values.map((value, d) => value / courseAt({ course }, dayOfYear[d]));
  const scores = new Float64Array(values.length).fill(Number.NaN);
  const sides = [0, 1].map((side) =>
    Array.from({ length: 12 }, (_, month) => {
      const ofMonth = daysWhere(shares, (d) => monthOf[d] === month);
      const own = ofMonth.filter((d) => state[d] === side);
      const used = own.length >= fewDays ? own : ofMonth;
      const sorted = used.map((d) => shares[d]).sort((a, b) => a - b);
      for (const d of own) scores[d] = normalQuantile(rankShare(sorted, shares[d]));
      return Array.from({ length: kept }, (_, k) => between(sorted, (k / (kept - 1)) * (sorted.length - 1)));
    }),
  );
  return { variable: { kind: "ranked", column, course, dry: sides[0], wet: sides[1] }, scores };
}

/** The value whose share of the days of its month and state is that of z in the normal distribution. */
export function rankedValue(
  variable: RankedVariable,
  z: number,
  wet: boolean,
  dayOfYear: number,
  month: number,
): number {
  const shares = (wet ? variable.wet : variable.dry)[month];
  return between(shares, normalShare(z) * (shares.length - 1)) * courseAt(variable, dayOfYear);
}

function daysWhere(values: Float64Array, use: (d: number) => boolean): number[] {
  const days: number[] = [];
  for (let d = 0; d < values.length; d++) if (!Number.isNaN(values[d]) && use(d)) days.push(d);
  return days;
}

/** Between two entries of a list, on a line. */
function between(sorted: readonly number[], place: number): number {
  const low = Math.floor(place);
  const high = low + 1 < sorted.length ? low + 1 : low;
  return sorted[low] + (place - low) * (sorted[high] - sorted[low]);
}

/** Share of the list below a value, half of those equal to it counted; never 0 or 1. */
function rankShare(sorted: readonly number[], value: number): number {
  const below = firstAt(sorted, (one) => one >= value);
  const upTo = firstAt(sorted, (one) => one > value);
  const share = (below + upTo) / (2 * sorted.length);
  const least = 0.5 / sorted.length;
  return share < least ? least : share > 1 - least ? 1 - least : share;
}

function firstAt(sorted: readonly number[], test: (value: number) => boolean): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (test(sorted[middle])) high = middle;
    else low = middle + 1;
  }
  return low;
}
