/** A stretch of days that a fit may look at, or may not. */
export interface DayBlock {
  readonly from: number;
  /** Day after the last. */
  readonly to: number;
  /** `train`: the fit may look at it; `test`: it is only scored. */
  readonly use: "train" | "test";
}

/**
 * Days cut into blocks of equal length, train and test in turn, train first; the last one may be shorter. Whole blocks, since
 * neighbouring days say nearly the same.
 *
 * @throws RangeError unless days and block are whole numbers above 0.
 * @example dayBlocks(25, 10) // [{ from: 0, to: 10, use: "train" }, { from: 10, to: 20, use: "test" }, { from: 20, to: 25, use: "train" }]
 */
export function dayBlocks(days: number, blockDays: number): DayBlock[] {
  if (!(Number.isInteger(days) && days > 0 && Number.isInteger(blockDays) && blockDays > 0)) {
    throw new RangeError(`dayBlocks requires whole days and blocks above 0: got ${days} and ${blockDays}`);
  }
  const blocks: DayBlock[] = [];
  for (let from = 0; from < days; from += blockDays) {
    blocks.push({ from, to: Math.min(days, from + blockDays), use: dayUse(from, blockDays) });
  }
  return blocks;
}

/** What a day may be used for. @example dayUse(12, 10) // "test" */
export const dayUse = (day: number, blockDays: number): DayBlock["use"] =>
  Math.floor(day / blockDays) % 2 === 0 ? "train" : "test";
