import { measure, type Result } from "rootledger";
import { words } from "../words.js";
import { printed, rowsOf, title } from "./measure-rows.js";
import { textTable } from "./text-table.js";

/** Trees in the order of the table: the average one first. */
const treeOrder = ["mean", "under-fed", "over-fed"] as const;

/** Measures down, programmes across, once for each tree; `letters` name the results. */
export function measureTable(name: string, results: readonly Result[], letters: readonly string[]): string {
  const trees = treeOrder.filter((tree) => results[0]?.trees.includes(tree));
  const columns = trees.flatMap((tree) => results.map((result) => ({ tree, result })));
  const groups = trees.flatMap((tree) => results.map((_, i) => (i === results.length - 1 ? words.trees[tree] : "")));
  const heads = letters.length > 1 ? [["", ...columns.map((_, i) => letters[i % letters.length] ?? "")]] : [];
  const shown = results[0] === undefined ? [] : rowsOf(results[0]);
  const rows = shown.map((row) => [
    title(row),
    ...columns.map(({ tree, result }) =>
      printed(row, measure(result, row.id).values[result.trees.indexOf(tree)] ?? Number.NaN),
    ),
  ]);
  return textTable(name, groups, [...heads, ...rows]);
}
