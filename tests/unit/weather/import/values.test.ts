import { mark } from "rootledger/weather";
import { describe, expect, test } from "vitest";
import { asked, repaired, reported, series, total, understood } from "./station-files.js";

// Expected values are worked out by hand; conversion factors are those of NIST SP 811 (2008), appendix B.8, and FAO-56 (1998) table 3.

const days = (header: string, cells: readonly (string | number)[]): string =>
  `date;${header}\n${cells.map((cell, d) => `2024-05-${String(d + 1).padStart(2, "0")};${cell}`).join("\n")}\n`;
const hours = (header: string, cells: readonly (string | number)[]): string =>
  `time;${header}\n${cells.map((cell, h) => `2024-05-13 ${String(h).padStart(2, "0")}:00;${cell}`).join("\n")}\n`;

describe("units", () => {
  test.each([
    ["Tmax (°F)", "tMaxC", 68, 20],
    ["Tmax (K)", "tMaxC", 293.15, 20],
    ["Tmax (0.1 C)", "tMaxC", 215, 21.5],
    ["temp_max_f", "tMaxC", 50, 10],
    ["Rain (in)", "rainMm", 0.5, 12.7],
    ["Rain (0.01 in)", "rainMm", 50, 12.7],
    ["Rain, cm", "rainMm", 1.5, 15],
    ["Rain (0.1 mm)", "rainMm", 127, 12.7],
    ["Precipitation [l/m²]", "rainMm", 3.5, 3.5],
    ["Wind (mph)", "windMPerS", 10, 4.4704],
    ["Wind speed km/h", "windMPerS", 36, 10],
    ["Wind (kn)", "windMPerS", 10, 18520 / 3600],
    ["Wind run (km/day)", "windMPerS", 172.8, 2],
    ["Radiation (J/cm2)", "solarMJPerM2", 2000, 20],
    ["Radiation (kJ/m²)", "solarMJPerM2", 20000, 20],
    ["Radiation (ly)", "solarMJPerM2", 500, 20.92],
    ["Radiation (cal/cm2)", "solarMJPerM2", 500, 20.934],
    ["Radiation (W/m2)", "solarMJPerM2", 250, 21.6],
    ["Radiation (Wh/m2)", "solarMJPerM2", 5000, 18],
    ["Sunshine (min)", "sunshineH", 420, 7],
    ["RH (%)", "rhMeanPct", 65, 65],
    ["RH (fraction)", "rhMeanPct", 0.65, 65],
    ["Vapour pressure (hPa)", "vapourPressureKPa", 15, 1.5],
    ["Pressure (mbar)", "pressureKPa", 1013, 101.3],
    ["Pressure (inHg)", "pressureKPa", 30, 101.59167],
    ["VWC 20 cm (%)", "soilMoistureM3PerM3_20cm", 25, 0.25],
    ["VWC_20 (m3/m3)", "soilMoistureM3PerM3_20cm", 0.25, 0.25],
    ["Soil moisture 12in (%)", "soilMoistureM3PerM3_30.48cm", 25, 0.25],
    ["Tension 30cm (cbar)", "soilTensionKPa_30cm", 25, 25],
    ["Tension 30cm (hPa)", "soilTensionKPa_30cm", 250, 25],
    ["Tension 30cm (bar)", "soilTensionKPa_30cm", 0.25, 25],
    ["Tension 30cm (pF)", "soilTensionKPa_30cm", 2, 100 / 10.2],
    ["Irrigation (mm)", "irrigationMm", 5, 5],
    ["Irrigation (L)", "irrigationM3", 2500, 2.5],
    ["ET0 (in)", "et0Mm", 0.2, 5.08],
  ])("%s: kept as %s", (header, name, written, kept) => {
    const read = understood(days(header, [written, written, written]));
    for (const value of series(read, name).values) expect(value).toBeCloseTo(kept, 5);
  });

  test("power becomes the energy of the record: 500 W/m2 for ten minutes are 0.3 MJ/m2", () => {
    const read = understood("time;Radiation W/m2\n2024-05-13 10:00;500\n2024-05-13 10:10;500\n2024-05-13 10:20;500\n");
    for (const value of series(read, "solarMJPerM2").values) expect(value).toBeCloseTo(0.3, 12);
  });

  test("units in a row of their own", () => {
    const read = understood(
      "Date,Tmax,Rain\nyyyy-mm-dd,deg F,inch\n2024-05-13,68,0.5\n2024-05-14,77,0\n2024-05-15,86,0\n",
    );
    expect([...series(read, "tMaxC").values]).toEqual([20, 25, 30]);
    expect(reported(read, "Rain")).toMatchObject({ unit: "in", unitFrom: "unit row" });
  });
});

