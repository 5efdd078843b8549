export { bucketEngine, type WaterSetup } from "./bucket.js";
export { type EmitterLines } from "./cascade.js";
export { clearFluxes, emptyFluxes, type Forcing, type WaterEngine, type WaterFluxes, type WaterState } from "./engine.js";
export { type EvaporationProcess, soilLimitedEvaporation } from "./evaporation.js";
export { fillGround, type Ground, thetaAtHead } from "./ground.js";
export { type Grid, type RingShape, ringGrid, type StripShape, stripGrid } from "./grid.js";
export { type Stress, type StressProcess, trapezoid, type Trapezoid, type TreeLimits, twoLimits } from "./stress.js";
export { type RootZone, type UptakeProcess, uptakeInto } from "./uptake.js";
