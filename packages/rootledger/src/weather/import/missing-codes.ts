import { mark } from "./special-cell.js";

/** Numbers that stations and loggers write for "no value". Common practice; -6999 and 7999 are a data logger's, 65535 and 32767 full registers. */
const codes: ReadonlySet<number> = new Set([
  -9999, -9999.9, -9999.99, -999, -999.9, -999.99, -99, -99.9, -99.99, -6999, -7999, -8888, -888, -88.8, -32768, -99999,
  6999, 7999, 8888, 9999, 9999.9, 999, 999.9, 999.99, 99999, 99999.9, 99.9, 99.99, 88.8, 65535, 65534, 32767, 6553.5,
  655.35, 3276.7,
]);

/** @example isMissingCode(-9999) // true */
export const isMissingCode = (value: number): boolean => (value <= -88 || value >= 88) && codes.has(value);

export interface CodesFound {
  /** Rows of the codes that were made missing. */
  readonly rows: readonly number[];
  readonly values: readonly number[];
  /** A code that may also be a value, with its rows: to be asked about. */
  readonly unclear: { readonly value: number; readonly rows: readonly number[] } | undefined;
}

/**
 * Makes missing codes missing before anything is computed from the column. A number of the list is a code if it stands apart from all others by more
 * than they differ among themselves, so that a humidity of 99.9 beside 99.8 stays what it is; apart and yet possible, a positive one is asked about.
 */
export function dropMissingCodes(
  values: Float64Array,
  marks: Uint8Array,
  isPossible: (value: number) => boolean,
): CodesFound {
  let lowest = Number.POSITIVE_INFINITY;
  let highest = Number.NEGATIVE_INFINITY;
  const found = new Map<number, number[]>();
  for (let i = 0; i < values.length; i++) {
    const value = values[i];
    if (isMissingCode(value)) {
      const rows = found.get(value);
      if (rows === undefined) found.set(value, [i]);
      else rows.push(i);
    } else if (!Number.isNaN(value)) {
      if (value < lowest) lowest = value;
      if (value > highest) highest = value;
    }
  }
  const dropped: number[] = [];
  const kinds: number[] = [];
  let unclear: CodesFound["unclear"];
  const none = highest < lowest;
  for (const [value, rows] of found) {
    const apart = none || (value > highest ? value - highest : lowest - value) > highest - lowest;
    if (!apart) continue;
    if (value > 0 && isPossible(value)) {
      // A lone column of nothing but one number has nothing to stand apart from.
      if (!none) unclear ??= { value, rows };
      continue;
    }
    kinds.push(value);
    for (const i of rows) {
      values[i] = Number.NaN;
      marks[i] = mark.missing;
      dropped.push(i);
    }
  }
  return { rows: dropped, values: kinds, unclear };
}
