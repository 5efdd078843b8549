import { halfSineShare } from "../numeric/half-sine.js";

/**
 * Share of a day's demand between two clock hours: a half sine from sunrise to sunset; in the polar night, without sun, it is
 * spread evenly over the 24 hours, so that the shares of a day always sum to 1.
 *
 * @example sunShare(6, 12, 6, 18) // 0.5
 */
export const sunShare = (fromH: number, toH: number, sunriseH: number, sunsetH: number): number =>
  sunsetH > sunriseH ? halfSineShare(fromH, toH, sunriseH, sunsetH) : (toH - fromH) / 24;
