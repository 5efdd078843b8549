import { type Fault, fault } from "./faults.js";

/** The format that this version writes and reads without change. */
export const currentFormat = 1;

/** Turns a file of one format into the next; pure, and total on files that the older version accepted. */
export type Migration = (file: Readonly<Record<string, unknown>>) => Record<string, unknown>;

/** By the format it starts from. Format 1 is the first, so there is nothing to migrate yet. */
const migrations: ReadonlyMap<number, Migration> = new Map();

/**
 * A file carried to the current format, step by step. A file without a readable format is passed on as it is: the schema
 * reports it with everything else.
 *
 * @example migrated({ format: 7 }) // { ok: false, fault: { code: "unknown-format", path: "format", ... } }
 */
export function migrated(
  file: unknown,
  steps: ReadonlyMap<number, Migration> = migrations,
  target: number = currentFormat,
): { readonly ok: true; readonly file: unknown } | { readonly ok: false; readonly fault: Fault } {
  if (typeof file !== "object" || file === null || !("format" in file) || !Number.isInteger(file.format)) {
    return { ok: true, file };
  }
  let now: Record<string, unknown> = { ...file };
  let format = Number(file.format);
  while (format !== target) {
    const step = steps.get(format);
    if (step === undefined || format > target) {
      const known = [...steps.keys(), target].join(", ");
      return { ok: false, fault: fault("unknown-format", "format", file.format, { known }) };
    }
    now = step(now);
    format += 1;
  }
  return { ok: true, file: now };
}
