export {
  type AirDamageBand,
  type AirDamageCase,
  type AirSpell,
  airDamageBand,
  airDamageOf,
} from "./air-damage.js";
export { airMemory, type PulseAir } from "./air-memory.js";
export { type AirRulesApart, airRulesApart } from "./air-rules-apart.js";
export { type AirSpellPlace, longestAirlessByPlace } from "./air-spells.js";
export type { BottomEdge } from "./bottom.js";
export { bucketEngine, type WaterSetup } from "./bucket.js";
export { type CanopyStore, canopyInterceptionMm, canopyStores } from "./canopy-interception.js";
export type { EmitterLines } from "./cascade.js";
export {
  type Antecedent,
  curveNumberByFormula,
  curveNumberFor,
  curveNumberRunoffMm,
  initialAbstractionMm,
  retentionMm,
} from "./curve-number.js";
export { type CurveNumberRow, curveNumberRows } from "./curve-number-table.js";
export {
  type RainDay,
  type RainMonth,
  rainOnRoots,
  rainThatCountsMm,
  scsEffectiveRainMm,
  storageFactor,
  thumbEffectiveRainMm,
} from "./effective-rain.js";
export {
  clearFaces,
  clearFluxes,
  emptyFluxes,
  type FaceSums,
  type Forcing,
  faceSums,
  type WaterEngine,
  type WaterFluxes,
  type WaterState,
} from "./engine.js";
export { type EvaporationProcess, soilLimitedEvaporation, twoStageEvaporation } from "./evaporation.js";
export { type Grid, type RingShape, ringGrid, type StripShape, stripGrid } from "./grid.js";
export { fillGround, type Ground, thetaAtHead } from "./ground.js";
export {
  avocadoLitter,
  gravelEvaporationCut,
  heldByLayerMm,
  type LitterBudget,
  type LitterLayer,
  litterLayer,
  litterMassKgPerM2,
  looseMulchStorageMm,
} from "./litter-layer.js";
export { measuresByPart, type PartMeasures } from "./measures-by-part.js";
export {
  oxygenInAirCm2PerH,
  oxygenInAirFraction,
  oxygenInAirGPerM3,
  oxygenInWaterCm2PerH,
  oxygenSolubility,
  q10Factor,
} from "./oxygen-air.js";
export { type DiffusivityLaw, gasDiffusivityRatio } from "./oxygen-diffusivity.js";
export { type AirLimit, airLimits } from "./oxygen-limits.js";
export { type OxygenOfRun, type OxygenOptions, oxygenDefaults, oxygenOfRun } from "./oxygen-run.js";
export { sumOfExcessWaterCmDay } from "./oxygen-sew.js";
export { oxygenDepth, oxygenReach, type SteadyOxygen, steadyOxygenAt } from "./oxygen-steady.js";
export {
  type OxygenCells,
  type OxygenModel,
  type OxygenSetup,
  type OxygenSums,
  oxygenModel,
} from "./oxygen-transient.js";
export type { Band } from "./place-bands.js";
export { type RainCover, type RainSplit, rainReachingSoil } from "./rain-reaching-soil.js";
export {
  type Column,
  column,
  type DefaultUsed,
  type Ledger,
  type Measure,
  measure,
  type Result,
  type RootHoursBook,
  type RunStatus,
  type Section,
  type SoluteLedger,
  type SolutesResult,
  type Table,
  type TreeName,
  type Window,
} from "./result.js";
export { type RichardsEngine, type RichardsWork, richardsEngine, stateAtHeads } from "./richards.js";
export { type FineAt, type Fineness, refereeFineness, richardsGrid } from "./richards-grid.js";
export { type RefinedEngine, type RefinedSetup, refinedRichardsEngine } from "./richards-refined.js";
export type { OuterEdge, RichardsOptions, RichardsSetup, TopEdge } from "./richards-setup.js";
export {
  type TwoStageSoil,
  type TwoStageState,
  twoStageDay,
  twoStageSoils,
  wetTwoStage,
} from "./ritchie-evaporation.js";
export {
  type RootHours,
  type RootHoursOptions,
  type RootHoursSum,
  rootHours,
  rootHoursByWetting,
} from "./root-hours.js";
export { burnsFraction, burnsHalfDepthCm, cellwiseFraction, type Leaching, scotterFraction } from "./solute-burns.js";
export type { WaterMove } from "./solute-flows.js";
export { type SoluteGrid, soluteGrid } from "./solute-grid.js";
export { type Spreading, usualSpreading } from "./solute-spread.js";
export {
  type SoluteEdges,
  type SoluteSums,
  type SoluteTransport,
  soluteSums,
  soluteTransport,
  type TransportSetup,
} from "./solute-transport.js";
export { type SpillSetup, spillEngine } from "./spill.js";
export { copyState, restoreState } from "./state.js";
export { type Stress, type StressProcess, type Trapezoid, type TreeLimits, trapezoid, twoLimits } from "./stress.js";
export { laneEdges, layerEdges } from "./strip-edges.js";
export { type RootZone, type UptakeProcess, uptakeInto } from "./uptake.js";
