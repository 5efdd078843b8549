import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { dataPath } from "../../support/demo-files.js";

const two = (value: number): string => String(value).padStart(2, "0");

const delimiters = [",", ";", "\t", "|", " "];
const lineEnds = ["\n", "\r\n", "\r"];
const headers = [
  "Rain (mm)",
  "Lluvia (l/m2)",
  "Tmax",
  "Tmin",
  "Temp, °F",
  "RH %",
  "Humedad",
  "Wind (km/h)",
  "u2",
  "Rs (W/m2)",
  "solar_mj_m2",
  "VWC_20",
  "Saugspannung 30 cm (hPa)",
  "Tension 60cm",
  "Riego (m3)",
  "ET0 mm",
  "Obs",
  "flag",
  "whatever",
  "Sol",
  "rainMm",
  "tMinC",
  "",
];
const specials = [
  "",
  "NA",
  "---",
  "T",
  "Ip",
  "Acum",
  ">80",
  "<0.1",
  "calm",
  "*****",
  "-9999",
  "99.9",
  "65535",
  "1.234,5",
  "1,234.5",
  "12.5E",
  "0,8",
  ",8",
  "1e5",
  "abc",
  "5?",
  "12 mm",
];

type DateWriter = (year: number, month: number, day: number, minute: number) => string;
const clock = (minute: number): string => `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
const dateWriters: readonly DateWriter[] = [
  (y, m, d) => `${y}-${two(m)}-${two(d)}`,
  (y, m, d) => `${two(d)}.${two(m)}.${y}`,
  (y, m, d) => `${m}/${d}/${y}`,
  (y, m, d) => `${two(d)}/${two(m)}/${two(y % 100)}`,
  (y, m, d, t) => `${y}-${two(m)}-${two(d)} ${clock(t)}`,
  (y, m, d, t) => `${y}-${two(m)}-${two(d)}T${clock(t)}:00+01:00`,
  (y, m, d, t) => `${y}-${two(m)}-${two(d)}T${clock(t)}Z`,
  (y, m, d) => `${y}${two(m)}${two(d)}`,
  (y, m, d, t) => `${y}${two(m)}${two(d)}${two(Math.floor(t / 60))}${two(t % 60)}`,
  (y, m, d) =>
    `${two(d)}-${["ene", "feb", "Mar", "abr", "may", "jun", "jul", "ago", "sep", "okt", "nov", "dic"][m - 1]}-${two(y % 100)}`,
  (y, m, d) => String(Math.round(Date.UTC(y, m - 1, d) / 86_400_000) + 25_569),
  (y, m, d, t) => String(Date.UTC(y, m - 1, d) / 1000 + t * 60),
];

interface Shape {
  readonly delimiter: string;
  readonly end: string;
  readonly comma: boolean;
  readonly write: DateWriter;
  readonly stepMinutes: number;
  readonly start: number;
  readonly columns: readonly string[];
  readonly title: string;
  readonly cells: readonly (readonly (string | number)[])[];
}

function fileText({ delimiter, end, comma, write, stepMinutes, start, columns, title, cells }: Shape): string {
  const rows = cells.map((row, i) => {
    const time = new Date(start + i * stepMinutes * 60_000);
    const date = write(
      time.getUTCFullYear(),
      time.getUTCMonth() + 1,
      time.getUTCDate(),
      time.getUTCHours() * 60 + time.getUTCMinutes(),
    );
    const values = columns.map((_, c) => row[c % row.length]);
    return [
      date,
      ...values.map((cell) =>
        typeof cell === "string" ? cell : comma ? String(cell).replace(".", ",") : String(cell),
      ),
    ].join(delimiter);
  });
  return `${title}${["Date", ...columns].join(delimiter)}${end}${rows.join(end)}${end}`;
}

const cell = fc.oneof(
  { weight: 12, arbitrary: fc.integer({ min: 0, max: 400 }).map((tenths) => tenths / 10) },
  { weight: 2, arbitrary: fc.constantFrom(...specials) },
  { weight: 1, arbitrary: fc.double({ noNaN: true, noDefaultInfinity: true }) },
);

/** Files in many of the forms that stations and loggers write, mostly readable. */
export const stationText: fc.Arbitrary<string> = fc
  .record({
    delimiter: fc.constantFrom(...delimiters),
    end: fc.constantFrom(...lineEnds),
    comma: fc.boolean(),
    write: fc.constantFrom(...dateWriters),
    stepMinutes: fc.constantFrom(1440, 1440, 60, 30, 10, 7, 10_080),
    start: fc
      .integer({ min: Date.UTC(1990, 0, 1) / 86_400_000, max: Date.UTC(2030, 0, 1) / 86_400_000 })
      .map((day) => day * 86_400_000),
    columns: fc.array(fc.constantFrom(...headers), { minLength: 1, maxLength: 5 }),
    title: fc.constantFrom("", "", "Station: Up there\n", "# Latitude: 37.5 N\r\n", "Tensiometers (cbar)\n", "sep=;\n"),
    cells: fc.array(fc.array(cell, { minLength: 1, maxLength: 5 }), { minLength: 1, maxLength: 40 }),
  })
  .map(fileText);

const small = readdirSync(dataPath("messy"))
  .filter((name) => name.startsWith("s"))
  .map((name) => readFileSync(dataPath(`messy/${name}`)).subarray(0, 3000));

/** The written files of the test set with a piece torn out or put in. */
export const damagedFile: fc.Arbitrary<Uint8Array> = fc
  .tuple(fc.constantFrom(...small), fc.nat(), fc.nat({ max: 60 }), fc.uint8Array({ maxLength: 12 }), fc.boolean())
  .map(([file, at, length, piece, twice]) => {
    const from = at % file.length;
    const torn = [file.subarray(0, from), Buffer.from(piece), file.subarray(from + length)];
    return new Uint8Array(Buffer.concat(twice ? [...torn, file.subarray(from)] : torn));
  });

const pieces = fc.oneof(
  fc.constantFrom(
    ...delimiters,
    ...lineEnds,
    '"',
    "date",
    "time",
    "rain",
    "2024-02-29",
    "29.02.2023",
    "45292",
    "NaN",
    "{",
    "}",
    "[",
    "]",
    ":",
    "#",
    "\uFEFF",
    "\u0000",
    "24:00",
    "12:00 AM",
    "+01:00",
  ),
  fc.constantFrom(...headers),
  fc.constantFrom(...specials),
  fc.string({ unit: "binary", maxLength: 6 }),
  fc.double().map(String),
);

/** Any bytes at all: pieces of files in any order, or noise. */
export const soup: fc.Arbitrary<Uint8Array> = fc.oneof(
  fc.array(pieces, { maxLength: 80 }).map((parts) => new Uint8Array(Buffer.from(parts.join("")))),
  fc.array(pieces, { maxLength: 40 }).map((parts) => new Uint8Array(Buffer.from(parts.join(""), "utf16le"))),
  fc.uint8Array({ maxLength: 300 }),
  fc.json({ maxDepth: 4 }).map((text) => new Uint8Array(Buffer.from(text))),
);
