import type { EmitterLines } from "./cascade.js";
import type { Grid } from "./grid.js";

/**
 * Where the water offered to the surface goes, by lane: cm3/h, and its derivative by the head of that lane's top cell.
 * A lane that cannot take its water is ponded: it takes what flows in under zero surface head and passes the rest on. The
 * lane where a pond ends also depends on all lanes of that pond: `pondFrom` to `pondTo` (empty: pondTo < pondFrom).
 */
export interface Surface {
  readonly capacity: Float64Array;
  readonly capacitySlope: Float64Array;
  readonly intake: Float64Array;
  readonly ponded: Uint8Array;
  readonly outerPondFrom: Int32Array;
  readonly outerPondTo: Int32Array;
  readonly innerPondFrom: Int32Array;
  readonly innerPondTo: Int32Array;
  runoffCm3PerH: number;
}

/** @example surfaceOf(8).intake.length // 8 */
export function surfaceOf(lanes: number): Surface {
  return {
    capacity: new Float64Array(lanes),
    capacitySlope: new Float64Array(lanes),
    intake: new Float64Array(lanes),
    ponded: new Uint8Array(lanes),
    outerPondFrom: new Int32Array(lanes),
    outerPondTo: new Int32Array(lanes),
    innerPondFrom: new Int32Array(lanes),
    innerPondTo: new Int32Array(lanes),
    runoffCm3PerH: 0,
  };
}

/** Shares of the emitter flow by lane, split by the way excess runs: outward from a line, or inward to the tree row. */
export interface EmitterShares {
  readonly outward: Float64Array;
  readonly inward: Float64Array;
}

/**
 * Spreads each line's flow over the lanes that end within `halfWidthCm` of it, in proportion to their area; half of it
 * either way, all of it one way at the first and last edge.
 *
 * @example emitterShares(grid, lines, 2).outward[0]
 */
export function emitterShares(grid: Grid, lines: EmitterLines, halfWidthCm: number): EmitterShares {
  const outward = new Float64Array(grid.lanes);
  const inward = new Float64Array(grid.lanes);
  const { laneEdgesCm, laneAreaCm2, lanes } = grid;
  const reach = halfWidthCm + 1e-9;
  for (let s = 0; s < lines.edge.length; s++) {
    const edge = lines.edge[s];
    const sides = edge === 0 || edge === lanes ? 1 : 2;
    const share = lines.share[s] / sides;
    let end = edge;
    while (end < lanes && (end === edge || laneEdgesCm[end + 1] - laneEdgesCm[edge] <= reach)) end++;
    pour(outward, laneAreaCm2, edge, end, share);
    let start = edge;
    while (start > 0 && (start === edge || laneEdgesCm[edge] - laneEdgesCm[start - 1] <= reach)) start--;
    pour(inward, laneAreaCm2, start, edge, share);
  }
  return { outward, inward };
}

function pour(out: Float64Array, area: Float64Array, from: number, to: number, share: number): void {
  let sum = 0;
  for (let j = from; j < to; j++) sum += area[j];
  for (let j = from; j < to; j++) out[j] += (share * area[j]) / sum;
}

/**
 * One sweep inward, then one outward. What the inward sweep brings to the first lane turns round there (`mirror`) or is
 * run-off (`open`); what the outward sweep brings past the last lane is run-off. A lane whose soil pushes water out
 * (capacity below 0) passes that on as well. Expects `capacity` and `capacitySlope`.
 *
 * @example spreadOffered(surface, shares, 4000, rainCm3PerH, "mirror")
 */
export function spreadOffered(
  surface: Surface,
  shares: EmitterShares,
  emitterCm3PerH: number,
  rainCm3PerH: Float64Array,
  innerEdge: "mirror" | "open",
): void {
  const { capacity, intake, ponded, outerPondFrom, outerPondTo, innerPondFrom, innerPondTo } = surface;
  const lanes = capacity.length;
  let carry = 0;
  let pondEnd = -1;
  for (let j = lanes - 1; j >= 0; j--) {
    const offered = emitterCm3PerH * shares.inward[j] + 0.5 * rainCm3PerH[j] + carry;
    ponded[j] = 0;
    innerPondFrom[j] = 0;
    innerPondTo[j] = -1;
    if (offered > capacity[j] && offered > 0) {
      intake[j] = capacity[j];
      ponded[j] = 1;
      if (carry === 0) pondEnd = j;
      carry = offered - capacity[j];
    } else {
      intake[j] = offered;
      if (carry > 0) {
        innerPondFrom[j] = j + 1;
        innerPondTo[j] = pondEnd;
      }
      carry = 0;
    }
  }
  let pondStart = 0;
  let runoff = 0;
  if (innerEdge === "open") {
    runoff = carry;
    carry = 0;
  }
  for (let j = 0; j < lanes; j++) {
    const offered = emitterCm3PerH * shares.outward[j] + 0.5 * rainCm3PerH[j] + carry;
    const room = capacity[j] - intake[j];
    outerPondFrom[j] = 0;
    outerPondTo[j] = -1;
    if (offered > room) {
      intake[j] = capacity[j];
      ponded[j] = 1;
      innerPondTo[j] = -1;
      if (carry === 0) pondStart = j;
      carry = offered - room;
    } else {
      intake[j] += offered;
      if (carry > 0) {
        outerPondFrom[j] = pondStart;
        outerPondTo[j] = j - 1;
      }
      carry = 0;
    }
  }
  surface.runoffCm3PerH = runoff + carry;
}
