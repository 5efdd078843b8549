import type { SurfaceStore } from "./kc-initial.js";
import { evaporationCoefficient, evaporationReduction } from "./soil-evaporation.js";

/** One day for the surface layer of the dual crop coefficient; depths in mm over the field. */
export interface DualKcDay {
  readonly et0Mm: number;
  readonly kcb: number;
  readonly kcMax: number;
  /** few: share of the ground that is wetted and in the sun. */
  readonly exposedWetted: number;
  readonly rainMm?: number;
  readonly runoffMm?: number;
  readonly irrigationMm?: number;
  /** Share of the ground that the irrigation wets. */
  readonly wettedFraction?: number;
  /** Early (default): the water lies in the layer when Kr is taken, as in the source's examples. Late: after the day's evaporation. */
  readonly waterComes?: "early" | "late";
}

/** Coefficients and depletions of a season, day by day. */
export interface DualKcResult {
  readonly kr: number;
  readonly ke: number;
  readonly kc: number;
  /** Over the field. */
  readonly evaporationMm: number;
  readonly cropEtMm: number;
  /** Water that left the surface layer downward, on the wetted exposed ground. */
  readonly percolationMm: number;
  /** De at the end of the day, on the wetted exposed ground. */
  readonly depletionMm: number;
}

/**
 * One day of the dual crop coefficient: De = De before - (P - RO) - I/fw + E/few + DPe, with DPe the water beyond field capacity,
 * Kr from De, Ke and ETc = (Kcb + Ke) ET0. Transpiration from the surface layer is left out, as the source does for all but
 * shallow annual crops. Source: FAO-56 (Allen et al. 1998) eqs 69, 71, 74, 77 and 79; stress: eq. 80 multiplies Kcb by Ks.
 *
 * @throws RangeError if irrigation is given without a wetted fraction above 0, or few is not above 0.
 * @example dualKcDay(9.45, { totalEvaporableMm: 20, readilyEvaporableMm: 9 }, { et0Mm: 4.5, kcb: 0.15, kcMax: 1.2, exposedWetted: 1 }).evaporationMm // 4.53
 */
export function dualKcDay(depletionMm: number, store: SurfaceStore, day: DualKcDay): DualKcResult {
  const { et0Mm, kcb, kcMax, exposedWetted } = day;
  if (!(exposedWetted > 0)) throw new RangeError(`dualKcDay requires exposedWetted above 0: got ${exposedWetted}`);
  const waterMm = waterOnWettedMm(day);
  const early = day.waterComes !== "late";
  const before = early ? depletionMm - waterMm : depletionMm;
  const start = before > 0 ? before : 0;
  const kr = evaporationReduction(start, store);
  const ke = evaporationCoefficient({ kr, kcMax, kcb, exposedWetted });
  const evaporationMm = ke * et0Mm;
  const after = start + evaporationMm / exposedWetted - (early ? 0 : waterMm);
  return {
    kr,
    ke,
    kc: kcb + ke,
    evaporationMm,
    cropEtMm: (kcb + ke) * et0Mm,
    percolationMm: early ? start - before : after < 0 ? -after : 0,
    depletionMm: after > 0 ? after : 0,
  };
}

function waterOnWettedMm(day: DualKcDay): number {
  const rainMm = (day.rainMm ?? 0) - (day.runoffMm ?? 0);
  const irrigationMm = day.irrigationMm ?? 0;
  if (irrigationMm === 0) return rainMm;
  const wetted = day.wettedFraction ?? 0;
  if (!(wetted > 0 && wetted <= 1)) {
    throw new RangeError(`dualKcDay requires wettedFraction in (0, 1] beside irrigation: got ${wetted}`);
  }
  return rainMm + irrigationMm / wetted;
}
