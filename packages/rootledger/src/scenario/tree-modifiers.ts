import { dayNumber } from "../numeric/day-number.js";
import { floweringFactor, type HeatLimit, heatFactor, leafLossFactor } from "../tree/demand-modifiers.js";
import { isMonthDay, occurrences } from "../tree/month-day.js";
import { sunShare } from "../weather/sun-share.js";
import type { Season } from "./scenario.js";

/** What moves transpiration off its coefficient; each is off unless the file asks for it. */
export interface TreeModifiers {
  readonly leafLoss?: {
    readonly date: string;
    readonly leavesLeftFraction: number;
    readonly leafAreaIndex: number;
    readonly recoveredBy?: string;
  };
  readonly heat?: HeatLimit;
  readonly flowering?: { readonly starts: string; readonly days: number; readonly increaseFraction: number };
}

/** Temperatures and sun of the days of a season. */
export interface DayHeat {
  readonly tMinC: ArrayLike<number>;
  readonly tMaxC: ArrayLike<number>;
  readonly sunriseH: ArrayLike<number>;
  readonly sunsetH: ArrayLike<number>;
}

/** Hour of the day's highest temperature. Our choice: early afternoon. */
const hottestH = 15;

/**
 * Factor on the transpiration of every day: leaves lost (FAO-56, Allen et al. 1998, eq. 97), flowers, and hours in which heat closes the
 * stomata, weighted by the sun; temperature runs as a sine between the day's extremes. Without modifiers all ones.
 *
 * @example modifierByDay({}, { startDate: "2025-10-01", days: 2 }, heat) // Float64Array [1, 1]
 */
export function modifierByDay(modifiers: TreeModifiers, season: Season, heat: DayHeat): Float64Array {
  const first = dayNumber(season.startDate);
  const factor = new Float64Array(season.days).fill(1);
  const { leafLoss, flowering, heat: limit } = modifiers;
  for (let d = 0; d < season.days; d++) {
    if (leafLoss !== undefined) factor[d] *= leavesFactor(leafLoss, first + d);
    if (limit !== undefined) factor[d] *= heatOfDay(limit, heat, d);
  }
  if (flowering === undefined) return factor;
  const { starts, days, increaseFraction } = flowering;
  const begins = isMonthDay(starts) ? occurrences(starts, first - days, first + season.days) : [dayNumber(starts)];
  const inFlower = floweringFactor(increaseFraction);
  for (const begin of begins) {
    for (let d = Math.max(0, begin - first); d < season.days && first + d < begin + days; d++) factor[d] *= inFlower;
  }
  return factor;
}

function leavesFactor(loss: NonNullable<TreeModifiers["leafLoss"]>, day: number): number {
  const from = dayNumber(loss.date);
  if (day < from) return 1;
  const least = leafLossFactor(loss.leavesLeftFraction, loss.leafAreaIndex);
  if (loss.recoveredBy === undefined) return least;
  const share = (day - from) / (dayNumber(loss.recoveredBy) - from);
  return share < 1 ? least + share * (1 - least) : 1;
}

function heatOfDay(limit: HeatLimit, { tMinC, tMaxC, sunriseH, sunsetH }: DayHeat, d: number): number {
  const mean = (tMinC[d] + tMaxC[d]) / 2;
  const reach = (tMaxC[d] - tMinC[d]) / 2;
  let sum = 0;
  for (let h = 0; h < 24; h++) {
    const airC = mean + reach * Math.cos((Math.PI / 12) * (h + 0.5 - hottestH));
    sum += sunShare(h, h + 1, sunriseH[d], sunsetH[d]) * heatFactor(airC, limit);
  }
  return sum;
}
