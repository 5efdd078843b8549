import { type ChanceStream, chanceStream } from "../../numeric/chance-stream.js";
import { dayNumber } from "../../numeric/day-number.js";
import { type DailyWeather, emptyDailyWeather } from "../daily-weather.js";
import { daysOfYear } from "../day-of-year.js";
import { calendarMonths } from "./calendar-months.js";
import { deviationAt } from "./fit-drawn.js";
import type { GeneratorFit, NormalVariable } from "./generator-fit.js";
import { harmonicAt } from "./harmonic.js";
import { wetFraction } from "./rain-chain.js";
import { rankedValue } from "./ranked-variable.js";
import { residualsInto } from "./residual-process.js";

/** What is drawn and from where on. */
export interface GenerateOptions {
  /** ISO date of the first day. */
  readonly startDate: string;
  readonly days: number;
  readonly seed: string | number;
  /** One of many records of a seed; default 0. */
  readonly member?: number;
}

/** Weather that was drawn. */
export interface GeneratedWeather {
  readonly weather: DailyWeather;
  /** Draws that were brought back into bounds, with counts. */
  readonly notes: readonly string[];
}

/**
 * Draws a daily record from a fit. The same fit, seed and member give the same record. A draw of radiation beyond the bounds of a fit from monthly figures is brought back to them, and a maximum below the
 * minimum changes places with it; both are counted in the notes.
 *
 * @throws RangeError if startDate is no date or days is not a whole number above 0
 * @example generateWeather(fit, { startDate: "2026-01-01", days: 365, seed: 7 })
 */
export function generateWeather(
  fit: GeneratorFit,
  { startDate, days, seed, member = 0 }: GenerateOptions,
): GeneratedWeather {
  if (Number.isNaN(dayNumber(startDate)))
    throw new RangeError(`generateWeather requires startDate to be an ISO date: got ${startDate}`);
  if (!Number.isInteger(days) || days < 1)
    throw new RangeError(`generateWeather requires days to be a whole number above 0: got ${days}`);
  const weather = emptyDailyWeather(startDate, days);
  const monthOf = calendarMonths(startDate, days);
  const dayOfYear = daysOfYear(startDate, days);
  const stream = (name: string): ChanceStream => chanceStream(seed, member, name);
  drawRain(fit, weather.rainMm, monthOf, stream("occurrence"), stream("amount"));
  const bounded = drawResiduals(fit, weather, monthOf, dayOfYear, stream("residual"));
  for (const { column, dry, wet, kind } of fit.following) {
    for (let d = 0; d < days; d++) {
      const mean = (weather.rainMm[d] > 0 ? wet : dry)[monthOf[d]];
      weather[column][d] = kind === "mean" ? mean : weather.tMinC[d] - mean;
    }
  }
  return { weather, notes: notesOf(bounded, days) };
}

function drawRain(
  fit: GeneratorFit,
  rainMm: Float64Array,
  monthOf: Uint8Array,
  occurrence: ChanceStream,
  amount: ChanceStream,
): void {
  let wet = occurrence.uniform() < wetFraction(fit.months[monthOf[0]]);
  for (let d = 0; d < rainMm.length; d++) {
    const month = fit.months[monthOf[d]];
    if (d > 0) wet = occurrence.uniform() < (wet ? month.wetAfterWet : month.wetAfterDry);
    rainMm[d] = wet ? fit.wetDayMm + (month.scaleMm > 0 ? amount.gamma(month.shape, month.scaleMm) : 0) : 0;
  }
}

interface Bounded {
  sun: number;
  swapped: number;
}

function drawResiduals(
  { drawn, process }: GeneratorFit,
  weather: DailyWeather,
  monthOf: Uint8Array,
  dayOfYear: Int16Array,
  chance: ChanceStream,
): Bounded {
  const n = drawn.length;
  const normals = new Float64Array(n);
  const residuals = new Float64Array(n);
  const before = new Float64Array(n);
  const bounded: Bounded = { sun: 0, swapped: 0 };
  for (let d = 0; d < weather.days; d++) {
    for (let i = 0; i < n; i++) normals[i] = chance.normal();
    residualsInto(residuals, process, d === 0 ? process.start : process.b, before, normals);
    before.set(residuals);
    for (let i = 0; i < n; i++) {
      const variable = drawn[i];
      const wet = weather.rainMm[d] > 0;
      const month = monthOf[d];
      const value =
        variable.kind === "ranked"
          ? rankedValue(variable, residuals[i], wet, dayOfYear[d], month)
          : normalValue(variable, residuals[i], wet, dayOfYear[d]);
      const kept =
        variable.kind === "normal" && variable.lowest.length > 0
          ? within(value, variable.lowest[month], variable.highest[month])
          : value;
      weather[variable.column][d] = kept;
      if (kept !== value) bounded.sun++;
    }
    const { tMinC, tMaxC } = weather;
    if (tMinC[d] > tMaxC[d]) {
      [tMinC[d], tMaxC[d]] = [tMaxC[d], tMinC[d]];
      bounded.swapped++;
    }
  }
  return bounded;
}

const within = (value: number, lowest: number, highest: number): number =>
  value < lowest ? lowest : value > highest ? highest : value;

function normalValue(variable: NormalVariable, residual: number, wet: boolean, dayOfYear: number): number {
  const { mean, variance } = wet ? variable.wet : variable.dry;
  return harmonicAt(mean, dayOfYear) + deviationAt(variance, dayOfYear) * residual;
}

const notesOf = ({ sun, swapped }: Bounded, days: number): string[] => [
  ...(sun > 0
    ? [`radiation or sunshine: ${sun} of ${days} draws beyond the month's bounds were brought back to them`]
    : []),
  ...(swapped > 0
    ? [`temperatures: on ${swapped} of ${days} days the maximum was drawn below the minimum, and they changed places`]
    : []),
];
