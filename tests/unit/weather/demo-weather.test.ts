import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { dailyEt0, parseDailyWeather } from "rootledger/weather";
import { expect, test } from "vitest";

const demoFile = (name: string): string => fileURLToPath(new URL(`../../../data/demo/${name}`, import.meta.url));
const site = { latitudeDeg: -33, elevationM: 320, windHeightM: 2 };

test("the script writes the demo weather bit for bit", () => {
  const written = execFileSync(process.execPath, [demoFile("make-weather.mjs")], { encoding: "utf8" });
  expect(written).toBe(readFileSync(demoFile("weather.csv"), "utf8"));
});

test("the demo weather is a plausible dry summer", () => {
  const parsed = parseDailyWeather(readFileSync(demoFile("weather.csv"), "utf8"));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  const { weather } = parsed;
  expect([weather.startDate, weather.days]).toEqual(["2025-10-01", 210]);
  const { et0Mm, notes } = dailyEt0(weather, site, "penman-monteith");
  const december = et0Mm.slice(61, 92).reduce((sum, mm) => sum + mm, 0) / 31;
  expect(december).toBeGreaterThan(5.8);
  expect(december).toBeLessThan(7);
  expect(weather.rainMm.slice(38, 42).reduce((sum, mm) => sum + mm, 0)).toBeCloseTo(40, 9);
  expect(notes.join()).not.toMatch(/missing|above a clear sky/);
});

test("the demo weather read with the sign of the latitude lost is a fault, not a small ET0", () => {
  const parsed = parseDailyWeather(readFileSync(demoFile("weather.csv"), "utf8"));
  if (!parsed.ok) throw new Error("must parse");
  expect(() => dailyEt0(parsed.weather, { ...site, latitudeDeg: 33 }, "penman-monteith")).toThrow(/south .*negative/);
});
