import { simulate } from "rootledger";
import { scenarioOf } from "rootledger/compare";
import { parseComparison } from "rootledger/scenario";

/** Measures of the first programme on the first soil, by the library's own `simulate`; bundled and run inside the browser. */
export function measuresOfFirstArm(comparisonText: string, weatherText: string): Record<string, number> {
  const parsed = parseComparison(JSON.parse(comparisonText), { "weather.csv": weatherText });
  if (!parsed.ok) throw new Error(`the demo must be readable: ${JSON.stringify(parsed.faults)}`);
  const { comparison } = parsed;
  const scenario = scenarioOf(comparison, comparison.soils[0]!, comparison.programmes[0]!);
  const { measures } = simulate(scenario, { trees: ["mean"] });
  return Object.fromEntries(measures.map(({ id, values }) => [id, values[0]!]));
}
