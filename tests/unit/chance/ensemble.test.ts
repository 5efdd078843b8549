import {
  createTally,
  defaultPriors,
  drawMaker,
  type EnsemblePlan,
  ensemble,
  ensembleResult,
  layoutOf,
  memberRun,
  oneThread,
  tallyEnsemble,
} from "rootledger/chance";
import type { Comparison } from "rootledger/scenario";
import { describe, expect, test } from "vitest";
import { calendar, scenarioWith } from "../../support/scenario.js";

const { soil, programme: _, ...common } = scenarioWith({ days: 4 });
const comparison: Comparison = {
  ...common,
  remark: "",
  soils: [soil],
  programmes: [calendar("daily", 1, 1, 110), calendar("four pulses", 1, 4, 110)],
};
const plan: EnsemblePlan = {
  comparison,
  trees: ["mean", "under-fed"],
  draws: { kind: "priors", priors: defaultPriors(comparison), seed: "a" },
  weatherYears: [],
};
const executor = oneThread(memberRun(plan));

describe("an ensemble", () => {
  test("of the slow engine has floors that hold no error of the fast one", async () => {
    const slow = { ...comparison, season: { ...comparison.season, days: 1 }, engine: "richards" as const };
    const slowPlan: EnsemblePlan = { ...plan, comparison: slow, trees: ["mean"] };
    const result = await ensemble(slowPlan, { members: 1, executor: oneThread(memberRun(slowPlan)) });
    expect(result.failures).toEqual([]);
    expect(result.differences.filter(({ floorBasis }) => floorBasis.startsWith("engine"))).toEqual([]);
  });

  test("has a band for every measure of every arm and tree, and a verdict for every pair", async () => {
    const result = await ensemble(plan, { members: 6, executor });
    expect(result).toMatchObject({ status: "finished", finished: 6, failed: 0, members: 6 });
    const measures = new Set(result.bands.map(({ measureId }) => measureId)).size;
    expect(result.bands).toHaveLength(2 * 2 * measures);
    expect(result.differences).toHaveLength(2 * measures);
    for (const { low, median, high } of [...result.bands, ...result.differences]) {
      expect(low <= median && median <= high).toBe(true);
    }
    expect(result.badges).toContainEqual({ id: "same-water", holds: true, heldIn: 6 });
  });

  test("is the same in parts, merged in any order", async () => {
    const whole = await tallyEnsemble(plan, { members: 6, executor });
    const parts = await Promise.all(
      [
        [0, 1],
        [1, 3],
        [4, 2],
      ].map(([firstMember, members]) =>
        tallyEnsemble(plan, { members: members!, firstMember: firstMember!, executor }),
      ),
    );
    const merged = createTally(layoutOf(plan));
    for (const part of parts.reverse()) merged.merge(JSON.parse(JSON.stringify(part)));
    expect(merged.plain()).toEqual(whole);
  });

  test("a member that fails is listed with its draw while the others finish, or raised by name when asked", async () => {
    const values = Float64Array.of(0.9, 1, -3, 1.1);
    const own: EnsemblePlan = {
      ...plan,
      draws: { kind: "own", ids: ["air-limit"], values: values.map((v) => v / 10) },
    };
    const run = oneThread(memberRun(own));
    const result = await ensemble(own, { members: 4, executor: run });
    expect(result).toMatchObject({ finished: 3, failed: 1 });
    expect(result.failures).toMatchObject([{ member: 2, draw: { "air-limit": -0.3 } }]);
    await expect(ensemble(own, { members: 4, executor: run, onFailure: "raise" })).rejects.toThrow(
      /member 2 with \{"air-limit":-0\.3.*did not:/,
    );
  });

  test("runs one programme alone: bands, no differences", async () => {
    const alone = { ...plan, comparison: { ...comparison, programmes: comparison.programmes.slice(0, 1) } };
    const result = await ensemble(alone, { members: 2, executor: oneThread(memberRun(alone)) });
    expect(result.differences).toEqual([]);
    expect(result.bands.length).toBeGreaterThan(30);
  });

  test("reports a member that fails with its draw and loses nothing else", async () => {
    const ids = ["root-depth", "kcb"] as const;
    const own = { ...plan, draws: { kind: "own", ids, values: Float64Array.of(50, 1, 500, 1, 60, 1.1) } } as const;
    const result = await ensemble(own, { members: 3, executor: oneThread(memberRun(own)) });
    expect(result).toMatchObject({ status: "finished", finished: 2, failed: 1 });
    expect(result.failures).toEqual([
      {
        member: 1,
        reason: expect.stringMatching(/roots and ball within the profile/),
        draw: { "root-depth": 500, kcb: 1 },
      },
    ]);
  });

  test("stops when cancelled and says how far it came", async () => {
    const cancel = { aborted: false };
    const seen: number[] = [];
    const onProgress = (done: number, all: number) => {
      seen.push(done, all);
      if (done === 2) cancel.aborted = true;
    };
    const result = await ensemble(plan, { members: 9, executor, cancel, onProgress });
    expect(result).toMatchObject({ status: "stopped", finished: 2, members: 9 });
    expect(seen).toEqual([1, 9, 2, 9]);
  });

  test("has no number where nothing finished, and claims nothing", () => {
    const empty = ensembleResult(plan, createTally(layoutOf(plan)).plain(), 3);
    expect(empty.status).toBe("stopped");
    expect(empty.badges.some(({ holds }) => holds)).toBe(false);
    expect(new Set(empty.differences.map(({ verdict }) => verdict))).toEqual(new Set(["no clear difference"]));
  });

  test.each([0, 1.5, Number.NaN])("%d members are refused", async (members) => {
    await expect(ensemble(plan, { members, executor })).rejects.toThrow(RangeError);
  });

  test("keeps default draws inside what a scenario allows", () => {
    const draw = drawMaker(plan.draws);
    for (let m = 0; m < 300; m++) {
      const { ids, values } = draw(m);
      const at = (id: (typeof ids)[number]): number => values[ids.indexOf(id)]!;
      expect(at("root-depth")).toBeLessThanOrEqual(100);
      expect(at("pull-limit")).toBeGreaterThan(at("air-return"));
      expect(at("dry-limb")).toBeGreaterThan(at("pull-limit"));
      expect(at("air-limit")).toBeGreaterThan(0.02);
      expect(at("uniformity")).toBeLessThan(1);
      expect(at("root-top-share")).toBeLessThan(1);
    }
  });
});
