import { z } from "zod";
import { comparisonSchema, scenarioSchema } from "./schema-file.js";

/** JSON Schema (draft 2020-12) of the scenario file, for editors and other programs. @example scenarioJsonSchema().required */
export const scenarioJsonSchema = (): z.core.JSONSchema.BaseSchema => z.toJSONSchema(scenarioSchema);

/** JSON Schema (draft 2020-12) of the comparison file. @example comparisonJsonSchema().required */
export const comparisonJsonSchema = (): z.core.JSONSchema.BaseSchema => z.toJSONSchema(comparisonSchema);
