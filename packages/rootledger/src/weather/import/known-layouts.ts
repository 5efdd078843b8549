import { normalText } from "./normal-text.js";

/** What the header of a well-known layout leaves unsaid. */
export interface KnownLayout {
  readonly name: string;
  readonly when: (names: ReadonlySet<string>, titles: string) => boolean;
  /** By normal name: the quantity and its unit, or "other". */
  readonly columns: Readonly<Record<string, string>>;
  /** Columns not listed are left out. */
  readonly onlyListed: boolean;
  readonly stamp?: "start" | "end";
  readonly windHeightM?: number;
  readonly flags?: "eccc";
}

const has =
  (...wanted: readonly string[]) =>
  (names: ReadonlySet<string>): boolean =>
    wanted.every((name) => names.has(name));

const soilDepths = [5, 10, 20, 50, 100];

/**
 * Layouts of public services whose columns have no units in the file. Sources: AmeriFlux, Data Variables (base, half-hourly; SI units listed there,
 * stamps as start and end); NOAA USCRN daily01 readme.txt; AEMET, explanation file of the daily export (wind in m/s by its size and the agency's usage, rain in mm);
 * INMET, header of the hourly files ("in the hour before"); Met Eireann, preamble of the daily file; Environment and Climate Change
 * Canada, glossary of daily flags. Wind at 10 m: WMO-No. 8, part I, ch. 5. Data logger tables in four header lines carry the time at the end
 * of the interval.
 */
const knownLayouts: readonly KnownLayout[] = [
  {
    name: "AmeriFlux half-hourly",
    when: has("timestamp start", "timestamp end"),
    columns: {
      "timestamp start": "interval-start",
      ta: "tMeanC C",
      rh: "rhMeanPct percent",
      ws: "windMPerS m/s",
      wd: "windDirectionDeg deg",
      pa: "pressureKPa kPa",
      p: "rainMm mm",
      "sw in": "solarMJPerM2 W/m2",
      "ts 1 1 1": "soilTempC C",
      swc: "soilMoistureM3PerM3 percent",
    },
    onlyListed: true,
  },
  {
    name: "USCRN daily01",
    when: has("lst date", "t daily max", "p daily calc"),
    columns: {
      wbanno: "station",
      "lst date": "date",
      longitude: "longitude",
      latitude: "latitude",
      "t daily max": "tMaxC C",
      "t daily min": "tMinC C",
      "t daily avg": "tMeanC C",
      "p daily calc": "rainMm mm",
      "solarad daily": "solarMJPerM2 MJ/m2",
      "rh daily max": "rhMaxPct percent",
      "rh daily min": "rhMinPct percent",
      "rh daily avg": "rhMeanPct percent",
      ...Object.fromEntries(soilDepths.map((cm) => [`soil moisture ${cm} daily`, "soilMoistureM3PerM3 fraction"])),
      ...Object.fromEntries(soilDepths.map((cm) => [`soil temp ${cm} daily`, "soilTempC C"])),
    },
    onlyListed: true,
  },
  {
    name: "AEMET daily",
    when: has("indicativo", "t max", "t min", "prec"),
    columns: {
      "t max": "tMaxC C",
      "t min": "tMinC C",
      "t med": "tMeanC C",
      racha: "gustMPerS m/s",
      "vel media": "windMPerS m/s",
      dir: "windDirectionDeg 10deg",
      prec: "rainMm mm",
      sol: "sunshineH h",
      hora: "other",
      "pres max": "other",
      "pres min": "other",
    },
    onlyListed: false,
    windHeightM: 10,
  },
  {
    name: "INMET hourly",
    when: (names) => names.has("hora utc") && [...names].some((name) => name.startsWith("precipitacao total")),
    columns: {},
    onlyListed: false,
    stamp: "end",
    windHeightM: 10,
  },
  {
    name: "Met Eireann daily",
    when: has("maxtp", "mintp", "rain"),
    columns: {
      maxtp: "tMaxC C",
      mintp: "tMinC C",
      rain: "rainMm mm",
      wdsp: "windMPerS knots",
      hg: "gustMPerS knots",
      sun: "sunshineH h",
      "g rad": "solarMJPerM2 J/cm2",
      hm: "other",
      soil: "other",
      pe: "other",
      evap: "other",
    },
    onlyListed: false,
    windHeightM: 10,
  },
  {
    name: "ECCC daily, one variable",
    when: (names) => has("year", "jday", "flags")(names) && names.size === 4,
    columns: { "max temp": "tMaxC C", "min temp": "tMinC C", "one day precipitation": "rainMm mm" },
    onlyListed: false,
    flags: "eccc",
  },
  {
    name: "logger table of four header lines",
    when: (_, titles) => /^"?toa5"?\b/i.test(titles),
    columns: {},
    onlyListed: false,
    stamp: "end",
  },
];

/** Names of the 28 fields of a USCRN daily01 file, which has no header. Source: NOAA NCEI, USCRN daily01 readme.txt. */
export const uscrnDailyNames: readonly string[] = [
  "WBANNO",
  "LST_DATE",
  "CRX_VN",
  "LONGITUDE",
  "LATITUDE",
  ...["MAX", "MIN", "MEAN", "AVG"].map((what) => `T_DAILY_${what}`),
  "P_DAILY_CALC",
  "SOLARAD_DAILY",
  "SUR_TEMP_DAILY_TYPE",
  ...["MAX", "MIN", "AVG"].map((what) => `SUR_TEMP_DAILY_${what}`),
  ...["MAX", "MIN", "AVG"].map((what) => `RH_DAILY_${what}`),
  ...soilDepths.map((cm) => `SOIL_MOISTURE_${cm}_DAILY`),
  ...soilDepths.map((cm) => `SOIL_TEMP_${cm}_DAILY`),
];

/** @example looksLikeUscrnDaily(["93243", "20200101", "2.622"]) // false */
export const looksLikeUscrnDaily = (row: readonly string[]): boolean =>
  row.length === uscrnDailyNames.length &&
  /^\d{3,5}$/.test(row[0]) &&
  /^\d{8}$/.test(row[1]) &&
  /^[CRU]$/.test(row[11]);

export function layoutOf(names: readonly string[], titles: string): KnownLayout | undefined {
  const normal = new Set(names.map(normalText));
  return knownLayouts.find((layout) => layout.when(normal, titles));
}
