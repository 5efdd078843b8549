export type { Advice, AdviceAnswer, AdviceCaution, AdviceMeasure, AdviceMember } from "./advice.js";
export { type AdviceCase, type AdviceQuestion, adviceCase, type OtherLines } from "./advice-case.js";
export type { AdviceCause, AdviceFacts } from "./advice-cause.js";
export { type AdviceCheck, type AdviceCheckOptions, type CheckedDifference, checkAdvice } from "./advice-check.js";
export { type AdviceChoice, type AdviceLadders, neighboursOf, programmeOf } from "./advice-choice.js";
export { type CandidateCut, limitBroken } from "./advice-limits.js";
export {
  type AdviceBatch,
  type AdvicePoint,
  type AdviceStarts,
  adviceRun,
  adviceStarts,
} from "./advice-run.js";
export type { AdviseOptions } from "./advice-search.js";
export type { AdviceDifference, AdviceMeasureId } from "./advice-set.js";
export { advise } from "./advise.js";
export { type DryRules, type DryRulesApart, dryRulesApart } from "./dry-rules-apart.js";
export { type FittedUnknown, fitReadings, type ReadingsFit } from "./fit-readings.js";
export {
  type JudgedReading,
  judgeReadings,
  type Reading,
  type ReadingState,
  type ReadingsVerdict,
  tensiometerRangeKPa,
} from "./judge-readings.js";
export { pluggedTree } from "./plugged-tree.js";
export type { SensorPlace } from "./sensor-place.js";
export {
  type SensorTwin,
  sensorTraces,
  sensorTwin,
  type Trace,
  type TwinBand,
  type TwinDraws,
  type TwinOptions,
  type TwinWindow,
} from "./sensor-twin.js";
export {
  type ExpectedReading,
  NothingToWater,
  type Sheet,
  type SheetOpening,
  type SheetQuestion,
  sheet,
} from "./sheet.js";
export { longestDrainH, type PitAnswer, type PitReadings, pitAnswer, type StructureGuess } from "./spade-and-tape.js";
export { type StartWindow, type StartWindowOptions, startWindow } from "./start-window.js";
export { type SprinklerBlock, type SprinklerWarning, underMicroSprinkler } from "./under-micro-sprinkler.js";
export { type SensorSite, type SensorSites, sensorSites } from "./where-to-put-sensors.js";
export { type YearOfPlan, type YearsPlan, type YearsQuestion, yearsPlan } from "./years-plan.js";
