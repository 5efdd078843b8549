import { mark } from "rootledger/weather";
import { describe, expect, test } from "vitest";
import s01 from "./expected/s01_eu_logger_bom_semicolon_dst_autumn.json";
import s02 from "./expected/s02_logger_four_header_lines_nan_midnight.json";
import s03 from "./expected/s03_us_12h_fahrenheit_degree_sign_cp1252.json";
import s05 from "./expected/s05_excel_serial_1900_decimal_comma.json";
import s07 from "./expected/s07_tensiometer_sheet_totals_row_duplicate_headers.json";
import s08 from "./expected/s08_iso_offsets_dst_spring.json";
import s10 from "./expected/s10_spanish_months_thousands_tab_latin1.json";
import s11 from "./expected/s11_ghcn_daily_fixed_width.json";
import s13 from "./expected/s13_vwc_fraction_then_percent_sensor_swap.json";
import s14 from "./expected/s14_ambiguous_day_month_two_digit_year.json";
import s16 from "./expected/s16_year_doy_leap.json";
import s19 from "./expected/s19_ten_minute_radiation_w_m2_knots.json";
import s21 from "./expected/s21_json_decimal_comma_strings_trace_accumulated.json";
import s22 from "./expected/s22_month_table_overflow_stuck_sensor.json";
import { asked, bytesOf, repaired, reported, series, total, understood } from "./station-files.js";

// Files with invented numbers in the forms of real loggers and sheets; what they must give was worked out without this library.

test("s01: byte order mark, unit row, clock put back, suction in hPa", () => {
  const read = understood(bytesOf(s01.file));
  expect(read.report).toMatchObject({
    encoding: "utf-8 with byte order mark",
    delimiter: "semicolon",
    decimal: "comma",
    headerLines: s01.header_rows,
    dates: s01.date_order,
    records: s01.records,
  });
  expect(new Set(read.table.minutes).size).toBe(s01.unique_instants);
  expect(read.report.clockChanges).toEqual([{ date: "2024-10-27", kind: "back", recordsByTheClock: 25 }]);
  expect(repaired(read, "duplicate-row")).toBe(0);
  expect(total(series(read, "rainMm").values)).toBeCloseTo(s01.rain_total_mm, 9);
  expect(total(read.daily?.weather.rainMm ?? [])).toBeLessThanOrEqual(s01.rain_total_mm + 1e-9);
  expect(reported(read, "Saugspannung 30 cm").missing).toBe(s01.missing["Saugspannung 30 cm"]);
  // -180 hPa is a tension of 18 kPa.
  expect(series(read, "soilTensionKPa_30cm").values[0]).toBe(18);
});

test("s02: four header lines, NAN, a duplicate, a lost clock, midnight belongs to the day before", () => {
  const read = understood(bytesOf(s02.file));
  expect(read.report).toMatchObject({ headerLines: s02.header_rows, records: s02.records_valid, stamp: "end" });
  expect(repaired(read, "duplicate-row")).toBe(s02.duplicates_to_drop);
  expect(read.report.rejectedRows.map(({ line }) => line)).toEqual([55]);
  expect(read.report.rejectedRows[0].reason).toMatch(/1990/);
  expect(read.report.records + s02.duplicates_to_drop + read.report.rejectedCount).toBe(s02.records_in_file);
  expect(reported(read, "AirTC_Avg").missing).toBe(s02.missing.AirTC_Avg);
  expect(total(series(read, "rainMm").values)).toBeCloseTo(s02.rain_total_mm, 9);
  expect(read.daily?.weather.startDate).toBe("2023-07-01");
  expect(read.daily?.weather.rainMm[0]).toBeCloseTo(s02.rain_2023_07_01_mm, 9);
  expect(repaired(read, "humidity-above-100")).toBeGreaterThan(0);
  expect(Math.max(...series(read, "rhMeanPct").values)).toBe(100);
  expect(repaired(read, "night-radiation")).toBeGreaterThan(0);
});

