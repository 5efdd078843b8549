import {
  comparisonJsonSchema,
  comparisonResultJsonSchema,
  ensembleResultJsonSchema,
  needJsonSchema,
  planJsonSchema,
  resultJsonSchema,
  scenarioJsonSchema,
} from "rootledger/scenario";
import { exit, type Io } from "./io.js";
import { jsonText } from "./print/json.js";
import { Refused } from "./refused.js";
import type { Asked } from "./run.js";
import { words } from "./words.js";

const schemas: Readonly<Record<string, () => unknown>> = {
  scenario: scenarioJsonSchema,
  comparison: comparisonJsonSchema,
  need: needJsonSchema,
  plan: planJsonSchema,
  "simulate-result": resultJsonSchema,
  "compare-result": comparisonResultJsonSchema,
  "ensemble-result": ensembleResultJsonSchema,
};

/** `rootledger schema NAME`: the JSON Schema of a file that is read or of an answer in JSON. */
export async function schemaCommand({ file }: Asked, io: Io): Promise<number> {
  const schema = Object.hasOwn(schemas, file) ? schemas[file] : undefined;
  if (schema === undefined) throw new Refused(`${words.schemaNames} ${Object.keys(schemas).join(", ")}: got ${file}\n`);
  io.stdout(jsonText(schema()));
  return exit.done;
}