describe("a unit that is not said", () => {
  test("Fahrenheit taken as Celsius: a maximum above 55 or a minimum above 40 is asked about", () => {
    const question = asked(days("Tmax", [77, 86, 88]));
    expect(question.key).toBe("unit:Tmax");
    expect(question.choices.find(({ value }) => value === "F")?.meaning).toBe(
      "its largest value 88 is 31.11 degrees Celsius",
    );
    expect([...series(understood(days("Tmax", [77, 86, 88]), { "unit:Tmax": "F" }), "tMaxC").values][0]).toBe(25);
    expect(asked(days("Tmin", [39, 41, 42])).key).toBe("unit:Tmin");
  });

  test("beside columns in US units nothing is taken for metric", () => {
    expect(asked("date;Tmax (F);Rain\n2024-05-13;70;0.5\n2024-05-14;71;0\n2024-05-15;72;0\n").key).toBe("unit:Rain");
  });

  test("a day of more than 500 mm, and years of more than 6000 mm", () => {
    expect(asked(days("Rain", [0, 5, 510])).key).toBe("unit:Rain");
    const year = Array.from(
      { length: 400 },
      (_, d) => `${new Date(Date.UTC(2023, 0, 1 + d)).toISOString().slice(0, 10)};${17 + (d % 3)}`,
    );
    expect(asked(`date;Rain\n${year.join("\n")}\n`)).toMatchObject({ key: "unit:Rain" });
    // 0.01 inch would be 17 to 19 hundredths, 4.3 to 4.8 mm a day.
    const read = understood(`date;Rain\n${year.join("\n")}\n`, { "unit:Rain": "0.01in" });
    expect(series(read, "rainMm").values[0]).toBeCloseTo(17 * 0.254, 9);
  });

  test("radiation above 50 a day, and any radiation of shorter records", () => {
    expect(asked(days("Radiation", [180, 250, 300])).key).toBe("unit:Radiation");
    expect(asked(hours("Radiation", [0, 1.5, 2])).key).toBe("unit:Radiation");
    expect(understood(days("Radiation", [18, 25, 30])).report.assumptions[1]).toMatchObject({
      taken: "solarMJPerM2 in MJ/m2",
    });
  });

  test("a humidity that never exceeds 1, a tension, a volume", () => {
    expect(asked(days("RHmax", [0.9, 0.8, 1])).key).toBe("unit:RHmax");
    expect(asked(days("Tension 30cm", [20, 30, 40])).key).toBe("unit:Tension 30cm");
    expect(asked(days("Riego", [20, 30, 40])).key).toBe("unit:Riego");
  });

  test("PRCP comes in mm, in tenths of mm and in inches: asked", () => {
    expect(asked(days("PRCP", [0, 5, 12])).key).toBe("unit:PRCP");
    expect([...series(understood(days("PRCP", [0, 5, 12]), { "unit:PRCP": "0.1mm" }), "rainMm").values]).toEqual([
      0, 0.5, 1.2,
    ]);
  });

  test("a second column of the same kind is said: days are made from the first", () => {
    const read = understood("date;rain mm;rain gauge 2 mm\n2024-05-13;1;2\n2024-05-14;0;0\n2024-05-15;3;1\n");
    expect([...(read.daily?.weather.rainMm ?? [])]).toEqual([1, 0, 3]);
    expect(read.report.cautions).toContainEqual(
      expect.objectContaining({ code: "second-column", column: "rain gauge 2 mm" }),
    );
  });

  test("what was taken is said, and a windy record is doubted", () => {
    const read = understood(days("Wind", [9, 10, 11]));
    expect(read.report.assumptions.map(({ taken }) => taken)).toContain("windMPerS in m/s");
    expect(read.report.cautions).toContainEqual(expect.objectContaining({ code: "wind-unit" }));
  });

  test("soil moisture: fractions and percent by their size", () => {
    expect(series(understood(days("VWC_20", [0.25, 0.26, 0.24])), "soilMoistureM3PerM3_20cm").values[0]).toBe(0.25);
    expect(series(understood(days("VWC_20", [25, 26, 24])), "soilMoistureM3PerM3_20cm").values[0]).toBe(0.25);
  });
});