test("s03: 12-hour clock, Fahrenheit, zone in the header, events that are no zeros", () => {
  const read = understood(bytesOf(s03.file));
  // The degree sign, 0xB0, is the only byte beyond ASCII; Windows-1252 and Latin-1 have it alike, so either name is right.
  expect(["latin-1", "windows-1252"]).toContain(read.report.encoding);
  expect(read.report).toMatchObject({
    headerLines: s03.header_rows,
    records: s03.records_valid,
    dates: "M/D/Y",
    utcOffsetH: -7,
  });
  expect(repaired(read, "event-row")).toBe(s03.event_rows);
  // 12:00 at UTC-7 is 19:00 UTC.
  expect(s03.first_utc).toBe("2022-09-04T19:00:00Z");
  expect(read.report.first).toBe("2022-09-04T12:00");
  const { values } = series(read, "tMeanC");
  expect(Math.max(...values)).toBeCloseTo(s03.tmax_c, 2);
  expect(Math.min(...values)).toBeCloseTo(s03.tmin_c, 2);
  // Record 25, "09/05/22 12:00:00 AM", is midnight.
  expect(read.report.rejectedCount).toBe(0);
  expect(read.table.minutes[24] % 1440).toBe(0);
});

test("s05: day counts of a spreadsheet", () => {
  const read = understood(bytesOf(s05.file));
  expect(read.report).toMatchObject({ delimiter: "semicolon", decimal: "comma", records: s05.records });
  expect([read.report.first.slice(0, 10), read.report.last.slice(0, 10)]).toEqual([s05.first, s05.last]);
  expect(total(series(read, "rainMm").values)).toBeCloseTo(s05.rain_total_mm, 9);
  expect(total(series(read, "et0Mm").values)).toBeCloseTo(s05.et0_total_mm, 9);
  // The other system is named, and can be asked for.
  expect(read.report.assumptions.find(({ key }) => key === "serial-dates")?.because).toMatch(
    /1904 system it is 2028-01-02/,
  );
  expect(understood(bytesOf(s05.file), { "serial-dates": "1904" }).report.first).toBe("2028-01-02T00:00");
});

test("s07: tensiometer sheet with titles, twin columns, a row of means and odd readings", () => {
  const read = understood(bytesOf(s07.file));
  expect(read.report).toMatchObject({
    delimiter: "comma",
    headerLines: s07.header_rows,
    dates: s07.date_order,
    records: s07.records,
  });
  expect(repaired(read, "totals-row")).toBe(s07.footer_rows);
  expect(read.table.columns.map(({ header }) => header)).toEqual(["30cm(1)", "30cm(2)", "60cm(1)", "60cm(2)"]);
  expect(reported(read, "30cm(1)")).toMatchObject({ missing: s07.missing["30cm(1)"], unit: "cbar", unitFrom: "title" });
  expect(reported(read, "30cm(2)").censored).toBe(s07.censored["30cm(2)"]);
  const at = (date: string): number => Array.from({ length: 45 }, (_, d) => d).find((d) => dateOfDay(d) === date) ?? -1;
  const first = series(read, "soilTensionKPa_30cm");
  const censored = series(read, "soilTensionKPa_30cm_2");
  expect([censored.values[at("2023-05-13")], censored.marks[at("2023-05-13")]]).toEqual([80, mark.above]);
  // 14 May: 0 cbar, "sin agua, recargado". The note holds the comma that parts the cells, so its row has one cell too many.
  expect([first.values[at("2023-05-14")], first.marks[at("2023-05-14")]]).toEqual([0, mark.suspect]);
  // 21 May: -22 among positive values.
  const deep = series(read, "soilTensionKPa_60cm");
  expect([deep.values[at("2023-05-21")], deep.marks[at("2023-05-21")]]).toEqual([22, mark.suspect]);
  // 1 June: "12,5" in a file of decimal points.
  expect([first.values[at("2023-06-01")], first.marks[at("2023-06-01")]]).toEqual([12.5, mark.suspect]);
  expect(repaired(read, "other-decimal-sign")).toBe(1);
});

test("s08: offsets of both sides of the spring change leave no gap; 22.5 is percent", () => {
  const read = understood(bytesOf(s08.file));
  expect(read.report).toMatchObject({
    records: s08.records,
    stepMinutes: s08.step_minutes,
    absentStamps: s08.gaps,
    utcOffsetH: 1,
  });
  expect(total(series(read, "rainMm").values)).toBeCloseTo(s08.rain_total_mm, 9);
  expect(series(read, "soilMoistureM3PerM3").values[0]).toBe(0.225);
});

