import type { Difference } from "rootledger/compare";
import { words } from "../words.js";
import { type MeasureRow, measureRows, printed } from "./measure-rows.js";
import { wrapped } from "./text-table.js";

/** What changes between two programmes on one soil: a sentence for each clear difference, one line for all that is not. */
export function differenceText(heading: string, differences: readonly Difference[]): string {
  const find = (row: MeasureRow, tree: Difference["tree"]) =>
    differences.find((d) => d.measureId === row.id && d.tree === tree);
  const clear: string[] = [];
  const unclear: string[] = [];
  for (const row of measureRows.filter((one) => one.told)) {
    const difference = find(row, "mean");
    if (difference === undefined || bothNothing(difference)) continue;
    const other = find(row, "under-fed");
    const differs = other !== undefined && other.verdict !== difference.verdict;
    const aside = differs ? `; ${words.butUnderFed}: ${verdictText(row, other)}` : "";
    const size = `${signed(row, difference.difference)}, ${words.floor} ${printed(row, difference.floor)}`;
    if (difference.verdict === "no clear difference") {
      unclear.push(`${row.label.toLowerCase()} (${size} ${row.unit}${aside})`);
    } else {
      clear.push(
        `${row.label} ${verdictText(row, difference)} ${values(row, difference)} ${row.unit} (${size}${aside}).`,
      );
    }
  }
  const rest = unclear.length === 0 ? [] : [`${words.noClear}: ${unclear.join(", ")}.`];
  return [`  ${heading}\n`, ...[...clear, ...rest].map((text) => wrapped(text, "      ", "    "))].join("");
}

/** A measure that is 0 on both sides, such as run-off where there is none, is in the table and needs no sentence. */
const bothNothing = ({ fromValue, toValue }: Difference): boolean => fromValue === 0 && toValue === 0;

const values = (row: MeasureRow, { fromValue, toValue }: Difference): string =>
  `${words.from} ${printed(row, fromValue)} ${words.to} ${printed(row, toValue)}`;

function verdictText(row: MeasureRow, difference: Difference): string {
  if (difference.verdict === "no clear difference")
    return `${difference.verdict}, ${signed(row, difference.difference)}`;
  return words[difference.verdict];
}

function signed(row: MeasureRow, value: number): string {
  const text = printed(row, value);
  return value > 0 && Number(text) !== 0 ? `+${text}` : text;
}
