import type { Ground } from "./ground.js";

/** What the flows of a step need of every cell, all belonging to one theta; slopes are per unit of theta. */
export interface BucketValues {
  readonly conductivityCmPerH: Float64Array;
  readonly conductivitySlopeCmPerH: Float64Array;
  readonly headCm: Float64Array;
  readonly headSlopeCm: Float64Array;
  readonly matricFluxCm2PerH: Float64Array;
  readonly matricFluxSlopeCm2PerH: Float64Array;
}

/** @example bucketValues(64).headCm.length // 64 */
export const bucketValues = (cells: number): BucketValues => ({
  conductivityCmPerH: new Float64Array(cells),
  conductivitySlopeCmPerH: new Float64Array(cells),
  headCm: new Float64Array(cells),
  headSlopeCm: new Float64Array(cells),
  matricFluxCm2PerH: new Float64Array(cells),
  matricFluxSlopeCm2PerH: new Float64Array(cells),
});

/** The ground's tables with the rise over each interval beside each value, so that a look-up reads one run of six numbers. */
export interface RiseTable {
  readonly lookup: Float64Array;
  readonly start: Int32Array;
}

/** @example riseTable(ground).lookup.length // 6 * 2048 for one soil */
export function riseTable(ground: Ground): RiseTable {
  const { intervals, tables, tableStart } = ground;
  const lookup = new Float64Array(6 * intervals * tables.length);
  for (let t = 0; t < tables.length; t++) {
    const from = t * (intervals + 1) * 3;
    for (let k = 0; k < intervals; k++) {
      for (let q = 0; q < 3; q++) {
        const at = from + 3 * k + q;
        const to = 6 * (t * intervals + k) + 2 * q;
        lookup[to] = ground.lookup[at];
        lookup[to + 1] = ground.lookup[at + 3] - ground.lookup[at];
      }
    }
  }
  const start = tableStart.map((at) => (at / ((intervals + 1) * 3)) * 6 * intervals);
  return { lookup, start };
}

/** Head of every cell, cm; linear between table points. @example headsInto(values.headCm, table, ground, state.theta) */
export function headsInto(headCm: Float64Array, table: RiseTable, ground: Ground, theta: Float64Array): void {
  const { lookup, start } = table;
  const { intervals, thetaResidual, pointsPerTheta } = ground;
  for (let c = 0; c < theta.length; c++) {
    const point = (theta[c] - thetaResidual[c]) * pointsPerTheta[c];
    let k = point | 0;
    if (k >= intervals) k = intervals - 1;
    const at = start[c] + 6 * k;
    headCm[c] = lookup[at + 2] + (point - k) * lookup[at + 3];
  }
}
