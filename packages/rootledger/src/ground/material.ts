import { type BrooksCorey, brooksCoreyCurve } from "./brooks-corey.js";
import { type ClassSet, curveOfClassSet } from "./class-set.js";
import type { SoilCurve } from "./curve.js";
import { defaultSoilCurve } from "./default-curve.js";
import { type MeasuredPoint, measuredCurve } from "./measured-curve.js";
import { curveFromLimits, type MeasuredLimits } from "./measured-limits.js";
import { type SaxtonRawlsInput, saxtonRawls, saxtonRawlsCurve } from "./saxton-rawls.js";
import { withStones } from "./stones.js";
import { type Structure, withStructure } from "./structure.js";
import { structureFactors } from "./structure-factors.js";
import type { TextureClass } from "./texture.js";
import { textureCentre } from "./texture-centre.js";
import { type NearSaturation, type VanGenuchten, vanGenuchtenCurve } from "./van-genuchten.js";

/** The ways to say what a soil is made of. Retention and conductivity come from one source, never from two. */
export type Material = {
  /** Share of the volume that stones fill; default 0. */
  readonly stonesFraction?: number;
} & (
  | {
      readonly texture: TextureClass;
      /** Default "ordinary". */
      readonly structure?: Structure;
      /** Whose numbers stand for the class; left out, the default set. */
      readonly classSet?: ClassSet;
      /** Measured water contents that the class's curve is bent through. */
      readonly limits?: MeasuredLimits;
    }
  | { readonly particles: SaxtonRawlsInput; readonly structure?: Structure }
  | { readonly vanGenuchten: VanGenuchten; readonly nearSaturation?: NearSaturation }
  | { readonly brooksCorey: BrooksCorey }
  | { readonly points: readonly MeasuredPoint[] }
);

/**
 * The curve of a material: class, particles, parameters or table; then measured limits, structure, stones, in this order.
 *
 * @throws RangeError if a number lies outside what its curve allows.
 * @example curveOfMaterial({ texture: "loam" }, "loam").thetaSaturated
 */
export function curveOfMaterial(material: Material, name: string): SoilCurve {
  const curve = earthCurve(material, name);
  return material.stonesFraction === undefined ? curve : withStones(curve, material.stonesFraction);
}

const given = "given by the user";

function earthCurve(material: Material, name: string): SoilCurve {
  if ("vanGenuchten" in material) {
    return vanGenuchtenCurve(name, material.vanGenuchten, given, material.nearSaturation);
  }
  if ("brooksCorey" in material) return brooksCoreyCurve(name, material.brooksCorey, given);
  if ("points" in material) return measuredCurve(name, material.points, given);
  const { structure = "ordinary" } = material;
  const loose =
    "texture" in material ? textureCurve(material) : saxtonRawlsCurve(saxtonRawls(material.particles), name);
  if (structure === "ordinary") return loose;
  const centre = "texture" in material ? textureCentre(material.texture) : material.particles;
  return withStructure(loose, structureFactors(centre, structure), `${structure} ${loose.name}`);
}

function textureCurve({ texture, classSet, limits }: Extract<Material, { readonly texture: TextureClass }>): SoilCurve {
  const curve = classSet === undefined ? defaultSoilCurve(texture) : curveOfClassSet(classSet, texture);
  return limits === undefined ? curve : curveFromLimits(curve, limits, `${texture} with measured limits`);
}
