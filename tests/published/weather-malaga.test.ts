import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type DailyWeather, dailyEt0, type Et0Method, parseDailyWeather } from "rootledger/weather";
import { expect, test } from "vitest";
import { expectRelative } from "./near.js";

// Station 6155A Malaga airport, data by AEMET; see data/weather/PROVENANCE.md. The annual figures were computed by others from
// the whole export (1983-01 to 2012-09), independently of this library, with dew point = Tmin, radiation from sunshine and wind
// brought from 10 m to 2 m, as FAO-56 ch. 3 has it. Twenty of those thirty years are kept here, so a little of the 2 % is weather.
const site = { latitudeDeg: 36.67, elevationM: 5, windHeightM: 10 };
const stated: Readonly<Record<"penman-monteith" | "hargreaves-samani", number>> = {
  "penman-monteith": 1260,
  "hargreaves-samani": 1164,
};

function record(name: string): DailyWeather {
  const path = fileURLToPath(new URL(`../../data/weather/${name}`, import.meta.url));
  const parsed = parseDailyWeather(readFileSync(path, "utf8"));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  return parsed.weather;
}

const annualMm = (weather: DailyWeather, method: Et0Method): number =>
  (dailyEt0(weather, site, method).et0Mm.reduce((sum, mm) => sum + mm, 0) / weather.days) * 365.25;

test.each(["penman-monteith", "hargreaves-samani"] as const)(
  "twenty years of Malaga by %s: within two per cent",
  (method) => {
    const weather = record("malaga-1992-2011.csv");
    expect(weather.days).toBe(7305);
    expectRelative(annualMm(weather, method), stated[method], 0.02, "mm a year");
  },
);

test("the single year 2011 is that of the twenty, with its rules said and counted", () => {
  const year = record("malaga-2011.csv");
  const twenty = record("malaga-1992-2011.csv");
  expect(year.days).toBe(365);
  expect([...year.tMaxC]).toEqual([...twenty.tMaxC.slice(-365)]);
  const { et0Mm, notes } = dailyEt0(year, site, "penman-monteith");
  expect([...et0Mm]).toEqual([...dailyEt0(twenty, site, "penman-monteith").et0Mm.slice(-365)]);
  expect(notes).toContain("humidity missing: dew point taken as Tmin (FAO-56 eq. 48): 365 of 365 days");
  expect(notes.join()).not.toContain("wind missing");
});
