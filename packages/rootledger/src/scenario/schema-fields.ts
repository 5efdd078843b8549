import { z } from "zod";
import type { Default } from "./defaults.js";

/** A number above 0 and up to a bound beyond which it is taken for a slip of the unit. */
export const positive = (maximum: number, what: string): z.ZodType<number> =>
  z.number().positive().max(maximum).describe(what);

/** A number between two bounds, both allowed. */
export const between = (minimum: number, maximum: number, what: string): z.ZodType<number> =>
  z.number().min(minimum).max(maximum).describe(what);

/** A fraction between 0 and 1, neither allowed. */
export const openFraction = (what: string): z.ZodType<number> => z.number().gt(0).lt(1).describe(what);

/** A whole number between two bounds, both allowed. */
export const whole = (minimum: number, maximum: number, what: string): z.ZodType<number> =>
  z.int().min(minimum).max(maximum).describe(what);

export const named = (what: string): z.ZodType<string> => z.string().min(1).max(120).describe(what);

/** A time of day, written HH:MM. */
export const clockTime = (what: string): z.ZodType<string> => z.iso.time({ precision: -1 }).describe(what);

export const isoDate = (what: string): z.ZodType<string> => z.iso.date().describe(what);

/** A day that returns every year, written MM-DD; which texts are such days is checked beside the schema. */
export const monthDay = (what: string): z.ZodType<string> => z.string().min(1).max(10).describe(what);

/** A field that may be left out; the default and its source go into the JSON Schema. */
export const orDefault = <T extends number | string>(
  field: z.ZodType<T>,
  entry: Default<T>,
): z.ZodType<T | undefined> =>
  field.optional().meta({
    description: `${field.description ?? ""} Default ${entry.value}: ${entry.source}. Published: ${entry.published}.`,
    default: entry.value,
  });
