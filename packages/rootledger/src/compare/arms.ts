import type { Comparison } from "../scenario/scenario.js";
import { measure, type TreeName } from "../water/result.js";
import { dailySingle, isDailySingle, startingAt, timesDose, withStructure, withWetSpell } from "./arm-changes.js";
import type { ComparisonResult } from "./comparison.js";

/** What stands beside a comparison of pulses with long runs. */
export type ArmId =
  | "as-asked"
  | "daily-single"
  | "dose-above"
  | "dose-below"
  | "night-start"
  | "day-start"
  | "wet-spell"
  | "tight"
  | "crumbly"
  | "fast-engine"
  | "slow-engine"
  | "under-fed"
  | "over-fed";

/** Why an arm is not run. */
export type ArmAbsence = "in-the-comparison" | "four-programmes" | "unlike-runs" | "lines-stay-full" | "no-texture";

/** An arm to be run, or the reason why there is none. */
export type ArmBeside =
  | { readonly id: ArmId; readonly comparison: Comparison; readonly tree: TreeName }
  | { readonly id: ArmId; readonly absent: ArmAbsence };

/** Doses above and below need, starts at night and by day, days given to the slow engine. Our choices, no source. */
const aboveNeed = 1.2;
const belowNeed = 0.8;
const nightH = 22;
const dayH = 10;
const slowDays = 14;
const mostProgrammes = 4;

/**
 * The arms beside a comparison: the daily single run; a dose of 1.2 and of 0.8 times the season's wanted transpiration; starts at
 * 22:00 and 10:00; five days of 20 mm of rain; tight and crumbly soil; the first 14 days by the fast and by the slow engine, both
 * from the stated tension; the under-fed and the over-fed tree. Nothing is run here: see `runArm`.
 *
 * @param result the comparison's own answer: what the trees wanted and what each programme brought
 * @example armsBeside(comparison, compare(comparison)).map(({ id }) => id)
 */
export function armsBeside(comparison: Comparison, result: ComparisonResult): ArmBeside[] {
  const mean = (id: ArmId, changed: Comparison): ArmBeside => ({ id, comparison: changed, tree: "mean" });
  const programmes = (change: (one: Comparison["programmes"][number]) => Comparison["programmes"][number]) => ({
    ...comparison,
    programmes: comparison.programmes.map(change),
  });
  const dosed = (ratio: number): Comparison =>
    programmes((one) => timesDose(one, ratio * wantedOverApplied(result, one.name)));
  const { season, start } = comparison;
  const few: Comparison = {
    ...comparison,
    season: { ...season, days: Math.min(season.days, slowDays) },
    start: { ...start, kind: "same-state" },
  };
  const drains = comparison.block.lines.drainOut !== undefined;
  const structured = (id: "tight" | "crumbly"): ArmBeside =>
    comparison.soils.some(({ horizons }) => horizons.some((one) => "texture" in one || "particles" in one))
      ? mean(id, withStructure(comparison, id))
      : { id, absent: "no-texture" };
  return [
    mean("as-asked", comparison),
    dailySingleArm(comparison),
    mean("dose-above", dosed(aboveNeed)),
    mean("dose-below", dosed(belowNeed)),
    mean(
      "night-start",
      programmes((one) => startingAt(one, nightH)),
    ),
    mean(
      "day-start",
      programmes((one) => startingAt(one, dayH)),
    ),
    mean("wet-spell", withWetSpell(comparison)),
    structured("tight"),
    structured("crumbly"),
    mean("fast-engine", { ...few, engine: "bucket" }),
    mean("slow-engine", { ...few, engine: "richards" }),
    { id: "under-fed", comparison, tree: "under-fed" },
    drains ? { id: "over-fed", comparison, tree: "over-fed" } : { id: "over-fed", absent: "lines-stay-full" },
  ];
}

/** Whether a comparison holds pulses against a long run, so that arms belong beside it. @example comparesPulses(result) */
export const comparesPulses = ({ changes }: Pick<ComparisonResult, "changes">): boolean =>
  changes.some(({ questions }) => questions.includes("pulses"));

function dailySingleArm(comparison: Comparison): ArmBeside {
  const { programmes } = comparison;
  const id = "daily-single";
  if (programmes.some(isDailySingle)) return { id, absent: "in-the-comparison" };
  if (programmes.length === mostProgrammes) return { id, absent: "four-programmes" };
  const single = dailySingle(programmes[programmes.length - 1], "one run a day, beside the comparison");
  if (single === undefined) return { id, absent: "unlike-runs" };
  return { id, comparison: { ...comparison, programmes: [single, ...programmes] }, tree: "mean" };
}

/** What the average tree wanted over what a programme brought it, over the season; 1 where nothing was brought. */
function wantedOverApplied({ arms }: ComparisonResult, programme: string): number {
  const found = arms.find((arm) => arm.programme === programme);
  if (found === undefined)
    throw new RangeError(`armsBeside requires the comparison's own answer: ${programme} is not in it`);
  const tree = Math.max(0, found.result.trees.indexOf("mean"));
  const applied = measure(found.result, "applied").values[tree];
  return applied > 0 ? measure(found.result, "transpiration-wanted").values[tree] / applied : 1;
}
