import { dateOf } from "../../numeric/day-number.js";
import type { StationAnswers } from "./answers.js";
import { ask, type Stop } from "./stop.js";

/** A place in the file where the clock was put back or forward by an hour: the first row after it. */
export interface ClockChange {
  readonly at: number;
  readonly kind: "back" | "forward";
}

/** Day 0 of the library, 0000-03-01, is a Wednesday. */
const daysFromSunday = 3;

/**
 * Clock changes in a record without offsets from UTC, in the order of the file: an hour of stamps that comes twice, or is not there, in the
 * small hours of a Sunday. A repeated hour with other values is a change; a missing hour may be a gap, and an equal row a duplicate, so
 * these are asked about unless the file has a sure change elsewhere.
 */
export function findClockChanges(
  minutes: Float64Array,
  stepMinutes: number,
  sameAsBefore: (row: number) => boolean,
  lines: readonly number[],
  answers: StationAnswers,
): readonly ClockChange[] | Stop {
  if (!(stepMinutes <= 60) || answers.clock === "standard") return [];
  const sure: ClockChange[] = [];
  const unsure: ClockChange[] = [];
  let first = true;
  for (let i = 1; i < minutes.length; i++) {
    const moved = minutes[i] - minutes[i - 1];
    if (moved === stepMinutes - 60 && smallHours(minutes[i], -1, 3)) {
      const repeated = { at: i, kind: "back" } as const;
      if (sameAsBefore(i) && first) unsure.push(repeated);
      else sure.push(repeated);
      first = false;
    } else if (moved === stepMinutes + 60 && smallHours(minutes[i - 1], -1, 3) && smallHours(minutes[i], 1, 4)) {
      unsure.push({ at: i, kind: "forward" });
    }
  }
  if (unsure.length === 0 || sure.length > 0 || answers.clock === "changes") return alternating([...sure, ...unsure]);
  const { at, kind } = unsure[0];
  const place = `line ${lines[at]}: ${dateOf(Math.floor(minutes[at] / 1440))}`;
  const what = kind === "back" ? "an hour comes twice with the same values" : "an hour is not there";
  return ask(
    "clock",
    `On ${dateOf(Math.floor(minutes[at] / 1440))}, a Sunday, ${what}. Is the clock of the file changed in summer?`,
    [
      { value: "changes", meaning: "the clock changes in summer; times are brought to standard time" },
      {
        value: "standard",
        meaning: kind === "back" ? "the row is a duplicate" : "the hour is missing from the record",
      },
    ],
    [place],
  );
}

/** Whether a stamp lies on a Sunday between two hours; hour -1 is the last of Saturday, where clocks change at midnight. */
function smallHours(minutes: number, from: number, to: number): boolean {
  const ofWeek = (minutes + daysFromSunday * 1440) % 10080;
  const ofSunday = ofWeek >= 10080 - 60 ? ofWeek - 10080 : ofWeek;
  return ofSunday >= from * 60 && ofSunday <= to * 60 + 59;
}

/** In the order of the file, and only where one kind follows the other. */
function alternating(changes: readonly ClockChange[]): readonly ClockChange[] {
  const sorted = [...changes].sort((a, b) => a.at - b.at);
  return sorted.filter((change, index) => index === 0 || change.kind !== sorted[index - 1].kind);
}

/** Brings summer time to standard time: rows before a step back or after a step forward are an hour early. Returns how many were moved. */
export function toStandardTime(minutes: Float64Array, changes: readonly ClockChange[]): number {
  if (changes.length === 0) return 0;
  let summer = changes[0].kind === "back";
  let next = 0;
  let moved = 0;
  for (let i = 0; i < minutes.length; i++) {
    while (next < changes.length && changes[next].at === i) {
      summer = changes[next].kind === "forward";
      next++;
    }
    if (!summer) continue;
    minutes[i] -= 60;
    moved++;
  }
  return moved;
}
