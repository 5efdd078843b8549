import type { Quantity } from "./quantity.js";

/** How many records a day needs for its figure. */
export interface DayCoverage {
  /** Records of a whole day. */
  readonly ofDay: number;
  /** Least records of a mean, lowest or highest value. */
  readonly leastForMean: number;
  /** Least records of a sum. */
  readonly leastForSum: number;
}

export interface DayFigures {
  readonly values: Float64Array;
  /** Days with some records, but too few. */
  readonly incomplete: number;
  /** What was recorded on them, for a sum. */
  readonly incompleteSum: number;
}

/** The figure of each day from its records; NaN where there are too few. `day` gives the day of each record. */
export function dayFigures(
  records: Float64Array,
  day: Int32Array,
  days: number,
  ofDay: Quantity["ofDay"],
  coverage: DayCoverage,
): DayFigures {
  const values = new Float64Array(days).fill(Number.NaN);
  const counts = new Int32Array(days);
  const adds = ofDay === "sum" || ofDay === "mean";
  for (let i = 0; i < records.length; i++) {
    const value = records[i];
    if (Number.isNaN(value)) continue;
    const d = day[i];
    const so = values[d];
    if (counts[d] === 0) values[d] = value;
    else if (adds) values[d] = so + value;
    else if (ofDay === "lowest" ? value < so : value > so) values[d] = value;
    counts[d]++;
  }
  const least = ofDay === "sum" ? coverage.leastForSum : coverage.leastForMean;
  let incomplete = 0;
  let incompleteSum = 0;
  for (let d = 0; d < days; d++) {
    if (counts[d] === 0) continue;
    if (counts[d] < least) {
      incomplete++;
      incompleteSum += ofDay === "sum" ? values[d] : 0;
      values[d] = Number.NaN;
    } else if (ofDay === "mean") values[d] /= counts[d];
  }
  return { values, incomplete, incompleteSum };
}
