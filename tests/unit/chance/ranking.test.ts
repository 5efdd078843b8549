import {
  defaultPriors,
  type EnsemblePlan,
  type Executor,
  layoutOf,
  memberRun,
  oneThread,
  type Prior,
  rankUnknowns,
  screeningOf,
  whatToMeasure,
} from "rootledger/chance";
import type { Comparison } from "rootledger/scenario";
import { describe, expect, test } from "vitest";
import { calendar, scenarioWith } from "../../support/scenario.js";

const { soil, programme: _, ...common } = scenarioWith({ days: 3 });
const comparison: Comparison = {
  ...common,
  remark: "",
  soils: [soil],
  programmes: [calendar("daily", 1, 1, 110), calendar("every second day", 2, 1, 220)],
};
const plan: EnsemblePlan = {
  comparison,
  trees: ["mean"],
  draws: { kind: "priors", priors: defaultPriors(comparison), seed: "a" },
  weatherYears: [],
};
const kcbOnly: Prior = {
  id: "kcb",
  unit: "factor",
  source: "made up",
  spread: { kind: "uniform", from: 0.7, to: 1.3 },
};
const executorOf = (of: EnsemblePlan): Executor => oneThread(memberRun(of));

/** Every answer of a member is 3 x its third unknown's value less its second one's, its floor 0: stands in for the model. */
const arithmetic = (of: EnsemblePlan): Executor => {
  const { draws } = of;
  if (draws.kind !== "own") throw new Error("a ranking runs a table of draws");
  const { size, arms, measures, trees, differences } = layoutOf(of);
  const first = arms.length * measures.length * trees.length;
  return oneThread((member) => {
    const row = draws.values.subarray(member * draws.ids.length, (member + 1) * draws.ids.length);
    if (member === 5) throw new RangeError("member 5 is made to fail");
    const values = new Float64Array(size).fill(3 * row[2]! - row[1]!);
    for (let i = 0; i < differences.length; i++) values[first + 2 * i + 1] = 0;
    return values;
  });
};

describe("a ranking", () => {
  const three = {
    unknowns: (["root-depth", "kcb", "uniformity"] as const).map((id) => ({
      ...{ id, unit: "fraction" as const, source: "made up" },
      spread: { kind: "uniform" as const, from: 0.5, to: 1 },
    })),
    correlations: [],
  };
  const simple: EnsemblePlan = { ...plan, draws: { kind: "priors", priors: three, seed: 7 } };

  test("of a straight line is its slopes over the ranges, and a failed member loses only what needs it", async () => {
    const found = await rankUnknowns(simple, { method: "screen", members: 30, executorOf: arithmetic });
    expect(found).toMatchObject({ status: "finished", members: 32, finished: 31, failed: 1 });
    for (const { unknowns } of found.answers) {
      expect(unknowns.map(({ id }) => id)).toEqual(["uniformity", "kcb", "root-depth"]);
      [1.5, -0.5, 0].forEach((slope, i) => {
        expect(unknowns[i]!.alone).toBeCloseTo(slope, 9);
        expect(unknowns[i]!.effect).toBeCloseTo(Math.abs(slope), 9);
        expect(unknowns[i]!.together).toBeCloseTo(0, 9);
        expect(unknowns[i]!.weight).toBeCloseTo(Math.abs(slope) / 2, 9);
      });
    }
    expect(found.overall.map(({ id }) => id)).toEqual(["uniformity", "kcb", "root-depth"]);
    expect(found.overall[0]).toMatchObject(whatToMeasure.uniformity);
  });

  // Variances of uniform draws are range^2 / 12, so the shares are 9 : 1 : 0 by hand; three errors of 2,000 rows are about 0.1.
  test("by shares of a straight line is its shares of the variance", async () => {
    const found = await rankUnknowns(simple, { method: "shares", members: 10_000, executorOf: arithmetic });
    const [first, second, third] = found.answers[0]!.unknowns;
    expect([first!.id, second!.id, third!.id]).toEqual(["uniformity", "kcb", "root-depth"]);
    expect(Math.abs(first!.effect - 0.9)).toBeLessThan(0.1);
    expect(Math.abs(second!.effect - 0.1)).toBeLessThan(0.03);
    expect(third!.effect).toBeCloseTo(0, 9);
  });

  test("of the model answers every difference and does not depend on who runs it", async () => {
    const found = await rankUnknowns(plan, { method: "screen", members: 26, executorOf });
    expect(found).toMatchObject({ members: 26, failed: 0 });
    expect(found.answers).toHaveLength(layoutOf(plan).differences.length);
    const weights = found.overall.map(({ weight }) => weight);
    expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 9);
    expect(weights).toEqual([...weights].sort((a, b) => b - a));
    const backwards = (of: EnsemblePlan): Executor => {
      const run = memberRun(of);
      return async ({ from, to, deliver }) => {
        for (let member = to - 1; member >= from; member--) deliver({ member, values: run(member) });
      };
    };
    expect(await rankUnknowns(plan, { method: "screen", members: 26, executorOf: backwards })).toEqual(found);
  });

  test("of one programme ranks its values; own draws are refused", async () => {
    const alone = { ...simple, comparison: { ...comparison, programmes: comparison.programmes.slice(0, 1) } };
    const { answers } = await rankUnknowns(alone, { method: "screen", members: 4, executorOf: arithmetic });
    expect(answers.every(({ from, to }) => from === undefined && to === "daily")).toBe(true);
    expect(() => screeningOf(screeningOf(simple, "screen", 4).plan, "screen", 4)).toThrow(/requires priors/);
    expect(() => screeningOf(simple, "screen", 0)).toThrow(RangeError);
  });

  test("stops when cancelled", async () => {
    const cancel = { aborted: false };
    const onProgress = (done: number): void => {
      cancel.aborted = done === 3;
    };
    const found = await rankUnknowns(simple, {
      method: "screen",
      members: 40,
      executorOf: arithmetic,
      cancel,
      onProgress,
    });
    expect(found).toMatchObject({ status: "stopped", finished: 3 });
  });
});

test("an answer that does not move beyond its floor weighs nothing", async () => {
  const own = { kind: "priors", priors: { unknowns: [kcbOnly], correlations: [] }, seed: 1 } as const;
  const found = await rankUnknowns({ ...plan, draws: own }, { method: "screen", members: 4, executorOf });
  const answer = (id: string) => found.answers.find(({ measureId }) => measureId === id)!;
  expect(answer("transpiration-wanted").range).toBeLessThan(1e-6);
  expect(answer("transpiration-wanted").unknowns.map(({ weight }) => weight)).toEqual([0]);
  for (const { range, floor, unknowns } of found.answers)
    expect(unknowns[0]!.weight).toBe(range > floor + 1e-6 ? 1 : 0);
});

test("every default unknown has words for what to measure and how", () => {
  for (const { id } of defaultPriors(comparison, { weatherYears: 2 }).unknowns) {
    expect(whatToMeasure[id].how.length).toBeGreaterThan(20);
  }
});
