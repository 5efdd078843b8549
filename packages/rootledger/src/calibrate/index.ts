export { type BoundedFit, boundedFit, type ExpectedUnknown } from "./bounded-fit.js";
export {
  type CalibratedUnknown,
  type Calibration,
  type CalibrationOptions,
  calibrate,
  type PlaceScores,
} from "./calibrate.js";
export { type DayBlock, dayBlocks, dayUse } from "./day-blocks.js";
export { type FitScores, fitScores } from "./fit-scores.js";
export { type FitSpread, type FittedModel, fitSpread } from "./fit-spread.js";
export {
  dampedLeastSquares,
  type LeastSquares,
  type LeastSquaresProblem,
  type LevenbergMarquardt,
} from "./least-squares.js";
export type { MoistureReading } from "./moisture-reading.js";
export { type MoistureFault, type ParsedMoisture, parseMoisture } from "./parse-moisture.js";
