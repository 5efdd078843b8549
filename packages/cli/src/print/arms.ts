import type { ArmAnswer, Difference } from "rootledger/compare";
import { words } from "../words.js";
import { armAbsenceWords, armWords } from "../words-arms.js";
import { type MeasureRow, measureRows, printed } from "./measure-rows.js";
import { textTable, wrapped } from "./text-table.js";

const shown = ["below-roots-depth", "transpiration-ratio", "thirsty", "airless"];

/** For each soil and pair of programmes, one line per arm: does the answer stand where something else changes? */
export function armsText(answers: readonly ArmAnswer[]): string {
  const groups = new Map<string, { answer: ArmAnswer; differences: Difference[] }[]>();
  for (const answer of answers) {
    for (const difference of answer.differences) {
      const name = `${difference.soil}: ${difference.from} -> ${difference.to}`;
      const list = groups.get(name) ?? [];
      groups.set(name, list);
      const mine = list.find((one) => one.answer === answer);
      if (mine === undefined) list.push({ answer, differences: [difference] });
      else mine.differences.push(difference);
    }
  }
  const rows = shown.flatMap((id) => measureRows.filter((row) => row.id === id));
  const heads = rows.map(({ id, unit }) => `${words.armColumns[id as keyof typeof words.armColumns]} ${unit}`);
  return [
    `\n${words.armsTitle}\n`,
    ...[...groups].map(([name, list]) => {
      const lines = list.map(({ answer, differences }) => [
        armWords[answer.id],
        ...rows.map((row) => cell(row, differences)),
      ]);
      return `\n${wrapped(name)}${textTable("", [], [["", ...heads], ...lines])}`;
    }),
    "\n",
    ...answers.flatMap(({ id, absent }) =>
      absent === undefined ? [] : [wrapped(`${armWords[id]}: ${armAbsenceWords[absent]}.`, "    ", "  ")],
    ),
    wrapped(words.armsRule),
  ].join("");
}

function cell(row: MeasureRow, differences: readonly Difference[]): string {
  const found = differences.find(({ measureId }) => measureId === row.id);
  if (found === undefined) return "-";
  const text = printed(row, found.difference);
  const signed = found.difference > 0 && Number(text) !== 0 ? `+${text}` : text;
  return found.verdict === "no clear difference" ? `(${signed})` : signed;
}
