import type { FaceSums } from "./engine.js";
import type { SoluteGrid } from "./solute-grid.js";

/** What the water did over one stretch of time during which its flows count as constant. By cell of the water's grid. */
export interface WaterMove {
  readonly hours: number;
  readonly thetaBefore: Float64Array;
  readonly thetaAfter: Float64Array;
  readonly faces: FaceSums;
  readonly uptakeCm3: Float64Array;
}

/** The same on the slices: water at the start and its change, cm3 and cm3/h; flows through faces, cm3/h. */
export interface SoluteFlows {
  readonly waterCm3: Float64Array;
  readonly gainCm3PerH: Float64Array;
  /** Through the lower face of each slice, downward. */
  readonly down: Float64Array;
  /** Through the outer face, outward. */
  readonly side: Float64Array;
  readonly uptake: Float64Array;
  readonly intake: Float64Array;
  readonly evaporation: Float64Array;
  /** From the top slice of each lane by cracks, and the slices that receive it. */
  readonly crack: Float64Array;
  crackFrom: number;
  crackTo: number;
}

/** @example soluteFlows(soluteGrid(grid)).down.length */
export function soluteFlows({ cells, lanes }: SoluteGrid): SoluteFlows {
  return {
    waterCm3: new Float64Array(cells),
    gainCm3PerH: new Float64Array(cells),
    down: new Float64Array(cells),
    side: new Float64Array(cells),
    uptake: new Float64Array(cells),
    intake: new Float64Array(lanes),
    evaporation: new Float64Array(lanes),
    crack: new Float64Array(lanes),
    crackFrom: 0,
    crackTo: 0,
  };
}

/**
 * Lays the water's flows on the slices. Storage, uptake, side flow and what cracks bring are even through a layer, so that the flow
 * between its slices runs straight from that of its upper to that of its lower face; evaporation leaves at the surface.
 *
 * @example flowsInto(flows, grid, move)
 */
export function flowsInto(flows: SoluteFlows, grid: SoluteGrid, move: WaterMove): void {
  const { coarse, lanes, slicesOf } = grid;
  const { faces, thetaBefore, thetaAfter, uptakeCm3, hours } = move;
  const perH = 1 / hours;
  let slice = 0;
  flows.crackFrom = 0;
  flows.crackTo = 0;
  for (let i = 0; i < coarse.layers; i++) {
    const count = slicesOf[i];
    const share = 1 / count;
    if (i === faces.crackLayer) {
      flows.crackFrom = slice;
      flows.crackTo = slice + count;
    }
    for (let j = 0; j < lanes; j++) {
      const c = i * lanes + j;
      const part = coarse.volumeCm3[c] * share;
      const before = thetaBefore[c] * part;
      const gain = (thetaAfter[c] * part - before) * perH;
      const cracked = faces.crackCm3[j] * perH;
      const top =
        i > 0 ? faces.downCm3[c - lanes] * perH : (faces.intakeCm3[j] - faces.evaporationCm3[j]) * perH - cracked;
      const step = (faces.downCm3[c] * perH - top) * share;
      const side = faces.sideCm3[c] * perH * share;
      const uptake = uptakeCm3[c] * perH * share;
      for (let k = 0; k < count; k++) {
        const f = (slice + k) * lanes + j;
        flows.waterCm3[f] = before;
        flows.gainCm3PerH[f] = gain;
        flows.down[f] = top + step * (k + 1);
        flows.side[f] = side;
        flows.uptake[f] = uptake;
      }
    }
    slice += count;
  }
  for (let j = 0; j < lanes; j++) {
    flows.intake[j] = faces.intakeCm3[j] * perH;
    flows.evaporation[j] = faces.evaporationCm3[j] * perH;
    flows.crack[j] = faces.crackCm3[j] * perH;
  }
}
