/** Length of a contiguous stretch of days that is fitted on, or predicted, as a whole. */
const blockDays = 30;

export interface Block {
  readonly from: number;
  /** Day after the last. */
  readonly to: number;
  /** Whether the fit may look at it; every second one is unseen. */
  readonly seen: boolean;
}

/** The record cut into 30-day blocks, seen and unseen in turn; the first is seen. */
export function blocksOf(days: number): Block[] {
  const blocks: Block[] = [];
  for (let from = 0; from < days; from += blockDays) {
    blocks.push({ from, to: Math.min(days, from + blockDays), seen: isSeen(from) });
  }
  return blocks;
}

/** Whether a day lies in a block that the fit may look at. */
export const isSeen = (day: number): boolean => Math.floor(day / blockDays) % 2 === 0;
