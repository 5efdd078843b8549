import type { Forcing } from "../water/engine.js";
import { clearFluxes, emptyFluxes, type WaterEngine, type WaterFluxes, type WaterState } from "../water/engine.js";
import type { Grid } from "../water/grid.js";
import type { TreeName } from "../water/result.js";
import { type Demand, rainRate, sunShareOf } from "./demand.js";
import type { Prepared } from "./ground-of.js";
import { bringIntoForce } from "./limits-by-day.js";
import { bringRootsIntoForce } from "./roots-by-day.js";
import type { Valve } from "./valve.js";

/** What one tree receives: part i of the schedule ends at `momentsH[i]`. */
export interface Supply {
  readonly momentsH: Float64Array;
  readonly emitterCm3PerH: Float64Array;
}

/** Sees every stretch of constant forcing of one tree, before and after its water moves. */
export interface StretchObserver {
  readonly before: (tree: TreeRun, fromH: number, toH: number) => void;
  readonly after: (tree: TreeRun, fromH: number, toH: number) => void;
}

/** One tree of the line on its way through the season. */
export interface TreeRun {
  readonly name: TreeName;
  supply: Supply;
  readonly state: WaterState;
  readonly fluxes: WaterFluxes;
  readonly forcing: Forcing;
  observer?: StretchObserver;
}

/** @example treeRun("mean", prepared, supply, theta) */
export function treeRun(name: TreeName, prepared: Prepared, supply: Supply, theta: Float64Array): TreeRun {
  const { lanes } = prepared.grid;
  return {
    name,
    supply,
    state: { timeH: 0, theta: Float64Array.from(theta) },
    fluxes: emptyFluxes(prepared.grid),
    forcing: {
      emitterCm3PerH: 0,
      rainCm3PerH: new Float64Array(lanes),
      evaporationCm3PerH: new Float64Array(lanes),
      transpirationCm3PerH: 0,
    },
  };
}

/** Moments after `fromH` at which forcing changes, hours, rising, one entry each; the last is `toH`. */
export function timelineOf(
  valveH: ArrayLike<number>,
  breaks: readonly number[],
  fromH: number,
  toH: number,
): Float64Array {
  const moments = [...Array.from(valveH), ...breaks];
  for (let h = fromH + 1; h <= toH; h++) moments.push(h);
  const sorted = Float64Array.from(moments.filter((t) => t > fromH && t <= toH)).sort();
  let kept = 0;
  for (let i = 0; i < sorted.length; i++) {
    const rounded = Math.round(sorted[i]);
    const t = Math.abs(sorted[i] - rounded) < 1e-6 ? rounded : sorted[i];
    if (kept > 0 && t - sorted[kept - 1] < 1e-6) continue;
    sorted[kept++] = t;
  }
  return sorted.slice(0, kept);
}

/**
 * Carries one tree over one hour of the season. Forcing is constant between moments of the timeline and is the exact
 * mean of sun and rain over that stretch. Returns the place in the timeline where the next hour begins.
 */
function advanceHour(
  tree: TreeRun,
  engine: WaterEngine,
  prepared: Prepared,
  demand: Demand,
  { timeline, place }: Pick<Valve, "timeline" | "place">,
  hour: number,
): number {
  const { state, fluxes, forcing, observer } = tree;
  const { lanes, laneAreaCm2 } = prepared.grid;
  const day = (hour / 24) | 0;
  const soilShare = demand.rainShares?.soil;
  clearFluxes(fluxes);
  bringIntoForce(demand.limits, day);
  bringRootsIntoForce(prepared.rootsByDay, day);
  state.timeH = hour;
  let fromH = hour;
  let at = place;
  const { momentsH, emitterCm3PerH } = tree.supply;
  let part = momentsUpTo(momentsH, hour);
  while (at < timeline.length && timeline[at] <= hour + 1) {
    const toH = timeline[at];
    const middle = 0.5 * (fromH + toH);
    while (part < momentsH.length && momentsH[part] <= middle) part++;
    const fromClock = fromH - day * 24;
    const toClock = toH - day * 24;
    const sun = sunShareOf(demand, day, fromClock, toClock) / (toH - fromH);
    const rain = rainRate(demand, day, fromClock, toClock);
    forcing.emitterCm3PerH = emitterCm3PerH[part];
    forcing.transpirationCm3PerH = demand.hourlyCm3?.[hour] ?? demand.transpirationCm3[day] * sun;
    for (let j = 0; j < lanes; j++) {
      const reaching = soilShare === undefined ? rain : rain * soilShare[day * lanes + j];
      forcing.rainCm3PerH[j] = reaching * laneAreaCm2[j];
      forcing.evaporationCm3PerH[j] = demand.evaporationCm3[day * lanes + j] * sun;
    }
    observer?.before(tree, fromH, toH);
    engine.advance(state, forcing, toH, fluxes);
    observer?.after(tree, fromH, toH);
    fromH = toH;
    at++;
  }
  return at;
}

/**
 * Carries every tree over one hour under one valve. Returns why the engine could not go on, if it could not: an engine that
 * finds no balance says so by a RangeError, and that is how a run ends, not a mistake of the caller.
 */
export function carryTrees(
  trees: readonly TreeRun[],
  engine: WaterEngine,
  prepared: Prepared,
  demand: Demand,
  valve: Valve,
  hour: number,
): string | undefined {
  valve.decided?.before(hour, trees);
  let next = valve.place;
  for (const tree of trees) {
    try {
      next = advanceHour(tree, engine, prepared, demand, valve, hour);
    } catch (error) {
      if (error instanceof RangeError) return error.message;
      throw error;
    }
  }
  valve.place = next;
  valve.decided?.after(hour, trees);
  return undefined;
}

/** How many of some rising moments lie at or before an hour; of valve events, an odd number means open. @example momentsUpTo(valveH, 7) */
export function momentsUpTo(moments: ArrayLike<number>, hour: number): number {
  let low = 0;
  let high = moments.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (moments[middle] <= hour) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Water in all cells, cm3 per tree. @example storageCm3(state.theta, grid) */
export function storageCm3(theta: Float64Array, grid: Grid): number {
  let sum = 0;
  for (let c = 0; c < theta.length; c++) sum += theta[c] * grid.volumeCm3[c];
  return sum;
}
