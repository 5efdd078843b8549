import { type ParsedComparison, parseComparison, parseScenario } from "rootledger/scenario";
import type { Input } from "./read-input.js";

type Either = ParsedComparison | Extract<Input, { readonly ok: false }>;

/** A comparison file, or a scenario file as the comparison of one programme on one soil. */
export function parseEither(input: Input): Either {
  if (!input.ok) return input;
  const { value, files } = input;
  const lists = typeof value === "object" && value !== null && ("soils" in value || "programmes" in value);
  if (lists) return parseComparison(value, files);
  const parsed = parseScenario(value, files);
  if (!parsed.ok) return parsed;
  const { soil, programme, ...common } = parsed.scenario;
  return { ...parsed, comparison: { ...common, remark: "", soils: [soil], programmes: [programme] } };
}
