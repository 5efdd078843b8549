import { daysPerYear } from "../numeric/day-number.js";
import { type CanopyPoint, canopyDiameterM } from "../tree/canopy-growth.js";
import { type KcStage, kcByStage } from "../tree/kc-by-stage.js";
import {
  type CropClimate,
  climateAdjustedKc,
  climateAdjustedKcEnd,
  climateWithinLimits,
  kcMaximum,
} from "../tree/kc-climate.js";
import { kcbByDay } from "../tree/kcb-by-day.js";
import { type NeedCover, needArea } from "../tree/need-area.js";
import { type Phenology, stageByDay } from "../tree/stages.js";
import { climateOfDay, type DayAir, meanClimate } from "./day-air.js";
import type { Block, Season, TreeDays } from "./scenario.js";
import { modifierByDay, type TreeModifiers } from "./tree-modifiers.js";

/** What the demand of a tree rests on, every choice made. */
export interface TreeDemand {
  readonly coefficient:
    | { readonly kind: "by-date"; readonly points: readonly { readonly date: string; readonly kcb: number }[] }
    | { readonly kind: "by-stage"; readonly stages: readonly KcStage[]; readonly phenology: Phenology };
  /** Whether the soil's evaporation is apart from the coefficient or inside it. */
  readonly evaporation: "apart" | "inside";
  /** `full` moves the stages named middle and late as well as Kc max; `evaporation` Kc max alone. */
  readonly climate: "none" | "evaporation" | "full";
  readonly heightM: number;
  readonly cover: NeedCover;
  /** Canopy by age and the age at the start; the curve is scaled to the block's canopy there. */
  readonly growth?: { readonly ageYears: number; readonly canopy: readonly CanopyPoint[] };
  readonly modifiers: TreeModifiers;
}

/** A value that climate moved, for the list of what was assumed. */
export interface MovedValue {
  readonly value: string;
  readonly source: string;
}

const standard: CropClimate = { windAt2mMPerS: 2, rhMinPct: 45 };

/**
 * The tree by day of the season: coefficient by date or stage, moved by climate (FAO-56, Allen et al. 1998, eqs 62, 65 and 70, each stage by the
 * mean of its days in the season), times ground cover and modifiers; upper limit of Kc by eq. 72.
 *
 * @throws RangeError where `kcByStage`, `kcbByDay`, `needArea` or `canopyDiameterM` do.
 * @example treeDays(demand, block, season, air, sun).days.kcb[0]
 */
export function treeDays(
  demand: TreeDemand,
  block: Pick<Block, "treeSpacingM" | "rowSpacingM"> & { readonly canopyDiameterM: number },
  season: Season,
  air: DayAir,
  sun: { readonly sunriseH: ArrayLike<number>; readonly sunsetH: ArrayLike<number> },
): { readonly days: TreeDays; readonly moved: readonly MovedValue[]; readonly notes: readonly string[] } {
  const { heightM, growth } = demand;
  const moved: MovedValue[] = [];
  const table = coefficientByDay(demand, season, air, moved);
  const diameter = growth === undefined ? undefined : diameterByDay(growth, block.canopyDiameterM, season.days);
  const spacing = { treeSpacingM: block.treeSpacingM, rowSpacingM: block.rowSpacingM };
  const share = (canopyM: number): number => {
    const { countsM2, groundM2 = countsM2 } = needArea({ spacing, canopyDiameterM: canopyM, heightM }, demand.cover);
    return countsM2 / groundM2;
  };
  const modifier = modifierByDay(demand.modifiers, season, { ...air, ...sun });
  const constant = share(block.canopyDiameterM);
  const kcb = table.map((value, d) => value * (diameter === undefined ? constant : share(diameter[d])) * modifier[d]);
  const limit = kcMaxByDay(demand, kcb, air);
  const stages = stageNames(demand, season);
  return {
    days: {
      kcb,
      kcMax: limit.kcMax,
      ...(diameter === undefined ? {} : { canopyDiameterM: diameter }),
      ...(stages === undefined ? {} : { stages }),
    },
    moved,
    notes: limit.notes,
  };
}

