import { circleStripShare } from "../numeric/circle-strip.js";
import { dayNumber } from "../numeric/day-number.js";
import { canopyCover } from "../tree/canopy-cover.js";
import { kcbByDay } from "../tree/kcb-by-day.js";
import { cmPerM, mmPerCm } from "../units.js";
import type { Grid } from "../water/grid.js";
import { sunShare } from "../weather/sun-share.js";
import type { Prepared } from "./ground-of.js";
import { type LimitsByDay, limitsByDay } from "./limits-by-day.js";
import { type RainShares, rainShares } from "./rain-shares.js";
import type { Block, Scenario } from "./scenario.js";

/** FAO-56 eq. 72, upper limit of Kc after wetting, without its climate term (standard climate: 2 m/s, 45 % RHmin). */
const standardKcMax = 1.2;

/** So slow that the rain of every day lasts all day. */
const allDayCmPerH = 1e-9;

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
  /** Own records by hour of the season: transpiration cm3/h per tree, rain cm/h. */
  readonly hourlyCm3?: Float64Array;
  readonly hourlyRainCm?: Float64Array;
  readonly limits: LimitsByDay;
  /** Left out where all rain reaches the soil. */
  readonly rainShares?: RainShares;
}

/**
 * Transpiration = Kcb x ET0 x ground of the tree, or as given by hour. Evaporation of a lane at most min(Kc max - Kcb, exposed share x Kc max)
 * x ET0 (FAO-56 eq. 71, lane by lane: the exposed share is the part not under the canopy disc), less what a layer on it takes off.
 *
 * @throws RangeError if what the parser worked out by day does not reach over the season.
 * @example demandOf(scenario, prepared).transpirationCm3[0]
 */
export function demandOf(scenario: Scenario, prepared: Pick<Prepared, "grid" | "exposedByLane">): Demand {
  const { grid } = prepared;
  const { lanes, laneAreaCm2 } = grid;
  const { season, weather, block } = scenario;
  const { tree, surface } = block;
  const { days } = season;
  requireDays(scenario);
  const skip = dayNumber(season.startDate) - dayNumber(weather.startDate);
  const et0Mm = weather.et0Mm.slice(skip, skip + days);
  const rainMm = weather.rainMm.slice(skip, skip + days);
  const kcb = tree.days?.kcb ?? kcbByDay(season.startDate, days, tree.kcb);
  const exposed = exposedByDay(block, days, prepared);
  const layer = surface?.layer;
  const groundCm2 = block.treeSpacingM * block.rowSpacingM * 1e4;
  const transpirationCm3 = new Float64Array(days);
  const hours = (mm: Float64Array | undefined, perMm: number) =>
    mm?.slice(skip * 24, (skip + days) * 24).map((value) => value * perMm);
  const hourlyCm3 = hours(weather.hourly?.transpirationMm, groundCm2 / mmPerCm);
  const hourlyRainCm = hours(weather.hourly?.rainMm, 1 / mmPerCm);
  const evaporationCm3 = new Float64Array(days * lanes);
  for (let d = 0; d < days; d++) {
    const et0Cm = et0Mm[d] / 10;
    const kcMax = tree.days?.kcMax[d] ?? standardKcMax;
    transpirationCm3[d] = hourlyCm3
      ? hourlyCm3.subarray(d * 24, d * 24 + 24).reduce((sum, cm3) => sum + cm3, 0)
      : kcb[d] * et0Cm * groundCm2;
    const energy = kcMax > kcb[d] ? kcMax - kcb[d] : 0;
    const layerCut = layer === undefined ? 0 : 1 - layer.evaporationFactor[d];
    for (let j = 0; j < lanes; j++) {
      const at = d * lanes + j;
      const byExposure = exposed[at] * kcMax;
      const underLayer = layer?.where === "under-canopy" ? 1 - exposed[at] : 1;
      const most = (byExposure < energy ? byExposure : energy) * et0Cm * laneAreaCm2[j];
      evaporationCm3[at] = most * (1 - underLayer * layerCut);
    }
  }
  return {
    days,
    et0Mm,
    rainMm,
    sunriseH: weather.sunriseH.slice(skip, skip + days),
    sunsetH: weather.sunsetH.slice(skip, skip + days),
    transpirationCm3,
    evaporationCm3,
    ...(hourlyCm3 && { hourlyCm3 }),
    ...(hourlyRainCm && { hourlyRainCm }),
    limits: limitsByDay(scenario, transpirationCm3, groundCm2),
    rainIntensityCmPerH: surface?.curveNumber === undefined ? weather.rainIntensityMmPerH / 10 : allDayCmPerH,
    ...(surface?.rain === undefined ? {} : { rainShares: rainShares(surface.rain, laneAreaCm2, exposed) }),
  };
}

