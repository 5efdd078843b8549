import type { DefaultUsed } from "../water/result.js";
import type { Default } from "./defaults.js";

/** The given value, or the default, which is then put on the list. @example pick(used, "season.days", undefined, entry) */
export function pick<T extends number | string>(
  used: DefaultUsed[],
  path: string,
  given: T | undefined,
  entry: Default<T>,
): T {
  if (given !== undefined) return given;
  used.push({ path, value: String(entry.value), source: entry.source });
  return entry.value;
}
