import type { Difference } from "./comparison.js";

/** A paired difference over many draws: its middle, its 90 % band, and the floor below which nothing is claimed. */
export interface PairedSpread {
  readonly low: number;
  readonly median: number;
  readonly high: number;
  readonly floor: number;
}

/**
 * A difference is clear if its median is beyond the floor and its 90 % band holds no zero; at the floor or at zero it is not.
 *
 * @example pairedVerdict({ low: 12, median: 30, high: 55, floor: 10 }) // "rises"
 */
export function pairedVerdict({ low, median, high, floor }: PairedSpread): Difference["verdict"] {
  if (low > 0 && median > floor) return "rises";
  if (high < 0 && median < -floor) return "falls";
  return "no clear difference";
}
