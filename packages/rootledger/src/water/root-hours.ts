import { type Band, bandOverlap, bandsOf, laneShares, requireBands } from "./place-bands.js";
import type { Result } from "./result.js";

/** Root-hours of one part of the ground and of the season; the three classes add up to all hours of those roots. */
export interface RootHours {
  /** Name of the part of the season, or "season". */
  readonly part: string;
  /** From and to, cm; the last band has no end. */
  readonly depthCm: Band;
  readonly distanceCm: Band;
  readonly thirsty: number;
  readonly fine: number;
  readonly airless: number;
}

/** How root-hours are summed. */
export interface RootHoursOptions {
  /** Place among the result's trees; default the first. */
  readonly tree?: number;
  /** Rising depths at which bands end, cm; default 10, 20, 40. Below the last one lies one more band. */
  readonly depthsCm?: readonly number[];
  /** Rising distances from the nearest line, or emitter, at which bands end, cm; default none: one band. */
  readonly distancesCm?: readonly number[];
  /** Default `together`: the whole season in one. */
  readonly parts?: "each" | "together";
}

const defaultDepthsCm = [10, 20, 40];

/**
 * The root-hours ledger of a run by depth band, by distance from the nearest line (from the emitter, where the lanes are rings) and
 * by part of the season. A cell that two bands share gives each the part that lies in it, roots even within the cell. Summed over all
 * rows the three classes are all root-hours of the run.
 *
 * @throws RangeError if bands do not rise from above 0 or the tree is not there.
 * @example rootHours(result, { depthsCm: [10, 20, 40], distancesCm: [20, 40], parts: "each" }).length
 */
export function rootHours(result: Result, options: RootHoursOptions = {}): readonly RootHours[] {
  const { tree = 0, depthsCm = defaultDepthsCm, distancesCm = [], parts = "together" } = options;
  requireBands("rootHours", "depthsCm", depthsCm);
  requireBands("rootHours", "distancesCm", distancesCm);
  requireTree(result, tree);
  const depths = bandsOf(depthsCm);
  const distances = bandsOf(distancesCm);
  const { lanes, layers, layerEdgesCm } = result.section;
  const inDistance = distances.map((band) => laneShares(result.section, band));
  const inDepth = depths.map((band) =>
    Array.from({ length: layers }, (_, i) => bandOverlap(band, layerEdgesCm[i], layerEdgesCm[i + 1])),
  );
  const names = result.rootHours.parts;
  const groups = parts === "each" ? names.map((name, part) => ({ name, from: part, to: part + 1 })) : [all(names)];
  return groups.flatMap(({ name, from, to }) =>
    depths.flatMap((depthCm, d) =>
      distances.map((distanceCm, s): RootHours => {
        const share = (cell: number): number => inDepth[d][(cell / lanes) | 0] * inDistance[s][cell % lanes];
        return { part: name, depthCm, distanceCm, ...sumOf(result, tree, from, to, share) };
      }),
    ),
  );
}

/**
 * Root-hours of the roots within the wetted reach of the lines and of the others. Roots that follow the wetted lanes have none
 * outside; those of a disc or of a given strip may.
 *
 * @throws RangeError if the tree is not there.
 * @example rootHoursByWetting(result).others.thirsty
 */
export function rootHoursByWetting(
  result: Result,
  tree = 0,
): { readonly wetted: RootHoursSum; readonly others: RootHoursSum } {
  requireTree(result, tree);
  const { lanes, wetByLane } = result.section;
  const count = result.rootHours.parts.length;
  return {
    wetted: sumOf(result, tree, 0, count, (cell) => wetByLane[cell % lanes]),
    others: sumOf(result, tree, 0, count, (cell) => 1 - wetByLane[cell % lanes]),
  };
}

/** Root-hours by part, depth and distance. */
export type RootHoursSum = Pick<RootHours, "thirsty" | "fine" | "airless">;

const all = (names: readonly string[]) => ({ name: "season", from: 0, to: names.length });

function sumOf(
  { rootHours: { values }, section, trees }: Result,
  tree: number,
  fromPart: number,
  toPart: number,
  share: (cell: number) => number,
): RootHoursSum {
  const cells = section.layers * section.lanes;
  let every = 0;
  let thirsty = 0;
  let airless = 0;
  for (let c = 0; c < cells; c++) {
    const part = share(c);
    if (part === 0) continue;
    for (let p = fromPart; p < toPart; p++) {
      const at = (kind: number): number => values[((p * 3 + kind) * cells + c) * trees.length + tree];
      every += part * at(0);
      thirsty += part * at(1);
      airless += part * at(2);
    }
  }
  return { thirsty, fine: every - thirsty - airless, airless };
}

function requireTree({ trees }: Result, tree: number): void {
  if (!(Number.isInteger(tree) && tree >= 0 && tree < trees.length))
    throw new RangeError(`rootHours requires a tree from 0 to ${trees.length - 1}: got ${tree}`);
}
