import type { Forcing } from "./engine.js";
import type { Stress } from "./stress.js";

/** Where the roots are and how they make up for each other. */
export interface RootZone {
  /** Share of the tree's roots in each cell; sums to 1. */
  readonly share: Float64Array;
  /**
   * Root-weighted thirst factor below which the tree no longer makes up elsewhere for what dry roots lack (Jarvis 1989).
   * 1 means no compensation. Range (0, 1].
   */
  readonly compensationOnset: number;
}

/** A process slot: writes the water taken from each cell, cm3/h, at most `forcing.transpirationCm3PerH` in all. */
export type UptakeProcess = (sinkCm3PerH: Float64Array, roots: RootZone, stress: Stress, forcing: Forcing) => void;

/**
 * Uptake of each cell = demand x share x thirst x air / max(sum of share x thirst, onset): dry roots are made up for by
 * wet ones, airless roots are not. Never above demand. Source: Jarvis, N.J. (1989), J. Hydrology 107, eq. 9-11.
 *
 * @example uptakeInto(sink, roots, stress, forcing)
 */
export const uptakeInto: UptakeProcess = (sinkCm3PerH, roots, stress, forcing) => {
  const { share, compensationOnset } = roots;
  const { thirst, air } = stress;
  let supplied = 0;
  for (let c = 0; c < share.length; c++) supplied += share[c] * thirst[c];
  const divisor = supplied > compensationOnset ? supplied : compensationOnset;
  const scale = forcing.transpirationCm3PerH / divisor;
  for (let c = 0; c < share.length; c++) sinkCm3PerH[c] = scale * share[c] * thirst[c] * air[c];
};
