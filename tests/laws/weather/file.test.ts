import fc from "fast-check";
import { columnLimits, formatDailyWeather, parseDailyWeather, weatherColumns } from "rootledger/weather";
import { describe, expect, test } from "vitest";
import { physicalWeather } from "./arbitrary-weather.js";

describe("the daily weather file", () => {
  test("written, read and written again is the same, bit for bit", () => {
    fc.assert(
      fc.property(physicalWeather, (weather) => {
        const text = formatDailyWeather(weather);
        const first = parseDailyWeather(text);
        if (!first.ok) throw new Error(JSON.stringify(first.faults));
        expect(first.weather).toEqual(weather);
        expect(formatDailyWeather(first.weather)).toBe(text);
      }),
      { numRuns: 500 },
    );
  });

  const pieces = fc.oneof(
    fc.constantFrom(
      ",",
      ";",
      "\t",
      "\n",
      "\r\n",
      "\r",
      '"',
      '""',
      "\uFEFF",
      "",
      " ",
      "-",
      "date",
      "2024-02-29",
      "2023-02-29",
      "NaN",
    ),
    fc.constantFrom("1e999", "-0", "0x10", "1_000", "1.5", "-9999", "999.9", "Infinity", "__proto__", "constructor"),
    fc.constantFrom(...weatherColumns),
    fc.string({ unit: "binary", maxLength: 6 }),
    fc.double().map(String),
  );
  const soup = fc.array(pieces, { maxLength: 60 }).map((parts) => parts.join(""));
  const damaged = fc
    .tuple(physicalWeather.map(formatDailyWeather), fc.nat(), fc.nat({ max: 30 }), pieces)
    .map(([text, at, length, piece]) => {
      const from = at % text.length;
      return text.slice(0, from) + piece + text.slice(from + length);
    });

  /** Either a record within its limits or at least one fault with all four parts; never a throw. */
  const isAnswered = (text: string): boolean => {
    const parsed = parseDailyWeather(text);
    if (!parsed.ok) {
      return parsed.faults.length > 0 && parsed.faults.every((one) => /^[a-z0-9-]+$/.test(one.code) && one.rule !== "");
    }
    const { weather } = parsed;
    return weatherColumns.every((column) =>
      weather[column].every(
        (value) =>
          Number.isNaN(value) || (value >= columnLimits[column].lowest && value <= columnLimits[column].highest),
      ),
    );
  };

  test("20,000 broken files: each gives a record or faults, none throws", () => {
    fc.assert(fc.property(soup, isAnswered), { numRuns: 12_000 });
    fc.assert(fc.property(damaged, isAnswered), { numRuns: 8_000 });
  });
});
