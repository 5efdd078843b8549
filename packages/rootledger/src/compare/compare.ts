import { lineLayout } from "../lines/layout.js";
import type { Programme } from "../programme/programme.js";
import { everyPart } from "../scenario/every-part.js";
import type { SimulateOptions } from "../scenario/options.js";
import { withOwnLines } from "../scenario/own-lines.js";
import { simulate } from "../scenario/run.js";
import type { Scenario, Soil } from "../scenario/scenario.js";
import { treesOf } from "../scenario/supply.js";
import { version } from "../version.js";
import { type DefaultUsed, measure, type Result } from "../water/result.js";
import { badgesOf, waterOf } from "./badges.js";
import type { Arm, Comparison, ComparisonResult, Difference, Question } from "./comparison.js";
import { floorOf } from "./floors.js";
import { questionsBetween } from "./questions.js";

export interface CompareOptions extends SimulateOptions {
  /** Passed through to the result. */
  readonly defaultsUsed?: readonly DefaultUsed[];
  /** Called after each arm with the number done and the number of all. */
  readonly onArm?: (done: number, all: number) => void;
}

/** The scenario of one arm. @example scenarioOf(comparison, comparison.soils[0], comparison.programmes[0]) */
export function scenarioOf(comparison: Comparison, soil: Soil, programme: Programme): Scenario {
  const { name, season, weather, start, engine } = comparison;
  const block = withOwnLines(withNitrogen(comparison), programme);
  const scenario = { format: 1, name, season, block, weather, start, soil, programme } as const;
  return engine === undefined ? scenario : { ...scenario, engine };
}

/** Where one programme brings nitrogen, it is reckoned under all of them. */
function withNitrogen({ block, programmes }: Comparison): Comparison["block"] {
  if (block.nitrogen !== undefined || programmes.every(({ nitrogen }) => nitrogen === undefined)) return block;
  return { ...block, nitrogen: { waterMgPerL: 0, startKgPerHa: 0 } };
}

/**
 * Runs every programme on every soil and holds each pair of programmes against each other, measure by measure. A
 * difference below its floor is "no clear difference". There is no total score.
 *
 * @throws RangeError if there are fewer than two or more than four programmes, no soil, or an arm does not fit together.
 * @example compare(comparison).badges[0].holds
 */
export function compare(comparison: Comparison, options: CompareOptions = {}): ComparisonResult {
  const { programmes, soils } = comparison;
  if (programmes.length < 2 || programmes.length > 4) {
    throw new RangeError(`compare requires two to four programmes: got ${programmes.length}`);
  }
  if (soils.length === 0) throw new RangeError("compare requires at least one soil: got none");
  const trees = options.trees ?? treesOf(comparison.block);
  const all = programmes.length * soils.length;
  const arms: Arm[] = [];
  for (const soil of soils) {
    for (const programme of programmes) {
      const result = simulate(scenarioOf(comparison, soil, programme), {
        ...everyPart(comparison),
        ...options,
        trees,
      });
      arms.push({ soil: soil.name, programme: programme.name, result });
      options.onArm?.(arms.length, all);
    }
  }
  return gather(comparison, arms, options.defaultsUsed ?? []);
}

/**
 * Draws badges and differences from arms that were run elsewhere, for instance in several workers. Arms come soil by
 * soil, programmes in the comparison's order.
 *
 * @example gather(comparison, arms, []).differences.length
 */
export function gather(
  comparison: Comparison,
  arms: readonly Arm[],
  defaultsUsed: readonly DefaultUsed[],
): ComparisonResult {
  const { programmes, soils, block } = comparison;
  const flow = (programme: Programme): number => {
    const { lines, treeSpacingM } = withOwnLines(block, programme);
    const { emittersPerTree } = lineLayout(lines.offsetsM, treeSpacingM, lines.emitterSpacingM);
    return (emittersPerTree - lines.pluggedPerTree) * (programme.emitterFlowLPerH ?? lines.emitterFlowLPerH);
  };
  const changes = pairs(programmes).map(([from, to]) => {
    // The last interval of a season is seldom whole: what a programme gave counts, not what its rhythm would give for ever.
    const same = waterOf(arms.filter(({ programme }) => programme === from.name || programme === to.name)).same;
    const questions = questionsBetween(from, to, flow(from), flow(to));
    return { from: from.name, to: to.name, questions: same ? questions.filter((q) => q !== "amount") : questions };
  });
  const neighbours = changes.filter((change) => {
    const at = programmes.findIndex((p) => p.name === change.from);
    return programmes[at + 1]?.name === change.to;
  });
  const differences = soils.flatMap((soil) =>
    changes.flatMap(({ from, to, questions }) => {
      const a = resultOf(arms, soil, from);
      const b = resultOf(arms, soil, to);
      return a && b ? differencesOf(soil, from, to, a, b, questions) : [];
    }),
  );
  return {
    version,
    name: comparison.name,
    remark: comparison.remark,
    arms,
    badges: badgesOf(comparison, arms, neighbours),
    changes,
    differences,
    defaultsUsed,
  };
}

const pairs = <T>(list: readonly T[]): (readonly [T, T])[] =>
  list.flatMap((a, i) => list.slice(i + 1).map((b): readonly [T, T] => [a, b]));

const resultOf = (arms: readonly Arm[], soil: Soil, programme: string): Result | undefined =>
  arms.find((arm) => arm.soil === soil.name && arm.programme === programme)?.result;

function differencesOf(
  soil: Soil,
  from: string,
  to: string,
  a: Result,
  b: Result,
  questions: readonly Question[],
): Difference[] {
  return a.measures.flatMap(({ id, unit }) =>
    a.trees.map((tree, t): Difference => {
      const fromValue = measure(a, id).values[t];
      const toValue = measure(b, id).values[t];
      const difference = toValue - fromValue;
      const oneWay = floorOf(id, a, soil, questions, t);
      const otherWay = floorOf(id, b, soil, questions, t);
      const floor = oneWay.size >= otherWay.size ? oneWay : otherWay;
      const clear = Math.abs(difference) > floor.size;
      return {
        measureId: id,
        unit,
        soil: soil.name,
        tree,
        from,
        to,
        fromValue,
        toValue,
        difference,
        floor: floor.size,
        floorBasis: floor.basis,
        floorReason: floor.reason,
        verdict: clear ? (difference > 0 ? "rises" : "falls") : "no clear difference",
      };
    }),
  );
}
