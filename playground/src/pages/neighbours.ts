import type { ComparisonResult } from "rootledger/compare";

/** The programmes in order, and the changes between each and the next. */
export function neighboursOf(result: ComparisonResult): {
  readonly names: readonly string[];
  readonly neighbours: ComparisonResult["changes"];
} {
  const names = [...new Set(result.arms.map((arm) => arm.programme))];
  const neighbours = result.changes.filter((c) => names.indexOf(c.to) === names.indexOf(c.from) + 1);
  return { names, neighbours };
}
