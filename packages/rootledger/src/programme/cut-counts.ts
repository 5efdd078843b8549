import type { Cut, CutReason } from "../water/watering-book.js";

/** Cuts of a season for one reason: on how many runs, and the minutes they lost. */
export interface CutCount {
  readonly reason: CutReason;
  readonly runs: number;
  readonly minutes: number;
}

/** Counts cuts by reason, most minutes first. @example cutCounts([{ day: 3, reason: "rain", minutes: 60 }]) // [{ reason: "rain", runs: 1, minutes: 60 }] */
export function cutCounts(cuts: readonly Cut[]): CutCount[] {
  const reasons = [...new Set(cuts.map(({ reason }) => reason))];
  return reasons
    .map((reason) => {
      const of = cuts.filter((cut) => cut.reason === reason);
      return { reason, runs: of.length, minutes: of.reduce((sum, { minutes }) => sum + minutes, 0) };
    })
    .sort((a, b) => b.minutes - a.minutes);
}
