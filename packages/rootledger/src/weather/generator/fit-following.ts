import type { DailyWeather, WeatherColumn } from "../daily-weather.js";
import type { FollowingVariable } from "./generator-fit.js";

const candidates: readonly WeatherColumn[] = ["windMPerS", "rhMinPct", "rhMaxPct", "rhMeanPct", "dewPointC"];

/** Monthly means on dry and wet days of the columns that the record has beside rain, temperature and sun; of the dew point, its distance below the minimum temperature. */
export function fitFollowing(weather: DailyWeather, state: Int8Array, monthOf: Uint8Array): FollowingVariable[] {
  return candidates.flatMap((column): FollowingVariable[] => {
    const below = column === "dewPointC";
    const values = below ? weather.dewPointC.map((value, d) => weather.tMinC[d] - value) : weather[column];
    if (values.every(Number.isNaN)) return [];
    return [
      {
        column,
        dry: monthlyMeans(values, monthOf, (d) => state[d] === 0),
        wet: monthlyMeans(values, monthOf, (d) => state[d] === 1),
        kind: below ? "below-minimum" : "mean",
      },
    ];
  });
}

/** Twelve means; a month without values has the mean of the others, or of all days where there is none. */
function monthlyMeans(values: Float64Array, monthOf: Uint8Array, use: (d: number) => boolean): number[] {
  const sums = new Array<number>(12).fill(0);
  const counts = new Array<number>(12).fill(0);
  let sum = 0;
  let count = 0;
  for (let d = 0; d < values.length; d++) {
    if (Number.isNaN(values[d])) continue;
    sum += values[d];
    count++;
    if (!use(d)) continue;
    sums[monthOf[d]] += values[d];
    counts[monthOf[d]]++;
  }
  return sums.map((one, month) => (counts[month] > 0 ? one / counts[month] : sum / count));
}
