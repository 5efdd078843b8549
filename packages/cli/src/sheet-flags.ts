import type { SheetFormat } from "rootledger/words";

/** Options of `sheet`. */
export const sheetFlags = ["day", "language", "units", "as", "members", "seed"] as const;

export interface SheetAsked {
  readonly day: number;
  readonly members: number;
  readonly seed: string;
  readonly html: boolean;
  readonly format: SheetFormat;
}

/** Draws behind the bands where none are asked for; our choice: a band end then rests on two draws. */
const usualMembers = 40;

const places = { en: "en-GB", es: "es-ES" } as const;
const metric: SheetFormat["units"] = { water: "L", depth: "mm", tension: "kPa", area: "ha", length: "cm" };
const us: SheetFormat["units"] = { water: "gal", depth: "in", tension: "cbar", area: "ac", length: "in" };

/** The options as values, or what is wrong with one of them. */
export function sheetAsked(flags: Readonly<Record<string, string>>): SheetAsked | string {
  const { language = "en", units = "metric", as = "text", seed = "1" } = flags;
  const day = whole(flags.day ?? "0");
  const members = whole(flags.members ?? String(usualMembers));
  if (day === undefined) return `--day must be a whole number from 0: got ${flags.day}`;
  if (members === undefined || members === 0) return `--members must be a whole number above 0: got ${flags.members}`;
  if (language !== "en" && language !== "es") return `--language must be en or es: got ${language}`;
  if (units !== "metric" && units !== "us") return `--units must be metric or us: got ${units}`;
  if (as !== "text" && as !== "html") return `--as must be text or html: got ${as}`;
  return { day, members, seed, html: as === "html", format: formatOf(language, units) };
}

function formatOf(language: "en" | "es", units: "metric" | "us"): SheetFormat {
  const place = places[language];
  const days = new Intl.DateTimeFormat(place, { day: "numeric", month: "long", timeZone: "UTC" });
  return {
    language,
    units: units === "metric" ? metric : us,
    number: (value, digits) => new Intl.NumberFormat(place, { maximumSignificantDigits: digits }).format(value),
    date: (isoDate) => days.format(Date.parse(`${isoDate}T00:00:00Z`)),
  };
}

function whole(text: string): number | undefined {
  return /^\d{1,6}$/.test(text) ? Number(text) : undefined;
}
