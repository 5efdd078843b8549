export { cropDefaults } from "./crop-defaults.js";
export { decidedValve } from "./decided-valve.js";
export { type Default, defaults } from "./defaults.js";
export { engineOf } from "./engine-of.js";
export { everyPart } from "./every-part.js";
export type { Fault, FaultCode } from "./faults.js";
export { inputsKey } from "./inputs-key.js";
export { comparisonJsonSchema, scenarioJsonSchema } from "./json-schema.js";
export { needDefaults } from "./need-defaults.js";
export type { SimulateOptions } from "./options.js";
export { withOwnLines } from "./own-lines.js";
export {
  type Files,
  filesNamed,
  type ParsedComparison,
  type ParsedScenario,
  parseComparison,
  parseScenario,
} from "./parse.js";
export { needJsonSchema, type ParsedNeed, parseNeed } from "./parse-need.js";
export { type ParsedPlan, type Plan, parsePlan, planJsonSchema } from "./parse-plan.js";
export { parseWeatherRecord } from "./parse-record.js";
export type { WeatherRead } from "./parse-weather.js";
export { type PracticeAccount, type PracticeAccounts, practiceAccounts } from "./practice-account.js";
export { rainHeld } from "./rain-held.js";
export { ruleDefaults } from "./rule-defaults.js";
export { simulate } from "./run.js";
export type * from "./scenario.js";
export type { ComparisonFile, ScenarioFile } from "./schema-file.js";
export type { NeedFile } from "./schema-need.js";
export { comparisonResultJsonSchema, ensembleResultJsonSchema, resultJsonSchema } from "./schema-result.js";
export { createSimulation, type Simulation, type Snapshot } from "./simulation.js";
export { seasonSolutes } from "./solutes/season-solutes.js";
export { solutesDefaults } from "./solutes-defaults.js";
export type { SolutesInRun, SolutesMaker, SolutesSetup } from "./solutes-in-run.js";
export { treesOf } from "./supply.js";
export { surfaceDefaults } from "./surface-defaults.js";
export type { Valve, ValveMaker, ValveSnapshot } from "./valve.js";
export { type YoungTree, youngTree } from "./young-tree.js";
