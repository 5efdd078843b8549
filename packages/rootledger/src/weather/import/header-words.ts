import type { Role, RoleKind } from "./header-role.js";
import { normalText } from "./normal-text.js";
import { isQuantityName, type QuantityName } from "./quantity.js";

/** Quantities that come as lowest, mean and highest. */
const families = {
  air: { low: "tMinC", mean: "tMeanC", high: "tMaxC" },
  humidity: { low: "rhMinPct", mean: "rhMeanPct", high: "rhMaxPct" },
} as const satisfies Readonly<Record<string, Readonly<Record<"low" | "mean" | "high", QuantityName>>>>;

type Concept = QuantityName | keyof typeof families | Exclude<RoleKind, "quantity">;

/**
 * Header words in English, Spanish, Portuguese, German, French and Italian, as stations and loggers write them; the first that fits wins.
 * Matched against the normal text between blanks.
 */
const rules: readonly (readonly [RegExp, Concept])[] = [
  [/ (obs|observa\w*|remarks?|comments?|bemerk\w*|notas?|notes?|anmerk\w*|weather) /, "notes"],
  [/ (flags?|qc|quality|qual|qn \d|eor|status|indicator|source|attributes) |^ (i|ind) $/, "flag"],
  [
    /^ (station\w*|estacion|stn|stations? id|site|id|wban\w*|wmo\w*|name|nombre|provinc\w*|indicativo|codigo\w*|logger|code) /,
    "station",
  ],
  [/^ lat(itud\w*)? /, "latitude"],
  [/^ (lon|long|longitud\w*) /, "longitude"],
  [/^ (alt|altitud\w*|elev\w*|stationshohe) /, "elevation"],
  [/^ (#|record|rn|rec|nr|no|index|line|row) $|^ record (no|number|num|id) /, "record"],
  [/^ (probe|sonda|sonde|sensor|sensor id|probe id) $/, "probe"],
  [/^ (depth|tiefe|profundidad\w*|profondeur|prof) ?(cm|m|mm)? $/, "depth"],
  [/^ (interval ?start|timestamp start|start time|begin) /, "interval-start"],
  [/^ (interval ?end|timestamp end|end time) /, "interval-end"],
  [
    /^ (doy|jday|jd|julian|julian day|day of year|dayofyear|yday|dia juliano|jour julien|tag des jahres) /,
    "day-of-year",
  ],
  [/^ (year|yr|ano|anno|jahr|annee|yyyy) $/, "year"],
  [/^ (month|mes|monat|mois|mese|mo) $/, "month"],
  [/^ (day|dia|tag|jour|giorno|dd) $/, "day"],
  [
    /^ (date|datum|fecha|data|dato|timestamp|time ?stamp|datetime|zeitstempel|zeitpunkt|mess ?datum|lst date|yyyymmdd|obs date|valid|unixtime|unix|epoch) /,
    "date",
  ],
  [/^ (time|zeit|uhrzeit|hora|heure|ora|hour|stunde|hhmm|utc|lst time|uhr|clock|tiempo) /, "time"],
  [
    / (batt\w*|battery|panel|ptemp|logger|coupler|end of file|signal|volt\w*|grass|gmin|surface|sur|canopy|water temp|wet ?bulb|bulbo humedo|feels|heat index|wind ?chill|sea level|sonic|deficit|smd|snow|schnee|nieve|hail|visib\w*|cloud\w*|height)/,
    "other",
  ],
  [/dew ?p|dew point|taupunkt|rocio|orvalho|rosee|rugiada| tdew | td | dpt /, "dewPointC"],
  [/vapou?r pres|dampfdruck|presion de vapor| vp | vpm /, "vapourPressureKPa"],
  [/ (soil|boden|suelo|solo|sol) ?temp| tsoil | ts | temp\w* (del |do |du )?(suelo|solo|sol) /, "soilTempC"],
  [
    / (vwc|swc|theta|soil ?moisture\w*|soil water|bodenfeuchte\w*|bodenwasser\w*|water content|humedad (del )?suelo|umidade do solo|humidite du sol|sm\d+|sm) /,
    "soilMoistureM3PerM3",
  ],
  [
    /saugspann|tensi[oö]|suction|soil tension|matric|matrix ?potential|watermark|bodenwasserspann|potencial m/,
    "soilTensionKPa",
  ],
  [/ (rh\w{0,4}|hr %|upm|hum) |humid|humed|umid|luftfeucht|rel ?feucht/, "humidity"],
  [/ (et0|eto|eto\d*|et o|etref|etp|reference et|ref et) |evapotrans/, "et0Mm"],
  [/ pan |evaporat|evaporac|evapora|verdunst|tanque| evap /, "panMm"],
  [/rain ?rate|rain int|intensit/, "other"],
  [
    /(?<! i)rain|precip|niederschl|lluvia|chuva|pluie|pioggia|(?<! )regen|^ regen| (prec|prcp|ppt|pp|rr|rsk) |^ p daily calc /,
    "rainMm",
  ],
  [/irrig|riego|bewass|beregn|rega |arrosage/, "irrigationM3"],
  [/racha|rajada|gust|boe| boen|rafale|raffica| (hg|fx|wsmax|ws max) |spitze|wind ?max/, "gustMPerS"],
  [/wind ?dir|windricht|direcc?ion|direc?ao|direction|richtung| (wd|dir|dd|wdir|wdf\d) /, "windDirectionDeg"],
  [/wind|viento|vento| vent |velmedia|vel media| (ws|u2|wdsp|awnd|fm|ff) /, "windMPerS"],
  [/net ?rad|netto|rad\w* neta| rn /, "other"],
  [/ (uv|ppfd|par|sw out|lw in|lw out) /, "other"],
  [/sunshine|insol|sonnensch|heliofan|soleil|brillo|sun dur| (sun|sol|sdk) /, "sunshineH"],
  [
    /solar|radiat|radiac|globalstr|strahlung|rayonn|radiaz|glorad|srad|radn|pyran| slr\w* | (rs|rg|ghi|sw in|g rad|swin) /,
    "solarMJPerM2",
  ],
  [/ (pres\w*|baro\w*|luftdruck|druck|cbl|qfe|patm|pm|air ?pressure) /, "pressureKPa"],
  [
    /temp|^ airt|^ t air| tair |lufttemp|^ t (daily )?(max|min|med|mean|avg)\w* | (tx|tn|tm|tg|txk|tnk|tmk|ta|t) $|^ t(max|min|med|avg|mean)|^ (max|min)t/,
    "air",
  ],
];

const high = /max|hochst|highest| high | mx | tx |txk|rhx|^ t max/;
const low = /(?<!\d )min(?!ut)|tiefst|lowest| low | mn | tn |tnk|rhn/;

/** What a column is for, by its name; "other" where the name says nothing known. */
export function roleOfHeader(text: string): Role {
  const exact = canonicalRole(text);
  if (exact !== undefined) return exact;
  const name = ` ${normalText(text)} `;
  const concept = rules.find(([pattern]) => pattern.test(name))?.[1] ?? "other";
  if (concept in families) {
    const family = families[concept as keyof typeof families];
    const quantity = high.test(name) ? family.high : low.test(name) ? family.low : family.mean;
    return { kind: "quantity", quantity, canonical: false };
  }
  if (!isQuantityName(concept)) return { kind: concept } as Role;
  // The highest or lowest dew point of an hour, the lowest pressure or wind of a day are not the figure that is kept.
  const extreme = ["dewPointC", "pressureKPa", "windMPerS", "soilMoistureM3PerM3", "soilTempC"].includes(concept);
  if (concept === "windMPerS" && high.test(name)) return { kind: "quantity", quantity: "gustMPerS", canonical: false };
  if (extreme && (high.test(name) || low.test(name))) return { kind: "other" };
  return { kind: "quantity", quantity: concept, canonical: false };
}

/** The names under which this library writes its own columns: `soilTensionKPa_30cm_2`. */
export const canonicalName: RegExp = /^([A-Za-z0-9]+?)(?:_(\d+(?:\.\d+)?)cm)?(?:_(\d+))?$/;

function canonicalRole(text: string): Role | undefined {
  const base = text.length < 60 ? canonicalName.exec(text.trim())?.[1] : undefined;
  if (base === undefined) return undefined;
  if (base === "intervalStart") return { kind: "interval-start" };
  if (base === "intervalEnd") return { kind: "interval-end" };
  return isQuantityName(base) ? { kind: "quantity", quantity: base, canonical: true } : undefined;
}
