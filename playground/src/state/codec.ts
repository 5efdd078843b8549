/** How one value is written into a link and read back. `read` answers undefined for anything it does not accept. */
export interface Codec<T> {
  readonly rule: string;
  readonly read: (text: string) => T | undefined;
  readonly write: (value: T) => string;
}

export function numberBetween(minimum: number, maximum: number, decimals = 2): Codec<number> {
  return {
    rule: `a number from ${minimum} to ${maximum}`,
    read: (text) => {
      const value = text.trim() === "" ? Number.NaN : Number(text);
      return value >= minimum && value <= maximum ? value : undefined;
    },
    write: (value) => String(Number(value.toFixed(decimals))),
  };
}

export function wholeBetween(minimum: number, maximum: number): Codec<number> {
  return {
    rule: `a whole number from ${minimum} to ${maximum}`,
    read: (text) => {
      const value = /^\d{1,6}$/.test(text) ? Number(text) : Number.NaN;
      return value >= minimum && value <= maximum ? value : undefined;
    },
    write: String,
  };
}

export function oneOf<T extends string>(options: readonly T[]): Codec<T> {
  return {
    rule: `one of ${options.join(", ")}`,
    read: (text) => options.find((option) => option === text),
    write: (value) => value,
  };
}

export const yesOrNo: Codec<boolean> = {
  rule: "1 or 0",
  read: (text) => (text === "1" ? true : text === "0" ? false : undefined),
  write: (value) => (value ? "1" : "0"),
};

/** A name as lessons carry it. */
export const shortName: Codec<string> = {
  rule: "small letters, digits and hyphens, up to 40",
  read: (text) => (/^[a-z0-9-]{1,40}$/.test(text) ? text : undefined),
  write: (value) => value,
};

export const clockTime: Codec<string> = {
  rule: "a time of day from 00:00 to 23:59",
  read: (text) => (/^([01]\d|2[0-3]):[0-5]\d$/.test(text) ? text : undefined),
  write: (value) => value,
};

/** A time of day, or nothing. */
export const clockOrNone: Codec<string> = {
  rule: `${clockTime.rule}, or nothing`,
  read: (text) => (text === "" ? "" : clockTime.read(text)),
  write: (value) => value,
};

/** Whole numbers from 0 up to below `limit`, rising, written with dots; empty for none. */
export function placesBelow(limit: number): Codec<readonly number[]> {
  return {
    rule: `whole numbers from 0 to ${limit - 1}, rising, with dots between them`,
    read: (text) => {
      if (text === "") return [];
      const places = text.split(".").map((part) => (/^\d{1,4}$/.test(part) ? Number(part) : Number.NaN));
      return places.every((place, i) => place < limit && (i === 0 || place > places[i - 1]!)) ? places : undefined;
    },
    write: (places) => places.join("."),
  };
}
