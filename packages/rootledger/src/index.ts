export { compare } from "./compare/compare.js";
export type { SimulateOptions } from "./scenario/options.js";
export { simulate } from "./scenario/run.js";
export type { Scenario } from "./scenario/scenario.js";
export { createSimulation, type Simulation, type Snapshot } from "./scenario/simulation.js";
export { version } from "./version.js";
export { column, type Measure, measure, type Result, type Table } from "./water/result.js";
