import { requirePositive } from "../numeric/require-positive.js";
import type { Infiltrated } from "./green-ampt.js";

/** The two terms of Philip's series. */
export interface PhilipSoil {
  /** Sorptivity S, cm/h^0.5: how strongly the dry soil draws. */
  readonly sorptivityCmPerSqrtH: number;
  /** Second coefficient A, cm/h: gravity's share. */
  readonly gravityCmPerH: number;
}

/**
 * Water taken in under a shallow pond in early time: I = S sqrt(t) + A t, rate S/(2 sqrt t) + A.
 * Source: Philip (1957), Soil Sci. 84:257-264, from memory. One dimension; valid up to about `gravityTimeH`, beyond which the
 * rate goes to kSat and not to A. For a dripper use the relations of a point source.
 * @throws RangeError when S or the hours are not above 0, or A is negative.
 * @example philipInfiltration({ sorptivityCmPerSqrtH: 2, gravityCmPerH: 0.5 }, 1) // { cumulativeCm: 2.5, rateCmPerH: 1.5 }
 */
export function philipInfiltration(soil: PhilipSoil, hours: number): Infiltrated {
  const { sorptivityCmPerSqrtH, gravityCmPerH } = soil;
  requirePositive("philipInfiltration", { sorptivityCmPerSqrtH, hours });
  if (!(gravityCmPerH >= 0)) {
    throw new RangeError(`philipInfiltration requires gravityCmPerH of at least 0: got ${gravityCmPerH}`);
  }
  const root = Math.sqrt(hours);
  return {
    cumulativeCm: sorptivityCmPerSqrtH * root + gravityCmPerH * hours,
    rateCmPerH: sorptivityCmPerSqrtH / (2 * root) + gravityCmPerH,
  };
}

/**
 * Range in which A lies for shallow ponds on real soils, as shares of kSat. Source: Philip (1957, 1969), Adv. Hydrosci.
 * 5:215-296, from memory.
 */
export const gravityShareOfKSat = { least: 0.33, most: 0.67 } as const;

/**
 * Time at which gravity has come to equal the soil's own draw, h: (S/kSat)^2. Source: Philip (1969), from memory.
 * @throws RangeError when an argument is not above 0. @example gravityTimeH(2, 0.5) // 16
 */
export function gravityTimeH(sorptivityCmPerSqrtH: number, kSatCmPerH: number): number {
  requirePositive("gravityTimeH", { sorptivityCmPerSqrtH, kSatCmPerH });
  return (sorptivityCmPerSqrtH / kSatCmPerH) ** 2;
}
