import { type Fault, fault } from "./faults.js";

/** The format that this version writes and reads without change. */
const currentFormat = 1;

/** Turns a file of one format into the next; pure, and total on files that the older version accepted. */
export type Migration = (file: Readonly<Record<string, unknown>>) => Record<string, unknown>;

/** By the format it starts from. Format 1 is the first, so there is nothing to migrate yet. */
const migrations: Readonly<Record<number, Migration>> = {};

/**
 * A file carried to the current format, step by step. A file without a readable format is passed on as it is: the schema
 * reports it with everything else.
 *
 * @example migrated({ format: 7 }) // { ok: false, fault: { code: "unknown-format", path: "format", ... } }
 */
export function migrated(
  file: unknown,
  steps: Readonly<Record<number, Migration>> = migrations,
  target: number = currentFormat,
): { readonly ok: true; readonly file: unknown } | { readonly ok: false; readonly fault: Fault } {
  if (typeof file !== "object" || file === null || !("format" in file) || !Number.isInteger(file.format)) {
    return { ok: true, file };
  }
  let now: Record<string, unknown> = { ...file };
  let format = Number(file.format);
  while (format !== target) {
    const step = Object.hasOwn(steps, format) ? steps[format] : undefined;
    if (step === undefined || format > target) {
      const known = [...Object.keys(steps), target].join(", ");
      return { ok: false, fault: fault("unknown-format", "format", file.format, { known }) };
    }
    now = step(now);
    format += 1;
  }
  return { ok: true, file: now };
}
