import type { ComparisonResult } from "rootledger/compare";
import { badgeWords, questionWords, words } from "../words.js";
import { assumptions, runNotes } from "./assumptions.js";
import { differenceText } from "./differences.js";
import { measureTable } from "./measure-table.js";
import { wrapped } from "./text-table.js";
import { valveText } from "./valve.js";

const letters = ["A", "B", "C", "D"];

/** The whole answer of `compare` as text, at most 100 characters wide. */
export function comparisonText(result: ComparisonResult, place: string, notes: readonly string[]): string {
  const programmes = [...new Set(result.arms.map((arm) => arm.programme))];
  const soils = [...new Set(result.arms.map((arm) => arm.soil))];
  const letterOf = (programme: string): string => letters[programmes.indexOf(programme)] ?? programme;
  const armsOf = (soil: string) => result.arms.filter((arm) => arm.soil === soil);
  const first = result.arms[0]?.result;
  const season =
    first === undefined ? "" : `${words.season}: ${first.days.rows} ${words.days} ${first.startDate}, ${place}.`;
  return [
    wrapped(result.name),
    result.remark === "" ? "" : wrapped(result.remark),
    wrapped(season),
    `\n${words.programmes}\n`,
    ...programmes.map((name) => {
      const arm = result.arms.find((one) => one.programme === name);
      return wrapped(
        `${name}${arm === undefined ? "" : `: ${arm.result.watering ? words.decides : valveText(arm.result)}`}`,
        "     ",
        `  ${letterOf(name)}  `,
      );
    }),
    ...result.changes.map(({ from, to, questions }) => {
      const asked = questions.map((question) => questionWords[question]).join(" and ");
      const what =
        questions.length === 0 ? words.changesNothing : questions.length > 1 ? `${asked} ${words.together}` : asked;
      return wrapped(
        `${words.changes} ${words.from} ${letterOf(from)} ${words.to} ${letterOf(to)}: ${what}.`,
        "    ",
        "  ",
      );
    }),
    "\n",
    ...result.badges.map(({ id, holds, detail }) =>
      wrapped(`${holds ? words.holds : words.doesNotHold}: ${badgeWords[id]} (${detail})`, "    ", "  "),
    ),
    ...soils.map((soil) => {
      const arms = armsOf(soil);
      const table = measureTable(
        soil.toUpperCase(),
        arms.map((arm) => arm.result),
        letters.slice(0, arms.length),
      );
      return `\n${table}`;
    }),
    `\n${words.differences}\n`,
    ...soils.flatMap((soil) =>
      result.changes.map(({ from, to }) => {
        const heading = `${soil}, ${letterOf(from)} ${words.to} ${letterOf(to)}`;
        return differenceText(
          heading,
          result.differences.filter((d) => d.soil === soil && d.from === from && d.to === to),
        );
      }),
    ),
    "\n",
    assumptions(
      result.arms.map((arm) => arm.result),
      [...notes, ...result.arms.flatMap((arm) => runNotes(arm.result, `${arm.soil}, ${letterOf(arm.programme)}`))],
      result.defaultsUsed,
    ),
  ].join("");
}
