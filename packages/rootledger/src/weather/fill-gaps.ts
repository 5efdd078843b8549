import type { DailyWeather, WeatherColumn } from "./daily-weather.js";

/**
 * What may stand in for a missing temperature or rain; without it a missing one is a fault. `interpolate`: a straight line
 * between the days before and after a gap of at most `longestDays`. `dry`: no rain on that day.
 */
export interface GapRule {
  readonly temperature?: { readonly kind: "interpolate"; readonly longestDays: number };
  readonly rain?: "dry";
}

/** Fills the record by the rule and says what it filled; what the rule does not cover stays missing. */
export function fillGaps(weather: DailyWeather, rule: GapRule): string[] {
  const notes: string[] = [];
  const { temperature, rain } = rule;
  if (temperature) {
    for (const column of ["tMinC", "tMaxC"] as const) {
      const filled = interpolate(weather[column], temperature.longestDays);
      if (filled > 0)
        notes.push(sentence(column, filled, weather.days, "taken on a line between the days around the gap"));
    }
  }
  if (rain === "dry") {
    let filled = 0;
    for (let d = 0; d < weather.days; d++) {
      if (!Number.isNaN(weather.rainMm[d])) continue;
      weather.rainMm[d] = 0;
      filled++;
    }
    if (filled > 0) notes.push(sentence("rainMm", filled, weather.days, "taken as dry"));
  }
  return notes;
}

const sentence = (column: WeatherColumn, filled: number, days: number, how: string): string =>
  `${column}: missing on ${filled} of ${days} days, ${how}`;

function interpolate(values: Float64Array, longestDays: number): number {
  let filled = 0;
  let before = -1;
  for (let d = 0; d < values.length; d++) {
    if (Number.isNaN(values[d])) continue;
    const gap = d - before - 1;
    if (before >= 0 && gap > 0 && gap <= longestDays) {
      const step = (values[d] - values[before]) / (gap + 1);
      for (let k = 1; k <= gap; k++) values[before + k] = values[before] + step * k;
      filled += gap;
    }
    before = d;
  }
  return filled;
}
