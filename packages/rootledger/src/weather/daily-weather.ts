/** The value columns of a daily record, in the order in which they are written; the unit is the end of each name. */
export const weatherColumns = [
  "tMinC",
  "tMaxC",
  "rhMinPct",
  "rhMaxPct",
  "rhMeanPct",
  "dewPointC",
  "windMPerS",
  "solarMJPerM2",
  "sunshineH",
  "rainMm",
  "panMm",
  "et0Mm",
] as const;

/** Name of a value column of a daily record. */
export type WeatherColumn = (typeof weatherColumns)[number];

/**
 * A gap-free daily record from local midnight to midnight: one number per day and column, NaN where nothing was measured.
 * Relative humidity in percent as stations print it; dew point of the day's mean; wind at the station's own height; `panMm` is
 * the evaporation of a Class A pan.
 */
export interface DailyWeather extends Readonly<Record<WeatherColumn, Float64Array>> {
  /** ISO date of the first day. */
  readonly startDate: string;
  readonly days: number;
}

/** @example emptyDailyWeather("2025-10-01", 3).rainMm // Float64Array [NaN, NaN, NaN] */
export function emptyDailyWeather(startDate: string, days: number): DailyWeather {
  const column = (): Float64Array => new Float64Array(days).fill(Number.NaN);
  return {
    startDate,
    days,
    tMinC: column(),
    tMaxC: column(),
    rhMinPct: column(),
    rhMaxPct: column(),
    rhMeanPct: column(),
    dewPointC: column(),
    windMPerS: column(),
    solarMJPerM2: column(),
    sunshineH: column(),
    rainMm: column(),
    panMm: column(),
    et0Mm: column(),
  };
}
