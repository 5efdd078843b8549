/** Every text of `calibrate` that is not a number. */
export const calibrateWords = {
  readingsNeeded: "calibrate needs --readings FILE",
  wholeNumber: "must be a whole number of days above 0",
  noiseRange: "must be above 0 and below 0.5 m3/m3",
  fitNames: "must be some of, each once:",
  fitted: (name: string, count: number, runs: number): string =>
    `${name}: ${count} soil-moisture readings, fitted on blocks of days in turn with blocks that were only scored (${runs} runs)`,
  columns: ["unit", "fitted", "low", "high", "prior low", "prior high"],
  interval: (share: string): string => `unknown, ${share} interval`,
  atBound: "ended where the prior ends: not a value of the readings",
  scoreColumns: ["readings", "RMSE", "bias", "NSE", "KGE"],
  scores: "m3/m3",
  train: "seen by the fit",
  test: "only scored",
  before: "before the fit",
  depth: "cm deep,",
  fromLine: "cm from the line",
  missing: (count: number): string => `${count} readings were missing.`,
  honest: (noise: string, correlation: string, effective: string): string =>
    `Residuals spread by ${noise} m3/m3 and hang together by ${correlation} from one to the next, so that the readings count as ${effective} independent ones. The intervals know of that; they do not know of an error of the model itself.`,
  tooFew: "These are too few to know the noise by: the intervals are those of the priors.",
} as const;
