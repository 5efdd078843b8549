import { mostColumns } from "./row-cursor.js";
import type { Rows } from "./split-rows.js";
import { fault, type Stop } from "./stop.js";

type Json = Readonly<Record<string, unknown>>;

/**
 * Rows of a JSON text: a list of objects, an object that holds one (in any of its keys), an object of equally long lists, or one object a
 * line. Numbers are given the decimal sign that the texts beside them use. The first row holds the keys; a key that an object does not
 * have is an empty cell.
 */
export function readJsonRows(text: string): Rows | Stop {
  const value = parsed(text);
  const records = value === undefined ? undefined : recordsOf(value, 0);
  if (records === undefined || records.length === 0)
    return fault("no-table", "", text.slice(0, 40), "must hold a list of objects, or lists of equal length");
  const keys = new Set<string>();
  let comma = false;
  for (const record of records) {
    for (const [key, cell] of Object.entries(record)) {
      keys.add(key);
      if (typeof cell === "string" && /^[+-]?\d*,\d{1,2}$/.test(cell)) comma = true;
    }
    if (keys.size > mostColumns)
      return fault("too-many-columns", "", `${keys.size} keys`, `must have at most ${mostColumns} columns`);
  }
  const names = [...keys];
  const rows: Rows = { cells: [names], lines: [0] };
  records.forEach((record, index) => {
    rows.cells.push(names.map((name) => (Object.hasOwn(record, name) ? cellText(record[name], comma) : "")));
    rows.lines.push(index + 1);
  });
  return rows;
}

function parsed(text: string): unknown {
  const whole = tryParse(text);
  if (whole !== undefined) return whole;
  const lines = text.split(/\r\n|\n|\r/).filter((line) => line.trim() !== "");
  const records = lines.map(tryParse);
  return lines.length > 1 && records.every((record) => record !== undefined) ? records : undefined;
}

/** Undefined where the text is no JSON; what is wrong with it is said by the caller. */
function tryParse(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

function recordsOf(value: unknown, depth: number): readonly Json[] | undefined {
  if (Array.isArray(value)) {
    const objects = value.filter(isObject);
    return objects.length > 0 && objects.length === value.length ? objects : undefined;
  }
  if (!isObject(value)) return undefined;
  const lists = Object.entries(value).filter((entry): entry is [string, readonly unknown[]] => Array.isArray(entry[1]));
  const flat = lists.filter(([, list]) => list.every((cell) => typeof cell !== "object" || cell === null));
  if (flat.length >= 2 && flat.every(([, list]) => list.length === flat[0][1].length)) {
    return flat[0][1].map((_, i) => Object.fromEntries(flat.map(([key, list]) => [key, list[i]])));
  }
  if (depth > 4) return undefined;
  for (const inner of Object.values(value)) {
    const found = typeof inner === "object" && inner !== null ? recordsOf(inner, depth + 1) : undefined;
    if (found !== undefined && found.length > 0) return found;
  }
  return undefined;
}

const isObject = (value: unknown): value is Json =>
  typeof value === "object" && value !== null && !Array.isArray(value);

function cellText(cell: unknown, comma: boolean): string {
  if (typeof cell === "string") return cell;
  if (typeof cell === "number") return comma ? String(cell).replace(".", ",") : String(cell);
  return typeof cell === "boolean" ? String(cell) : "";
}
