import type { FaceSums } from "../../water/engine.js";

/** Water that dissolves all that lies on the ground of a lane, cm. Our choice, no source: nitrate salts dissolve in far less than 1 mm. */
const dissolvingCm = 0.1;

/** Water of one stretch at the surface, cm3 per tree. */
export interface SurfaceWater {
  readonly faces: FaceSums;
  readonly emittedCm3: number;
  /** Rain that reached the ground, by lane. */
  readonly rainCm3: Float64Array;
  readonly runoffCm3: number;
}

/**
 * Content of the water that enters each lane, mg/cm3. A lane drinks its own rain first; what it drinks beyond that comes from one
 * mixed pool of the emitters' water and of the rain that other lanes could not take, which also feeds the run-off. What lies on
 * the ground of a lane is dissolved by the first millimetre that enters. Returns the content of the pool.
 *
 * @example intakeContentsInto(content, fromGround, water, 0.4, surfaceMg, laneAreaCm2)
 */
export function intakeContentsInto(
  out: Float64Array,
  fromGround: Float64Array,
  water: SurfaceWater,
  lineMgPerCm3: number,
  surfaceMg: Float64Array,
  laneAreaCm2: Float64Array,
): number {
  const { faces, emittedCm3, rainCm3, runoffCm3 } = water;
  const { intakeCm3 } = faces;
  const lanes = out.length;
  let poolCm3 = runoffCm3;
  for (let j = 0; j < lanes; j++) {
    const beyond = intakeCm3[j] - rainCm3[j];
    if (beyond > 0) poolCm3 += beyond;
  }
  const pool = poolCm3 > 0 ? (emittedCm3 * lineMgPerCm3) / poolCm3 : 0;
  for (let j = 0; j < lanes; j++) {
    const entering = intakeCm3[j];
    if (entering <= 0) {
      out[j] = 0;
      fromGround[j] = 0;
      continue;
    }
    const beyond = entering - rainCm3[j];
    const dissolvingCm3 = dissolvingCm * laneAreaCm2[j];
    fromGround[j] = surfaceMg[j] / (entering > dissolvingCm3 ? entering : dissolvingCm3);
    out[j] = (beyond > 0 ? (beyond / entering) * pool : 0) + fromGround[j];
  }
  return pool;
}
