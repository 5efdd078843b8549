export {
  depletionFractionFor,
  readilyAvailableWaterMm,
  stressCoefficient,
  totalAvailableWaterMm,
} from "./available-water.js";
export { kcbByDay } from "./kcb-by-day.js";
export { rootDepthShare } from "./root-depth-share.js";
export { type LateralRoots, rootLaneShare } from "./root-lane-share.js";
