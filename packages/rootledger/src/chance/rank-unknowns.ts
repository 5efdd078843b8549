import { version } from "../version.js";
import type { TreeName } from "../water/result.js";
import { type EnsembleLayout, type EnsemblePlan, layoutOf } from "./ensemble-plan.js";
import type { CancelSignal, Executor, MemberOutcome } from "./executor.js";
import { elementaryEffects } from "./morris.js";
import type { UnknownId } from "./prior.js";
import { type RankingMethod, type Screening, screeningOf } from "./screening.js";
import { sobolIndices } from "./sobol-indices.js";
import { whatToMeasure } from "./what-to-measure.js";

/** Differences that should be 0 and are sums of rounding, in any unit of a measure. Our choice. */
const rounding = 1e-6;

/** How unknowns are ranked. */
export interface RankingOptions {
  readonly method: RankingMethod;
  /** Runs of the whole comparison, rounded up to whole trajectories (unknowns + 1) or rows (unknowns + 2). */
  readonly members: number;
  /** Makes the executor of a plan: `(plan) => oneThread(memberRun(plan))`, or workers. */
  readonly executorOf: (plan: EnsemblePlan) => Executor;
  /** Called after each member. */
  readonly onProgress?: (done: number, all: number) => void;
  readonly cancel?: CancelSignal;
}

/** What one unknown does to one answer. */
export interface UnknownEffect {
  readonly id: UnknownId;
  /**
   * `screen`: mean absolute change of the answer for the whole range of the unknown, in the answer's unit. `shares`: total
   * index, the share of the answer's variance that stays until this unknown is known.
   */
  readonly effect: number;
  /** `screen`: mean change with its sign. `shares`: first-order index. */
  readonly alone: number;
  /** `screen`: spread of the change, from interaction or curvature. `shares`: total less first order. */
  readonly together: number;
  /** This effect over the sum of all effects on the answer, 0 to 1; 0 where nothing moves it beyond its floor. */
  readonly weight: number;
}

/** One answer of the plan with its unknowns, the weightiest first. */
export interface RankedAnswer {
  readonly soil: string;
  /** A paired difference has `from` and `to`; a value of one programme has `to` alone. */
  readonly from: string | undefined;
  readonly to: string;
  readonly tree: TreeName;
  readonly measureId: string;
  readonly unit: string;
  /** Largest floor of a difference over the members; 0 for a value of one programme. */
  readonly floor: number;
  /** Largest answer less the smallest. Where it does not exceed the floor nothing moves the answer, and all weights are 0. */
  readonly range: number;
  readonly unknowns: readonly UnknownEffect[];
}

/** Which unknown moves which answer; plain data. */
export interface UnknownsRanking {
  readonly version: string;
  readonly name: string;
  readonly method: RankingMethod;
  readonly status: "finished" | "stopped";
  readonly members: number;
  readonly finished: number;
  readonly failed: number;
  readonly answers: readonly RankedAnswer[];
  /** Mean weight over the answers that move by more than their floors, the weightiest first, and what to measure. */
  readonly overall: readonly {
    readonly id: UnknownId;
    readonly weight: number;
    readonly name: string;
    readonly how: string;
  }[];
}

/**
 * Which unknown matters: every paired difference of the plan (every measure, where there is one programme) against every
 * unknown, by Morris' screening or Sobol's indices, and what to measure so as to know it. A member that fails leaves out the
 * effects that need it.
 *
 * @throws RangeError as `screeningOf` and `layoutOf`.
 * @example (await rankUnknowns(plan, { method: "screen", members: 200, executorOf })).overall[0].how
 */
export async function rankUnknowns(plan: EnsemblePlan, options: RankingOptions): Promise<UnknownsRanking> {
  const { method, executorOf, onProgress, cancel = { aborted: false } } = options;
  const screening = screeningOf(plan, method, options.members);
  const { members } = screening;
  const layout = layoutOf(plan);
  const asked = answersOf(layout);
  const table = asked.map(() => new Float64Array(members).fill(Number.NaN));
  const floors = new Float64Array(asked.length);
  let done = 0;
  let failed = 0;
  const deliver = (outcome: MemberOutcome): void => {
    if ("failure" in outcome) failed++;
    else
      asked.forEach(({ place, floorPlace }, i) => {
        table[i][outcome.member] = outcome.values[place];
        if (floorPlace !== undefined && outcome.values[floorPlace] > floors[i]) floors[i] = outcome.values[floorPlace];
      });
    done++;
    onProgress?.(done, members);
  };
  await executorOf(screening.plan)({ from: 0, to: members, deliver, cancel });
  const answers = asked.map(({ place: _, floorPlace: __, ...labels }, i): RankedAnswer => {
    const floor = floors[i];
    const range = rangeOf(table[i]);
    const unknowns = effectsOf(screening, table[i], range > floor + rounding);
    return { ...labels, floor, range, unknowns };
  });
  return {
    ...{ version, name: plan.comparison.name, method, members },
    status: done < members ? "stopped" : "finished",
    finished: done - failed,
    failed,
    answers,
    overall: overallOf(screening, answers),
  };
}

/** Where in a member's numbers each answer stands: differences, or the values of a programme alone. */
function answersOf({ arms, measures, trees, differences }: EnsembleLayout) {
  const count = arms.length * measures.length * trees.length;
  if (differences.length > 0) {
    return differences.map(({ soil, from, to, tree, measureId, unit }, i) => ({
      ...{ soil, from, to, tree, measureId, unit, place: count + 2 * i, floorPlace: count + 2 * i + 1 },
    }));
  }
  return Array.from({ length: count }, (_, place) => {
    const arm = arms[Math.floor(place / (measures.length * trees.length))];
    const { id, unit } = measures[Math.floor(place / trees.length) % measures.length];
    const tree = trees[place % trees.length];
    return {
      soil: arm.soil,
      from: undefined,
      to: arm.programme,
      tree,
      measureId: id,
      unit,
      place,
      floorPlace: undefined,
    };
  });
}

function effectsOf(screening: Screening, answers: Float64Array, moved: boolean): UnknownEffect[] {
  const found =
    screening.method === "screen"
      ? elementaryEffects(screening.design, answers).map(({ mean, meanAbsolute, deviation }) => ({
          ...{ effect: meanAbsolute, alone: mean, together: deviation },
        }))
      : sobolIndices(screening.design, answers).map(({ first, total }) => ({
          ...{ effect: total, alone: first, together: total - first },
        }));
  const sum = found.reduce((whole, { effect }) => whole + effect, 0);
  return found
    .map((one, i) => ({ id: screening.unknowns[i].id, ...one, weight: moved && sum > 0 ? one.effect / sum : 0 }))
    .sort((a, b) => b.effect - a.effect);
}

function rangeOf(answers: Float64Array): number {
  const known = answers.filter((answer) => !Number.isNaN(answer)).sort();
  return known.length > 0 ? known[known.length - 1] - known[0] : 0;
}

function overallOf({ unknowns }: Screening, answers: readonly RankedAnswer[]): UnknownsRanking["overall"] {
  const moved = answers.filter((answer) => answer.unknowns.some(({ weight }) => weight > 0));
  return unknowns
    .map(({ id }) => {
      const sum = moved.reduce((whole, answer) => whole + (answer.unknowns.find((u) => u.id === id)?.weight ?? 0), 0);
      return { id, weight: moved.length > 0 ? sum / moved.length : 0, ...whatToMeasure[id] };
    })
    .sort((a, b) => b.weight - a.weight);
}
