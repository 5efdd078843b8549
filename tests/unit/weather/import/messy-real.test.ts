import { readFileSync } from "node:fs";
import { joinDailyWeather, parseDailyWeather } from "rootledger/weather";
import { describe, expect, test } from "vitest";
import { dataText } from "../../../support/demo-files.js";
import aemet from "./expected/real_aemet_malaga_2009_2012.json";
import ameriflux from "./expected/real_ameriflux_us_crt_halfhourly_2011-01.json";
import inmet from "./expected/real_inmet_a701_sao_paulo_2023_hourly.json";
import uscrn from "./expected/real_uscrn_fixedwidth_ca_merced_2020.json";
import { bytesOf, reported, series, total, understood } from "./station-files.js";

// Real files of public services; owners and licences in data/messy/PROVENANCE.md. What they must give was worked out from
// the files by others, without this library.

const expectedOf = (name: string) =>
  JSON.parse(readFileSync(new URL(`expected/${name}.json`, import.meta.url), "utf8"));

describe("AEMET, Malaga airport 2009-2012", () => {
  const read = understood(bytesOf(aemet.file));

  test("encoding, delimiter, decimal sign, rows and columns", () => {
    expect(read.report).toMatchObject({
      encoding: "latin-1",
      delimiter: "semicolon",
      decimal: aemet.decimal === "," ? "comma" : "",
    });
    expect(read.report.records).toBe(aemet.records);
    expect(read.report.columns).toHaveLength(aemet.columns);
    expect(read.report.columns.filter(({ header }) => header.startsWith("Hora("))).toHaveLength(5);
    expect(read.report.dates).toBe("year, month and day");
  });

  test("Ip is a trace, Varias a word in columns that are not kept, nothing is missing", () => {
    expect(reported(read, "Prec.")).toMatchObject({ trace: aemet.trace_cells, missing: 0, values: aemet.records });
    const varias = read.report.columns.map(({ words }) => words.Varias ?? 0);
    expect(total(varias)).toBe(aemet.text_in_time_cells.Varias);
  });

  test.each(Object.entries(aemet.rain_by_year_mm))("rain of %s", (year, mm) => {
    const weather = read.daily?.weather;
    const rain = Array.from(weather?.rainMm ?? []).filter((_, d) =>
      dateAt(weather?.startDate ?? "", d).startsWith(year),
    );
    expect(total(rain)).toBeCloseTo(mm, 6);
  });

  test("wind in m/s at 10 m, elevation from its column, no latitude in the file", () => {
    expect(reported(read, "Vel.media")).toMatchObject({ keptAs: "windMPerS", unit: "m/s", unitFrom: "layout" });
    expect(read.report.site).toEqual({ elevationM: 5, windHeightM: 10 });
  });
});

describe("AmeriFlux US-CRT, two days of half hours", () => {
  const read = understood(bytesOf(ameriflux.file));

  test("comment lines, stamps run together, missing codes in all columns", () => {
    expect(read.report.headerLines).toBe(ameriflux.comment_lines + 1);
    expect(read.report.records).toBe(ameriflux.records);
    expect([read.report.first, read.report.last]).toEqual(["2011-01-01T00:00", "2011-01-02T23:30"]);
    expect(total(read.report.columns.map(({ missing }) => missing))).toBe(ameriflux.missing_cells);
    expect(read.report.stamp).toBe("start");
  });

  test("rain, and soil moisture from percent to a fraction", () => {
    expect(total(series(read, "rainMm").values)).toBeCloseTo(ameriflux.rain_mm, 9);
    // 45.13234 % in the first record.
    expect(series(read, "soilMoistureM3PerM3").values[0]).toBeCloseTo(0.4513234, 12);
    // The latent heat flux is no measured water depth and is not kept as one.
    expect(reported(read, "LE").keptAs).toBe("");
  });
});

describe("ECCC William Head 1987-1992, one variable a file", () => {
  const names = ["max_temp", "min_temp", "one_day_precipitation"].map(
    (what) => `real_eccc_william_head_${what}_1987_1992`,
  );
  const reads = names.map((name) => understood(bytesOf(`${name}.csv`)));

  test.each(names.map((name, k) => [name, k] as const))("%s: records and values", (name, k) => {
    const { records, values, days_absent } = expectedOf(name);
    const column = reads[k].report.columns[2];
    expect(reads[k].report.records).toBe(records);
    // A day flagged C has a 0 in its cell and its rain inside a later reading (flag A): such cells are no values for us.
    expect(column.values + column.accumulating).toBe(values);
    // Days absent are counted there from 1 January 1987, by us from the first record, 1 March (59 days later).
    expect(reads[k].report.first).toBe("1987-03-01T00:00");
    expect(reads[k].report.absentStamps + 59).toBe(days_absent);
  });

  test("sixteen days of rain are inside a later reading, 53 are traces", () => {
    expect(reads[2].report.columns[2]).toMatchObject({ accumulating: 16, trace: 53 });
    expect(reads[2].daily?.notes.join()).toMatch(/rainMm: 16 days were read later/);
  });

  test("joined by their dates, with day 366 in 1988 and 1992 and gaps that are no zeros", () => {
    const joined = joinDailyWeather(reads.flatMap(({ daily }) => (daily ? [daily.weather] : [])));
    if (!joined.ok) throw new Error(joined.conflicts.join());
    const { weather } = joined;
    expect([weather.startDate, weather.days]).toEqual(["1987-03-01", 2133]);
    for (const year of [1988, 1992]) {
      const d = dayBetween(weather.startDate, `${year}-12-31`);
      expect([weather.tMaxC[d], weather.tMinC[d], weather.rainMm[d]].every((value) => !Number.isNaN(value))).toBe(true);
    }
    // The last line of each 1992 file: day 366.
    expect([weather.tMaxC[2132], weather.tMinC[2132], weather.rainMm[2132]]).toEqual([0.5, -3, 0]);
    expect(weather.tMaxC.filter(Number.isNaN)).toHaveLength(208);
    expect(weather.rainMm.filter(Number.isNaN)).toHaveLength(339);
  });
});

