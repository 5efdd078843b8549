import { type EmitterPlace, emittersOfTree } from "../lines/emitters-of-tree.js";
import { type PlugPlan, type PlugQuestion, plugPlan } from "../lines/plug-plan.js";
import { type CanopyPoint, canopyDiameterM } from "../tree/canopy-growth.js";
import { type NeedOfPeriod, type NeedQuestion, waterNeed } from "../tree/water-need.js";

/** A block that grows up: what holds over the years and what grows. */
export interface YearsQuestion
  extends Pick<PlugQuestion, "layout" | "emitterFlowLPerH" | "wettedRadiusM" | "pressureCompensating" | "sector"> {
  /** Ages that are asked about, years since planting, rising. */
  readonly agesYears: readonly number[];
  readonly canopy: readonly CanopyPoint[];
  /** Radius of the root disc over that of the canopy. */
  readonly rootsPerCanopy: number;
  /** Need of the mature block; its canopy is replaced by that of each age. */
  readonly need: NeedQuestion;
  /** Nutrients of a mature tree in a year, g of the element; a younger one gets the share of its canopy's ground. */
  readonly nutrientsGPerMatureTree: Readonly<Record<string, number>>;
}

/** One year of a plan. */
export interface YearOfPlan {
  readonly ageYears: number;
  readonly canopyDiameterM: number;
  readonly rootRadiusM: number;
  /** Spans with the largest and the smallest need. */
  readonly peak: NeedOfPeriod;
  readonly least: NeedOfPeriod;
  /** Gross litres of all spans together. */
  readonly grossLPerTree: number;
  /** Which emitters are open, in the order of `emittersOfTree`. */
  readonly open: readonly boolean[];
  readonly plug: PlugPlan;
  /** Distances of the lines from the row that have an open emitter, m. */
  readonly linesInUseM: readonly number[];
  /** Hours a day that the open emitters need for the hot day of the peak. */
  readonly hoursOnHotDay: number;
  readonly nutrientsG: Readonly<Record<string, number>>;
}

/** A plan over the years of a young block. */
export interface YearsPlan {
  readonly years: readonly YearOfPlan[];
  /** Age at which the roots reach the water of each line, years, within the ages of the canopy; left out where they never do. */
  readonly lines: readonly { readonly offsetM: number; readonly opensAtYears?: number }[];
}

/** Steps in which the age of a line is looked for, years: about two weeks. */
const ageStepYears = 0.04;

/**
 * Year by year: canopy, litres, open emitters, hours, nutrients, and the age at which each line comes into use. An emitter is
 * open once its wetted circle touches the root disc; the nearest ones always are. Roots are taken as a disc in proportion to
 * the canopy: dig before a line is opened. Nutrients go with the canopy's ground, a rule of thumb; leaf and soil analysis
 * decide.
 *
 * @throws RangeError where `canopyDiameterM`, `waterNeed` and `plugPlan` do, or if rootsPerCanopy is not above 0.
 * @example yearsPlan(question).years[0].plug.openPerTree
 */
export function yearsPlan(question: YearsQuestion): YearsPlan {
  const { agesYears, layout, rootsPerCanopy } = question;
  if (!(rootsPerCanopy > 0)) throw new RangeError(`yearsPlan requires rootsPerCanopy above 0: got ${rootsPerCanopy}`);
  const emitters = emittersOfTree(layout);
  return {
    years: agesYears.map((ageYears) => yearOf(question, emitters, ageYears)),
    lines: layout.offsetsM.map((offsetM) => {
      const opensAtYears = lineOpens(question, emitters, offsetM);
      return opensAtYears === undefined ? { offsetM } : { offsetM, opensAtYears };
    }),
  };
}

function yearOf(question: YearsQuestion, emitters: readonly EmitterPlace[], ageYears: number): YearOfPlan {
  const { canopy, rootsPerCanopy, wettedRadiusM, need, emitterFlowLPerH, nutrientsGPerMatureTree } = question;
  const diameterM = canopyDiameterM(canopy, ageYears);
  const matureM = canopyDiameterM(canopy, canopy[canopy.length - 1].ageYears);
  const rootRadiusM = (rootsPerCanopy * diameterM) / 2;
  const closest = Math.min(...emitters.map(({ fromTrunkM }) => fromTrunkM));
  const open = emitters.map(
    ({ fromTrunkM }) => fromTrunkM <= rootRadiusM + wettedRadiusM + 1e-9 || fromTrunkM <= closest + 1e-9,
  );
  const plug = plugPlan({ ...question, open, rootRadiusM, canopyDiameterM: diameterM });
  const { periods, grossLPerTree } = waterNeed({ ...need, tree: { ...need.tree, canopyDiameterM: diameterM } });
  const by = (better: (a: number, b: number) => boolean): NeedOfPeriod =>
    periods.reduce((best, period) =>
      better(period.meanDay.grossLPerTree, best.meanDay.grossLPerTree) ? period : best,
    );
  const peak = by((a, b) => a > b);
  const share = (diameterM * diameterM) / (matureM * matureM);
  return {
    ageYears,
    canopyDiameterM: diameterM,
    rootRadiusM,
    peak,
    least: by((a, b) => a < b),
    grossLPerTree,
    open,
    plug,
    linesInUseM: [...new Set(emitters.filter((_, at) => open[at]).map(({ acrossM }) => acrossM))],
    hoursOnHotDay: peak.hotDay.grossLPerTree / (plug.openPerTree * emitterFlowLPerH),
    nutrientsG: Object.fromEntries(Object.entries(nutrientsGPerMatureTree).map(([name, g]) => [name, g * share])),
  };
}

/** Age at which the roots reach the water of a line, years. */
function lineOpens(
  { canopy, rootsPerCanopy, wettedRadiusM }: YearsQuestion,
  all: readonly EmitterPlace[],
  offsetM: number,
): number | undefined {
  const nearest = Math.min(...all.filter(({ acrossM }) => acrossM === offsetM).map(({ fromTrunkM }) => fromTrunkM));
  const closest = Math.min(...all.map(({ fromTrunkM }) => fromTrunkM));
  const last = canopy[canopy.length - 1].ageYears;
  if (nearest <= closest + 1e-9) return 0;
  for (let age = 0; age <= last + 1e-9; age += ageStepYears) {
    if ((rootsPerCanopy * canopyDiameterM(canopy, age)) / 2 + wettedRadiusM >= nearest) return age;
  }
  return undefined;
}
