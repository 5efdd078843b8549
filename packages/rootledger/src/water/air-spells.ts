import { type Band, bandOverlap, bandsOf, laneShares, requireBands } from "./place-bands.js";
import type { Result } from "./result.js";

/** The longest spell without air of any rooted cell in a part of the ground. */
export interface AirSpellPlace {
  readonly depthCm: Band;
  readonly distanceCm: Band;
  readonly longestH: number;
}

/**
 * Longest unbroken spell without air by depth and by distance from the nearest line, of the worst rooted cell there: hours at whose end
 * the cell was airless by the tree's limits outside any limit period. Over the hours for which the run kept its cells; mean tree.
 *
 * @throws RangeError if the run kept no cells or bands do not rise from above 0.
 * @example longestAirlessByPlace(simulate(scenario, { cells: { fromHour: 0, hours: 336 } }))[0]?.longestH
 */
export function longestAirlessByPlace(
  result: Result,
  {
    depthsCm = [10, 20, 40],
    distancesCm = [],
  }: { readonly depthsCm?: readonly number[]; readonly distancesCm?: readonly number[] } = {},
): readonly AirSpellPlace[] {
  requireBands("longestAirlessByPlace", "depthsCm", depthsCm);
  requireBands("longestAirlessByPlace", "distancesCm", distancesCm);
  if (result.cells === undefined) {
    throw new RangeError("longestAirlessByPlace requires a run that kept its cells: pass cells to simulate");
  }
  const { section } = result;
  const { lanes, layerEdgesCm, rootShare } = section;
  const longest = longestByCell(result, result.cells);
  return bandsOf(depthsCm).flatMap((depthCm) =>
    bandsOf(distancesCm).map((distanceCm): AirSpellPlace => {
      const near = laneShares(section, distanceCm);
      let longestH = 0;
      longest.forEach((hours, c) => {
        const i = (c / lanes) | 0;
        const here = bandOverlap(depthCm, layerEdgesCm[i], layerEdgesCm[i + 1]) * near[c % lanes] * rootShare[c];
        if (here > 0 && hours > longestH) longestH = hours;
      });
      return { depthCm, distanceCm, longestH };
    }),
  );
}

/** Whether each cell is without air at one moment, by air-filled porosity and tension. @example airlessCell(result, theta, 0) */
export function airlessCell({ section, window }: Result, theta: number, cell: number): boolean {
  const { thetaSaturated, thetaAtAirReturn } = section;
  return thetaSaturated[cell] - theta < window.airLimitFraction && theta > thetaAtAirReturn[cell];
}

function longestByCell(result: Result, { theta, hours }: NonNullable<Result["cells"]>): Float64Array {
  const count = result.section.layers * result.section.lanes;
  const longest = new Float64Array(count);
  for (let c = 0; c < count; c++) {
    let current = 0;
    for (let hour = 0; hour < hours; hour++) {
      current = airlessCell(result, theta[hour * count + c], c) ? current + 1 : 0;
      if (current > longest[c]) longest[c] = current;
    }
  }
  return longest;
}
