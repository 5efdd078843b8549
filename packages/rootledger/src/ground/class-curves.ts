import { carselParrishCurve } from "./carsel-parrish.js";
import { clappHornbergerCurve } from "./clapp-hornberger.js";
import { cosbyCurve } from "./cosby.js";
import type { SoilCurve } from "./curve.js";
import { defaultSoilCurve } from "./default-curve.js";
import { saxtonRawls, saxtonRawlsCurve } from "./saxton-rawls.js";
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

export type ClassCurveSet = (typeof classCurveSets)[number];

/**
 * The curve a set gives a class, or undefined where the set has no such class (silt in Clapp & Hornberger).
 * Retention and conductivity of one curve always come from one set.
 * @example classCurve("carsel-parrish-1988", "loam")
 */
export function classCurve(set: ClassCurveSet, textureClass: TextureClass): SoilCurve | undefined {
  switch (set) {
    case "default":
      return defaultSoilCurve(textureClass);
    case "saxton-rawls-2006":
      return saxtonRawlsCurve(
        saxtonRawls({
          ...textureCentre(textureClass),
          organicMatterFraction: usualOrganicMatterFraction,
        }),
        textureClass,
      );
    case "carsel-parrish-1988":
      return carselParrishCurve(textureClass);
    case "clapp-hornberger-1978":
      return textureClass === "silt" ? undefined : clappHornbergerCurve(textureClass);
    case "cosby-1984":
      return cosbyCurve(textureClass, textureCentre(textureClass));
  }
}

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
