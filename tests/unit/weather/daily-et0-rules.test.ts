import {
  type DailyWeather,
  dailyEt0,
  dayOfYear,
  emptyDailyWeather,
  et0Faults,
  extraterrestrialRadiationMJPerM2Day,
  sunShare,
  sunTimes,
  type WeatherColumn,
} from "rootledger/weather";
import { expect, test } from "vitest";

const site = { latitudeDeg: 36.67, elevationM: 5, windHeightM: 2 };

function oneDay(values: Partial<Record<WeatherColumn, number>>, date = "2023-07-15"): DailyWeather {
  const weather = emptyDailyWeather(date, 1);
  for (const [column, value] of Object.entries(values)) weather[column as WeatherColumn][0] = value;
  return weather;
}

const base = { tMinC: 20, tMaxC: 31, rhMinPct: 40, rhMaxPct: 80, windMPerS: 2, solarMJPerM2: 27.5, rainMm: 0 };
const et0Of = (values: Partial<Record<WeatherColumn, number>>, where = site): number =>
  dailyEt0(oneDay(values), where, "penman-monteith").et0Mm[0];
const notesOf = (values: Partial<Record<WeatherColumn, number>>): string =>
  dailyEt0(oneDay(values), site, "penman-monteith").notes.join("\n");
const { rhMinPct: _low, rhMaxPct: _high, ...withoutHumidity } = base;
const { windMPerS: _wind, ...withoutWind } = base;
const { solarMJPerM2: _sun, ...withoutSun } = base;

// Own arithmetic by FAO-56 eqs 6 to 47, apart from this library, for 15 July at 36.67 N and 5 m; given to 0.01 mm, so the
// tolerance is half of that.
test.each([
  ["all measured", base, site, 6.24],
  ["humidity in fog, 104 % and 100 % alike", { ...base, rhMaxPct: 104 }, site, 6.03],
  ["humidity 100 %", { ...base, rhMaxPct: 100 }, site, 6.03],
  ["wind of 10 m height", base, { ...site, windHeightM: 10 }, 5.94],
  ["km/h read as m/s", { ...base, windMPerS: 7.2 }, site, 8.42],
] as const)("a known day: %s", (_, values, where, expected) => {
  expect(Math.abs(et0Of(values, where) - expected)).toBeLessThanOrEqual(0.005);
});

test("humidity is taken by the best rule that the record allows, and every lesser rule is noted", () => {
  const dewPointC = 17.2;
  expect(notesOf(base)).toBe("");
  expect(notesOf({ ...base, dewPointC })).toBe("");
  expect(et0Of({ ...base, dewPointC })).toBe(et0Of({ ...withoutHumidity, dewPointC }));
  expect(notesOf({ ...withoutHumidity, rhMaxPct: 80 })).toMatch(/eq\. 18\): 1 of 1 days/);
  expect(notesOf({ ...withoutHumidity, rhMeanPct: 60 })).toMatch(/eq\. 19\): 1 of 1 days/);
  expect(notesOf(withoutHumidity)).toMatch(/eq\. 48\): 1 of 1 days/);
  expect(notesOf({ ...withoutHumidity, rhMinPct: 40 })).toMatch(/eq\. 48\)/);
  expect(et0Of(withoutHumidity)).toBeCloseTo(et0Of({ ...withoutHumidity, dewPointC: 20 }), 12);
});

test("a dew point above the air is held at saturation and noted; nothing becomes negative", () => {
  const values = { ...withoutHumidity, dewPointC: 35 };
  expect(notesOf(values)).toMatch(/above saturation/);
  expect(et0Of(values)).toBeGreaterThan(0);
  expect(et0Of(values)).toBeLessThan(et0Of(base));
});

test("wind and sun are filled by FAO-56's rules and noted", () => {
  expect(et0Of(withoutWind)).toBeCloseTo(et0Of(base), 12);
  expect(notesOf(withoutWind)).toMatch(/2 m\/s at 2 m height assumed .*: 1 of 1 days/);
  expect(notesOf({ ...base, windMPerS: 0.1 })).toMatch(/taken as 0\.5 m\/s/);
  expect(notesOf({ ...withoutSun, sunshineH: 9 })).toMatch(/eq\. 35/);
  expect(notesOf({ ...withoutSun, sunshineH: 16 })).toMatch(/longer than the day/);
  expect(notesOf(withoutSun)).toMatch(/eq\. 50/);
  expect(notesOf({ ...withoutSun, tMinC: 4, tMaxC: 34 })).toMatch(/held at that of a clear sky/);
  expect(notesOf({ ...base, solarMJPerM2: 36 })).toMatch(/above a clear sky, used as measured/);
  expect(notesOf({ ...base, solarMJPerM2: 2 })).toMatch(/cloud term .* held at 0\.05/);
});