test("s10: month names, thousands points, cubic metres that need an area", () => {
  const read = understood(bytesOf(s10.file));
  expect(read.report).toMatchObject({
    encoding: s10.encoding,
    delimiter: s10.delimiter,
    decimal: "comma",
    thousands: s10.thousands,
    records: s10.records,
  });
  expect([read.report.first.slice(0, 10), read.report.last.slice(0, 10)]).toEqual([s10.first, s10.last]);
  expect(total(series(read, "irrigationM3").values)).toBeCloseTo(s10.irrigation_total_m3, 6);
  expect(series(read, "irrigationM3").values[0]).toBe(1234.5);
  expect(reported(read, "LLUVIA (l/m2)")).toMatchObject({
    missing: s10.missing.LLUVIA,
    trace: s10.trace.LLUVIA,
    unit: "mm",
  });
  expect(read.report.cautions.map(({ what }) => what).join()).toMatch(/not turned into mm without the area/);
  expect(repaired(read, "gap-filled")).toBe(18);
  // 1234.5 m3 on 10 000 m2 are 123.45 mm.
  expect(series(understood(bytesOf(s10.file), { "block-area-m2": "10000" }), "irrigationMm").values[0]).toBeCloseTo(
    123.45,
    9,
  );
});

test("s11: fixed width in tenths, quality flags, days that do not exist", () => {
  const read = understood(bytesOf(s11.file));
  expect(read.report).toMatchObject({ layout: "GHCN daily", records: s11.records_days });
  expect(total(series(read, "rainMm").values)).toBeCloseTo(s11.rain_total_mm, 6);
  expect(Math.max(...series(read, "rainMm").values.filter((mm) => !Number.isNaN(mm)))).toBeLessThan(254);
  // First day: 25, 232 and 76 tenths.
  expect([series(read, "rainMm").values[0], series(read, "tMaxC").values[0], series(read, "tMinC").values[0]]).toEqual([
    2.5, 23.2, 7.6,
  ]);
});

describe("s13: a probe that reports percent takes over from one that reports fractions", () => {
  test("is asked about, with the line of the change", () => {
    const question = asked(bytesOf(s13.file));
    expect(question.key).toBe("moisture-unit");
    expect(question.evidence).toEqual(["line 102: 20"]);
    expect(s13.switch).toMatch(/2024-06-07 12:00/);
  });

  test("once confirmed, codes and zeros are rejected and the swap is no wetting", () => {
    const read = understood(bytesOf(s13.file), { "moisture-unit": "percent-above-1" });
    expect(read.report.records).toBe(s13.records);
    expect(repaired(read, "missing-code") + repaired(read, "out-of-range")).toBe(s13.rejects);
    expect(repaired(read, "missing-code")).toBe(4);
    for (const depth of ["15cm", "45cm"]) {
      const { values, sensorChanges } = series(read, `soilMoistureM3PerM3_${depth}`);
      expect(Math.max(...values.filter((one) => !Number.isNaN(one)))).toBeLessThan(0.3);
      expect(sensorChanges).toMatchObject([{ from: "P1", to: "P1B" }]);
    }
    expect(read.report.cautions.filter(({ code }) => code === "sensor-change").map(({ what }) => what)).toEqual(
      Array(2).fill("P1B takes the place of P1 from 2024-06-07T12:00: a step there is no event"),
    );
  });
});

describe("s14: day and month fit both ways in every row", () => {
  test("both readings are shown and asked about", () => {
    const question = asked(bytesOf(s14.file));
    expect(question.key).toBe("date-order");
    expect(question.text).toContain(`${s14.ambiguous_rows} of ${s14.records} rows`);
    expect(question.choices.map(({ meaning }) => meaning)).toEqual([
      "day first: 02/06/24 is 2024-06-02",
      "month first: 02/06/24 is 2024-02-06",
    ]);
  });

  test.each(["dmy", "mdy"])("answered %s, all rows are read in that order", (order) => {
    const read = understood(bytesOf(s14.file), { "date-order": order });
    expect(read.report.records).toBe(s14.records);
    const at = order === "dmy" ? "2024-12-08" : "2024-08-12";
    const days = read.daily?.weather;
    expect(days?.rainMm[dayBetween(days.startDate, at)]).toBe(3.5);
  });
});

