import { canonicalName } from "./header-words.js";
import { type Dimension, isQuantityName } from "./quantity.js";
import { type Unit, unitOf } from "./unit.js";

/** Endings of header names that name a unit, such as `_pct` or `_ms`; "in" and "c" only where the quantity fits. */
const endings: ReadonlySet<string> = new Set(
  "% c degc f degf k mm cm in inch inches pct percent ms mph kmh kph kn kt knots kpa hpa mbar mb cbar cb wm2 mjm2 kjm2 m3m3 h hours deg m3 l liters litres".split(
    " ",
  ),
);

/**
 * The unit inside a header: in brackets, after a comma or as the last part of the name: "Temp (F)", "RH, %", "soil_temp_c",
 * "Rain_mm_Tot", "rs_mj_m2". Undefined where there is none that fits the quantity.
 */
export function unitInHeader(header: string, dimension: Dimension): Unit | undefined {
  // The centimetres of a depth are no unit of the tension that was measured there.
  const text =
    dimension === "pressure" ? header.slice(0, 200).replace(/\d\s*(cm|m|in)\b/gi, " ") : header.slice(0, 200);
  for (const part of [...bracketed(text), ...afterCommas(text)]) {
    const found = unitOf(part, dimension);
    if (found !== undefined) return found;
  }
  const tokens = text
    .toLowerCase()
    .split(/[\s_.,;()[\]]+/)
    .filter((token) => token !== "" && !/^(avg|tot|max|min|smp|mean|sum|daily|day|\d+)$/.test(token));
  for (const length of [3, 2, 1]) {
    if (tokens.length <= length) continue;
    const last = tokens.slice(-length);
    if (length === 1 && !endings.has(last[0]) && !last[0].includes("/")) continue;
    const found = unitOf(length === 1 ? last[0] : written(last), dimension);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** "mj", "m2" is MJ/m2; "m", "s" is m/s. */
const written = (tokens: readonly string[]): string => tokens.join("/");

function bracketed(text: string): string[] {
  const parts: string[] = [];
  for (const [, inside] of text.matchAll(/[([]([^()[\]]{0,40})[)\]]/g)) parts.push(inside);
  return parts.reverse();
}

const afterCommas = (text: string): string[] =>
  text
    .split(",")
    .slice(1)
    .map((part) => part.replace(/\(.*$/, "").trim())
    .filter((part) => part !== "");

/** Depth in cm inside the header of a soil column: "30 cm", "VWC_20_Avg", "SM5", "12in"; a bare number below 5 counts sensors. */
export function depthInHeader(header: string): number | undefined {
  const text = header.slice(0, 200);
  const own = canonicalName.exec(text);
  if (own !== null && isQuantityName(own[1])) return own[2] === undefined ? undefined : Number(own[2]);
  const cm = /(\d{1,4}(?:[.,]\d+)?)\s*cm(?![a-z0-9])/i.exec(text);
  if (cm) return Number(cm[1].replace(",", "."));
  const inches = /(\d{1,2}(?:\.\d+)?)\s*(?:in|inch|inches|")(?![a-z0-9])/i.exec(text);
  if (inches) return Number(inches[1]) * 2.54;
  const metres = /(\d\.\d{1,2})\s*m(?![a-z0-9])/i.exec(text);
  if (metres) return Math.round(Number(metres[1]) * 1000) / 10;
  const bare = /(?:^|[a-z_ ])(\d{1,3})(?:_|$|\s)/i.exec(text.replace(/c?m[23](?:\W*c?m[-23]*)?/gi, ""));
  return bare && Number(bare[1]) >= 5 ? Number(bare[1]) : undefined;
}
