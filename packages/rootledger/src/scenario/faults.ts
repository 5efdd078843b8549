import type { WeatherFaultCode } from "../weather/weather-fault.js";

/** Something wrong in an input file. `path` is "" for the file as a whole, else like "block.lines.offsetsM[1]". */
export interface Fault {
  readonly code: FaultCode | WeatherFaultCode;
  readonly path: string;
  /** The value found there, as short text. */
  readonly received: string;
  /** What is required, in English; other languages make their own text from `code` and `terms`. */
  readonly rule: string;
  readonly terms: Terms;
}

export type Terms = Readonly<Record<string, string | number>>;

const rules = {
  missing: "is required: $expected",
  "wrong-type": "must be $expected",
  "not-one-of": "must be one of $options",
  "below-minimum": "must be at least $minimum",
  "not-above-minimum": "must be above $minimum",
  "above-maximum": "must be at most $maximum",
  "not-below-maximum": "must be below $maximum",
  "too-few": "must have at least $minimum",
  "too-many": "must have at most $maximum",
  "not-a-date": "must be a real date written YYYY-MM-DD",
  "not-a-month-day": "must be a day of every year written MM-DD",
  "not-a-clock-time": "must be a time of day from 00:00 to 23:59 written HH:MM",
  "wrong-format": "must be written as $expected",
  "unknown-key": "is not a known key here; did you mean $nearest?",
  "unknown-key-no-likeness": "is not a known key here; known are $known",
  "exactly-one-of": "must have exactly one of $options",
  "unknown-format": "must be a format this version reads: $known",
  "unknown-texture": "must be a texture class; did you mean $nearest? Known are $known",
  "layers-not-rising": "must be at least $thickness cm deeper than the layer above it, which ends at $above cm",
  "residual-not-below-saturated": "must be below thetaSaturated, $saturated",
  "profile-above-roots": "must reach as deep as the roots, $depth cm",
  "too-near-roots": "must equal the rooted depth, $depth cm, or differ by at least $thickness cm",
  "too-near": "must equal $other, $value cm, or differ from it by at least $apart cm",
  "only-beside": "must be left out beside $given: it goes with $others only",
  "no-such-curve": "gives no soil curve: $reason",
  "not-mirrored":
    "must have a mirror image at $mirror m: only half the row is computed, so both sides of the trees must be alike",
  "line-beyond-half-row": "must lie within half the row spacing, $half m, by at least $apart m",
  "lines-too-close": "must be at least $apart m from the next line, which is at $other m",
  "emitters-too-far-apart": "must not exceed the tree spacing, $spacing m: every tree needs an emitter of each line",
  "no-open-emitter": "must leave at least one of the tree's $emitters emitters open",
  "low-quarter-dry": "must leave the lowest quarter some water: $dry of $count are 0",
  "dates-not-rising": "must be later than the date before it, $before",
  "not-drier": "must be drier (more kPa) than $other, $limit kPa",
  "not-below": "must be below $other, $limit",
  "gap-missing": "is required: minutes of pause, since the run has $pulses pulses",
  "runs-overlap": "must not overlap: on day $day it opens before $other has closed",
  "run-outside-season": "must be a day of the season, 0 to $last",
  "not-above": "must be above $other, $limit",
  "not-a-day": "must be a day written MM-DD or a real date written YYYY-MM-DD",
  "no-day-of-event": "must be YYYY-MM-DD, MM-DD, day N, or an event whose day is known; known are $known",
  "no-stage-on-first-day": "must hold a stage on the first day of the season, $first",
  "stages-misplaced": "must follow one another: $reason",
  "weather-lacks": "needs $columns in the weather file",
  "injection-beyond-run":
    "must end with the run: travel and injection need $needed open minutes, the shortest run has $shortest",
  "date-outside-season": "must be a day of the season, $from to $to",
  "not-rising": "must be above the entry before it, $before",
  "age-not-covered": "must begin at or before the age of the trees, $age years",
  "start-not-allowed": "must lie within the allowed hours, $from to $to",
  "same-moment": "must differ from $other",
  "sensor-outside": "must lie within the computed ground, up to $most cm",
  "goes-with": "is required beside $other",
  "not-beside": "must be left out beside $other: $reason",
  "periods-overlap": "must not share days of the year with $other",
  "same-name": "must differ from the name of $other",
  "file-not-given": "must name a weather file that can be read",
  "weather-too-short": "must lie inside the weather record, $from to $to",
} as const;

/** Every kind of fault of a file. */
export type FaultCode = keyof typeof rules;

/** @example fault("below-minimum", "season.days", 0, { minimum: 1 }).rule // "must be at least 1" */
export function fault(code: FaultCode, path: string, received: unknown, terms: Terms = {}): Fault {
  const rule = rules[code].replace(/\$(\w+)/g, (_, term: string) => String(terms[term]));
  return { code, path, received: shortText(received), rule, terms };
}

const longestText = 60;

/** A received value in one short line. @example shortText([1, 2]) // "a list of 2" */
export function shortText(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "string") {
    const text = value.length > longestText ? `${value.slice(0, longestText)}...` : value;
    return JSON.stringify(text);
  }
  if (Array.isArray(value)) return value.length === 0 ? "an empty list" : `a list of ${value.length}`;
  if (value === null || typeof value === "number" || typeof value === "boolean") return String(value);
  return typeof value === "object" ? "an object" : `a ${typeof value}`;
}

/** @example pathText(["block", "lines", "offsetsM", 1]) // "block.lines.offsetsM[1]" */
export function pathText(parts: readonly PropertyKey[]): string {
  let text = "";
  for (const part of parts) {
    if (typeof part === "number") text += `[${part}]`;
    else text += text === "" ? String(part) : `.${String(part)}`;
  }
  return text;
}
