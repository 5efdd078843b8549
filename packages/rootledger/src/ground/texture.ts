/**
 * The twelve texture classes of the USDA triangle, from coarse to fine as this project lists them.
 * Source: Soil Survey Division Staff (1993), Soil Survey Manual, ch. 3.
 */
export const textureClasses = [
  "sand",
  "loamy sand",
  "sandy loam",
  "loam",
  "silt loam",
  "silt",
  "sandy clay loam",
  "clay loam",
  "silty clay loam",
  "sandy clay",
  "silty clay",
  "clay",
] as const;

/** The twelve texture classes. */
export type TextureClass = (typeof textureClasses)[number];

/** Fractions by weight of the soil finer than 2 mm; silt is the rest. */
export interface Texture {
  readonly sandFraction: number;
  readonly clayFraction: number;
}

/** Silt is a difference of two decimals, so a point on a line of the triangle may miss it by rounding, percent. */
const edgePercent = 1e-9;

/**
 * USDA texture class of a fine earth. A point on a line goes to the class above it or to its right (the finer one).
 * Source: Soil Survey Manual, ch. 3; rule for lines: Benham, Ahrens & Nettleton (2009).
 * @throws RangeError when a fraction is outside 0-1 or sand and clay together exceed 1.
 * @example textureClassOf({ sandFraction: 0.4, clayFraction: 0.2 }) // "loam"
 */
export function textureClassOf({ sandFraction, clayFraction }: Texture): TextureClass {
  if (!(sandFraction >= 0 && sandFraction <= 1)) {
    throw new RangeError(`textureClassOf requires sandFraction from 0 to 1: got ${sandFraction}`);
  }
  if (!(clayFraction >= 0 && clayFraction <= 1)) {
    throw new RangeError(`textureClassOf requires clayFraction from 0 to 1: got ${clayFraction}`);
  }
  if (sandFraction + clayFraction > 1 + edgePercent) {
    throw new RangeError(
      `textureClassOf requires sandFraction + clayFraction up to 1: got ${sandFraction + clayFraction}`,
    );
  }
  const sand = 100 * sandFraction;
  const clay = 100 * clayFraction;
  const silt = 100 - sand - clay;
  const atLeast = (value: number, limit: number): boolean => value >= limit - edgePercent;
  const below = (value: number, limit: number): boolean => value < limit - edgePercent;
  const above = (value: number, limit: number): boolean => value > limit + edgePercent;

  if (below(silt + 1.5 * clay, 15)) return "sand";
  if (below(silt + 2 * clay, 30)) return "loamy sand";
  if (atLeast(clay, 40)) {
    if (atLeast(silt, 40)) return "silty clay";
    return above(sand, 45) ? "sandy clay" : "clay";
  }
  if (atLeast(clay, 35) && above(sand, 45)) return "sandy clay";
  if (atLeast(clay, 27)) {
    if (!above(sand, 20)) return "silty clay loam";
    return above(sand, 45) ? "sandy clay loam" : "clay loam";
  }
  if (atLeast(clay, 20) && below(silt, 28) && above(sand, 45)) return "sandy clay loam";
  if (atLeast(silt, 50)) {
    return atLeast(silt, 80) && below(clay, 12) ? "silt" : "silt loam";
  }
  if (atLeast(clay, 20)) return "loam";
  if (atLeast(clay, 7)) return above(sand, 52) || below(silt, 28) ? "sandy loam" : "loam";
  return "sandy loam";
}