describe("missing codes", () => {
  test.each([-9999, -999.9, -99.9, 999.9, 9999, 65535])("%d among temperatures is missing", (code) => {
    const read = understood(days("Tmax C", [20, code, 21, code, 22]));
    expect(reported(read, "Tmax C").missing).toBe(2);
    expect(repaired(read, "missing-code")).toBe(2);
  });

  test("99.9 beside humidities of 99.8 is a humidity; alone among small rains it is asked about", () => {
    expect(reported(understood(days("RH %", [60, 99.8, 99.9, 70])), "RH %").missing).toBe(0);
    const question = asked(days("Rain mm", [0, 2, 99.9, 1]));
    expect(question).toMatchObject({ key: "missing", evidence: ["line 4: 99.9"] });
    expect(reported(understood(days("Rain mm", [0, 2, 99.9, 1]), { missing: "99.9" }), "Rain mm").missing).toBe(1);
  });

  test("an unknown code far outside the range stops with its cell named", () => {
    const text = days("Tmax C", [20, -7777, 21, 22]);
    expect(asked(text)).toMatchObject({ key: "out-of-range", evidence: ["line 3: -7777"] });
    expect(reported(understood(text, { missing: "-7777" }), "Tmax C").missing).toBe(1);
    expect(repaired(understood(text, { "out-of-range": "missing" }), "out-of-range")).toBe(1);
  });

  test("a sensor whose byte wraps below freezing: 6551 is no temperature", () => {
    expect(asked(days("Soil temp 20cm C", [5, 2, 0.5, 6551, 1])).key).toBe("out-of-range");
  });
});

describe("rain", () => {
  test("a counter that resets at midnight: its rises, never negative, never twice", () => {
    // 10:00 to 13:00: 0, 2, 5, 5; reset; 1 mm since; then 1, 4.
    const cells = [0, 2, 5, 5, 1, 1, 4];
    const read = understood(hours("Rain accumulated mm", cells));
    expect([...series(read, "rainMm").values]).toEqual([Number.NaN, 2, 3, 0, 1, 0, 3]);
    expect(repaired(read, "cumulative-rain")).toBe(7);
  });

  test("a small fall of a counter is noise, not a reset", () => {
    const read = understood(hours("Lluvia acumulada (mm)", [20, 22, 21.9, 23]));
    // From 21.9 the gauge rises by 1.1.
    expect([...series(read, "rainMm").values].map((mm) => Number(mm.toFixed(6)))).toEqual([Number.NaN, 2, 0, 1.1]);
  });

  test("a column that only looks like a counter is asked about", () => {
    const steps = Array.from({ length: 23 }, (_, i) => (i < 8 ? 5 : i < 15 ? 7.5 : i < 20 ? 8 : 12));
    const text = `time;Rain mm\n${steps.map((mm, h) => `2024-05-13 ${String(h).padStart(2, "0")}:00;${mm}`).join("\n")}\n`;
    expect(asked(text).key).toBe("rain");
    expect(total(series(understood(text, { rain: "cumulative" }), "rainMm").values)).toBe(7);
    expect(total(series(understood(text, { rain: "each-record" }), "rainMm").values)).toBe(
      8 * 5 + 7 * 7.5 + 5 * 8 + 3 * 12,
    );
  });

  test("traces count 0 and are marked; an amount read later keeps its total", () => {
    const read = understood(days("Rain mm", ["T", "Acum", "Acum", 9, 0]));
    expect([...series(read, "rainMm").marks]).toEqual([
      mark.trace,
      mark.accumulating,
      mark.accumulating,
      mark.value,
      mark.value,
    ]);
    expect([...(read.daily?.weather.rainMm ?? [])]).toEqual([0, 0, 0, 9, 0]);
    expect([
      ...(understood(days("Rain mm", ["T", "Acum", "Acum", 9, 0]), { accumulated: "spread" }).daily?.weather.rainMm ??
        []),
    ]).toEqual([0, 3, 3, 3, 0]);
  });

  test("negative rain is no rain", () => {
    expect(asked(days("Rain mm", [1, -3, 2])).key).toBe("out-of-range");
  });
});

