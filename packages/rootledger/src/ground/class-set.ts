import { type BrooksCorey, brooksCoreyCurve } from "./brooks-corey.js";
import type { SoilCurve } from "./curve.js";
import { type SaxtonRawlsInput, saxtonRawls, saxtonRawlsCurve } from "./saxton-rawls.js";
import type { TextureClass } from "./texture.js";
import { type NearSaturation, type VanGenuchten, vanGenuchtenCurve } from "./van-genuchten.js";

/** What a published set says of one class, as numbers: its tables need not be there once a scenario is read. */
export type ClassSet = {
  readonly name: string;
  readonly source: string;
} & (
  | { readonly vanGenuchten: VanGenuchten; readonly nearSaturation: NearSaturation }
  | { readonly brooksCorey: BrooksCorey }
  | { readonly particles: SaxtonRawlsInput }
);

/** The curve of a class by the numbers of a set. @example curveOfClassSet(classSet("cosby-1984", "loam"), "loam").thetaSaturated */
export function curveOfClassSet(set: ClassSet, textureClass: TextureClass): SoilCurve {
  if ("vanGenuchten" in set) return vanGenuchtenCurve(textureClass, set.vanGenuchten, set.source, set.nearSaturation);
  if ("brooksCorey" in set) return brooksCoreyCurve(textureClass, set.brooksCorey, set.source);
  return saxtonRawlsCurve(saxtonRawls(set.particles), textureClass);
}
