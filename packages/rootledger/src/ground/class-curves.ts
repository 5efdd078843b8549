import { brooksCoreyOfCampbell } from "./brooks-corey.js";
import { carselParrishParameters, carselParrishSource } from "./carsel-parrish.js";
import { clappHornberger, clappHornbergerSource } from "./clapp-hornberger.js";
import { type ClassSet, curveOfClassSet } from "./class-set.js";
import { cosbyCampbell, cosbySource } from "./cosby.js";
import type { SoilCurve } from "./curve.js";
import { defaultSoilCurve } from "./default-curve.js";
import type { TextureClass } from "./texture.js";
import { textureCentre, usualOrganicMatterFraction } from "./texture-centre.js";

/** Sets of class curves that can be asked for by name. */
export const classCurveSets = [
  "default",
  "saxton-rawls-2006",
  "carsel-parrish-1988",
  "clapp-hornberger-1978",
  "cosby-1984",
] as const;

/** Name of a published or fitted set of class curves. */
export type ClassCurveSet = (typeof classCurveSets)[number];

/**
 * What a set other than the default says of a class, or undefined where it has no such class (silt in Clapp & Hornberger).
 * @example classSet("carsel-parrish-1988", "loam").source
 */
export function classSet(name: Exclude<ClassCurveSet, "default">, textureClass: TextureClass): ClassSet | undefined {
  switch (name) {
    case "saxton-rawls-2006": {
      const particles = { ...textureCentre(textureClass), organicMatterFraction: usualOrganicMatterFraction };
      return { name, source: "Saxton & Rawls (2006), SSSAJ 70:1569-1578", particles };
    }
    case "carsel-parrish-1988":
      return {
        name,
        source: carselParrishSource,
        vanGenuchten: carselParrishParameters(textureClass),
        nearSaturation: "linear",
      };
    case "clapp-hornberger-1978": {
      if (textureClass === "silt") return undefined;
      const { kSatCmPerMin, ...row } = clappHornberger[textureClass];
      const brooksCorey = brooksCoreyOfCampbell({ ...row, kSatCmPerH: 60 * kSatCmPerMin });
      return { name, source: clappHornbergerSource, brooksCorey };
    }
    case "cosby-1984": {
      const brooksCorey = brooksCoreyOfCampbell(cosbyCampbell(textureCentre(textureClass)));
      return { name, source: cosbySource, brooksCorey };
    }
  }
}

/**
 * The curve a set gives a class, or undefined where the set has no such class.
 * Retention and conductivity of one curve always come from one set.
 * @example classCurve("carsel-parrish-1988", "loam")
 */
export function classCurve(set: ClassCurveSet, textureClass: TextureClass): SoilCurve | undefined {
  if (set === "default") return defaultSoilCurve(textureClass);
  const numbers = classSet(set, textureClass);
  return numbers === undefined ? undefined : curveOfClassSet(numbers, textureClass);
}

/** A texture class's curve of one set. */
export interface NamedClassCurve {
  readonly set: ClassCurveSet;
  readonly curve: SoilCurve;
}

/** Every set's curve for a class, the default first: their spread is how little a class name says. @example classCurves("clay loam") */
export function classCurves(textureClass: TextureClass): NamedClassCurve[] {
  const found: NamedClassCurve[] = [];
  for (const set of classCurveSets) {
    const curve = classCurve(set, textureClass);
    if (curve !== undefined) found.push({ set, curve });
  }
  return found;
}

/** How far the sets are apart. */
export interface Spread {
  readonly low: number;
  readonly high: number;
}

/** Lowest and highest value of one number over the sets of a class. @example spreadOver(classCurves("sand"), (curve) => curve.thetaAt(-82)) */
export function spreadOver(curves: readonly NamedClassCurve[], measure: (curve: SoilCurve) => number): Spread {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const { curve } of curves) {
    const value = measure(curve);
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return { low, high };
}
