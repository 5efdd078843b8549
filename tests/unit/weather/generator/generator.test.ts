import {
  chainOfWetFraction,
  chanceStream,
  dailyEt0,
  emptyDailyWeather,
  fitGenerator,
  fitMonthlyFigures,
  formatDailyWeather,
  generateWeather,
  type MonthlyFigures,
  parseDailyWeather,
  publishedCorrelations,
  residualProcess,
  wetFraction,
} from "rootledger/weather";
import { describe, expect, test } from "vitest";
import { dataText } from "../../../support/demo-files.js";

function fitted(name: string) {
  const parsed = parseDailyWeather(dataText(`weather/${name}.csv`), {
    rain: "dry",
    temperature: { kind: "interpolate", longestDays: 20 },
  });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  const read = fitGenerator(parsed.weather);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read;
}

const meanOf = (values: ArrayLike<number>): number =>
  Array.from(values).reduce((sum, value) => sum + value, 0) / values.length;

describe("draws", () => {
  test("a stream is named by seed, member and name, and by nothing else", () => {
    const draws = (seed: number, member: number, name: string): number[] => {
      const { uniform } = chanceStream(seed, member, name);
      return Array.from({ length: 5 }, uniform);
    };
    expect(draws(1, 0, "rain")).toEqual(draws(1, 0, "rain"));
    for (const other of [draws(2, 0, "rain"), draws(1, 1, "rain"), draws(1, 0, "heat")])
      expect(other).not.toEqual(draws(1, 0, "rain"));
  });

  // Mean shape x scale and variance shape x scale^2 of the gamma distribution; within five standard errors of 200 000 draws.
  test.each([
    [0.4, 12],
    [0.75, 12],
    [1, 5],
    [3.5, 2],
  ])("gamma of shape %d and scale %d: mean and variance", (shape, scale) => {
    const { gamma } = chanceStream("gamma", 0, String(shape));
    const n = 200_000;
    const values = Float64Array.from({ length: n }, () => gamma(shape, scale));
    const mean = meanOf(values);
    const variance = meanOf(values.map((value) => (value - mean) ** 2));
    expect(Math.abs(mean - shape * scale)).toBeLessThan(5 * scale * Math.sqrt(shape / n));
    expect(Math.abs(variance / (shape * scale * scale) - 1)).toBeLessThan(5 * Math.sqrt((2 + 6 / shape) / n));
    expect(Math.min(...values.slice(0, 1000))).toBeGreaterThanOrEqual(0);
  });

  test("normals have mean 0 and variance 1", () => {
    const { normal } = chanceStream("normal", 0, "x");
    const values = Float64Array.from({ length: 200_000 }, normal);
    expect(Math.abs(meanOf(values))).toBeLessThan(5 / Math.sqrt(200_000));
    expect(Math.abs(meanOf(values.map((value) => value * value)) - 1)).toBeLessThan(5 * Math.sqrt(2 / 200_000));
  });
});

describe("a fit", () => {
  test("is plain data: written as JSON and read back, it draws the same record", () => {
    const { fit } = fitted("malaga-1992-2011");
    const options = { startDate: "2027-10-01", days: 400, seed: 7, member: 3 };
    const { weather } = generateWeather(fit, options);
    expect(generateWeather(JSON.parse(JSON.stringify(fit)), options).weather).toEqual(weather);
    expect(generateWeather(fit, { ...options, member: 4 }).weather.rainMm).not.toEqual(weather.rainMm);
    // The same days of a longer record of the same member: the future does not change the past.
    expect(generateWeather(fit, { ...options, days: 800 }).weather.tMaxC.slice(0, 400)).toEqual(weather.tMaxC);
  });

  test("what it draws is a weather record that this library takes, and ET0 of it is finite", () => {
    for (const [name, latitudeDeg] of [
      ["malaga-1992-2011", 36.67],
      ["augsburg-2009-2018", 48.43],
      ["manhattan-2003-2017", 39.1],
    ] as const) {
      const { fit } = fitted(name);
      const { weather } = generateWeather(fit, { startDate: "2024-01-01", days: 1461, seed: name });
      const parsed = parseDailyWeather(formatDailyWeather(weather));
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults.slice(0, 3)));
      expect(parsed.weather).toEqual(weather);
      const { et0Mm } = dailyEt0(weather, { latitudeDeg, elevationM: 100, windHeightM: 10 }, "penman-monteith");
      expect(et0Mm.every((mm) => mm >= 0 && mm < 20)).toBe(true);
    }
  });

  test("says which months borrow and what it leaves out", () => {
    // Malaga has rain of 0.1 mm or more on six July days in twenty years.
    expect(fitted("malaga-1992-2011").notes).toEqual([
      "rainMm: month 7 has 6 wet days; the spread of their amounts is that of the months around it",
    ]);
    expect(fitted("dublin-1993-2016").notes).toContain("not generated: sunshineH");
  });

  test("humidity and wind follow the month and the rain", () => {
    const { fit } = fitted("augsburg-2009-2018");
    expect(fit.following.map(({ column }) => column)).toEqual(["windMPerS", "dewPointC"]);
    const { weather } = generateWeather(fit, { startDate: "2026-07-01", days: 31, seed: 1 });
    expect(new Set(weather.windMPerS).size).toBeLessThanOrEqual(2);
    expect(weather.dewPointC.every((value) => Number.isFinite(value))).toBe(true);
  });

  test("is refused for a record that lacks a month, or does not vary", () => {
    const short = fitGenerator(emptyDailyWeather("2024-01-01", 400));
    expect(short.ok ? [] : short.faults.map(({ code, path }) => `${code} ${path}`)).toEqual([
      "too-short-record rainMm",
      "too-short-record tMinC",
      "too-short-record tMaxC",
    ]);
    const flat = emptyDailyWeather("2023-01-01", 730);
    flat.rainMm.fill(0);
    flat.tMinC.fill(10);
    flat.tMaxC.fill(20);
    const read = fitGenerator(flat);
    expect(read.ok ? [] : read.faults.map(({ code }) => code)).toEqual(["no-values"]);
  });

  test("a place without rain stays without", () => {
    const dry = emptyDailyWeather("2023-01-01", 1461);
    const { normal } = chanceStream("dry", 0, "x");
    dry.rainMm.fill(0);
    for (let d = 0; d < dry.days; d++) {
      dry.tMaxC[d] = 30 + 2 * normal();
      dry.tMinC[d] = 15 + normal();
    }
    const read = fitGenerator(dry);
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    const { weather } = generateWeather(read.fit, { startDate: "2030-01-01", days: 365, seed: 1 });
    expect(weather.rainMm.every((mm) => mm === 0)).toBe(true);
    expect(Math.abs(meanOf(weather.tMaxC) - 30)).toBeLessThan(0.5);
  });

  test("wrong dates and lengths are the caller's mistake", () => {
    const { fit } = fitted("malaga-1992-2011");
    expect(() => generateWeather(fit, { startDate: "2023-02-29", days: 5, seed: 1 })).toThrow(
      /startDate to be an ISO date: got 2023-02-29/,
    );
    expect(() => generateWeather(fit, { startDate: "2023-02-28", days: 0, seed: 1 })).toThrow(
      /days to be a whole number above 0: got 0/,
    );
  });
});

