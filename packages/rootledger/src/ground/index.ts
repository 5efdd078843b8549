export type { SoilCurve } from "./curve.js";
export { drainCovered, type DrainedColumn, type DrainLayer } from "./covered-drain.js";
export { defaultSoilCurve } from "./default-curve.js";
export { gardnerConductivityAt, type GardnerConductivity } from "./gardner.js";
export { gardnerCurve, type GardnerCurveParameters } from "./gardner-curve.js";
export {
  type SaxtonRawlsInput,
  type SaxtonRawlsNote,
  type SaxtonRawlsSoil,
  saxtonRawls,
  saxtonRawlsCurve,
} from "./saxton-rawls.js";
export { type GravelEffect, osmoticTensionKPa, saxtonRawlsGravel } from "./saxton-rawls-gravel.js";
export { type Structure, type StructureFactors, withStructure } from "./structure.js";
export { structureFactors } from "./structure-factors.js";
export { type SoilTable, tabulateSoil } from "./table.js";
export { type Texture, type TextureClass, textureClasses, textureClassOf } from "./texture.js";
export { textureCentre, usualOrganicMatterFraction } from "./texture-centre.js";
export { type NearSaturation, type VanGenuchten, vanGenuchtenCurve } from "./van-genuchten.js";
export type { VanGenuchtenRetention } from "./van-genuchten-retention.js";
