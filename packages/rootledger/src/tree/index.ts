export {
  depletionFractionFor,
  readilyAvailableWaterMm,
  stressCoefficient,
  totalAvailableWaterMm,
} from "./available-water.js";
export {
  type CanopyShape,
  canopyCover,
  canopyGroundM2,
  effectiveCover,
  type Spacing,
  treeGroundM2,
} from "./canopy-cover.js";
export { type CanopyPoint, canopyDiameterM } from "./canopy-growth.js";
export { type CropCoefficients, type CropPreset, type MonthlyKc, presetStages, stageEvents } from "./crop-preset.js";
export { cropPresets } from "./crop-presets.js";
export { avocadoHeatLimit, floweringFactor, type HeatLimit, heatFactor, leafLossFactor } from "./demand-modifiers.js";
export { type DualKcDay, type DualKcResult, dualKcDay } from "./dual-kc.js";
export { type FaoKcRow, faoKcSource, faoKcTable, type Printed } from "./fao-kc-table.js";
export { type FaoKcbRow, faoKcbSource, faoKcbTable } from "./fao-kcb-table.js";
export { type FaoRootRow, faoRootSource, faoRootTable } from "./fao-root-table.js";
export { type FaoStageRow, faoStageSource, faoStageTable } from "./fao-stage-table.js";
export { type KcStage, kcByStage } from "./kc-by-stage.js";
export {
  type CropClimate,
  climateAdjustedKc,
  climateAdjustedKcEnd,
  climateLimits,
  climateWithinLimits,
  kcClimateTerm,
  kcMaximum,
} from "./kc-climate.js";
export { type KcCurve, kcOnDay, meanKc, stageStartsDays } from "./kc-curve.js";
export {
  depthOnWettedMm,
  figureStore,
  kcInitial,
  kcInitialForDepth,
  kcInitialPartlyWetted,
  rainEvents,
  type SurfaceStore,
  stageOneDays,
  type Wetting,
  wetBareSoilKc,
} from "./kc-initial.js";
export { kcbByDay } from "./kcb-by-day.js";
export { concentrationFactor, quarterUptake, soilWaterEcByQuarter } from "./leaching-concentration.js";
export { leachingRequirement, leachingRequirementFrequent } from "./leaching-requirement.js";
export { type LitterRoots, rootDepthShareWithLitter } from "./litter-roots.js";
export {
  type CoverRule,
  largestNetDepthMm,
  localizedCoverFactor,
  trickleTranspirationMm,
  withLeaching,
} from "./localized-cover.js";
export { isMonthDay, otherHemisphere } from "./month-day.js";
export {
  kcUnderPlastic,
  type PlasticRow,
  plasticInitialKc,
  plasticMulchSource,
  plasticMulchTable,
  residueEvaporationCut,
} from "./mulch.js";
export { matureCover, type NeedArea, type NeedCover, type NeedTree, needArea } from "./need-area.js";
export { needByMonth, needPeriods } from "./need-periods.js";
export { osmoticHeadCm } from "./osmotic-head.js";
export { type Practice, type PracticeRatio, practiceRatio, practiceRatios } from "./practice.js";
export { pullLimitByDemand } from "./pull-limit-by-demand.js";
export { rootDepthShare } from "./root-depth-share.js";
export { rootDepthWithKcbM } from "./root-growth.js";
export { type LateralRoots, rootedLaneShare } from "./root-lane-share.js";
export { type RootPoint, rootsOnDay } from "./root-points.js";
export { faoSaltSource, faoSaltTable, maasHoffmanSource, maasHoffmanTable, type SaltRow } from "./salinity-table.js";
export { eceAtFraction, type SaltTolerance, saltFactor, stressFromHarvest } from "./salinity-tolerance.js";
export {
  ecFromSaltMgPerL,
  extractEc,
  osmoticKPaPerDsPerM,
  saltMgPerL,
} from "./salinity-water.js";
export {
  coverFromKcb,
  evaporationCoefficient,
  evaporationReduction,
  exposedWetted,
  exposedWettedUnderDrip,
  totalEvaporableWaterMm,
} from "./soil-evaporation.js";
export type { Disputed, Sourced, Verified } from "./sourced.js";
export {
  canopyDensityFao56,
  densityCoefficient,
  kcbByHeight,
  kcbFromLeafArea,
  kcbFullCover,
  kcbOverCoverCrop,
  kcMinimum,
  leafAreaFromKcb,
  sparseKcb,
  stomatalReduction,
  thinStandReduction,
} from "./sparse-canopy.js";
export {
  type Phenology,
  phenologyOfOtherHemisphere,
  type Stage,
  type StageSpan,
  type StageStart,
  stageByDay,
  stageSpans,
} from "./stages.js";
export {
  type NeedDay,
  type NeedOfPeriod,
  type NeedPeriod,
  type NeedQuestion,
  type NeedReference,
  type WaterNeed,
  waterNeed,
} from "./water-need.js";
