import { dayNumber } from "../numeric/day-number.js";
import { kcbByDay } from "../tree/kcb-by-day.js";
import { sunShare } from "../weather/sun-share.js";
import type { Prepared } from "./ground-of.js";
import type { Scenario } from "./scenario.js";

/** FAO-56 eq. 72, upper limit of Kc after wetting, without its climate term (standard climate: 2 m/s, 45 % RHmin). */
const kcMax = 1.2;

/** What weather and tree ask of the ground, by day of the season; water in cm3 per tree and day. */
export interface Demand {
  readonly days: number;
  readonly et0Mm: Float64Array;
  readonly rainMm: Float64Array;
  readonly sunriseH: Float64Array;
  readonly sunsetH: Float64Array;
  readonly transpirationCm3: Float64Array;
  /** `evaporationCm3[day * lanes + lane]`: the most the bare soil could lose. */
  readonly evaporationCm3: Float64Array;
  readonly rainIntensityCmPerH: number;
}

/**
 * Transpiration = Kcb x ET0 x ground of the tree. Evaporation of a lane at most min(Kc max - Kcb, exposed share x Kc max)
 * x ET0 (FAO-56 eq. 71, lane by lane: the exposed share is the part not under the canopy disc).
 *
 * @example demandOf(scenario, prepared).transpirationCm3[0]
 */
export function demandOf(scenario: Scenario, prepared: Pick<Prepared, "grid" | "exposedByLane">): Demand {
  const { grid, exposedByLane } = prepared;
  const { season, weather, block } = scenario;
  const skip = dayNumber(season.startDate) - dayNumber(weather.startDate);
  const days = season.days;
  const et0Mm = weather.et0Mm.slice(skip, skip + days);
  const kcb = kcbByDay(season.startDate, days, block.tree.kcb);
  const groundCm2 = block.treeSpacingM * block.rowSpacingM * 1e4;
  const transpirationCm3 = new Float64Array(days);
  const evaporationCm3 = new Float64Array(days * grid.lanes);
  for (let d = 0; d < days; d++) {
    const et0Cm = et0Mm[d] / 10;
    transpirationCm3[d] = kcb[d] * et0Cm * groundCm2;
    const energy = kcMax > kcb[d] ? kcMax - kcb[d] : 0;
    for (let j = 0; j < grid.lanes; j++) {
      const byExposure = exposedByLane[j] * kcMax;
      evaporationCm3[d * grid.lanes + j] = (byExposure < energy ? byExposure : energy) * et0Cm * grid.laneAreaCm2[j];
    }
  }
  return {
    days,
    et0Mm,
    rainMm: weather.rainMm.slice(skip, skip + days),
    sunriseH: weather.sunriseH.slice(skip, skip + days),
    sunsetH: weather.sunsetH.slice(skip, skip + days),
    transpirationCm3,
    evaporationCm3,
    rainIntensityCmPerH: weather.rainIntensityMmPerH / 10,
  };
}

/** Hours of rain on a day: it falls from midnight at the stated intensity, or evenly over the day if that does not fit. */
const rainHours = (demand: Demand, day: number): number => {
  const hours = demand.rainMm[day] / 10 / demand.rainIntensityCmPerH;
  return hours < 24 ? hours : 24;
};

/** Rain rate between two moments of one day, cm/h. @example rainRate(demand, 3, 0, 1) */
export function rainRate(demand: Demand, day: number, fromH: number, toH: number): number {
  const hours = rainHours(demand, day);
  if (hours <= 0 || fromH >= hours) return 0;
  const wet = (toH < hours ? toH : hours) - fromH;
  return ((demand.rainMm[day] / 10 / hours) * wet) / (toH - fromH);
}

/** Share of the day's demand between two clock hours: the sun's half sine from sunrise to sunset. */
export const sunShareOf = (demand: Demand, day: number, fromH: number, toH: number): number =>
  sunShare(fromH, toH, demand.sunriseH[day], demand.sunsetH[day]);

/** Moments within the season at which forcing changes, besides valve events and whole hours. */
export function forcingBreaks(demand: Demand): number[] {
  const breaks: number[] = [];
  for (let d = 0; d < demand.days; d++) {
    breaks.push(d * 24 + demand.sunriseH[d], d * 24 + demand.sunsetH[d]);
    const hours = rainHours(demand, d);
    if (hours > 0 && hours < 24) breaks.push(d * 24 + hours);
  }
  return breaks;
}
