import type { Result } from "rootledger";
import type { ComparisonResult } from "rootledger/compare";
import type { WaterNeed } from "rootledger/tree";
import { csvText } from "./csv-text.js";

const millisecondsPerDay = 86_400_000;

/** The day table: one line per day and tree, units in the column names, point decimals at full precision. */
export function dayCsv(result: Result): string {
  const { days, trees, startDate } = result;
  const first = Date.parse(`${startDate}T00:00:00Z`);
  const lines = [["date", "tree", ...days.columns.map(({ name, unit }) => `${name}_${unit}`)]];
  for (let day = 0; day < days.rows; day++) {
    const date = new Date(first + day * millisecondsPerDay).toISOString().slice(0, 10);
    trees.forEach((tree, t) => {
      lines.push([date, tree, ...days.columns.map(({ values }) => String(values[day * trees.length + t]))]);
    });
  }
  return csvText(lines);
}

/** Every measure of every arm and tree, one per line. */
export function measuresCsv({ arms }: ComparisonResult): string {
  const lines = arms.flatMap(({ soil, programme, result }) =>
    result.measures.flatMap(({ id, unit, values }) =>
      result.trees.map((tree, t) => [soil, programme, tree, id, unit, String(values[t])]),
    ),
  );
  return csvText([["soil", "programme", "tree", "measure", "unit", "value"], ...lines]);
}

/** The spans of a need, one line each; hectare columns are empty where no spacing is given. */
export function needCsv({ periods }: WaterNeed): string {
  const day = ["netLPerTree", "grossLPerTree", "netMm", "grossMm", "netM3PerHa", "grossM3PerHa"] as const;
  const span = ["netLPerTree", "grossLPerTree", "netM3PerHa", "grossM3PerHa"] as const;
  const head = [
    ...["name", "days", "referenceMmPerDay", "coefficient"],
    ...day.map((column) => `meanDay_${column}`),
    ...day.map((column) => `hotDay_${column}`),
    ...span.map((column) => `span_${column}`),
  ];
  const lines = periods.map((period) =>
    [
      ...[period.name, period.days, period.referenceMmPerDay, period.coefficient],
      ...day.map((column) => period.meanDay[column]),
      ...day.map((column) => period.hotDay[column]),
      ...span.map((column) => period[column]),
    ].map((cell) => (cell === undefined ? "" : String(cell))),
  );
  return csvText([head, ...lines]);
}