function stageNames({ coefficient }: TreeDemand, { startDate, days }: Season): readonly string[] | undefined {
  if (coefficient.kind === "by-date") return undefined;
  const { stages, phenology } = coefficient;
  return Array.from(stageByDay(startDate, days, stages, phenology), (stage) => stages[stage].name);
}

function coefficientByDay(demand: TreeDemand, season: Season, air: DayAir, moved: MovedValue[]): Float64Array {
  const { coefficient, climate } = demand;
  if (coefficient.kind === "by-date") return kcbByDay(season.startDate, season.days, coefficient.points);
  const stages = climate === "full" ? movedStages(coefficient, demand.heightM, season, air, moved) : coefficient.stages;
  return kcByStage(season.startDate, season.days, stages, coefficient.phenology);
}

/** Stages of a preset with the middle and end values of this climate; a stage outside the season takes the season's climate. */
function movedStages(
  { stages, phenology }: Extract<TreeDemand["coefficient"], { kind: "by-stage" }>,
  heightM: number,
  season: Season,
  air: DayAir,
  moved: MovedValue[],
): readonly KcStage[] {
  const stageOf = stageByDay(season.startDate, season.days, stages, phenology);
  const climateOf = (name: string): CropClimate | undefined => {
    const at = stages.findIndex((stage) => stage.name === name);
    return meanClimate(air, (d) => stageOf[d] === at) ?? meanClimate(air, () => true);
  };
  const [middle, late] = [climateOf("middle"), climateOf("late")];
  const full = stages.find(({ name }) => name === "middle");
  const end = stages.find(({ name }) => name === "late");
  if (middle === undefined || late === undefined || full === undefined || end === undefined) return stages;
  const kcMiddle = climateAdjustedKc(full.kcTo, climateWithinLimits(middle).climate, heightM);
  const kcEnd = climateAdjustedKcEnd(end.kcTo, climateWithinLimits(late).climate, heightM);
  moved.push(movedText("middle", full.kcTo, kcMiddle, middle), movedText("end", end.kcTo, kcEnd, late));
  return stages.map((stage) => {
    if (stage.name === "development") return { ...stage, kcTo: kcMiddle };
    if (stage.name === "middle") return { ...stage, kcFrom: kcMiddle, kcTo: kcMiddle };
    return stage.name === "late" ? { ...stage, kcFrom: kcMiddle, kcTo: kcEnd } : stage;
  });
}

const movedText = (what: string, from: number, to: number, climate: CropClimate): MovedValue => ({
  value: `${what} value ${from.toFixed(2)} becomes ${to.toFixed(2)}: wind ${climate.windAt2mMPerS.toFixed(1)} m/s at 2 m, RHmin ${climate.rhMinPct.toFixed(0)} %`,
  source:
    "Allen et al. (1998), FAO-56 eqs 62, 65 and 70, mean of the stage's days in the season, of all its days where it has none",
});

function diameterByDay(growth: NonNullable<TreeDemand["growth"]>, startM: number, days: number): Float64Array {
  const { ageYears, canopy } = growth;
  const scale = startM / canopyDiameterM(canopy, ageYears);
  return Float64Array.from({ length: days }, (_, d) => scale * canopyDiameterM(canopy, ageYears + d / daysPerYear));
}

function kcMaxByDay(demand: TreeDemand, kcb: Float64Array, air: DayAir): { kcMax: Float64Array; notes: string[] } {
  const kcMax = new Float64Array(kcb.length);
  if (demand.evaporation === "inside") return { kcMax, notes: [] };
  let outside = 0;
  let unknown = 0;
  for (let d = 0; d < kcb.length; d++) {
    const climate = demand.climate === "none" ? standard : climateOfDay(air, d);
    if (climate === undefined) unknown++;
    const limited = climateWithinLimits(climate ?? standard);
    if (limited.moved.length > 0) outside++;
    kcMax[d] = kcMaximum(limited.climate, demand.heightM, kcb[d]);
  }
  const of = `of ${kcb.length} days`;
  const notes = [
    [outside, "wind or RHmin outside 1-6 m/s and 20-80 %: taken at the nearer end for Kc max (FAO-56 eq. 72)"],
    [unknown, "temperatures unknown: Kc max of the standard climate, 1.2"],
  ] as const;
  return { kcMax, notes: notes.filter(([count]) => count > 0).map(([count, text]) => `${text}: ${count} ${of}`) };
}
