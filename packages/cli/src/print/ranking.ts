import type { RankedAnswer, UnknownEffect, UnknownsRanking } from "rootledger/chance";
import { words } from "../words.js";
import { type MeasureRow, measureRows, printed, title } from "./measure-rows.js";
import { textTable, wrapped } from "./text-table.js";

/** Unknowns named per measure in the tables. Our choice: more would not fit the page. */
const namedPerRow = 2;
/** Effects smaller than this share of all are not named. Our choice. */
const leastWeight = 0.05;

/** The order of the unknowns, what each moves, and what to measure. */
export function rankingText(ranking: UnknownsRanking): string {
  const { method, finished, members, failed, overall } = ranking;
  const told = ranking.answers.filter(({ tree }) => tree === "mean");
  const rows = overall.map(({ id, weight }) => [id, percent(weight), mostlyFor(told, id)]);
  return [
    wrapped(`${ranking.name}: ${finished} ${words.of} ${members} ${words.drawsFinished}.`),
    ...(failed > 0 ? [wrapped(`${failed} ${words.drawsFailed}.`)] : []),
    `\n${words.ranked[method]}\n`,
    textTable("", [], [[words.rankUnknown, ...words.rankColumns], ...rows]),
    ...groupTables(ranking, told),
    `\n${words.measureIt}\n`,
    ...overall.map(({ name, how }, i) => wrapped(`${i + 1}. ${name}: ${how}`, "     ", "  ")),
    `\n${wrapped(words.rankRule[method])}${wrapped(words.uncorrelated)}`,
  ].join("");
}

function groupTables({ method }: UnknownsRanking, answers: readonly RankedAnswer[]): string[] {
  const groups = new Map<string, RankedAnswer[]>();
  for (const answer of answers) {
    const { soil, from, to } = answer;
    const name = from === undefined ? `${soil}: ${to}` : `${soil}: ${from} -> ${to}`;
    groups.set(name, [...(groups.get(name) ?? []), answer]);
  }
  return [...groups].map(([name, list]) => {
    const lines = measureRows.flatMap((row) => {
      const found = list.find(({ measureId }) => measureId === row.id);
      if (!row.told || found === undefined) return [];
      const named = found.unknowns.filter(({ weight }) => weight >= leastWeight).slice(0, namedPerRow);
      const text = named.map((one) => `${one.id} ${effectText(row, one, method)}`).join(", ");
      return [wrapped(`${title(row)}: ${text === "" ? words.nothingMoves : text}`, "      ", "    ")];
    });
    return `\n${wrapped(name)}${lines.join("")}`;
  });
}

function effectText(
  row: MeasureRow,
  { effect, alone, together }: UnknownEffect,
  method: UnknownsRanking["method"],
): string {
  if (method === "shares") return `${percent(effect)} (${percent(alone)})`;
  const sign = alone > 0 ? "+" : "";
  return `${sign}${printed(row, alone)} (${printed(row, together)})`;
}

/** The printed measure in which an unknown weighs most. */
function mostlyFor(answers: readonly RankedAnswer[], id: string): string {
  let most = 0;
  let label = "-";
  for (const { measureId, unknowns } of answers) {
    const row = measureRows.find((one) => one.id === measureId && one.told);
    const weight = unknowns.find((unknown) => unknown.id === id)?.weight ?? 0;
    if (row === undefined || weight <= most) continue;
    most = weight;
    label = row.label.toLowerCase();
  }
  return label;
}

const percent = (share: number): string => `${(100 * share).toFixed(0)} %`;
