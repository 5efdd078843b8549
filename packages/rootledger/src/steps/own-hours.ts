import { dayNumber } from "../numeric/day-number.js";
import { rainHeld } from "../scenario/rain-held.js";
import type { HourlyRecords, Scenario } from "../scenario/scenario.js";

const hoursPerDay = 24;

/**
 * A scenario or comparison that runs on own records by hour: the most that the tree would transpire, and rain above the canopy, each in mm of the hour
 * over the whole ground of a tree. Days become sums of their hours, and what leaves and litter hold of the rain follows them. What is
 * left out stays by day. Evaporation from the soil still follows ET0 and Kcb. The weather is cut to the season.
 *
 * @param hourly one value for each hour of the season
 * @throws RangeError naming the first hour of a record that is negative or not finite, or a record whose length is not 24 times the
 * season's days, or if there is no record.
 * @example withOwnHours(scenario, { transpirationMm: new Float64Array(24 * scenario.season.days) })
 */
export function withOwnHours<T extends Pick<Scenario, "season" | "weather" | "block">>(
  inputs: T,
  hourly: HourlyRecords,
): T {
  const { season, weather, block } = inputs;
  const { transpirationMm, rainMm } = hourly;
  if (transpirationMm === undefined && rainMm === undefined) {
    throw new RangeError("withOwnHours requires transpirationMm or rainMm: got neither");
  }
  requireHours("transpirationMm", transpirationMm, season.days);
  requireHours("rainMm", rainMm, season.days);
  const from = dayNumber(season.startDate) - dayNumber(weather.startDate);
  const cut = (column: Float64Array): Float64Array => column.slice(from, from + season.days);
  const rainByDay = rainMm === undefined ? cut(weather.rainMm) : daySums(rainMm);
  const own: T = {
    ...inputs,
    weather: {
      ...weather,
      ...{ startDate: season.startDate, days: season.days, rainMm: rainByDay },
      ...{ et0Mm: cut(weather.et0Mm), sunriseH: cut(weather.sunriseH), sunsetH: cut(weather.sunsetH) },
      hourly: {
        ...(transpirationMm && { transpirationMm: transpirationMm.slice() }),
        ...(rainMm && { rainMm: rainMm.slice() }),
      },
    },
  };
  if (block.surface === undefined) return own;
  const { rain: _, ...surface } = block.surface;
  const rain = rainHeld(surface, rainByDay);
  return { ...own, block: { ...block, surface: rain === undefined ? surface : { ...surface, rain } } };
}

function requireHours(name: string, values: Float64Array | undefined, days: number): void {
  if (values === undefined) return;
  if (values.length !== days * hoursPerDay) {
    throw new RangeError(
      `withOwnHours requires ${days * hoursPerDay} values of ${name}, one an hour of the season: got ${values.length}`,
    );
  }
  const wrong = values.findIndex((mm) => !(mm >= 0 && Number.isFinite(mm)));
  if (wrong >= 0) {
    throw new RangeError(`withOwnHours requires ${name} of 0 mm or more: got ${values[wrong]} at hour ${wrong}`);
  }
}

const daySums = (byHour: Float64Array): Float64Array =>
  Float64Array.from({ length: byHour.length / hoursPerDay }, (_, d) =>
    byHour.subarray(d * hoursPerDay, (d + 1) * hoursPerDay).reduce((sum, mm) => sum + mm, 0),
  );