describe("from monthly figures", () => {
  // An invented place, summer in January.
  const months: MonthlyFigures[] = Array.from({ length: 12 }, (_, m) => {
    const season = Math.cos((2 * Math.PI * m) / 12);
    return {
      rainMm: m > 3 && m < 9 ? 80 : 12,
      wetDays: m > 3 && m < 9 ? 10 : 3,
      tMinC: 10 + 5 * season,
      tMaxC: 22 + 6 * season,
      solarMJPerM2: 17 + 8 * season,
    };
  });

  test("five hundred years give the figures back", () => {
    const { weather } = generateWeather(fitMonthlyFigures(months), { startDate: "2001-01-01", days: 182_621, seed: 5 });
    const sums = Array.from({ length: 12 }, () => ({ days: 0, mm: 0, wet: 0, tMax: 0, tMin: 0, sun: 0 }));
    for (let d = 0; d < weather.days; d++) {
      const month = sums[new Date(Date.UTC(2001, 0, 1 + d)).getUTCMonth()];
      month.days++;
      month.mm += weather.rainMm[d];
      month.wet += weather.rainMm[d] > 0 ? 1 : 0;
      month.tMax += weather.tMaxC[d];
      month.tMin += weather.tMinC[d];
      month.sun += weather.solarMJPerM2[d];
    }
    const lengths = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    sums.forEach(({ days, mm, wet, tMax, tMin, sun }, m) => {
      const { rainMm, wetDays, tMaxC, tMinC, solarMJPerM2 = 0 } = months[m];
      // Fitted: the chance of five hundred years, the steps between the months and the harmonics through them.
      expect(Math.abs((wet / days) * lengths[m] - wetDays), `wet days of month ${m + 1}`).toBeLessThan(0.6);
      expect(Math.abs((mm / days) * lengths[m] - rainMm), `rain of month ${m + 1}`).toBeLessThan(1 + 0.08 * rainMm);
      expect(Math.abs(tMax / days - tMaxC), `maximum of month ${m + 1}`).toBeLessThan(0.4);
      expect(Math.abs(tMin / days - tMinC), `minimum of month ${m + 1}`).toBeLessThan(0.4);
      expect(Math.abs(sun / days - solarMJPerM2), `radiation of month ${m + 1}`).toBeLessThan(0.7);
    });
  });

  test("the chain of a share of wet days has that share", () => {
    for (const fraction of [0.05, 0.3, 0.9])
      expect(wetFraction(chainOfWetFraction(fraction))).toBeCloseTo(fraction, 12);
  });

  test("figures that cannot be are refused with the month", () => {
    expect(() => fitMonthlyFigures(months.slice(1))).toThrow(/twelve months: got 11/);
    const wrong = months.map((month, m) => (m === 4 ? { ...month, wetDays: 40 } : month));
    expect(() => fitMonthlyFigures(wrong)).toThrow(/month 5/);
    const hot = months.map((month, m) => (m === 0 ? { ...month, tMinC: 40 } : month));
    expect(() => fitMonthlyFigures(hot)).toThrow(/month 1 /);
  });
});

test("correlations that belong to no process give none", () => {
  expect(residualProcess(publishedCorrelations.m0, publishedCorrelations.m1)).toBeDefined();
  expect(
    residualProcess(
      [
        [1, 1],
        [1, 1],
      ],
      [
        [0.5, 0.5],
        [0.5, 0.5],
      ],
    ),
  ).toBeUndefined();
  expect(residualProcess([[1]], [[1.2]])).toBeUndefined();
});
