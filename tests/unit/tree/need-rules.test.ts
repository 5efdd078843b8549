import fc from "fast-check";
import {
  largestNetDepthMm,
  localizedCoverFactor,
  type NeedQuestion,
  needArea,
  practiceRatio,
  practiceRatios,
  trickleTranspirationMm,
  waterNeed,
  withLeaching,
} from "rootledger/tree";
import { describe, expect, test } from "vitest";

const spacing = { treeSpacingM: 4, rowSpacingM: 6 };
const july = { name: "July", days: 10, referenceMmPerDay: 5, coefficient: 0.8 };
const plain: NeedQuestion = {
  tree: { spacing },
  cover: { rule: "whole-ground" },
  reference: { kind: "et0" },
  periods: [july],
  hotDayRatio: 1.5,
  efficiencyFraction: 0.8,
  leachingFraction: 0.5,
};

describe("factors of FAO-36 for cover under localized irrigation (Vermeiren & Jobling 1980, from memory)", () => {
  const factor = (rule: "keller-karmeli" | "freeman-garzoli" | "decroix") => (cover: number) =>
    Number(localizedCoverFactor(rule, cover).toFixed(3));

  test("are GC/0.85, GC or GC + half of the rest from a half on, and GC + 0.1; none above 1", () => {
    const covers = [0, 0.17, 0.49, 0.5, 0.7, 0.95, 1];
    expect(covers.map(factor("keller-karmeli"))).toEqual([0, 0.2, 0.576, 0.588, 0.824, 1, 1]);
    expect(covers.map(factor("freeman-garzoli"))).toEqual([0, 0.17, 0.49, 0.75, 0.85, 0.975, 1]);
    expect(covers.map(factor("decroix"))).toEqual([0.1, 0.27, 0.59, 0.6, 0.8, 1, 1]);
  });

  test("never fall as the cover grows", () => {
    const cover = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom("keller-karmeli", "freeman-garzoli", "decroix"), cover, cover, (rule, a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)].map((value) => localizedCoverFactor(rule, value));
        return low <= high && high <= 1;
      }),
    );
  });

  test("want a cover from 0 to 1", () => {
    for (const cover of [-0.01, 1.01, Number.NaN]) {
      expect(() => localizedCoverFactor("decroix", cover)).toThrow(
        `localizedCoverFactor requires cover 0 to 1: got ${cover}`,
      );
    }
  });

  test("Keller & Bliesner (1990), eqs 19.9 and 19.12: 5 mm at 64 % shade are 4; 0.3 x 0.4 x 150 x 0.8 are 14.4 mm", () => {
    expect(trickleTranspirationMm(5, 0.64)).toBeCloseTo(4, 12);
    const zone = { allowedDepletion: 0.3, wettedFraction: 0.4, availableMmPerM: 150, rootDepthM: 0.8 };
    expect(largestNetDepthMm(zone)).toBeCloseTo(14.4, 12);
  });

  test("leaching takes from none of the water to nearly all of it, not all", () => {
    expect([withLeaching(1000, 0), withLeaching(1000, 0.2)]).toEqual([1000, 1250]);
    for (const fraction of [-0.01, 1, Number.NaN]) {
      expect(() => withLeaching(1000, fraction)).toThrow(`from 0 to below 1: got ${fraction}`);
    }
  });
});

