import { type DailyWeather, emptyDailyWeather, et0Faults } from "rootledger/weather";
import { expect, test } from "vitest";

/** An invented year whose warmest day is `warmest` days after 1 January, without any measured sun. */
function yearOfTemperatures(warmest: number, days = 365): DailyWeather {
  const weather = emptyDailyWeather("2023-01-01", days);
  for (let d = 0; d < days; d++) {
    const mean = 15 + 8 * Math.cos((2 * Math.PI * (d - warmest)) / 365) + 2 * Math.sin(d);
    weather.tMinC[d] = mean - 6;
    weather.tMaxC[d] = mean + 6;
    weather.rainMm[d] = 0;
  }
  return weather;
}

const codes = (weather: DailyWeather, latitudeDeg: number): string[] =>
  et0Faults(weather, { latitudeDeg, elevationM: 100, windHeightM: 2 }, "hargreaves-samani").map((fault) => fault.code);

test("a summer in January needs a southern latitude, a summer in July a northern one", () => {
  expect(codes(yearOfTemperatures(20), -34)).toEqual([]);
  expect(codes(yearOfTemperatures(20), 34)).toEqual(["check-latitude-sign"]);
  expect(codes(yearOfTemperatures(205), 34)).toEqual([]);
  expect(codes(yearOfTemperatures(205), -34)).toEqual(["check-latitude-sign"]);
});

test("temperature is no evidence in the tropics or over part of a year", () => {
  expect(codes(yearOfTemperatures(205), -12)).toEqual([]);
  expect(codes(yearOfTemperatures(205, 200), -34)).toEqual([]);
});
