export { aminEkhmaj } from "./amin-ekhmaj.js";
export {
  type CloggingFinding,
  type CloggingRisk,
  cloggingFindings,
  cloggingLimits,
  type WaterAnalysis,
  type WaterHint,
  waterHints,
  worstRisk,
} from "./clogging.js";
export { type EmitterPlace, emittersOfTree, openNearest, openWithin, type RowLayout } from "./emitters-of-tree.js";
export {
  estimateWetting,
  type RelationSpread,
  type WettedBody,
  type WettingEstimate,
  type WettingInput,
  type WettingSpread,
} from "./estimate-wetting.js";
export type { ExponentialSoil } from "./exponential-soil.js";
export {
  elementPerOxide,
  fertigationMgPerL,
  type InjectionTimes,
  shortestFertigatedRunMinutes,
  usualInjection,
} from "./fertigation.js";
export {
  avocadoTroubleEcDsPerM,
  type FertigationDose,
  type FertigationQuestion,
  type FertigationWarning,
  fertigationDose,
} from "./fertigation-dose.js";
export { type FlowEffect, flowEffect, hemisphereRadiusCm, type PondShare, pondShareLimits } from "./flow-effect.js";
export { type LineLayout, lineLayout } from "./layout.js";
export { lineContentLPerTree } from "./line-content.js";
export { type LineLife, lineLife, poorUniformity, treesWithPlugged, type UniformityTest } from "./line-life.js";
export {
  type PointSource,
  type SourcePlace,
  type SourceTime,
  steadyMatricFluxCm2PerH,
  transientMatricFluxCm2PerH,
} from "./matric-flux.js";
export { type MicroSprinkler, type MicroSprinklerRun, microSprinklerRun } from "./micro-sprinkler.js";
export { type PlugPlan, type PlugQuestion, type PlugWarning, plugPlan } from "./plug-plan.js";
export { type SourcePlacement, steadyPointSource, transientPointSource } from "./point-source.js";
export { kSatFromPondCmPerH, type PondReading } from "./pond-reading.js";
export { type PublishedLayout, publishedLayouts } from "./published-layouts.js";
export { type SaltyWaterFinding, type SaltyWaterLevel, saltyWaterFindings, saltyWaterLimits } from "./salty-water.js";
export { type EmitterRun, schwartzmanZur, type WettedSize } from "./schwartzman-zur.js";
export { irrigationsPerDay, storedLitres } from "./stored-water.js";
export { stripPondFlowCm2PerH, stripPondHalfWidthCm } from "./strip-pond.js";
export {
  buriedFront,
  type SourceVolume,
  scaledReachDown,
  scaledReachSideways,
  scaledTimeDown,
  scaledTimeSideways,
  surfaceFront,
} from "./travel-time.js";
export { christiansenUniformity, designEmissionUniformity, lowQuarterUniformity } from "./uniformity.js";
export { type WettingRelation, type WettingRun, wettingRelations } from "./wetted-bodies.js";
export { type WettedGround, wettedGround } from "./wetted-ground.js";
export { type EmitterRow, wettedReachCm } from "./wetted-reach.js";
export {
  emittersForShare,
  joiningSpacingM,
  type WettedLines,
  type WettingLayout,
  wettedShare,
} from "./wetted-share.js";
export { woodingPondFlowCm3PerH, woodingPondRadiusCm } from "./wooding-pond.js";
