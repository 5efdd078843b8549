import type { Result } from "../water/result.js";

/** How one cell would do as the place of a sensor. */
export interface SensorSite {
  readonly cell: number;
  /** Middle of the cell. */
  readonly depthCm: number;
  /** Middle of the cell from the line nearest the tree row, away from it, cm; negative towards it. */
  readonly fromLineCm: number;
  /** Root mean square distance of the cell's water from the root-weighted mean, m3/m3. */
  readonly distanceTheta: number;
  /** Widest change of the cell's water over the hours, m3/m3: how much the place tells. */
  readonly swingTheta: number;
}

/** Places for sensors and what each is good for. */
export interface SensorSites {
  /** The rooted cell whose water runs nearest to the root-weighted mean. */
  readonly representative: SensorSite;
  /** The rooted cell whose water moves most. */
  readonly liveliest: SensorSite;
  /** The cell just below the rooted depth that moves most: water that passes it is lost to the roots. */
  readonly belowRoots: SensorSite | undefined;
}

/**
 * Where sensors tell most about the mean tree, from the hours that a run kept for every cell.
 *
 * @throws RangeError if the run kept no cells (`simulate(scenario, { cells })`).
 * @example sensorSites(simulate(scenario, { cells: { fromHour: 0, hours: 336 } })).representative.depthCm
 */
export function sensorSites({ cells, section }: Pick<Result, "cells" | "section">): SensorSites {
  if (cells === undefined) throw new RangeError("sensorSites requires a run that kept cells: got none");
  const { rootShare, layers, lanes } = section;
  const count = layers * lanes;
  const mean = new Float64Array(cells.hours);
  for (let h = 0; h < cells.hours; h++)
    for (let c = 0; c < count; c++) mean[h] += rootShare[c] * cells.theta[h * count + c];
  const sites = Array.from({ length: count }, (_, cell) => siteOf(cell, cells, section, mean));
  const rooted = sites.filter(({ cell }) => rootShare[cell] > 0);
  const lastRooted = Math.max(...rooted.map(({ cell }) => Math.floor(cell / lanes)));
  const below = sites.filter(({ cell }) => Math.floor(cell / lanes) === lastRooted + 1);
  const best = (of: readonly SensorSite[], score: (site: SensorSite) => number): SensorSite =>
    of.reduce((a, b) => (score(b) > score(a) ? b : a));
  return {
    representative: best(rooted, (site) => -site.distanceTheta),
    liveliest: best(rooted, (site) => site.swingTheta),
    belowRoots: below.length === 0 ? undefined : best(below, (site) => site.swingTheta),
  };
}

function siteOf(
  cell: number,
  { theta, hours }: NonNullable<Result["cells"]>,
  { layerEdgesCm, laneEdgesCm, lanes, layers, lineAtCm, geometry }: Result["section"],
  mean: Float64Array,
): SensorSite {
  const layer = Math.floor(cell / lanes);
  const lane = cell % lanes;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  let squares = 0;
  for (let h = 0; h < hours; h++) {
    const here = theta[h * layers * lanes + cell];
    if (here < low) low = here;
    if (here > high) high = here;
    squares += (here - mean[h]) ** 2;
  }
  const across = (laneEdgesCm[lane] + laneEdgesCm[lane + 1]) / 2;
  return {
    cell,
    depthCm: (layerEdgesCm[layer] + layerEdgesCm[layer + 1]) / 2,
    fromLineCm: geometry === "ring" ? across : across - lineAtCm[0],
    distanceTheta: Math.sqrt(squares / hours),
    swingTheta: high - low,
  };
}
