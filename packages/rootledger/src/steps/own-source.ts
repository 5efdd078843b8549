import type { WaterFluxes, WaterState } from "../water/engine.js";
import { cellValues, type Ground, lookUpInto } from "../water/ground.js";
import { processError } from "./process-fault.js";

/** What a source may read at the start of its stretch, by cell. */
export interface SourceView {
  /** Hours since the start. */
  readonly hour: number;
  readonly ground: Ground;
  /** Water content, m3/m3. */
  readonly theta: Float64Array;
  /** Matric head, cm. */
  readonly headCm: Float64Array;
  /** Share of the tree's roots. */
  readonly rootShare: Float64Array;
  /** Most that the tree would transpire, cm3/h. */
  readonly demandCm3PerH: number;
}

/** Writes the rate of every cell, cm3/h: above 0 adds water, below 0 takes it. */
export type SourceProcess = (outCm3PerH: Float64Array, view: SourceView) => void;

/**
 * Asks a source at the start of a stretch and moves what it says for the whole stretch at once, so that it can be held against what
 * each cell has and has room for.
 *
 * @throws RangeError with a fault for a rate that is not finite, takes more than there is or adds more than fits.
 * @example sourceMover(ground, source)(state, 1, rootShare, demandCm3PerH, fluxes)
 */
export function sourceMover(ground: Ground, source: SourceProcess) {
  const { cells, volumeCm3 } = ground.grid;
  const { thetaResidual, thetaSaturated } = ground;
  const rate = new Float64Array(cells);
  const values = cellValues(cells);
  return (
    state: WaterState,
    toH: number,
    rootShare: Float64Array,
    demandCm3PerH: number,
    fluxes: Pick<WaterFluxes, "ownCm3">,
  ): void => {
    const { theta, timeH: hour } = state;
    const hours = toH - hour;
    lookUpInto(values, ground, theta);
    rate.fill(0);
    source(rate, { hour, ground, theta, headCm: values.headCm, rootShare, demandCm3PerH });
    for (let c = 0; c < cells; c++) {
      const cm3 = rate[c] * hours;
      if (!Number.isFinite(cm3)) throw processError("source", "not-finite", c, hour, rate[c], "a finite rate, cm3/h");
      const room = (thetaSaturated[c] - theta[c]) * volumeCm3[c];
      const held = (theta[c] - thetaResidual[c]) * volumeCm3[c];
      if (cm3 > room && cm3 > 0) {
        const rule = `at most ${room} cm3 in ${hours} h, the room in the cell`;
        throw processError("source", "more-than-fits", c, hour, rate[c], rule);
      }
      if (-cm3 > held && cm3 < 0) {
        const rule = `at most ${held} cm3 in ${hours} h, what the cell holds`;
        throw processError("source", "more-than-available", c, hour, rate[c], rule);
      }
    }
    for (let c = 0; c < cells; c++) {
      const cm3 = rate[c] * hours;
      theta[c] += cm3 / volumeCm3[c];
      fluxes.ownCm3 += cm3;
    }
  };
}
