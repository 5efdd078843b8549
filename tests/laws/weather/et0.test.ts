import fc from "fast-check";
import { dailyEt0, et0Faults, type WeatherColumn } from "rootledger/weather";
import { describe, expect, test } from "vitest";
import { physicalWeather, sites } from "./arbitrary-weather.js";

describe("reference evapotranspiration", () => {
  test.each(["penman-monteith", "asce-short", "hargreaves-samani"] as const)(
    "%s is finite and not negative on any physical record, at any place",
    (method) => {
      fc.assert(
        fc.property(physicalWeather, sites, (weather, site) => {
          // Random sun at random latitudes may look like a lost sign; that fault is the law's only way out.
          const faults = et0Faults(weather, site, method);
          if (faults.length > 0) return faults.every((fault) => fault.code === "check-latitude-sign");
          const { et0Mm, sunriseH, sunsetH } = dailyEt0(weather, site, method);
          return [...et0Mm].every(
            (mm, d) =>
              Number.isFinite(mm) &&
              mm >= 0 &&
              sunriseH[d] >= 0 &&
              sunriseH[d] <= 12 &&
              Math.abs(sunsetH[d] + sunriseH[d] - 24) < 1e-12,
          );
        }),
        { numRuns: 1000 },
      );
    },
  );

  test("one missing temperature is a fault by its date, never a number", () => {
    fc.assert(
      fc.property(
        physicalWeather,
        sites,
        fc.nat(),
        fc.constantFrom("tMinC", "tMaxC"),
        (weather, site, pick, column) => {
          const d = pick % weather.days;
          weather[column as WeatherColumn][d] = Number.NaN;
          const faults = et0Faults(weather, site, "penman-monteith");
          expect(faults).toHaveLength(1);
          expect(faults[0].code).toBe("missing-value");
          expect(() => dailyEt0(weather, site, "penman-monteith")).toThrow(RangeError);
        },
      ),
    );
  });
});
