import type { WeatherColumn } from "../daily-weather.js";
import type { Harmonic } from "./harmonic.js";
import type { RainChain } from "./rain-chain.js";
import type { ResidualProcess } from "./residual-process.js";

/** Rain of one month of the year. */
export interface MonthOfRain extends RainChain {
  /** Gamma distribution of what a wet day has above the least wet amount: mean shape x scale. */
  readonly shape: number;
  readonly scaleMm: number;
}

/** Columns that are drawn with their own day-to-day spread. */
export type DrawnColumn = "tMaxC" | "tMinC" | "solarMJPerM2" | "sunshineH";

/** Mean and variance of one column through the year, on dry and on wet days; normal about its mean. */
export interface NormalVariable {
  readonly kind: "normal";
  readonly column: DrawnColumn;
  readonly dry: { readonly mean: Harmonic; readonly variance: Harmonic };
  readonly wet: { readonly mean: Harmonic; readonly variance: Harmonic };
  /** Of each month, what a value cannot leave; empty where nothing bounds it. */
  readonly lowest: readonly number[];
  readonly highest: readonly number[];
}

/** A column with a distribution of its own: shares of a smooth course at evenly spaced ranks, for twelve months on dry and on wet days. */
export interface RankedVariable {
  readonly kind: "ranked";
  readonly column: DrawnColumn;
  readonly course: Harmonic;
  readonly dry: readonly (readonly number[])[];
  readonly wet: readonly (readonly number[])[];
}

/** What a generator draws beside rain. */
export type DrawnVariable = NormalVariable | RankedVariable;

/** A column that only follows the month and whether the day is wet, without a spread of its own. */
export interface FollowingVariable {
  readonly column: WeatherColumn;
  /** Twelve means each; of the dew point, how far it lies below the minimum temperature. */
  readonly dry: readonly number[];
  readonly wet: readonly number[];
  readonly kind: "mean" | "below-minimum";
}

/** Everything that `generateWeather` needs; plain JSON. */
export interface GeneratorFit {
  /** Least rain of a wet day, mm. */
  readonly wetDayMm: number;
  readonly months: readonly MonthOfRain[];
  readonly drawn: readonly DrawnVariable[];
  readonly process: ResidualProcess;
  readonly following: readonly FollowingVariable[];
}
