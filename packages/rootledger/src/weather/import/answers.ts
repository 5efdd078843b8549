import { fault, type Stop } from "./stop.js";

/** What the owner of a file says where the file does not: key and value as in the questions. */
export type StationAnswers = Readonly<Record<string, string>>;

interface AnswerRule {
  readonly allowed: RegExp;
  readonly rule: string;
}

const oneOf = (...values: readonly string[]): AnswerRule => ({
  allowed: new RegExp(`^(?:${values.join("|")})$`),
  rule: `must be ${values.join(" or ")}`,
});

const offset: AnswerRule = {
  allowed: /^[+-](?:0\d|1[0-4]):[0-5]\d$/,
  rule: "must be hours ahead of UTC, like +01:00 or -07:00",
};
const anyText: AnswerRule = { allowed: /\S/, rule: "must not be empty" };

/** Keys that can be answered, whether asked or not. `unit:NAME` and `column:NAME` take a column's header or its number. */
export const answerRules: Readonly<Record<string, AnswerRule>> = {
  encoding: oneOf("utf-8", "utf-16le", "utf-16be", "latin-1", "windows-1252"),
  delimiter: oneOf("comma", "semicolon", "tab", "pipe", "space"),
  decimal: oneOf("point", "comma"),
  columns: { allowed: /,/, rule: "must name every column, parted by commas" },
  "date-order": oneOf("dmy", "mdy", "ymd"),
  "serial-dates": oneOf("1900", "1904"),
  year: { allowed: /^\d{4}$/, rule: "must be a year of four digits" },
  zone: offset,
  "local-zone": offset,
  clock: oneOf("standard", "changes"),
  stamp: oneOf("start", "end"),
  duplicates: oneOf("first", "last"),
  rain: oneOf("each-record", "cumulative"),
  accumulated: oneOf("reading-day", "spread"),
  missing: { allowed: /\S/, rule: "must list what stands for a missing value, parted by commas" },
  "out-of-range": oneOf("missing"),
  spikes: oneOf("keep", "missing"),
  "moisture-unit": oneOf("percent-above-1"),
  suspect: oneOf("keep", "missing"),
  "day-start": { allowed: /^(?:[01]\d|2[0-3]):[0-5]\d$/, rule: "must be a time of day like 09:00" },
  "incomplete-days": oneOf("missing", "as-recorded"),
  "block-area-m2": { allowed: /^\d+(?:\.\d+)?$/, rule: "must be the area of the block in square metres" },
  "fill-temperature-days": { allowed: /^\d{1,3}$/, rule: "must be the longest gap in days that is filled on a line" },
  "fill-rain": oneOf("dry"),
};

/** A fault for the first answer that is no answer to anything. */
export function checkAnswers(answers: StationAnswers): Stop | undefined {
  for (const [key, value] of Object.entries(answers)) {
    const named = /^(unit|column):\S/.test(key);
    const rule = named ? anyText : Object.hasOwn(answerRules, key) ? answerRules[key] : undefined;
    if (rule === undefined) {
      const keys = [...Object.keys(answerRules), "unit:NAME", "column:NAME"].join(", ");
      return fault("unknown-answer", `answer ${key.slice(0, 60)}`, value, `must have one of the keys ${keys}`);
    }
    if (!rule.allowed.test(value)) return fault("wrong-answer", `answer ${key}`, value, rule.rule);
  }
  return undefined;
}