test("s16: day 366 of a common year is rejected and never the first of January", () => {
  const read = understood(bytesOf(s16.file));
  expect(read.report.records).toBe(s16.valid);
  expect(read.report.rejectedRows.map(({ text }) => text.split(" ").slice(0, 2).join(" "))).toEqual(s16.invalid);
  const dates = Array.from(read.table.minutes, (time) => dateFrom(read, time));
  for (const date of Object.values(s16.map)) expect(dates).toContain(date);
});

test("s19: ten minutes of W/m2 to MJ/m2, night offsets as 0, knots", () => {
  const read = understood(bytesOf(s19.file));
  expect(read.report.records).toBe(s19.records);
  expect(read.daily?.weather.solarMJPerM2[0]).toBeCloseTo(s19.rs_mj_m2, 3);
  expect(s19.rs_mj_m2).toBeGreaterThan(s19.rs_mj_m2_if_negatives_kept);
  // 5 knots.
  expect(series(read, "windMPerS").values[0]).toBeCloseTo(5 * 0.514444, 5);
});

test("s21: JSON with decimal commas in texts, a trace, an accumulated reading, an absent key", () => {
  const read = understood(bytesOf(s21.file));
  expect(read.report).toMatchObject({ layout: "JSON", records: s21.records });
  expect(reported(read, "prec")).toMatchObject({ trace: s21.trace, accumulating: s21.accumulating_days });
  expect(reported(read, "tmin").missing).toBe(s21.missing.tmin);
  expect(total(series(read, "rainMm").values)).toBeCloseTo(s21.rain_total_mm, 9);
  // 14.8 mm cover the sixth and the seventh: on the day of the reading, or shared alike.
  expect(read.daily?.weather.rainMm.slice(5, 7)).toEqual(Float64Array.of(0, 14.8));
  const spread = understood(bytesOf(s21.file), { accumulated: "spread" });
  expect(spread.daily?.weather.rainMm.slice(5, 7)).toEqual(Float64Array.of(7.4, 7.4));
});

describe("s22: a month's table with overflow, calm and stuck sensors", () => {
  test("187 mm in a dry month is asked about", () => {
    const question = asked(bytesOf(s22.file));
    expect(question.key).toBe("spikes");
    expect(question.evidence).toEqual(["line 18: 187 mm on 2019-08-16T00:00"]);
  });

  test("dates from the title, ***** missing, calm is 0, flat runs said", () => {
    const read = understood(bytesOf(s22.file), { spikes: "keep" });
    expect(read.report).toMatchObject({ records: s22.records, first: "2019-08-01T00:00" });
    expect(reported(read, "Tx").missing).toBe(s22.missing.Tx);
    expect(series(read, "windMPerS").values.filter((one) => one === 0)).toHaveLength(s22.wind_calm_days);
    const flat = read.report.cautions
      .filter(({ code }) => code === "flat-run")
      .map(({ column, what }) => `${column}: ${what}`);
    expect(flat).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/^RHx: 57 from 2019-08-21.* to 2019-08-29/),
        expect.stringMatching(/^RHn: 57 from 2019-08-21.* to 2019-08-29/),
        expect.stringMatching(/^Tn: 14.2 from 2019-08-18.* to 2019-08-30/),
      ]),
    );
    // The expected file names only these. RHx 88 and RHn 41 on days 1-20 and Rs 22.1 on all thirty days are as flat, though, and no
    // rule that sees a stuck sensor in the one can pass over the others; they are said as well.
    expect(flat).toHaveLength(6);
  });

  test("answered missing, the storm is gone", () => {
    const read = understood(bytesOf(s22.file), { spikes: "missing" });
    expect(total(series(read, "rainMm").values)).toBe(0);
    expect(repaired(read, "spike")).toBe(1);
  });
});

const dayMs = 86_400_000;
const dateOfDay = (d: number): string => new Date(Date.parse("2023-05-01") + d * dayMs).toISOString().slice(0, 10);
const dayBetween = (from: string, to: string): number => Math.round((Date.parse(to) - Date.parse(from)) / dayMs);
const dateFrom = ({ report, table }: ReturnType<typeof understood>, time: number): string =>
  new Date(Date.parse(`${report.first}Z`) + (time - table.minutes[0]) * 60_000).toISOString().slice(0, 10);
