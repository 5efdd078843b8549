import { monthOfWord } from "./month-words.js";

/** The numbers of a date and time as they stand in a cell, before it is known which is the day and which the month. */
export interface StampParts {
  count: number;
  readonly values: Float64Array;
  readonly digits: Uint8Array;
  /** Which of the numbers was written as a month's name; -1 if none. */
  monthAt: number;
  /** 0 none, 1 before noon, 2 after noon. */
  half: number;
  /** Minutes that the clock is ahead of UTC; NaN where not said. */
  offsetMinutes: number;
  /** The first sign between two numbers. */
  separator: number;
  /** Where a ":" came first: the number of the hour; -1 without one. */
  hourAt: number;
}

export const newStampParts = (): StampParts => ({
  count: 0,
  values: new Float64Array(8),
  digits: new Uint8Array(8),
  monthAt: -1,
  half: 0,
  offsetMinutes: Number.NaN,
  separator: 0,
  hourAt: -1,
});

const letters = (code: number): boolean =>
  (code >= 0x61 && code <= 0x7a) || (code >= 0x41 && code <= 0x5a) || code >= 0xc0;
const digit = (code: number): boolean => code >= 0x30 && code <= 0x39;

const ignored: ReadonlySet<string> = new Set(
  "t h uhr de del of st nd rd th hrs mon tue wed thu fri sat sun mo di mi do fr sa so lun mar mie jue vie sab dom seg ter qua qui sex lunes martes monday tuesday wednesday thursday friday saturday sunday".split(
    " ",
  ),
);

/** Reads the numbers, the month's name, AM or PM and the offset of a cell into `out`; false where it holds anything else. */
export function scanStamp(text: string, out: StampParts): boolean {
  out.count = 0;
  out.monthAt = -1;
  out.half = 0;
  out.offsetMinutes = Number.NaN;
  out.separator = 0;
  out.hourAt = -1;
  const end = text.length;
  if (end > 60) return false;
  let i = 0;
  while (i < end) {
    const code = text.charCodeAt(i);
    if (digit(code)) {
      if (out.count === 8) return false;
      let value = 0;
      const from = i;
      while (i < end && digit(text.charCodeAt(i))) {
        value = value * 10 + (text.charCodeAt(i) - 0x30);
        i++;
      }
      if (i - from > 17) return false;
      out.values[out.count] = value;
      out.digits[out.count] = i - from;
      out.count++;
    } else if (letters(code)) {
      const from = i;
      while (i < end && letters(text.charCodeAt(i))) i++;
      if (!takeWord(text.slice(from, i).toLowerCase(), out)) return false;
    } else if ((code === 0x2b || code === 0x2d) && (out.hourAt >= 0 || out.count >= 4 || out.offsetMinutes === 0)) {
      const offset = /^([+-])(\d{1,2}):?(\d{2})?$/.exec(text.slice(i).trim());
      if (!offset) return false;
      const minutes = Number(offset[2]) * 60 + Number(offset[3] ?? 0);
      if (minutes > 14 * 60) return false;
      out.offsetMinutes = code === 0x2d ? -minutes : minutes;
      i = end;
    } else if (
      code === 0x3a ||
      code === 0x2d ||
      code === 0x2e ||
      code === 0x2f ||
      code === 0x20 ||
      code === 0x2c ||
      code === 0x27 ||
      code === 0xa0 ||
      code === 0x5f
    ) {
      if (code === 0x3a && out.hourAt < 0) out.hourAt = out.count - 1;
      if (out.count === 1 && out.separator === 0 && code !== 0x20) out.separator = code;
      i++;
    } else return false;
  }
  return out.count > 0;
}

function takeWord(word: string, out: StampParts): boolean {
  if (word === "am" || word === "a") out.half = 1;
  else if (word === "pm" || word === "p") out.half = 2;
  else if (word === "z" || word === "utc" || word === "gmt") out.offsetMinutes = 0;
  else if (word === "m" && out.half > 0) return true;
  else {
    // "mar" is March before it is Tuesday.
    const month = out.monthAt < 0 ? monthOfWord(word) : 0;
    if (month === 0) return ignored.has(word);
    if (out.count === 8) return false;
    out.monthAt = out.count;
    out.values[out.count] = month;
    out.digits[out.count] = 2;
    out.count++;
  }
  return true;
}
