import type { Forcing } from "./engine.js";

/** Where the tree's emitters stand: which lane edge each line lies on and what share of the flow it brings. */
export interface EmitterLines {
  /** Index into the grid's lane edges; the line feeds the lanes on both sides of that edge alike. */
  readonly edge: Int32Array;
  /** Share of the tree's emitter flow; sums to 1. */
  readonly share: Float64Array;
}

/** Room for the surface step. All by lane, cm3/h. */
export interface SurfaceWork {
  readonly capacity: Float64Array;
  readonly intake: Float64Array;
  readonly outward: Float64Array;
  readonly inward: Float64Array;
  readonly nextOutward: Float64Array;
  readonly nextInward: Float64Array;
  /** What no lane could take, cm3/h, in a place of its own so that no number has to be boxed. */
  readonly runoff: Float64Array;
}

/** @example surfaceWork(8).intake.length // 8 */
export function surfaceWork(lanes: number): SurfaceWork {
  return {
    capacity: new Float64Array(lanes),
    intake: new Float64Array(lanes),
    outward: new Float64Array(lanes),
    inward: new Float64Array(lanes),
    nextOutward: new Float64Array(lanes),
    nextInward: new Float64Array(lanes),
    runoff: new Float64Array(1),
  };
}

/** Puts emitter flow and rain on the lanes, half of each going either way when the lane cannot take it. */
export function offerWater(work: SurfaceWork, lines: EmitterLines, forcing: Forcing): void {
  const { outward, inward } = work;
  const { emitterCm3PerH, rainCm3PerH } = forcing;
  const lanes = outward.length;
  for (let j = 0; j < lanes; j++) {
    outward[j] = 0.5 * rainCm3PerH[j];
    inward[j] = outward[j];
  }
  for (let s = 0; s < lines.edge.length; s++) {
    const edge = lines.edge[s];
    const flow = emitterCm3PerH * lines.share[s];
    if (edge === 0) outward[0] += flow;
    else if (edge === lanes) inward[lanes - 1] += flow;
    else {
      outward[edge] += 0.5 * flow;
      inward[edge - 1] += 0.5 * flow;
    }
  }
}

/**
 * Lets the pond grow lane by lane: each lane takes what it can and passes the rest on in the direction it came from. At a
 * mirror plane (the tree row of a half strip, the axis of rings) the water turns round. What leaves the last lane is
 * run-off. Takes what `offerWater` laid out; adds to `intake`, writes `runoff`.
 *
 * @example spread(work, "mirror")
 */
export function spread(work: SurfaceWork, innerEdge: "mirror" | "open"): void {
  const { capacity, intake, outward, inward, nextOutward, nextInward } = work;
  const lanes = capacity.length;
  let runoff = 0;
  for (let round = 0; round <= 2 * lanes; round++) {
    let moving = 0;
    nextOutward.fill(0);
    nextInward.fill(0);
    for (let j = 0; j < lanes; j++) {
      const offered = outward[j] + inward[j];
      if (offered === 0) continue;
      const room = capacity[j] - intake[j];
      if (offered <= room) {
        intake[j] += offered;
        continue;
      }
      if (room > 0) intake[j] = capacity[j];
      const rest = room > 0 ? 1 - room / offered : 1;
      const out = outward[j] * rest;
      const back = inward[j] * rest;
      if (j + 1 < lanes) nextOutward[j + 1] += out;
      else runoff += out;
      if (j > 0) nextInward[j - 1] += back;
      else if (innerEdge === "mirror") nextOutward[0] += back;
      else runoff += back;
      moving = 1;
    }
    if (moving === 0) {
      work.runoff[0] = runoff;
      return;
    }
    for (let j = 0; j < lanes; j++) {
      outward[j] = nextOutward[j];
      inward[j] = nextInward[j];
    }
  }
  for (let j = 0; j < lanes; j++) runoff += outward[j] + inward[j];
  work.runoff[0] = runoff;
}
