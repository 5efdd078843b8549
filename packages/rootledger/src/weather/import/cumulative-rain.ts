import { normalText } from "./normal-text.js";

/**
 * Whether a rain column counts up: it hardly ever falls, and most of its readings repeat the one before at a height above 0. A column of single
 * falls is mostly 0. Own rule, for twenty readings or more with three rises.
 */
export function looksCumulative(values: Float64Array): boolean {
  let readings = 0;
  let repeats = 0;
  let rises = 0;
  let falls = 0;
  let before = Number.NaN;
  for (const value of values) {
    if (Number.isNaN(value)) continue;
    readings++;
    if (value === before && value > 0) repeats++;
    else if (value > before) rises++;
    else if (value < before) falls++;
    before = value;
  }
  return readings >= 20 && rises >= 3 && falls <= Math.max(1, 0.1 * rises) && repeats > 0.5 * readings;
}

/** @example saysCumulative("Lluvia acumulada (mm)") // true */
export const saysCumulative = (header: string): boolean =>
  / (cum|accum|acum|kumul|summen?zahler|counter|since|running|season|year to date|ytd)/.test(` ${normalText(header)}`);

export interface Decumulated {
  readonly resets: number[];
  /** Small falls that are noise of the sensor, counted as no rain. */
  readonly noise: number[];
}

/**
 * Turns a counter into the rain of each record, in place and in the order given: each rise is rain; a fall is a reset, and what the counter then shows has
 * fallen since; a fall of less than a tenth is noise. The first reading tells nothing and becomes missing. Never negative, never twice.
 */
export function decumulate(values: Float64Array, places: readonly number[]): Decumulated {
  const resets: number[] = [];
  const noise: number[] = [];
  let before = Number.NaN;
  for (const i of places) {
    const now = values[i];
    if (Number.isNaN(now)) continue;
    if (Number.isNaN(before)) values[i] = Number.NaN;
    else if (now >= before) values[i] = now - before;
    else if (now >= 0.9 * before) {
      values[i] = 0;
      noise.push(i);
    } else {
      values[i] = now;
      resets.push(i);
    }
    before = now;
  }
  return { resets, noise };
}