describe("INMET A701 Sao Paulo 2023, hours in UTC", () => {
  const read = understood(bytesOf(inmet.file));

  test("preamble, trailing empty column, decimal comma with nothing before it", () => {
    expect(read.report).toMatchObject({
      encoding: inmet.encoding,
      delimiter: "semicolon",
      decimal: "comma",
      records: inmet.records,
    });
    expect(read.report.headerLines).toBe(inmet.header_preamble_lines + 1);
    expect(read.report.site.latitudeDeg).toBeCloseTo(-23.49638888, 8);
    expect(read.report.columns.at(-1)).toMatchObject({ header: "", keptAs: "" });
    // The first record has wind ",8".
    expect(series(read, "windMPerS").values[0]).toBe(0.8);
  });

  test.each([
    ["rainMm", inmet.missing.rain],
    ["solarMJPerM2", inmet.missing.radiation],
    ["tMeanC", inmet.missing.air_temp],
    ["dewPointC", inmet.missing.dew_point],
    ["rhMeanPct", inmet.missing.rh],
    ["windMPerS", inmet.missing.wind],
  ])("missing cells of %s: %i", (name, missing) => {
    expect(series(read, name).values.filter(Number.isNaN)).toHaveLength(missing);
  });

  test("totals of rain and radiation", () => {
    expect(total(series(read, "rainMm").values)).toBeCloseTo(inmet.rain_total_mm, 6);
    expect(total(series(read, "solarMJPerM2").values)).toBeCloseTo(inmet.radiation_sum_mj_m2, 1);
    expect(read.report.repairs.some(({ code }) => code === "night-radiation")).toBe(false);
  });

  test("the local day is that of UTC-3: rain at 01:00 UTC belongs to the day before", () => {
    expect(read.report.utcOffsetH).toBe(-3);
    expect(read.report.first).toBe("2022-12-31T21:00");
    // Days made from the same hours by others, in data/weather/sao-paulo-2023.csv. A day with an hour of rain missing is empty for us.
    const parsed = parseDailyWeather(dataText("weather/sao-paulo-2023.csv"), {
      rain: "dry",
      temperature: { kind: "interpolate", longestDays: 9 },
    });
    if (!parsed.ok || read.daily === undefined) throw new Error("must parse");
    const { weather } = read.daily;
    const shift = dayBetween(weather.startDate, parsed.weather.startDate);
    let compared = 0;
    for (let d = 0; d < parsed.weather.days; d++) {
      const ours = weather.rainMm[d + shift];
      if (Number.isNaN(ours)) continue;
      compared++;
      expect(ours, `rain of day ${d}`).toBeCloseTo(parsed.weather.rainMm[d], 1);
    }
    // Days with all 24 hours of rain among the 365, counted in the hours by others.
    expect(compared).toBe(296);
    expect(read.daily.notes.join("\n")).toMatch(/solarMJPerM2: \d+ blank records at times of day without sun count 0/);
  });
});

describe("USCRN Merced 2020, no header, 28 fields", () => {
  const read = understood(bytesOf(uscrn.file));

  test("two missing codes in one row, both recognised", () => {
    expect(read.report).toMatchObject({ layout: "USCRN daily01", records: uscrn.records });
    expect(reported(read, "P_DAILY_CALC").missing).toBe(uscrn.missing.P);
    expect(reported(read, "SOLARAD_DAILY").missing).toBe(uscrn.missing.SOLARAD);
    expect(reported(read, "SOIL_MOISTURE_5_DAILY").missing).toBe(uscrn.missing.SM5);
    expect(reported(read, "SOIL_MOISTURE_100_DAILY").missing).toBe(uscrn.missing.SM100);
    expect(total(series(read, "rainMm").values)).toBeCloseTo(uscrn.rain_total_mm, 6);
  });

  test("longitude comes before latitude, a humidity of 99.9 is no code", () => {
    expect(read.report.site).toMatchObject({ latitudeDeg: 37.24, longitudeDeg: -120.88 });
    expect(series(read, "rhMaxPct").values).toContain(99.9);
  });
});

const dayMs = 86_400_000;
const dateAt = (start: string, d: number): string => new Date(Date.parse(start) + d * dayMs).toISOString().slice(0, 10);
const dayBetween = (from: string, to: string): number => Math.round((Date.parse(to) - Date.parse(from)) / dayMs);
