import type { Badge, Difference } from "../compare/comparison.js";
import { type Arm, type Comparison, gather, scenarioOf } from "../compare/index.js";
import { everyPart } from "../scenario/every-part.js";
import { simulate } from "../scenario/run.js";
import type { SiteWeather } from "../scenario/scenario.js";
import type { TreeName } from "../water/result.js";
import type { DrawSource } from "./draw.js";

/** What an ensemble runs, as plain data: it can be sent to a worker or written down. */
export interface EnsemblePlan {
  /** The template. One programme alone gives bands and no differences. */
  readonly comparison: Comparison;
  readonly trees: readonly TreeName[];
  readonly draws: DrawSource;
  /** The seasons that `weather-year` counts from 1; empty where it is not drawn. */
  readonly weatherYears: readonly SiteWeather[];
}

/** What each place in a member's numbers means. */
export interface EnsembleLayout {
  readonly arms: readonly { readonly soil: string; readonly programme: string }[];
  readonly measures: readonly { readonly id: string; readonly unit: string }[];
  readonly trees: readonly TreeName[];
  readonly differences: readonly Pick<
    Difference,
    "measureId" | "unit" | "soil" | "tree" | "from" | "to" | "floorBasis" | "floorReason"
  >[];
  readonly badges: readonly Badge["id"][];
  /** Length of a member's numbers: values by arm, measure and tree; each difference and its floor; each badge as 0 or 1. */
  readonly size: number;
}

/**
 * The layout of a plan, read from one day of its template.
 *
 * @throws RangeError if there is no soil or no programme, more than four programmes, or the template does not fit together.
 * @example layoutOf(plan).size
 */
export function layoutOf({ comparison, trees }: Pick<EnsemblePlan, "comparison" | "trees">): EnsembleLayout {
  const { soils, programmes, season, start } = comparison;
  if (soils.length === 0) throw new RangeError("an ensemble requires at least one soil: got none");
  if (programmes.length === 0 || programmes.length > 4) {
    throw new RangeError(`an ensemble requires one to four programmes: got ${programmes.length}`);
  }
  if (trees.length === 0) throw new RangeError("an ensemble requires at least one tree: got none");
  const oneDay: Comparison = {
    ...comparison,
    season: { ...season, days: 1 },
    start: { ...start, kind: "same-state" },
  };
  const arms = soils.flatMap((soil) =>
    programmes.map((programme): Arm => {
      const result = simulate(scenarioOf(oneDay, soil, programme), { ...everyPart(comparison), trees });
      return { soil: soil.name, programme: programme.name, result };
    }),
  );
  const measures = arms[0].result.measures.map(({ id, unit }) => ({ id, unit }));
  const gathered = gather(comparison, arms, []);
  const differences = gathered.differences.map((d) => ({
    ...{ measureId: d.measureId, unit: d.unit, soil: d.soil, tree: d.tree, from: d.from, to: d.to },
    ...{ floorBasis: d.floorBasis, floorReason: d.floorReason },
  }));
  const badges = gathered.badges.map(({ id }) => id);
  return {
    arms: arms.map(({ soil, programme }) => ({ soil, programme })),
    measures,
    trees,
    differences,
    badges,
    size: arms.length * measures.length * trees.length + 2 * differences.length + badges.length,
  };
}
