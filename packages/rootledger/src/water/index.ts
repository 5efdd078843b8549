export type { BottomEdge } from "./bottom.js";
export { bucketEngine, type WaterSetup } from "./bucket.js";
export type { EmitterLines } from "./cascade.js";
export {
  clearFluxes,
  emptyFluxes,
  type Forcing,
  type WaterEngine,
  type WaterFluxes,
  type WaterState,
} from "./engine.js";
export { type EvaporationProcess, soilLimitedEvaporation } from "./evaporation.js";
export { type Grid, type RingShape, ringGrid, type StripShape, stripGrid } from "./grid.js";
export { fillGround, type Ground, thetaAtHead } from "./ground.js";
export {
  type Column,
  column,
  type DefaultUsed,
  type Ledger,
  type Measure,
  measure,
  type Result,
  type RunStatus,
  type Section,
  type Table,
  type TreeName,
  type Window,
} from "./result.js";
export { type RichardsEngine, type RichardsWork, richardsEngine, stateAtHeads } from "./richards.js";
export { type FineAt, type Fineness, refereeFineness, richardsGrid } from "./richards-grid.js";
export { type RefinedEngine, type RefinedSetup, refinedRichardsEngine } from "./richards-refined.js";
export type { OuterEdge, RichardsOptions, RichardsSetup, TopEdge } from "./richards-setup.js";
export { type SpillSetup, spillEngine } from "./spill.js";
export { copyState, restoreState } from "./state.js";
export { type Stress, type StressProcess, type Trapezoid, type TreeLimits, trapezoid, twoLimits } from "./stress.js";
export { laneEdges, layerEdges } from "./strip-edges.js";
export { type RootZone, type UptakeProcess, uptakeInto } from "./uptake.js";
