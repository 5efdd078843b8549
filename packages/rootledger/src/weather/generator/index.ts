export { type ChanceStream, chanceStream } from "../../numeric/chance-stream.js";
export { type FittedGenerator, fitGenerator } from "./fit-generator.js";
export { fitMonthlyFigures, type MonthlyFigures } from "./fit-monthly-figures.js";
export { type GeneratedWeather, type GenerateOptions, generateWeather } from "./generate-weather.js";
export type {
  DrawnVariable,
  FollowingVariable,
  GeneratorFit,
  MonthOfRain,
  NormalVariable,
  RankedVariable,
} from "./generator-fit.js";
export { type Harmonic, harmonicAt } from "./harmonic.js";
export { chainOfWetFraction, meanDrySpellDays, meanWetSpellDays, type RainChain, wetFraction } from "./rain-chain.js";
export { publishedCorrelations, type ResidualProcess, residualProcess, residualsInto } from "./residual-process.js";
