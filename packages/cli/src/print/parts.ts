import type { Result } from "rootledger";
import { measuresByPart, rootHours } from "rootledger/water";
import { words } from "../words.js";
import { textTable } from "./text-table.js";

/** Depths at which the bands of the table end, cm. */
const depthsCm = [10, 20, 40];

/** The average tree by part of the season and its roots by depth, one table each; rows add up to the season's. */
export function partsText(result: Result): string {
  const tree = result.trees.indexOf("mean");
  const parts = measuresByPart(result, tree).map(({ part, days, sums }) => [
    part,
    `${days}`,
    ...[sums.thirsty, sums.fine, sums.airless, sums.belowRoots, sums.wanted, sums.transpired].map(whole),
  ]);
  const depths = rootHours(result, { tree, depthsCm }).map(({ depthCm: [from, to], thirsty, fine, airless }) => [
    Number.isFinite(to) ? `${from}-${to} cm` : `${words.parts.below} ${from} cm`,
    ...[thirsty, fine, airless].map(whole),
  ]);
  const { part, columns, depth, depthColumns } = words.parts;
  return `${textTable(part, [], [["", ...columns], ...parts])}\n${textTable(depth, [], [["", ...depthColumns], ...depths])}`;
}

const whole = (value = Number.NaN): string => (Object.is(Math.round(value), -0) ? "0" : `${Math.round(value)}`);
