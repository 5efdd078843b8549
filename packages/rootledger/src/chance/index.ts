export { defaultPriors } from "./default-priors.js";
export { type Distribution, quantileOf } from "./distribution.js";
export { type Draw, type DrawSource, drawIds, drawMaker, drawRecord } from "./draw.js";
export { editComparison } from "./edit.js";
export { fieldCapacityPrior } from "./edit-field-capacity.js";
export {
  type EnsembleOptions,
  type EnsembleResult,
  ensemble,
  ensembleResult,
  type MeasureBand,
  type PairedDifference,
  type TalliedPlan,
  talliedResult,
  tallyEnsemble,
} from "./ensemble.js";
export { type EnsembleLayout, type EnsemblePlan, layoutOf } from "./ensemble-plan.js";
export { type CancelSignal, type Executor, type MemberOutcome, oneThread, outcomeOf, type Work } from "./executor.js";
export { type MemberRun, memberRun } from "./member-run.js";
export { type ElementaryEffects, elementaryEffects, type MorrisDesign, morrisDesign } from "./morris.js";
export { type DrawsFault, type ParsedDraws, parseDraws } from "./parse-draws.js";
export type { Correlation, Prior, Priors, UnknownId } from "./prior.js";
export {
  type RankedAnswer,
  type RankingOptions,
  rankUnknowns,
  type UnknownEffect,
  type UnknownsRanking,
} from "./rank-unknowns.js";
export { type RankingMethod, type Screening, screeningOf } from "./screening.js";
export { type Band, createSketch, type PlainSketch, type Sketch } from "./sketch.js";
export { type SobolDesign, type SobolIndices, sobolDesign, sobolIndices } from "./sobol-indices.js";
export { createTally, type MemberFailure, type PlainPair, type PlainTally, type Tally } from "./tally.js";
export { weatherYears } from "./weather-years.js";
export { type ToMeasure, whatToMeasure } from "./what-to-measure.js";
export { type MemberPort, type OpenPort, type PortEvents, workerPool } from "./worker-pool.js";
