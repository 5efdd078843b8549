import type { z } from "zod";

/** What a place of a lesson file has to be; its words are those of the page. */
export type LessonRule =
  | { readonly code: "not-json" | "missing" | "unknown-key" | "own-value" | "one-engine" }
  | { readonly code: "kind" | "one-of" | "form"; readonly expected: string }
  | { readonly code: "at-least" | "at-most"; readonly limit: number; readonly of: string };

/** A fault of a lesson file. An empty path is the file itself. */
export interface LessonFault {
  readonly path: string;
  readonly received: string;
  readonly rule: LessonRule;
}

/** The faults of a file that is not a lesson, one per place. */
export function lessonFaults(issues: readonly z.core.$ZodIssue[], json: unknown): readonly LessonFault[] {
  return issues.flatMap((issue) => faultsOf(issue, [], json));
}

function faultsOf(issue: z.core.$ZodIssue, before: readonly PropertyKey[], json: unknown): LessonFault[] {
  const at = [...before, ...issue.path];
  const found = valueAt(json, at);
  const fault = (rule: LessonRule, path = at, value = found): LessonFault => ({
    path: pathText(path),
    received: shortly(value),
    rule,
  });
  switch (issue.code) {
    case "unrecognized_keys":
      return issue.keys.map((key) => fault({ code: "unknown-key" }, [...at, key], valueAt(json, [...at, key])));
    case "invalid_type":
      return [fault(found === undefined ? { code: "missing" } : { code: "kind", expected: issue.expected })];
    case "invalid_value":
      return [fault({ code: "one-of", expected: issue.values.map(String).join(", ") })];
    case "too_small":
      return [fault({ code: "at-least", limit: Number(issue.minimum), of: issue.origin })];
    case "too_big":
      return [fault({ code: "at-most", limit: Number(issue.maximum), of: issue.origin })];
    case "invalid_format":
      return [fault({ code: "form", expected: issue.pattern ?? issue.format })];
    case "invalid_union": {
      if (found === undefined) return [fault({ code: "missing" })];
      const inside = issue.errors.flat().filter((inner) => inner.path.length > 0 || inner.code === "unrecognized_keys");
      if (inside.length > 0 && typeof found === "object") return inside.flatMap((inner) => faultsOf(inner, at, json));
      return [fault(found === "" ? { code: "at-least", limit: 1, of: "string" } : { code: "own-value" })];
    }
    default:
      return [fault({ code: "own-value" })];
  }
}

function valueAt(json: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) => (typeof value === "object" && value !== null ? Reflect.get(value, key) : undefined),
    json,
  );
}

/** @example pathText(["points", 2, "label"]) // "points[2].label" */
const pathText = (path: readonly PropertyKey[]): string =>
  path.reduce<string>(
    (said, key) => (typeof key === "number" ? `${said}[${key}]` : said === "" ? String(key) : `${said}.${String(key)}`),
    "",
  );

function shortly(value: unknown): string {
  if (value === undefined) return "";
  const said = JSON.stringify(value) ?? String(value);
  return said.length > 60 ? `${said.slice(0, 60)}…` : said;
}
