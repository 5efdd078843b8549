import fc from "fast-check";
import {
  defaultPriors,
  type EnsemblePlan,
  type EnsembleResult,
  ensemble,
  memberRun,
  oneThread,
} from "rootledger/chance";
import { pairedVerdict } from "rootledger/compare";
import type { Comparison, Programme } from "rootledger/scenario";
import { expect, test } from "vitest";
import { calendar, scenarioWith } from "../../support/scenario.js";

const textures = ["sand", "loam", "clay"] as const;

function planOf(texture: (typeof textures)[number], programmes: readonly Programme[], seed: number): EnsemblePlan {
  const { soil, programme: _, ...common } = scenarioWith({ days: 3, texture });
  const comparison: Comparison = { ...common, remark: "", soils: [soil], programmes };
  return {
    comparison,
    trees: ["mean"],
    draws: { kind: "priors", priors: defaultPriors(comparison), seed },
    weatherYears: [],
  };
}

const run = (plan: EnsemblePlan, members = 4): Promise<EnsembleResult> =>
  ensemble(plan, { members, executor: oneThread(memberRun(plan)) });

const programmes = fc.record({
  everyDays: fc.integer({ min: 1, max: 2 }),
  pulses: fc.integer({ min: 1, max: 4 }),
  litresPerTree: fc.integer({ min: 20, max: 250 }),
  startH: fc.constantFrom(0, 6, 11),
});
type Drawn = typeof programmes extends fc.Arbitrary<infer T> ? T : never;
const programmeOf = (name: string, { everyDays, pulses, litresPerTree, startH }: Drawn): Programme =>
  calendar(name, everyDays, pulses, litresPerTree, startH, 30);

const anyPair = [programmes, programmes, fc.constantFrom(...textures), fc.integer({ min: 0, max: 999 })] as const;

test("swapping two programmes changes every sign exactly and no verdict", async () => {
  await fc.assert(
    fc.asyncProperty(...anyPair, async (a, b, texture, seed) => {
      const [from, to] = [programmeOf("A", a), programmeOf("B", b)];
      const forward = await run(planOf(texture, [from, to], seed));
      const backward = await run(planOf(texture, [to, from], seed));
      const turned = { rises: "falls", falls: "rises", "no clear difference": "no clear difference" } as const;
      forward.differences.forEach((one, i) => {
        const other = backward.differences[i]!;
        expect(other.low === -one.high && other.high === -one.low && other.median === -one.median).toBe(true);
        expect(other).toMatchObject({
          risesShare: one.fallsShare,
          fallsShare: one.risesShare,
          floor: one.floor,
          verdict: turned[one.verdict],
        });
      });
    }),
    { numRuns: 12 },
  );
});

test("identical programmes differ by zero in every draw, and nothing is claimed", async () => {
  await fc.assert(
    fc.asyncProperty(
      programmes,
      fc.constantFrom(...textures),
      fc.integer({ min: 0, max: 999 }),
      async (a, texture, seed) => {
        const { differences, badges } = await run(planOf(texture, [programmeOf("A", a), programmeOf("B", a)], seed));
        for (const { low, median, high, risesShare, fallsShare, verdict } of differences) {
          expect({ low, median, high, risesShare, fallsShare, verdict }).toEqual({
            ...{ low: 0, median: 0, high: 0, risesShare: 0, fallsShare: 0, verdict: "no clear difference" },
          });
        }
        expect(badges.every(({ holds }) => holds)).toBe(true);
      },
    ),
    { numRuns: 8 },
  );
});

test("a badge that holds is true of every draw: water by its litres, one question by the programmes", async () => {
  await fc.assert(
    fc.asyncProperty(...anyPair, async (a, b, texture, seed) => {
      const result = await run(planOf(texture, [programmeOf("A", a), programmeOf("B", b)], seed), 2);
      const litres = result.bands.filter(({ measureId }) => measureId === "applied");
      const most = Math.max(...litres.map(({ high }) => high));
      const least = Math.min(...litres.map(({ low }) => low));
      const held = (id: string) => result.badges.find((badge) => badge.id === id)!.holds;
      expect(held("same-water")).toBe(most - least <= 0.01 * most);
      const changes =
        Number(a.everyDays !== b.everyDays) +
        Number(a.pulses !== b.pulses) +
        Number(a.startH !== b.startH) +
        Number(Math.abs(a.litresPerTree / a.everyDays / (b.litresPerTree / b.everyDays) - 1) > 0.0101);
      if (changes > 1) expect(held("one-question")).toBe(false);
      expect(held("same-weather")).toBe(true);
      expect(held("same-start")).toBe(true);
    }),
    { numRuns: 12 },
  );
});

test("a claim needs a median beyond the floor and a band without zero", () => {
  const number = fc.double({ min: -100, max: 100, noNaN: true });
  fc.assert(
    fc.property(fc.tuple(number, number, number), fc.double({ min: 0, max: 50, noNaN: true }), (three, floor) => {
      const [low, median, high] = [...three].sort((x, y) => x - y) as [number, number, number];
      const verdict = pairedVerdict({ low, median, high, floor });
      if (verdict === "rises") expect(low > 0 && median > floor).toBe(true);
      else if (verdict === "falls") expect(high < 0 && median < -floor).toBe(true);
      else expect((low > 0 && median > floor) || (high < 0 && median < -floor)).toBe(false);
    }),
  );
});
