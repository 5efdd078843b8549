/** What a cell says about its value. */
export const mark = {
  value: 0,
  missing: 1,
  /** Rain or dew too little to measure; its value is 0. */
  trace: 2,
  /** No reading: the amount is inside a later one. */
  accumulating: 3,
  /** Above or below what the instrument can show; the value is that limit. */
  above: 4,
  below: 5,
  /** Kept as read, but doubtful. */
  suspect: 6,
} as const;

/** What a cell says beside or in place of a number. */
export type Mark = (typeof mark)[keyof typeof mark];

const missingWords: ReadonlySet<string> = new Set(
  (
    "|na|n/a|#n/a|#na|nan|null|none|nil|nd|n.d.|n/d|s/d|sd|sin dato|sin datos|s/dato|sem dado|fehlt|k.a.|missing|miss|m|mm|-|--|---|----|_|.|..|...|?|" +
    "#div/0!|#value!|#ref!|#num!|#name?|#valor!|err|error|inf|-inf|+inf|infinity|-infinity|nodata|no data|void|undefined|offline|x"
  ).split("|"),
);
const traceWords: ReadonlySet<string> = new Set([
  "t",
  "tr",
  "tr.",
  "trace",
  "traces",
  "traza",
  "trazas",
  "ip",
  "inap",
  "spuren",
]);
const accumulatingWords: ReadonlySet<string> = new Set([
  "acum",
  "acum.",
  "acc",
  "acc.",
  "accum",
  "accumulated",
  "acumulado",
  "a",
]);
const calmWords: ReadonlySet<string> = new Set(["calm", "calma", "calme", "windstill", "windstille"]);

/** Whether a cell says that it has no value. @example isMissingWord("NAN") // true */
export const isMissingWord = (text: string): boolean => text.length < 12 && missingWords.has(text.trim().toLowerCase());

export type Special =
  | { readonly kind: "missing" | "trace" | "accumulating" | "calm" }
  | { readonly kind: "above" | "below" | "flagged" | "suspect"; readonly rest: string; readonly flag: string };

/**
 * What a cell means that is no plain number: missing, a trace, an amount that is inside a later reading, calm, ">80", or a
 * number with a letter or sign behind it. Undefined where it is none of these.
 */
export function specialCell(text: string): Special | undefined {
  const word = text.trim().toLowerCase();
  if (word.length > 30) return undefined;
  if (missingWords.has(word) || /^\*+$/.test(word)) return { kind: "missing" };
  if (traceWords.has(word)) return { kind: "trace" };
  if (accumulatingWords.has(word)) return { kind: "accumulating" };
  if (calmWords.has(word)) return { kind: "calm" };
  const limit = /^([<>\u2264\u2265]=?)\s*([+-]?[\d.,]+(?:e[+-]?\d{1,3})?)$/.exec(word);
  if (limit) return { kind: "<\u2264".includes(limit[1][0]) ? "below" : "above", rest: limit[2], flag: limit[1] };
  const flagged = /^([+-]?[\d.,]*\d(?:e[+-]?\d{1,3})?)\s*([a-z*#?])$/.exec(word);
  if (flagged) return { kind: flagged[2] === "?" ? "suspect" : "flagged", rest: flagged[1], flag: flagged[2] };
  return undefined;
}
