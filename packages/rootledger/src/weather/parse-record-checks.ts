import type { DailyWeather, WeatherColumn } from "./daily-weather.js";
import type { FaultList } from "./fault-list.js";

/** A record as read from a file, before it is known to be sound. */
export interface RecordRead {
  readonly weather: DailyWeather;
  /** The line of each day. */
  readonly lines: readonly number[];
  readonly given: ReadonlySet<WeatherColumn>;
  /** By column, the days whose cell has a fault already. */
  readonly broken: ReadonlyMap<WeatherColumn, ReadonlySet<number>>;
}

/** Checks that need more than one cell of a day, or the whole record. */
export function checkRecord({ weather, lines, given, broken }: RecordRead, faults: FaultList): void {
  const missing = (d: number, column: WeatherColumn, rule: string): void => {
    if (!given.has(column) || !Number.isNaN(weather[column][d]) || broken.get(column)?.has(d)) return;
    faults.add("missing-value", { line: lines[d], column }, "nothing", () => rule);
  };
  const belowMax = (d: number, low: WeatherColumn, high: WeatherColumn): void => {
    const lowest = weather[low][d];
    const highest = weather[high][d];
    if (!(lowest > highest)) return;
    const place = { line: lines[d], column: low };
    faults.add("min-above-max", place, String(lowest), () => `must not be above ${high}, ${highest}`);
  };
  const unless = given.has("et0Mm") ? ", unless et0Mm is given" : "";
  const temperaturesGiven = given.has("tMinC") && given.has("tMaxC");
  for (let d = 0; d < weather.days; d++) {
    missing(d, "rainMm", "is required on every day; rain is never filled in (0 where it was dry)");
    if (!(weather.et0Mm[d] >= 0)) {
      if (temperaturesGiven) {
        missing(d, "tMinC", `is required on every day; a temperature is never filled in${unless}`);
        missing(d, "tMaxC", `is required on every day; a temperature is never filled in${unless}`);
      } else if (!(weather.panMm[d] >= 0)) {
        missing(d, given.has("et0Mm") ? "et0Mm" : "panMm", "is required on every day without temperatures");
      }
    }
    belowMax(d, "tMinC", "tMaxC");
    belowMax(d, "rhMinPct", "rhMaxPct");
  }
  if (!looksLikeFraction(weather.rhMaxPct)) return;
  const place = { line: 0, column: "rhMaxPct" };
  faults.add("looks-like-fraction", place, "no day above 1", () => "must be in percent, 0 to 100, not a fraction");
}

function looksLikeFraction(rhMaxPct: Float64Array): boolean {
  let highest = 0;
  for (const value of rhMaxPct) if (value > highest) highest = value;
  return highest > 0 && highest <= 1;
}
