import type { Result } from "./result.js";

/** What happened in one part of the season. Sums of the day table's columns, in their units, by name. */
export interface PartMeasures {
  readonly part: string;
  readonly days: number;
  readonly sums: Readonly<Record<string, number>>;
}

/**
 * The day table's fluxes (water in litres per tree, root-hours and severities in h, rain and ET0 in mm) summed by part of the season:
 * stage, limit period or month. The parts' sums add up to the season's.
 *
 * @throws RangeError if the tree is not there.
 * @example measuresByPart(result).find(({ part }) => part === "flowering")?.sums.thirsty
 */
export function measuresByPart(result: Result, tree = 0): readonly PartMeasures[] {
  const { days, trees } = result;
  if (!(Number.isInteger(tree) && tree >= 0 && tree < trees.length))
    throw new RangeError(`measuresByPart requires a tree from 0 to ${trees.length - 1}: got ${tree}`);
  const { parts, partOfDay } = result.rootHours;
  const fluxes = days.columns.filter(({ kind }) => kind === "flux");
  return parts.map((part, p) => {
    const sums: Record<string, number> = Object.fromEntries(fluxes.map(({ name }) => [name, 0]));
    let count = 0;
    for (let day = 0; day < days.rows; day++) {
      if (partOfDay[day] !== p) continue;
      count++;
      for (const { name, values } of fluxes) sums[name] += values[day * trees.length + tree];
    }
    return { part, days: count, sums };
  });
}
