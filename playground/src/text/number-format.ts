import { locale } from "./locale.js";

/** Undoes what was made for another language. */
const forgets = new Set<() => void>();
const significant = new Map<number, Intl.NumberFormat>();

/** A number with at most this many significant digits, grouped. @example amount(3121.4) // "3,120" */
export function amount(value: number, digits = 3): string {
  let format = significant.get(digits);
  if (!format) {
    format = new Intl.NumberFormat(locale, { maximumSignificantDigits: digits });
    significant.set(digits, format);
  }
  const rounded = Math.abs(value) < 0.005 ? 0 : value;
  return format.format(rounded).replace("-", "\u2212");
}

/** With its sign, and none at zero. @example signedAmount(-31.2, 2) // "−31" */
export const signedAmount = (value: number, digits = 3): string => {
  const text = amount(value, digits);
  return value > 0 && text !== amount(0) ? `+${text}` : text;
};

/** A count or a quantity whose decimals do not matter. @example whole(3120.6) // "3,121" */
export const whole = (value: number): string => (Math.abs(value) < 0.5 ? "0" : amount(Math.round(value), 4));

/** Formats are made anew, for the language that holds now. */
export function forgetFormats(): void {
  significant.clear();
  for (const forget of forgets) forget();
}

const percentFormat = once(() => new Intl.NumberFormat(locale, { style: "percent", maximumFractionDigits: 0 }));
const smallPercentFormat = once(() => new Intl.NumberFormat(locale, { style: "percent", maximumFractionDigits: 1 }));

/** @example percent(0.124) // "12%" */
export const percent = (fraction: number): string =>
  (fraction > 0 && fraction < 0.0995 ? smallPercentFormat() : percentFormat()).format(fraction);

const dayFormat = once(() => new Intl.DateTimeFormat(locale, { day: "numeric", month: "short", timeZone: "UTC" }));
const longDayFormat = once(
  () => new Intl.DateTimeFormat(locale, { weekday: "short", day: "numeric", month: "short", timeZone: "UTC" }),
);

const dateOf = (startDate: string, day: number): Date =>
  new Date(Date.parse(`${startDate}T00:00:00Z`) + day * 86_400_000);

/** @example dayLabel("2023-11-01", 3) // "Nov 4" */
export const dayLabel = (startDate: string, day: number): string => dayFormat().format(dateOf(startDate, day));

/** @example longDayLabel("2023-11-01", 3) // "Sat, Nov 4" */
export const longDayLabel = (startDate: string, day: number): string => longDayFormat().format(dateOf(startDate, day));

/** Clock time of an hour since midnight. @example clock(30.5) // "06:30" */
export function clock(hour: number): string {
  const minutes = Math.round((((hour % 24) + 24) % 24) * 60);
  return `${String(Math.floor(minutes / 60) % 24).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}

/** Items joined as one says them. @example listed(["a", "b", "c"]) // "a, b and c" */
export const listed = (items: readonly string[]): string => listFormat().format(items);

const listFormat = once(() => new Intl.ListFormat(locale, { style: "long", type: "conjunction" }));

/** Formats cost milliseconds to make; each is made when it is first needed. */
function once<T>(make: () => T): () => T {
  let format: T | undefined;
  forgets.add(() => {
    format = undefined;
  });
  return () => {
    format ??= make();
    return format;
  };
}
