import { type DayBlock, dayBlocks, dayUse } from "rootledger/calibrate";

/** Length of a contiguous stretch of days that is fitted on, or predicted, as a whole. */
const blockDays = 30;

/** The record cut into 30-day blocks, seen (train) and unseen (test) in turn; the first is seen. */
export const blocksOf = (days: number): DayBlock[] => dayBlocks(days, blockDays);

/** Whether a day lies in a block that the fit may look at. */
export const isSeen = (day: number): boolean => dayUse(day, blockDays) === "train";
