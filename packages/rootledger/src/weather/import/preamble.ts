import { isQuantity } from "./header-role.js";
import { roleOfHeader } from "./header-words.js";
import { monthOfWord } from "./month-words.js";
import type { QuantityName } from "./quantity.js";
import { quantities } from "./quantity.js";
import type { StationSite } from "./station-report.js";
import { type Unit, unitOf } from "./unit.js";

/** What the lines above the table say. */
export interface Preamble {
  readonly site: StationSite;
  /** Month and year of a title such as "Month: August 2019"; NaN where there is none. */
  readonly month: number;
  readonly year: number;
  /** What a whole sheet holds by its title: "Tensiometros (cbar)". */
  readonly sheet: { readonly quantity: QuantityName; readonly unit: Unit | undefined } | undefined;
  /** "name: description (unit)", by name in lower case. */
  readonly legend: ReadonlyMap<string, string>;
}

/** Reads titles, station data and legends; `lines` are the rows above the names, their cells parted by blanks. */
export function readPreamble(lines: readonly string[]): Preamble {
  const texts = lines.map((line) => line.slice(0, 300).replace(/\s+/g, " ").trim());
  const whole = texts.join("\n");
  const legend = new Map<string, string>();
  for (const text of texts) {
    const entry = /^([A-Za-z_][\w ]{0,20}?) ?: ?-? ?(\S.{3,})$/.exec(text);
    if (entry) legend.set(entry[1].toLowerCase(), entry[2]);
  }
  return { site: siteOf(whole), ...monthAndYear(whole), sheet: sheetOf(texts), legend };
}

function siteOf(text: string): StationSite {
  const latitude = /\blat(?:itude?|itud)?\b[^\d\n+-]{0,12}([+-]?\d{1,2}(?:[.,]\d+)?)\s*\u00b0?\s*([NS]\b)?/i.exec(text);
  const longitude = /\blon(?:g|gitude?|gitud)?\b[^\d\n+-]{0,12}([+-]?\d{1,3}(?:[.,]\d+)?)\s*\u00b0?\s*([EWO]\b)?/i.exec(
    text,
  );
  const elevation =
    /\b(?:alt(?:itude?|itud)?|elev(?:ation|acion)?|(?:station )?height|stationshoehe)\b[^\d\n-]{0,12}(-?\d{1,4}(?:[.,]\d+)?)\s*(ft|feet)?/i.exec(
      text,
    );
  const name = /\b(?:station(?: name)?|estacion|estacao|site)\b ?[:=] ?([^\n:;]{2,60}?)(?= {2}|\n|$| \w+:)/i.exec(text);
  const degrees = (found: RegExpExecArray | null, negative: RegExp, most: number): number | undefined => {
    if (found === null) return undefined;
    const value = Number(found[1].replace(",", ".")) * (negative.test(found[2] ?? "") ? -1 : 1);
    return Math.abs(value) <= most ? value : undefined;
  };
  const latitudeDeg = degrees(latitude, /s/i, 90);
  const longitudeDeg = degrees(longitude, /[wo]/i, 180);
  const metres =
    elevation === null ? undefined : Number(elevation[1].replace(",", ".")) * (elevation[2] === undefined ? 1 : 0.3048);
  return {
    ...(name === null ? {} : { name: name[1].trim() }),
    ...(latitudeDeg === undefined ? {} : { latitudeDeg }),
    ...(longitudeDeg === undefined ? {} : { longitudeDeg }),
    ...(metres === undefined || metres > 9000 ? {} : { elevationM: metres }),
  };
}

function monthAndYear(text: string): { readonly month: number; readonly year: number } {
  for (const [, word, year] of text.matchAll(/(\p{L}{3,12})\.? (?:de |del )?((?:19|20|25)\d{2})\b/gu)) {
    const month = monthOfWord(word.toLowerCase());
    if (month > 0) return { month, year: Number(year) };
  }
  const year = /(?:^|[^\d.,/-])((?:19|20)\d{2})(?![\d.,/-]\d|\d)/.exec(text);
  return { month: Number.NaN, year: year ? Number(year[1]) : Number.NaN };
}

/** A title that names one quantity of the soil, as sheets of tensiometer readings have it. */
function sheetOf(texts: readonly string[]): Preamble["sheet"] {
  for (const text of texts) {
    const role = roleOfHeader(text);
    if (!isQuantity(role) || !quantities[role.quantity].soil) continue;
    const bracket = /[([]([^()[\]]{1,20})[)\]]/.exec(text);
    return {
      quantity: role.quantity,
      unit: bracket ? unitOf(bracket[1], quantities[role.quantity].dimension) : undefined,
    };
  }
  return undefined;
}
