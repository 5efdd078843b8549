export { type OwnCurve, ownCurve } from "./own-curve.js";
export { withOwnHours } from "./own-hours.js";
export { type OwnProcesses, ownProcesses, type ProcessView } from "./own-processes.js";
export type { SourceProcess, SourceView } from "./own-source.js";
export type { ProcessFault, SlotName } from "./process-fault.js";
export type { StepForcing } from "./step-forcing.js";
export { type StepBook, type StepFluxes, type StepModel, type StepState, stepModel } from "./step-model.js";
export { type Observer, runWatched, type WatchedHour } from "./watched-run.js";