describe("ground on which a coefficient counts", () => {
  // A disc of 2 m on 24 m2: pi m2, 13 % of the ground.
  const tree = { spacing, canopyDiameterM: 2, heightM: 1 };
  const cover = Math.PI / 24;

  test("whole ground, canopy, stated cover and the rules of FAO-36, by hand", () => {
    const known = {
      groundM2: 24,
      canopyM2: expect.closeTo(Math.PI, 12),
      coverFraction: expect.closeTo(cover, 12),
    };
    expect(needArea(tree, { rule: "whole-ground" })).toEqual({ countsM2: 24, ...known });
    expect(needArea(tree, { rule: "canopy-ground" })).toEqual({ countsM2: expect.closeTo(Math.PI, 12), ...known });
    expect(needArea(tree, { rule: "stated-cover", coverFraction: 0.25 })).toEqual({ countsM2: 6, ...known });
    expect(needArea(tree, { rule: "keller-karmeli" }).countsM2).toBeCloseTo(Math.PI / 0.85, 12);
    expect(needArea(tree, { rule: "decroix" }).countsM2).toBeCloseTo(Math.PI + 2.4, 12);
    expect(needArea({ spacing }, { rule: "stated-cover", coverFraction: 0.25 })).toStrictEqual({
      countsM2: 6,
      groundM2: 24,
    });
    expect(needArea({ canopyDiameterM: 2 }, { rule: "canopy-ground" })).toStrictEqual({
      countsM2: expect.closeTo(Math.PI, 12),
      canopyM2: expect.closeTo(Math.PI, 12),
    });
    // A disc of 9 m reaches beyond all four corners of 4 x 6 m.
    expect(needArea({ spacing, canopyDiameterM: 9 }, { rule: "canopy-ground" }).countsM2).toBeCloseTo(24, 12);
  });

  test("densities of FAO-56 eq. 98, over that of 70 % cover for a coefficient of mature orchards", () => {
    // 2 fc = 0.262 is less than fc^(1/2) = 0.362; at 0.7 fc^(1/2) = 0.837 is the least.
    expect(needArea(tree, { rule: "density" }).countsM2).toBeCloseTo(2 * Math.PI, 12);
    expect(needArea(tree, { rule: "relative-density" }).countsM2).toBeCloseTo((2 * Math.PI) / Math.sqrt(0.7), 12);
    // A canopy that covers all is denser than the mature orchard, and counts whole.
    expect(needArea({ ...tree, canopyDiameterM: 9 }, { rule: "relative-density" }).countsM2).toBe(24);
  });

  test("are refused without what the rule needs", () => {
    const none = (what: string, rule: string) => `needArea requires ${what} for ${rule}: got none`;
    expect(() => needArea({}, { rule: "whole-ground" })).toThrow(none("a spacing", "whole-ground"));
    expect(() => needArea({ spacing }, { rule: "canopy-ground" })).toThrow(none("a canopy diameter", "canopy-ground"));
    expect(() => needArea({ spacing }, { rule: "decroix" })).toThrow(
      none("a spacing and a canopy diameter", "decroix"),
    );
    expect(() => needArea({ canopyDiameterM: 2 }, { rule: "decroix" })).toThrow(none("a spacing", "decroix"));
    expect(() => needArea({ spacing, canopyDiameterM: 2 }, { rule: "relative-density" })).toThrow(
      none("a height", "relative-density"),
    );
  });
});

