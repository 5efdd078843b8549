import { dayNumber } from "../numeric/day-number.js";
import { isMonthDay, occurrences, otherHemisphere } from "./month-day.js";

/**
 * When a stage begins: on a date, on a day that returns every year (MM-DD), on a day counted from the start of the season, or
 * at a phenological event whose day is given beside the stages.
 */
export type StageStart =
  | { readonly date: string }
  | { readonly monthDay: string }
  | { readonly day: number }
  | { readonly event: string };

/** A stage of the season and when it begins. */
export interface Stage {
  readonly name: string;
  readonly starts: StageStart;
}

/** Days of phenological events, MM-DD or ISO dates: what was seen in the field, or a preset's calendar. */
export type Phenology = Readonly<Record<string, string>>;

/** One stretch of one stage, in day numbers; the last one of a calendar without return has no end. */
export interface StageSpan {
  readonly stage: number;
  readonly fromDay: number;
  readonly toDay: number;
}

/**
 * Spans of the stages over a season, in order. Stages that start on a day of the year return each year, so a season over New
 * Year needs no special case; the others come once.
 *
 * @throws RangeError if a start cannot be read, an event has no day, or two stages start on the same day.
 * @example stageSpans("2025-12-30", 5, [{ name: "rest", starts: { monthDay: "06-01" } }, { name: "fruit", starts: { monthDay: "01-01" } }]).map((s) => s.stage) // [0, 1]
 */
export function stageSpans(
  startDate: string,
  days: number,
  stages: readonly Stage[],
  phenology: Phenology = {},
): readonly StageSpan[] {
  const first = dayNumber(startDate);
  const last = first + days - 1;
  const starts = stages.flatMap(({ name, starts }, stage) =>
    startDays(name, starts, first, last, phenology).map((fromDay) => ({ stage, fromDay })),
  );
  starts.sort((a, b) => a.fromDay - b.fromDay);
  for (let i = 1; i < starts.length; i++) {
    if (starts[i].fromDay === starts[i - 1].fromDay) {
      const names = `${stages[starts[i - 1].stage].name} and ${stages[starts[i].stage].name}`;
      throw new RangeError(`stageSpans requires stages that start on different days: got ${names} on one day`);
    }
  }
  return starts
    .map((start, i) => ({ ...start, toDay: starts[i + 1]?.fromDay ?? Number.POSITIVE_INFINITY }))
    .filter((span) => span.toDay > first && span.fromDay <= last);
}

/**
 * Number of the stage of each day, -1 before the first one.
 *
 * @throws RangeError where `stageSpans` does.
 * @example stageByDay("2025-12-31", 2, [{ name: "flower", starts: { monthDay: "10-01" } }, { name: "fruit", starts: { monthDay: "01-01" } }]) // Int16Array [0, 1]
 */
export function stageByDay(
  startDate: string,
  days: number,
  stages: readonly Stage[],
  phenology: Phenology = {},
): Int16Array {
  const first = dayNumber(startDate);
  const result = new Int16Array(days).fill(-1);
  for (const { stage, fromDay } of stageSpans(startDate, days, stages, phenology)) {
    result.fill(stage, Math.max(0, fromDay - first));
  }
  return result;
}

/** The same phenology six months later. @example phenologyOfOtherHemisphere({ fruitSet: "11-15" }).fruitSet // "05-15" */
export const phenologyOfOtherHemisphere = (phenology: Readonly<Record<string, string>>): Record<string, string> =>
  Object.fromEntries(Object.entries(phenology).map(([event, monthDay]) => [event, otherHemisphere(monthDay)]));

function startDays(
  name: string,
  start: StageStart,
  first: number,
  last: number,
  phenology: Phenology,
): readonly number[] {
  if ("day" in start) return [first + start.day];
  const text = "date" in start ? start.date : "monthDay" in start ? start.monthDay : phenology[start.event];
  if (text === undefined) {
    const event = "event" in start ? start.event : "";
    throw new RangeError(`stageSpans requires a day for the event ${event}, where ${name} starts: got none`);
  }
  if (isMonthDay(text)) return occurrences(text, first, last);
  const day = dayNumber(text);
  if (!Number.isFinite(day)) throw new RangeError(`stageSpans requires dates YYYY-MM-DD or MM-DD: got ${text}`);
  return [day];
}