describe("humidity, radiation and soil", () => {
  test("humidity of 101 to 110 % in fog is 100, more is asked about", () => {
    const read = understood(days("RHmax %", [95, 104, 110]));
    expect([...series(read, "rhMaxPct").values]).toEqual([95, 100, 100]);
    expect(repaired(read, "humidity-above-100")).toBe(2);
    expect(asked(days("RHmax %", [95, 104, 111])).key).toBe("out-of-range");
  });

  test("a pyranometer's night offset is 0; far below 0 it is broken", () => {
    const read = understood(hours("Solar W/m2", [-3, -1, 0, 500]));
    expect([...series(read, "solarMJPerM2").values]).toEqual([0, 0, 0, 1.8]);
    expect(asked(hours("Solar W/m2", [-300, -1, 0, 500])).key).toBe("out-of-range");
  });

  test("moisture in soil at or below 0.5 C is marked, not taken for drying", () => {
    const read = understood(
      "date;VWC 20 cm %;Soil temp 20 cm C\n2024-01-13;25;2\n2024-01-14;12;0.5\n2024-01-15;11;-1\n2024-01-16;25;1\n",
    );
    expect([...series(read, "soilMoistureM3PerM3_20cm").marks]).toEqual([
      mark.value,
      mark.suspect,
      mark.suspect,
      mark.value,
    ]);
    const dropped = understood(
      "date;VWC 20 cm %;Soil temp 20 cm C\n2024-01-13;25;2\n2024-01-14;12;0.5\n2024-01-15;11;-1\n2024-01-16;25;1\n",
      { suspect: "missing" },
    );
    expect([...series(dropped, "soilMoistureM3PerM3_20cm").values]).toEqual([0.25, Number.NaN, Number.NaN, 0.25]);
    expect(repaired(dropped, "suspect-dropped")).toBe(2);
  });

  test("a soil that holds no water at all is a broken probe", () => {
    const read = understood(days("VWC 20 cm m3/m3", [0.25, 0, 0.24]));
    expect(repaired(read, "out-of-range")).toBe(1);
  });

  test("two probes at the same depth stay two series", () => {
    const read = understood(
      "time,probe,depth_cm,vwc\n2024-06-01 06:00,A,15,0.24\n2024-06-01 06:00,B,15,0.30\n2024-06-01 09:00,A,15,0.23\n2024-06-01 09:00,B,15,0.29\n",
    );
    expect(read.table.columns.map(({ name }) => name)).toEqual([
      "soilMoistureM3PerM3_15cm",
      "soilMoistureM3PerM3_15cm_2",
    ]);
    expect([...series(read, "soilMoistureM3PerM3_15cm_2").values]).toEqual([0.3, 0.29]);
  });

  test("a storm far above all others is asked about, one among others is not", () => {
    const dry = Array.from({ length: 12 }, (_, d) => (d === 5 ? 140 : d % 2));
    expect(asked(days("Rain mm", dry))).toMatchObject({
      key: "spikes",
      evidence: ["line 7: 140 mm on 2024-05-06T00:00"],
    });
    expect(understood(days("Rain mm", [...dry.slice(1), 60])).report.records).toBe(12);
  });
});