/** `[day * lanes + lane]`: share of a lane that the canopy disc of that day does not cover. */
function exposedByDay(block: Block, days: number, { grid, exposedByLane }: Pick<Prepared, "grid" | "exposedByLane">) {
  const { lanes } = grid;
  const diameterM = block.tree.days?.canopyDiameterM;
  const exposed = new Float64Array(days * lanes);
  for (let d = 0; d < days; d++) {
    for (let j = 0; j < lanes; j++) {
      exposed[d * lanes + j] = diameterM === undefined ? exposedByLane[j] : laneExposure(grid, j, block, diameterM[d]);
    }
  }
  return exposed;
}

function laneExposure(grid: Grid, lane: number, block: Block, diameterM: number): number {
  if (grid.geometry === "ring") return 1 - canopyCover(diameterM, block);
  const { laneEdgesCm } = grid;
  const radiusCm = (diameterM * cmPerM) / 2;
  return 1 - circleStripShare(laneEdgesCm[lane], laneEdgesCm[lane + 1], radiusCm, block.treeSpacingM * cmPerM);
}

function requireDays({ season, block }: Scenario): void {
  const arrays = [block.tree.days?.kcb, block.surface?.layer?.storageMm, block.surface?.rain?.runoff];
  const short = arrays.find((array) => array !== undefined && array.length < season.days);
  if (short) throw new RangeError(`demandOf requires ${season.days} days of tree and surface: got ${short.length}`);
}

/** Hours of rain on a day: it falls from midnight at the stated intensity, or evenly over the day if that does not fit. */
const rainHours = (demand: Demand, day: number): number => {
  const hours = demand.rainMm[day] / 10 / demand.rainIntensityCmPerH;
  return hours < 24 ? hours : 24;
};

/** Rain rate between two moments of one day (of one hour, where rain is given by hour), cm/h. @example rainRate(demand, 3, 0, 1) */
export function rainRate(demand: Demand, day: number, fromH: number, toH: number): number {
  if (demand.hourlyRainCm) return demand.hourlyRainCm[day * 24 + (fromH | 0)];
  const hours = rainHours(demand, day);
  if (hours <= 0 || fromH >= hours) return 0;
  const wet = (toH < hours ? toH : hours) - fromH;
  return ((demand.rainMm[day] / 10 / hours) * wet) / (toH - fromH);
}

/** Share of the day's demand between two clock hours: the sun's half sine from sunrise to sunset. */
export const sunShareOf = (demand: Demand, day: number, fromH: number, toH: number): number =>
  sunShare(fromH, toH, demand.sunriseH[day], demand.sunsetH[day]);

/** Moments of some days at which forcing changes, besides valve events and whole hours. @example forcingBreaks(demand, 0, demand.days) */
export function forcingBreaks(demand: Demand, fromDay: number, toDay: number): number[] {
  const breaks: number[] = [];
  for (let d = fromDay; d < toDay && d < demand.days; d++) {
    breaks.push(d * 24 + demand.sunriseH[d], d * 24 + demand.sunsetH[d]);
    const hours = rainHours(demand, d);
    if (hours > 0 && hours < 24) breaks.push(d * 24 + hours);
  }
  return breaks;
}
