export { compare } from "./compare/compare.js";
export { createSimulation, type Simulation, type Snapshot } from "./scenario/simulation.js";
export type { Scenario } from "./scenario/scenario.js";
export { simulate } from "./scenario/run.js";
export type { SimulateOptions } from "./scenario/options.js";
export { column, measure, type Measure, type Result, type Table } from "./water/result.js";
export { version } from "./version.js";
