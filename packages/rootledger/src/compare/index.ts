export { type ArmAbsence, type ArmBeside, type ArmId, armsBeside, comparesPulses } from "./arms.js";
export { type CompareOptions, compare, gather, scenarioOf } from "./compare.js";
export type { Arm, Badge, Comparison, ComparisonResult, Difference, Question } from "./comparison.js";
export { type Convergence, type ConvergenceRow, convergence, type Fineness } from "./convergence.js";
export { type ChangeKind, type EngineErrors, engineErrors, type SoilGroup } from "./engine-errors.js";
export { type Floor, type FloorBasis, floorOf } from "./floors.js";
export { type PairedSpread, pairedVerdict } from "./paired-verdict.js";
export { type ArmAnswer, type ArmStore, armKey, runArm } from "./run-arm.js";
