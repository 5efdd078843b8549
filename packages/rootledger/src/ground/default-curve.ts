import type { SoilCurve } from "./curve.js";
import { defaultClasses, defaultClassSource } from "./default-classes.js";
import { gardnerCurve } from "./gardner-curve.js";
import { type Structure, withStructure } from "./structure.js";
import { structureFactors } from "./structure-factors.js";
import type { TextureClass } from "./texture.js";
import { textureCentre } from "./texture-centre.js";

/**
 * The curve a texture class stands for unless the user knows better: retention fitted to water held between 8 and
 * 20, 60 and 1500 kPa, conductivity to steady infiltration and to field capacity after a covered 48 h drain.
 * The structure word changes pores wetter than 8 kPa and kSat only.
 * @example defaultSoilCurve("clay loam", "tight").thetaAt(-102)
 */
export function defaultSoilCurve(textureClass: TextureClass, structure: Structure = "ordinary"): SoilCurve {
  const curve = gardnerCurve(defaultClasses[textureClass], textureClass, defaultClassSource);
  if (structure === "ordinary") return curve;
  const factors = structureFactors(textureCentre(textureClass), structure);
  return withStructure(curve, factors, `${structure} ${textureClass}`);
}
