import { z } from "zod";
import { type Fault, fault, pathText, type Terms } from "./faults.js";
import { nearestWord } from "./nearest-word.js";

type Path = readonly PropertyKey[];

/** Faults of a file's shape: types, ranges, unknown keys. Empty if the shape is right. @example shapeFaults(scenarioSchema, file) */
export function shapeFaults(schema: z.ZodType, file: unknown): Fault[] {
  const read = schema.safeParse(file);
  return read.success ? [] : read.error.issues.flatMap((issue) => faultsOf(issue, schema, file));
}

/** A part of a file, or undefined where its shape is not right. @example readPart(soilSchema, file, ["soil"]) */
export function readPart<T>(schema: z.ZodType<T>, file: unknown, path: Path): T | undefined {
  const read = schema.safeParse(valueAt(file, path));
  return read.success ? read.data : undefined;
}

/** The value at a path, own properties only; undefined where there is none. @example valueAt(file, ["season", "days"]) */
export function valueAt(file: unknown, path: Path): unknown {
  let value = file;
  for (const part of path) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, part)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[part];
  }
  return value;
}

function faultsOf(issue: z.core.$ZodIssue, schema: z.ZodType, file: unknown): Fault[] {
  const received = valueAt(file, issue.path);
  const path = pathText(issue.path);
  const one = (code: Parameters<typeof fault>[0], terms: Terms): Fault[] => [fault(code, path, received, terms)];
  if (issue.code === "unrecognized_keys") {
    const known = knownKeys(z.toJSONSchema(schema), issue.path);
    return issue.keys.map((key) => unknownKey([...issue.path, key], key, known, valueAt(file, [...issue.path, key])));
  }
  if (received === undefined && issue.path.length > 0) return one("missing", { expected: expectedText(issue) });
  switch (issue.code) {
    case "invalid_type":
      return one("wrong-type", { expected: expectedText(issue) });
    case "invalid_value":
      return one("not-one-of", { options: listText(issue.values) });
    case "invalid_union":
      return one("not-one-of", {
        options: listText("options" in issue && Array.isArray(issue.options) ? issue.options : []),
      });
    case "too_small":
      if (countable(issue.origin)) return one("too-few", { minimum: sizeText(issue.minimum, issue.origin) });
      return one(issue.inclusive ? "below-minimum" : "not-above-minimum", { minimum: Number(issue.minimum) });
    case "too_big":
      if (countable(issue.origin)) return one("too-many", { maximum: sizeText(issue.maximum, issue.origin) });
      return one(issue.inclusive ? "above-maximum" : "not-below-maximum", { maximum: Number(issue.maximum) });
    case "invalid_format":
      if (issue.format === "date") return one("not-a-date", {});
      return issue.format === "time" ? one("not-a-clock-time", {}) : one("wrong-format", { expected: issue.format });
    default:
      return one("wrong-type", { expected: "a value of the kind described in the schema" });
  }
}

const typeTexts: Readonly<Record<string, string>> = {
  number: "a number",
  int: "a whole number",
  string: "text",
  array: "a list",
  object: "an object",
};

function expectedText(issue: z.core.$ZodIssue): string {
  if (issue.code === "invalid_type") return typeTexts[issue.expected] ?? issue.expected;
  if (issue.code === "invalid_value")
    return issue.values.length > 1 ? `one of ${listText(issue.values)}` : listText(issue.values);
  if (issue.code === "invalid_union" && "options" in issue && Array.isArray(issue.options))
    return `one of ${listText(issue.options)}`;
  return "a value";
}

const listText = (values: readonly unknown[]): string => values.map(String).join(", ");

const nouns: Readonly<Record<string, readonly [string, string]>> = {
  array: ["entry", "entries"],
  string: ["character", "characters"],
};

const countable = (origin: string): boolean => Object.hasOwn(nouns, origin);

const sizeText = (count: number | bigint, origin: string): string =>
  `${count} ${nouns[origin][Number(count) === 1 ? 0 : 1]}`;

function unknownKey(path: Path, key: string, known: readonly string[], received: unknown): Fault {
  const nearest = nearestWord(key, known);
  if (nearest === undefined)
    return fault("unknown-key-no-likeness", pathText(path), received, { known: known.join(", ") });
  return fault("unknown-key", pathText(path), received, { nearest });
}

type Json = z.core.JSONSchema.BaseSchema;

/** Keys that the schema allows in the object at a path; of all branches, where it may take several forms. */
function knownKeys(schema: Json, path: Path): string[] {
  let places: Json[] = branches(schema);
  for (const part of path) {
    places = places.flatMap((place) => {
      const next = typeof part === "number" ? place.items : place.properties?.[String(part)];
      return typeof next === "object" && !Array.isArray(next) ? branches(next) : [];
    });
  }
  return [...new Set(places.flatMap((place) => Object.keys(place.properties ?? {})))].filter(
    (key) => !key.startsWith("$"),
  );
}

const branches = (schema: Json): Json[] => [schema, ...(schema.oneOf ?? []), ...(schema.anyOf ?? [])] as Json[];
