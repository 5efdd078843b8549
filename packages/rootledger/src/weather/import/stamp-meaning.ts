import type { StationAnswers } from "./answers.js";
import type { Assumption } from "./station-report.js";

export interface StampMeaning {
  readonly stamp: "start" | "end" | "day";
  readonly assumptions: readonly Assumption[];
}

/** What the file shows of its stamps. */
export interface StampEvidence {
  readonly stepMinutes: number;
  /** Minutes of the day of the first and last record, by the clock of the file. */
  readonly firstOfDay: number;
  readonly lastOfDay: number;
  readonly hour24: boolean;
  /** The name of the stamp's column says it: AmeriFlux, and this library's own files. */
  readonly named: "start" | "end" | undefined;
  readonly layout: "start" | "end" | undefined;
  /** A column is "in the hour before". */
  readonly hourBefore: boolean;
}

/**
 * Whether a stamp stands at the start or the end of its record. It decides to which day the record of midnight belongs. Said by the layout, by an
 * hour 24, or by a file of whole days: from 00:00 to the last step before midnight they are starts, from one step after midnight to midnight ends.
 */
export function stampMeaning(evidence: StampEvidence, answers: StationAnswers): StampMeaning {
  const { stepMinutes, firstOfDay, lastOfDay } = evidence;
  if (stepMinutes >= 1440) return { stamp: "day", assumptions: [] };
  const found = (stamp: "start" | "end", because: string): StampMeaning => ({
    stamp,
    assumptions: [{ key: "stamp", taken: stamp, because }],
  });
  if (evidence.named !== undefined) return { stamp: evidence.named, assumptions: [] };
  if (answers.stamp === "start" || answers.stamp === "end") return { stamp: answers.stamp, assumptions: [] };
  if (evidence.layout !== undefined) return found(evidence.layout, "this layout stamps so");
  if (evidence.hourBefore) return found("end", "the header speaks of the hour before");
  if (evidence.hour24) return found("end", "the file has an hour 24");
  if (firstOfDay === stepMinutes && lastOfDay === 0)
    return found("end", "the file runs from one step after midnight to midnight");
  if (firstOfDay === 0 && lastOfDay === 1440 - stepMinutes)
    return found("start", "the file runs from midnight to one step before midnight");
  return found("start", firstOfDay === 0 ? "the file begins at midnight" : "the file does not say");
}
