export { type BrooksCorey, brooksCoreyCurve, type Campbell, campbellCurve } from "./brooks-corey.js";
export { capillaryLengthCm } from "./capillary-length.js";
export {
  type CarselParrishRow,
  carselParrish,
  carselParrishCurve,
  carselParrishParameters,
  carselParrishSource,
} from "./carsel-parrish.js";
export {
  type ClappHornbergerRow,
  clappHornberger,
  clappHornbergerCurve,
  clappHornbergerSource,
} from "./clapp-hornberger.js";
export {
  type ClassCurveSet,
  classCurve,
  classCurveSets,
  classCurves,
  classSet,
  type NamedClassCurve,
  type Spread,
  spreadOver,
} from "./class-curves.js";
export { type ClassSet, curveOfClassSet } from "./class-set.js";
export { cosbyCampbell, cosbyCampbellSimple, cosbyCurve, cosbySource } from "./cosby.js";
export { type DrainedColumn, type DrainLayer, drainCovered } from "./covered-drain.js";
export type { SoilCurve } from "./curve.js";
export { defaultClasses, defaultClassSource } from "./default-classes.js";
export { defaultSoilCurve } from "./default-curve.js";
export {
  type FaoSoil,
  type FaoSoilRow,
  type FaoWettingEvent,
  faoSoilRanges,
  faoSoilRangesSource,
  faoWettedFraction,
  faoWettedFractionSource,
  type Range,
} from "./fao-soil-ranges.js";
export { type FieldCapacityCriterion, fieldCapacities, type NamedFieldCapacity } from "./field-capacities.js";
export {
  type CoveredDrain,
  type DrainedProfile,
  type FieldCapacity,
  fieldCapacityAssoulineOr,
  fieldCapacityAtTension,
  fieldCapacityByDrain,
  fieldCapacityByFlux,
  fieldCapacityTwarakavi,
} from "./field-capacity.js";
export { type GardnerConductivity, gardnerConductivityAt } from "./gardner.js";
export { type GardnerCurveParameters, gardnerCurve } from "./gardner-curve.js";
export {
  type GreenAmptSoil,
  greenAmptPonded,
  greenAmptRateCmPerH,
  greenAmptTimeH,
  type Infiltrated,
} from "./green-ampt.js";
export {
  greenAmptPondingDepthCm,
  greenAmptPondingTimeH,
  greenAmptUnderRain,
  type RainInfiltrated,
} from "./green-ampt-rain.js";
export { curveOfMaterial, type Material } from "./material.js";
export { type MeasuredPoint, measuredCurve } from "./measured-curve.js";
export { curveFromLimits, type MeasuredLimits, wiltingTensionKPa } from "./measured-limits.js";
export { gravityShareOfKSat, gravityTimeH, type PhilipSoil, philipInfiltration } from "./philip-infiltration.js";
export { type ThetaKnot, withThetaMapped } from "./pore-map.js";
export { curveAt, type Horizon, type Profile, profileLayers, requireProfile } from "./profile.js";
export { type GreenAmptRow, rawlsGreenAmpt, rawlsGreenAmptSource } from "./rawls-green-ampt.js";
export {
  type SaxtonRawlsInput,
  type SaxtonRawlsNote,
  type SaxtonRawlsSoil,
  saxtonRawls,
  saxtonRawlsCurve,
} from "./saxton-rawls.js";
export { type GravelEffect, osmoticTensionKPa, saxtonRawlsGravel } from "./saxton-rawls-gravel.js";
export { sorptivityCmPerSqrtH } from "./sorptivity.js";
export { withStones } from "./stones.js";
export { macroporeSuctionCm, type Structure, type StructureFactors, withStructure } from "./structure.js";
export { structureFactors } from "./structure-factors.js";
export { type SoilTable, tabulateSoil } from "./table.js";
export { type Texture, type TextureClass, textureClasses, textureClassOf } from "./texture.js";
export { textureCentre, usualOrganicMatterFraction } from "./texture-centre.js";
export { type TextureGroup, textureGroup } from "./texture-group.js";
export { withTrappedAir } from "./trapped-air.js";
export { type NearSaturation, type VanGenuchten, vanGenuchtenCurve } from "./van-genuchten.js";
export type { VanGenuchtenRetention } from "./van-genuchten-retention.js";
export type { Verified } from "./verified.js";
export {
  type TranslatedZone,
  type WaterReading,
  type WaterTranslator,
  waterTranslator,
} from "./water-translator.js";