test("a bitter clear winter day far north has no ET0 below 0, and says so", () => {
  const values = { tMinC: -42, tMaxC: -35, rhMinPct: 90, rhMaxPct: 100, windMPerS: 0.5, solarMJPerM2: 0 };
  const { et0Mm, notes, sunriseH, sunsetH } = dailyEt0(
    oneDay(values, "2023-12-21"),
    { latitudeDeg: 70, elevationM: 100, windHeightM: 2 },
    "penman-monteith",
  );
  expect(et0Mm[0]).toBe(0);
  expect([sunriseH[0], sunsetH[0]]).toEqual([12, 12]);
  expect(notes.join("\n")).toMatch(/no sun/);
  expect(notes.join("\n")).toMatch(/negative reference evapotranspiration taken as 0/);
});

// Own arithmetic by FAO-56 eqs 21 to 25, apart from this library; given to 0.01 MJ/m2.
test.each([
  [70, "2023-12-21", 0, 0],
  [70, "2023-06-21", 42.69, 24],
  [-34.2, "2023-01-15", 43.34, undefined],
  [34.2, "2023-01-15", 18.56, undefined],
])("Ra at latitude %d on %s", (latitudeDeg, date, radiation, dayLength) => {
  const latitude = (latitudeDeg * Math.PI) / 180;
  const found = extraterrestrialRadiationMJPerM2Day(latitude, dayOfYear(date));
  expect(Math.abs(found - radiation)).toBeLessThanOrEqual(0.005);
  const { sunriseH, sunsetH } = sunTimes(latitude, dayOfYear(date));
  expect(sunsetH - 12).toBeCloseTo(12 - sunriseH, 12);
  if (dayLength !== undefined) expect(sunsetH - sunriseH).toBeCloseTo(dayLength, 12);
});

test("the share of the sun's half sine is exact and sums to 1, also without a sun", () => {
  expect(sunShare(0, 12, 6, 18)).toBeCloseTo(0.5, 15);
  expect(sunShare(6, 8, 6, 18)).toBeCloseTo((1 - Math.cos(Math.PI / 6)) / 2, 15);
  expect(sunShare(20, 24, 6, 18)).toBe(0);
  for (const [sunrise, sunset] of [
    [4.8, 19.2],
    [0, 24],
    [12, 12],
  ]) {
    let sum = 0;
    for (let hour = 0; hour < 24; hour++) sum += sunShare(hour, hour + 1, sunrise, sunset);
    expect(sum).toBeCloseTo(1, 12);
  }
});

test("a given ET0 and a pan are taken as they are", () => {
  const weather = oneDay({ et0Mm: 5.25, panMm: 8, rainMm: 0 });
  expect(dailyEt0(weather, site, "given").et0Mm[0]).toBe(5.25);
  expect(dailyEt0(weather, { ...site, panCoefficient: 0.7 }, "pan").et0Mm[0]).toBeCloseTo(5.6, 12);
});

test.each([
  ["latitude", { ...site, latitudeDeg: 91 }, "latitude-out-of-range @ latitudeDeg"],
  ["elevation", { ...site, elevationM: 12000 }, "elevation-out-of-range @ elevationM"],
  ["wind height", { ...site, windHeightM: 0 }, "wind-height-out-of-range @ windHeightM"],
  ["kRs", { ...site, krs: 16 }, "krs-out-of-range @ krs"],
  ["no number", { ...site, latitudeDeg: Number.NaN }, "latitude-out-of-range @ latitudeDeg"],
])("a site with an impossible %s is a fault, and dailyEt0 throws it", (_, where, fault) => {
  const weather = oneDay(base);
  expect(et0Faults(weather, where, "penman-monteith").map((one) => `${one.code} @ ${one.path}`)).toEqual([fault]);
  expect(() => dailyEt0(weather, where, "penman-monteith")).toThrow(RangeError);
});

test("a method that lacks its column or coefficient names both", () => {
  const faults = et0Faults(oneDay(base), site, "pan");
  expect(faults.map((one) => `${one.code} @ ${one.path}`)).toEqual([
    "pan-coefficient-out-of-range @ panCoefficient",
    "missing-value @ 2023-07-15, panMm",
  ]);
});
