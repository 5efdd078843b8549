import { type ArmBeside, type ArmStore, armKey, armsBeside, compare, comparesPulses, runArm } from "rootledger/compare";
import type { Comparison } from "rootledger/scenario";
import { describe, expect, test } from "vitest";
import { calendar, scenarioWith } from "../../support/scenario.js";

const { soil, programme: _, ...common } = scenarioWith({ days: 4, texture: "loam" });
const comparison: Comparison = {
  ...common,
  remark: "",
  soils: [soil],
  programmes: [calendar("every second day", 2, 1, 220), calendar("four pulses a day", 1, 4, 110)],
};
const result = compare(comparison);
const arms = armsBeside(comparison, result);
const arm = (id: ArmBeside["id"], of: readonly ArmBeside[] = arms): Extract<ArmBeside, { tree: string }> => {
  const found = of.find((one) => one.id === id)!;
  if ("absent" in found) throw new Error(`${id} is absent: ${found.absent}`);
  return found;
};

/** A store in memory that says what was asked of it. */
function memoryStore(kept = new Map<string, string>()) {
  const calls = { read: 0, written: 0 };
  const store: ArmStore = {
    read: async (key) => {
      calls.read++;
      return kept.get(key);
    },
    write: async (key, text) => {
      calls.written++;
      kept.set(key, text);
    },
  };
  return { store, kept, calls };
}

describe("arms beside a comparison", () => {
  test("are all there, and only for pulses against something else", () => {
    expect(arms.map(({ id }) => id)).toEqual([
      ...["as-asked", "daily-single", "dose-above", "dose-below", "night-start", "day-start", "wet-spell"],
      ...["tight", "crumbly", "fast-engine", "slow-engine", "under-fed", "over-fed"],
    ]);
    expect(comparesPulses(result)).toBe(true);
    expect(comparesPulses({ changes: [{ from: "a", to: "b", questions: ["interval"] }] })).toBe(false);
  });

  test("change what they say and nothing else", () => {
    const litres = (of: Comparison): number[] =>
      of.programmes.map(({ runs: [run] }) =>
        "minutes" in run!.amount ? 0 : run!.amount.litresPerTree / run!.everyDays,
      );
    expect(arm("daily-single").comparison.programmes[0]!.runs).toEqual([
      { startH: 6, everyDays: 1, firstDay: 0, pulses: 1, gapMinutes: 0, amount: { litresPerTree: 110 } },
    ]);
    // Wanted: Kcb 0.8 x 6 mm x 24 m2 = 115.2 L a day; so 1.2 and 0.8 of it, exactly.
    for (const [id, ratio] of [
      ["dose-above", 1.2],
      ["dose-below", 0.8],
    ] as const) {
      for (const { arms: run } of [compare(arm(id).comparison)]) {
        for (const { result: one } of run) {
          const [wanted, applied] = ["transpiration-wanted", "applied"].map(
            (name) => one.measures.find((measure) => measure.id === name)!.values[0]!,
          );
          expect(applied! / wanted!).toBeCloseTo(ratio, 9);
        }
      }
    }
    expect(arm("night-start").comparison.programmes.map(({ runs }) => runs[0]!.startH)).toEqual([22, 22]);
    expect(litres(arm("night-start").comparison)).toEqual([110, 110]);
    expect(arm("day-start").comparison.programmes.map(({ runs }) => runs[0]!.startH)).toEqual([10, 10]);
    expect([...arm("wet-spell").comparison.weather.rainMm]).toEqual([0, 0, 20, 20]);
    expect([...comparison.weather.rainMm]).toEqual([0, 0, 0, 0]);
    expect(arm("tight").comparison.soils[0]!.horizons[0]).toMatchObject({ structure: "tight" });
    expect(arm("slow-engine").comparison).toMatchObject({ engine: "richards", season: { days: 4 } });
    expect(arm("under-fed").tree).toBe("under-fed");
    expect(arms.at(-1)).toEqual({ id: "over-fed", absent: "lines-stay-full" });
  });

  test("know what is there already and what lines that drain tell apart", () => {
    const drains = { contentLPerTree: 2, drainHours: 1, lowTreesFraction: 0.2 };
    const other: Comparison = {
      ...comparison,
      block: { ...comparison.block, lines: { ...comparison.block.lines, drainOut: drains } },
      programmes: [calendar("daily", 1, 1, 110), calendar("four pulses", 1, 4, 110)],
    };
    const of = armsBeside(other, compare(other));
    expect(of[1]).toEqual({ id: "daily-single", absent: "in-the-comparison" });
    expect(arm("over-fed", of).tree).toBe("over-fed");
  });

  test("are run once: a store gives the same answer back, until something in them changes", async () => {
    const { store, calls } = memoryStore();
    const first = await runArm(arm("wet-spell"), store);
    expect(first).toMatchObject({ kept: false, days: 4, engine: "bucket" });
    expect(await runArm(arm("wet-spell"), store)).toEqual({ ...first, kept: true });
    expect(calls).toEqual({ read: 2, written: 1 });
    const wetter = { ...comparison, weather: { ...comparison.weather, et0Mm: new Float64Array(4).fill(5) } };
    const keys = [comparison, wetter, { ...comparison, season: { ...comparison.season, days: 3 } }].map((of) =>
      armKey({ id: "as-asked", comparison: of, tree: "mean" }),
    );
    keys.push(armKey({ id: "as-asked", comparison, tree: "under-fed" }));
    expect(new Set(keys).size).toBe(4);
    expect(armKey({ id: "as-asked", comparison: { ...comparison, remark: "other words" }, tree: "mean" })).toBe(
      keys[0],
    );
  });

  test("are run anew where a store holds what cannot be read", async () => {
    const key = armKey(arm("as-asked"));
    for (const text of [
      "",
      "{",
      "null",
      '{"key":"other","answer":{"differences":[]}}',
      `{"key":"${key}","answer":1}`,
    ]) {
      const { store } = memoryStore(new Map([[key, text]]));
      const answer = await runArm(arm("as-asked"), store);
      expect(answer.kept).toBe(false);
      expect(answer.differences.length).toBeGreaterThan(10);
    }
  });

  test("answer with both engines on the same days", async () => {
    const two = { ...comparison, season: { ...comparison.season, days: 1 } };
    const of = armsBeside(two, compare(two));
    const [fast, slow] = [await runArm(arm("fast-engine", of)), await runArm(arm("slow-engine", of))];
    expect([fast.engine, slow.engine]).toEqual(["bucket", "richards"]);
    expect(slow.differences.map(({ measureId }) => measureId)).toEqual(
      fast.differences.map(({ measureId }) => measureId),
    );
    expect(slow.differences.every(({ floorBasis }) => !floorBasis.startsWith("engine"))).toBe(true);
  });
});
