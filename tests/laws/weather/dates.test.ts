import fc from "fast-check";
import { dailySun, dayOfYear, daysOfYear, emptyDailyWeather, formatDailyWeather } from "rootledger/weather";
import { expect, test } from "vitest";
import { sites, startDates } from "./arbitrary-weather.js";

const msPerDay = 86_400_000;

test("dates of a record never slip, over leap days, centuries and New Year", () => {
  fc.assert(
    fc.property(startDates, fc.integer({ min: 1, max: 1500 }), (startDate, days) => {
      const weather = emptyDailyWeather(startDate, days);
      weather.rainMm.fill(0);
      const dates = formatDailyWeather(weather)
        .trim()
        .split("\n")
        .slice(1)
        .map((line) => line.slice(0, 10));
      const ofYear = daysOfYear(startDate, days);
      const first = Date.parse(`${startDate}T00:00:00Z`);
      for (let d = 0; d < days; d++) {
        const date = new Date(first + d * msPerDay).toISOString().slice(0, 10);
        const newYear = Date.parse(`${date.slice(0, 4)}-01-01T00:00:00Z`);
        const expected = (first + d * msPerDay - newYear) / msPerDay + 1;
        if (dates[d] !== date || ofYear[d] !== expected || dayOfYear(date) !== expected) return false;
      }
      return true;
    }),
    { numRuns: 200 },
  );
});

test("day and night share the year: what one latitude has of daylight, the opposite one has of night", () => {
  fc.assert(
    fc.property(startDates, sites, (startDate, { latitudeDeg }) => {
      const here = dailySun(startDate, 1, latitudeDeg);
      const opposite = dailySun(startDate, 1, -latitudeDeg);
      expect(here.dayLengthH[0] + opposite.dayLengthH[0]).toBeCloseTo(24, 9);
      expect(here.extraterrestrialMJPerM2[0]).toBeGreaterThanOrEqual(0);
    }),
    { numRuns: 1000 },
  );
});