describe("need of a span, by hand", () => {
  test("5 mm x 0.8 on 24 m2 are 96 L, 240 where 0.8 is used and half must leach; 40 m3/ha; 1.5 times that when hot", () => {
    const { area, periods, ...season } = waterNeed({ ...plain, periods: [july, { ...july, name: "August", days: 5 }] });
    expect(area).toEqual({ countsM2: 24, groundM2: 24 });
    const [first, second] = periods;
    const day = { depthMm: 4, netLPerTree: 96, grossLPerTree: expect.closeTo(240, 9) };
    const ofGround = { netMm: 4, grossMm: expect.closeTo(10, 9), netM3PerHa: 40, grossM3PerHa: expect.closeTo(100, 9) };
    expect(first.meanDay).toEqual({ ...day, ...ofGround });
    expect(first.hotDay).toMatchObject({ depthMm: 6, netLPerTree: 144, grossMm: expect.closeTo(15, 9) });
    expect(first).toMatchObject({ name: "July", days: 10, referenceMmPerDay: 5, coefficient: 0.8 });
    expect(first).toMatchObject({ netLPerTree: 960, grossLPerTree: expect.closeTo(2400, 9), netM3PerHa: 400 });
    expect(first.grossM3PerHa).toBeCloseTo(1000, 9);
    expect(first.rainBeyondNeedLPerTree).toBe(0);
    expect(second.netLPerTree).toBe(480);
    expect(season).toEqual({
      netLPerTree: 1440,
      grossLPerTree: expect.closeTo(3600, 9),
      netM3PerHa: 600,
      grossM3PerHa: expect.closeTo(1500, 9),
    });
  });

  test("without a spacing there are litres and no hectares", () => {
    const { periods, ...season } = waterNeed({
      ...plain,
      tree: { canopyDiameterM: 2 },
      cover: { rule: "canopy-ground" },
    });
    const litres = ["grossLPerTree", "netLPerTree"];
    expect(Object.keys(season).sort()).toEqual(["area", ...litres]);
    expect(Object.keys(periods[0].meanDay).sort()).toEqual(["depthMm", ...litres]);
    expect(Object.keys(periods[0])).not.toContain("netM3PerHa");
    expect(periods[0].meanDay.netLPerTree).toBeCloseTo(4 * Math.PI, 12);
  });

  test("a pan's own coefficient comes in (FAO-56 eq. 55), a factor that goes with the pan stands alone, a hot day may be given", () => {
    const first = (change: Partial<NeedQuestion>) => waterNeed({ ...plain, ...change }).periods[0];
    expect(first({ reference: { kind: "pan", panCoefficient: 0.5 } }).meanDay.depthMm).toBe(2);
    expect(first({ reference: { kind: "pan-factor" } }).meanDay.depthMm).toBe(4);
    expect(first({ periods: [{ ...july, hotDayMmPerDay: 10 }] }).hotDay.depthMm).toBe(8);
  });

  test("rain of just the need leaves none and is none too much", () => {
    const rained = (usefulRainLPerTree: number) =>
      waterNeed({ ...plain, periods: [{ ...july, usefulRainLPerTree }] }).periods[0];
    expect(rained(960)).toMatchObject({ netLPerTree: 0, grossLPerTree: 0, rainBeyondNeedLPerTree: 0 });
    expect(rained(959)).toMatchObject({ netLPerTree: 1, rainBeyondNeedLPerTree: 0 });
    expect(rained(970)).toMatchObject({ netLPerTree: 0, rainBeyondNeedLPerTree: 10 });
  });

  test("refuses figures below 0, and takes 0", () => {
    for (const [change, name] of [
      [{ days: -1 }, "days"],
      [{ referenceMmPerDay: -1 }, "referenceMmPerDay"],
      [{ coefficient: -1 }, "coefficient"],
      [{ hotDayMmPerDay: -1 }, "hotMm"],
      [{ usefulRainLPerTree: -1 }, "rainL"],
    ] as const) {
      expect(() => waterNeed({ ...plain, periods: [{ ...july, ...change }] })).toThrow(
        `waterNeed requires ${name} from 0: got -1`,
      );
    }
    expect(waterNeed({ ...plain, periods: [{ ...july, days: 0 }] }).netLPerTree).toBe(0);
    for (const efficiencyFraction of [0, 1.01, Number.NaN]) {
      expect(() => waterNeed({ ...plain, efficiencyFraction })).toThrow(`got ${efficiencyFraction}`);
    }
    expect(waterNeed({ ...plain, efficiencyFraction: 1, leachingFraction: 0 }).grossLPerTree).toBe(960);
  });
});

describe("a practice beside the need", () => {
  test("is told as ratio and surplus, and split where the rooted share is known", () => {
    const given = { name: "a", litresPerTreePerDay: 20 };
    expect(practiceRatio(given, 8)).toEqual({ name: "a", givenL: 20, neededL: 8, ratio: 2.5, surplusL: 12 });
    expect(practiceRatio({ ...given, rootedShare: 0.5 }, 8).split).toEqual({
      takenL: 8,
      withoutRootsL: 10,
      beyondNeedL: 2,
    });
    expect(practiceRatio({ ...given, rootedShare: 0.25 }, 8).split).toEqual({
      takenL: 5,
      withoutRootsL: 15,
      beyondNeedL: 0,
    });
  });

  test("stands beside the span that it names, else the hungriest, and its own canopy, else that of the question", () => {
    const question: NeedQuestion = {
      ...plain,
      tree: { spacing, canopyDiameterM: 2 },
      cover: { rule: "canopy-ground" },
      periods: [{ ...july, name: "June", coefficient: 0.4 }, july],
    };
    const needs = practiceRatios(question, [
      { name: "hungriest", litresPerTreePerDay: 9 },
      { name: "named", litresPerTreePerDay: 9, period: "June" },
      { name: "small", litresPerTreePerDay: 9, canopyDiameterM: 1 },
    ]).map(({ neededL }) => neededL);
    expect(needs).toEqual([4, 2, 1].map((litres) => expect.closeTo(litres * Math.PI, 12)));
    expect(() => practiceRatios(question, [{ name: "a", litresPerTreePerDay: 9, period: "Juli" }])).toThrow(
      "practiceRatios requires a span of the question: got Juli",
    );
  });
});
