/** Authors whose rule for ground cover under localized irrigation is tabulated in FAO-36. */
export type CoverRule = "keller-karmeli" | "freeman-garzoli" | "decroix";

/**
 * Factor on the crop coefficient of a full canopy, from the share of ground covered: Keller & Karmeli, GC/0.85; Freeman & Garzoli,
 * GC below a half, GC + 0.5 (1 - GC) from there on; Decroix, GC + 0.1; none above 1. Source: Vermeiren & Jobling (1980), FAO
 * Irrigation and Drainage Paper 36, from memory. They were meant for trickle irrigation and disagree most near half cover.
 *
 * @throws RangeError if the cover is not 0 to 1.
 * @example localizedCoverFactor("keller-karmeli", 0.3) // 0.35
 */
export function localizedCoverFactor(rule: CoverRule, coverFraction: number): number {
  if (!(coverFraction >= 0 && coverFraction <= 1)) {
    throw new RangeError(`localizedCoverFactor requires cover 0 to 1: got ${coverFraction}`);
  }
  if (rule === "freeman-garzoli") {
    return coverFraction < 0.5 ? coverFraction : coverFraction + 0.5 * (1 - coverFraction);
  }
  const factor = rule === "keller-karmeli" ? coverFraction / 0.85 : coverFraction + 0.1;
  return factor < 1 ? factor : 1;
}

/** Transpiration of a design day under drip, mm: Ud 0.1 sqrt(Pd), Pd the shaded percent. Source: Keller & Bliesner (1990) eq. 19.9. @example trickleTranspirationMm(5, 0.64) // 4 */
export const trickleTranspirationMm = (conventionalMm: number, shadedFraction: number): number =>
  conventionalMm * Math.sqrt(shadedFraction);

/**
 * Greatest net depth of one irrigation over the field, mm: allowed depletion x wetted share x available water per m x root depth.
 * Source: Keller & Bliesner (1990) eq. 19.12.
 *
 * @example largestNetDepthMm({ allowedDepletion: 0.3, wettedFraction: 0.4, availableMmPerM: 150, rootDepthM: 0.8 }) // 14.4
 */
export const largestNetDepthMm = (zone: {
  readonly allowedDepletion: number;
  readonly wettedFraction: number;
  readonly availableMmPerM: number;
  readonly rootDepthM: number;
}): number => zone.allowedDepletion * zone.wettedFraction * zone.availableMmPerM * zone.rootDepthM;

/**
 * Water to apply so that a share of it leaches: ET / (1 - LF). Source: Ayers & Westcot (1985), FAO Irrigation and Drainage
 * Paper 29, from memory.
 *
 * @throws RangeError if the leaching fraction is not from 0 to below 1.
 * @example withLeaching(1000, 0.15) // 1176
 */
export function withLeaching(water: number, leachingFraction: number): number {
  if (!(leachingFraction >= 0 && leachingFraction < 1)) {
    throw new RangeError(`withLeaching requires a leaching fraction from 0 to below 1: got ${leachingFraction}`);
  }
  return water / (1 - leachingFraction);
}
