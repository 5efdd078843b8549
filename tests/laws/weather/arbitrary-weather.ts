import fc from "fast-check";
import {
  type DailyWeather,
  emptyDailyWeather,
  type WeatherColumn,
  type WeatherSite,
  weatherColumns,
} from "rootledger/weather";

const within = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const orMissing = (value: fc.Arbitrary<number>): fc.Arbitrary<number> =>
  fc.oneof({ arbitrary: value, weight: 4 }, { arbitrary: fc.constant(Number.NaN), weight: 1 });

export const startDates = fc
  .tuple(fc.integer({ min: 1900, max: 2100 }), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 28 }))
  .map(([year, month, day]) => `${year}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`);

/** A day that a place on earth can have; what a station may lack is missing now and then. */
const physicalDay = fc
  .record({
    low: within(-60, 38),
    range: within(0, 15),
    rhLow: within(0, 100),
    // A whole record with no day above 1 % is taken for fractions, and rightly: no place is so dry.
    rhRange: within(2, 100),
    windMPerS: orMissing(within(0, 40)),
    solarMJPerM2: orMissing(within(0, 45)),
    sunshineH: orMissing(within(0, 24)),
    rainMm: within(0, 400),
    panMm: orMissing(within(0, 30)),
    rhMeanPct: within(1.5, 100),
    // Sensors give a dew point above the air now and then.
    dewPointC: within(-80, 39),
    humidity: fc.constantFrom("both", "highest", "mean", "dew point", "none"),
  })
  .map((day): Partial<Record<WeatherColumn, number>> => {
    const rhMaxPct = day.rhLow + day.rhRange < 100 ? day.rhLow + day.rhRange : 100;
    return {
      tMinC: day.low,
      tMaxC: day.low + day.range,
      rhMinPct: day.humidity === "both" ? day.rhLow : Number.NaN,
      rhMaxPct: day.humidity === "both" || day.humidity === "highest" ? rhMaxPct : Number.NaN,
      rhMeanPct: day.humidity === "mean" ? day.rhMeanPct : Number.NaN,
      dewPointC: day.humidity === "dew point" ? day.dewPointC : Number.NaN,
      windMPerS: day.windMPerS,
      solarMJPerM2: day.solarMJPerM2,
      sunshineH: day.sunshineH,
      rainMm: day.rainMm,
      panMm: day.panMm,
    };
  });

export const physicalWeather: fc.Arbitrary<DailyWeather> = fc
  .tuple(startDates, fc.array(physicalDay, { minLength: 1, maxLength: 40 }))
  .map(([startDate, days]) => {
    const weather = emptyDailyWeather(startDate, days.length);
    for (const column of weatherColumns) weather[column].set(days.map((day) => day[column] ?? Number.NaN));
    return weather;
  });

export const sites: fc.Arbitrary<WeatherSite> = fc.record({
  latitudeDeg: within(-90, 90),
  elevationM: within(-400, 5000),
  windHeightM: within(0.5, 50),
});
