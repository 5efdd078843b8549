import { simulate } from "rootledger";
import { scenarioOf } from "rootledger/compare";
import { everyPart, parseComparison } from "rootledger/scenario";

/** Every measure and every column of hours and days of all programmes on the first soil; runs in node and inside the browser. */
export function columnsOfProgrammes(comparisonText: string, weatherText: string): Record<string, readonly number[]> {
  const parsed = parseComparison(JSON.parse(comparisonText), { "weather.csv": weatherText });
  if (!parsed.ok) throw new Error(`the demo must be readable: ${JSON.stringify(parsed.faults)}`);
  const { comparison } = parsed;
  return Object.fromEntries(
    comparison.programmes.flatMap((programme) => {
      const scenario = scenarioOf(comparison, comparison.soils[0]!, programme);
      const { measures, hours, days } = simulate(scenario, everyPart(scenario));
      return [
        ...measures.map(({ id, values }) => [`${programme.name}: ${id}`, [...values]] as const),
        ...[hours, days].flatMap(({ rowLength, columns }) =>
          columns.map(({ name, values }) => [`${programme.name}: ${name} by ${rowLength}`, [...values]] as const),
        ),
      ];
    }),
  );
}
