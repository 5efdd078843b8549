import type { DefaultUsed } from "../water/result.js";
import type { Default } from "./defaults.js";

/** A number without what binary arithmetic leaves behind its last digits: 1.5 x 1.4 is 2.1. */
const plainText = (value: number | string): string =>
  String(typeof value === "number" ? Number(value.toPrecision(12)) : value);

/** The given value, or the default, which is then put on the list. @example pick(used, "season.days", undefined, entry) */
export function pick<T extends number | string>(
  used: DefaultUsed[],
  path: string,
  given: T | undefined,
  entry: Default<T>,
): T {
  if (given !== undefined) return given;
  used.push({ path, value: plainText(entry.value), source: entry.source });
  return entry.value;
}
