import {
  avocadoHeatLimit,
  canopyCover,
  canopyGroundM2,
  depthOnWettedMm,
  ecFromSaltMgPerL,
  effectiveCover,
  extractEc,
  figureStore,
  floweringFactor,
  heatFactor,
  kcInitial,
  kcInitialForDepth,
  kcUnderPlastic,
  leafLossFactor,
  localizedCoverFactor,
  osmoticHeadCm,
  practiceRatio,
  pullLimitByDemand,
  residueEvaporationCut,
  rootDepthWithKcbM,
  saltMgPerL,
  withLeaching,
} from "rootledger/tree";
import { describe, expect, test } from "vitest";

// Where a formula begins and ends to hold: the last value that is taken, and the first that is refused, named with what was received.

type Case = readonly [name: string, taken: readonly (() => unknown)[], refused: readonly (() => unknown)[]];

const nan = Number.NaN;
const trees = { treeSpacingM: 4, rowSpacingM: 6 };
const store = { totalEvaporableMm: 15, readilyEvaporableMm: 6 };
const crop = { zrMinM: 0.2, zrMaxM: 0.8, kcbInitial: 0.15, kcbMiddle: 1.14 };

const cases: readonly Case[] = [
  [
    "canopyGroundM2",
    [() => canopyGroundM2(1e-9, trees)],
    [
      () => canopyGroundM2(0, trees),
      () => canopyGroundM2(nan, trees),
      () => canopyGroundM2(3, { ...trees, treeSpacingM: 0 }),
      () => canopyGroundM2(3, { ...trees, rowSpacingM: 0 }),
      () => canopyGroundM2(-3, { treeSpacingM: -4, rowSpacingM: 6 }),
    ],
  ],
  [
    "effectiveCover",
    [() => effectiveCover(0, { kind: "round" }, 1), () => effectiveCover(1, { kind: "round" }, Math.PI / 2)],
    [
      () => effectiveCover(-0.01, { kind: "round" }, 1),
      () => effectiveCover(1.01, { kind: "round" }, 1),
      () => effectiveCover(nan, { kind: "round" }, 1),
      () => effectiveCover(0.5, { kind: "round" }, 0),
      () => effectiveCover(0.5, { kind: "round" }, 1.58),
      () => effectiveCover(0.5, { kind: "round" }, 6),
    ],
  ],
  [
    "leafLossFactor",
    [() => leafLossFactor(0, 3), () => leafLossFactor(1, 1e-6)],
    [
      () => leafLossFactor(-0.1, 3),
      () => leafLossFactor(1.1, 3),
      () => leafLossFactor(nan, 3),
      () => leafLossFactor(0.5, 0),
    ],
  ],
  [
    "floweringFactor",
    [() => floweringFactor(0), () => floweringFactor(0.9)],
    [() => floweringFactor(-0.01), () => floweringFactor(0.91), () => floweringFactor(nan)],
  ],
  ["figureStore", [() => figureStore("light", 1e-3)], [() => figureStore("light", 0), () => figureStore("light", nan)]],
  [
    "kcInitial",
    [() => kcInitial(store, 0.01, 5), () => kcInitial({ ...store, readilyEvaporableMm: 0 }, 3, 5)],
    [
      () => kcInitial(store, 0, 5),
      () => kcInitial(store, 3, 0),
      () => kcInitial(store, nan, 5),
      () => kcInitial(store, 3, nan),
      () => kcInitial({ ...store, readilyEvaporableMm: -0.1 }, 3, 5),
      () => kcInitial({ ...store, readilyEvaporableMm: 15 }, 3, 5),
    ],
  ],
  [
    "localizedCoverFactor",
    [() => localizedCoverFactor("decroix", 0), () => localizedCoverFactor("decroix", 1)],
    [() => localizedCoverFactor("decroix", -0.01), () => localizedCoverFactor("decroix", 1.01)],
  ],
  [
    "withLeaching",
    [() => withLeaching(100, 0), () => withLeaching(100, 0.99)],
    [() => withLeaching(100, -0.01), () => withLeaching(100, 1), () => withLeaching(100, nan)],
  ],
  [
    "kcUnderPlastic",
    [() => kcUnderPlastic([0.4, 1, 0.8], 0)],
    [() => kcUnderPlastic([0.4, 1, 0.8], -0.01), () => kcUnderPlastic([0.4, 1, 0.8], 1)],
  ],
  [
    "residueEvaporationCut",
    [() => residueEvaporationCut(0), () => residueEvaporationCut(1)],
    [() => residueEvaporationCut(-0.01), () => residueEvaporationCut(1.01), () => residueEvaporationCut(nan)],
  ],
  ["saltMgPerL", [() => saltMgPerL(0)], [() => saltMgPerL(-0.1), () => saltMgPerL(nan)]],
  ["ecFromSaltMgPerL", [() => ecFromSaltMgPerL(0)], [() => ecFromSaltMgPerL(-1), () => ecFromSaltMgPerL(nan)]],
  ["osmoticHeadCm", [() => osmoticHeadCm(0)], [() => osmoticHeadCm(-0.1), () => osmoticHeadCm(nan)]],
  [
    "extractEc",
    [() => extractEc({ soilWaterEcDsPerM: 0, theta: 0.46, thetaSaturated: 0.46 })],
    [
      () => extractEc({ soilWaterEcDsPerM: 4, theta: 0, thetaSaturated: 0.46 }),
      () => extractEc({ soilWaterEcDsPerM: 4, theta: 0.47, thetaSaturated: 0.46 }),
      () => extractEc({ soilWaterEcDsPerM: -1, theta: 0.3, thetaSaturated: 0.46 }),
      () => extractEc({ soilWaterEcDsPerM: nan, theta: 0.3, thetaSaturated: 0.46 }),
    ],
  ],
  [
    "pullLimitByDemand",
    [() => pullLimitByDemand(0, { highDemand: -320, lowDemand: -600 })],
    [
      () => pullLimitByDemand(-1, { highDemand: -320, lowDemand: -600 }),
      () => pullLimitByDemand(nan, { highDemand: -320, lowDemand: -600 }),
    ],
  ],
  [
    "rootDepthWithKcbM",
    [() => rootDepthWithKcbM(crop, 0.15), () => rootDepthWithKcbM(crop, 1.14)],
    [() => rootDepthWithKcbM(crop, 0.14), () => rootDepthWithKcbM(crop, 1.15), () => rootDepthWithKcbM(crop, nan)],
  ],
];

test.each(cases)("%s takes its last value and refuses the next, by its own name", (name, taken, refused) => {
  for (const ask of taken) expect(ask).not.toThrow();
  for (const ask of refused) {
    expect(ask).toThrow(RangeError);
    expect(ask).toThrow(new RegExp(`^${name} requires .*: got `));
  }
});

describe("at and between the ends", () => {
  test("a canopy is a disc until neighbours meet, a strip of the row's width at most, and then all ground", () => {
    expect(canopyGroundM2(4, trees)).toBeCloseTo(4 * Math.PI, 12);
    expect(canopyGroundM2(3, trees)).toBeCloseTo(2.25 * Math.PI, 12);
    // Two trees 4 m apart, discs of 5 m: the disc less the two caps beyond 2 m (circular segment, plain geometry).
    const cap = 2.5 ** 2 * Math.acos(2 / 2.5) - 2 * Math.sqrt(2.5 ** 2 - 4);
    expect(canopyGroundM2(5, trees)).toBeCloseTo(Math.PI * 6.25 - 2 * cap, 12);
    // Rows 4 m apart and trees 6 m: the same ground, whichever way the caps are cut.
    expect(canopyGroundM2(5, { treeSpacingM: 6, rowSpacingM: 4 })).toBeCloseTo(Math.PI * 6.25 - 2 * cap, 12);
    expect(canopyGroundM2(9, trees)).toBeCloseTo(24, 12);
    expect(canopyCover(4, trees)).toBeCloseTo((4 * Math.PI) / 24, 12);
  });

  test("shade is never more than all ground", () => {
    expect(effectiveCover(0.9, { kind: "round" }, 0.5)).toBe(1);
    expect(effectiveCover(0.3, { kind: "round" }, Math.PI / 6)).toBeCloseTo(0.6, 12);
    expect(effectiveCover(0.3, { kind: "hedge", heightToWidth: 2 }, Math.PI / 4)).toBeCloseTo(0.9, 12);
  });

  test("heat holds demand back in a straight line, 31 C to 40 C", () => {
    expect([20, 31, 32.8, 35.5, 40, 45].map((airC) => heatFactor(airC, avocadoHeatLimit))).toEqual(
      [1, 1, 0.9, 0.75, 0.5, 0.5].map((factor) => expect.closeTo(factor, 12)),
    );
    const shut = { limitC: 30, closedFraction: 0.2, closedC: 40 };
    expect(heatFactor(35, shut)).toBeCloseTo(0.6, 12);
    expect([floweringFactor(0), floweringFactor(0.4)]).toEqual([1, 1.4]);
    expect(leafLossFactor(1, 3)).toBe(1);
    expect(leafLossFactor(0, 3)).toBe(0);
  });

  test("water behind FAO-56's figures 29 and 30 has its limits (Annex 7, from memory)", () => {
    // Light: REW 6/sqrt(ET0) between 2.5 and 7. Coarse: TEW 7 sqrt(ET0) up to 15, REW 6. Fine: 13 sqrt(ET0) up to 28, REW 9.
    expect([0.25, 4, 9].map((et0) => figureStore("light", et0).readilyEvaporableMm)).toEqual([7, 3, 2.5]);
    expect([1, 4, 9].map((et0) => figureStore("heavy-coarse", et0).totalEvaporableMm)).toEqual([7, 14, 15]);
    expect([1, 4, 9].map((et0) => figureStore("heavy-fine", et0).totalEvaporableMm)).toEqual([13, 26, 28]);
    expect(figureStore("heavy-coarse", 4).readilyEvaporableMm).toBe(6);
    expect(figureStore("heavy-fine", 4).readilyEvaporableMm).toBe(9);
    expect(figureStore("heavy-coarse", 0.25).readilyEvaporableMm).toBeCloseTo(3.49, 12);
    expect(figureStore("heavy-fine", 0.25).readilyEvaporableMm).toBeCloseTo(6.49, 12);
  });

  test("a soil wetted again within stage one loses 1.15 ET0, later less and less (eqs 7-2, 7-3)", () => {
    // REW 6 at 1.15 x 5 mm/d lasts 1.043 days.
    expect(kcInitial(store, 1.04, 5)).toBe(1.15);
    expect(kcInitial(store, 1.05, 5)).toBeLessThan(1.15);
    const fall = (2 * 5.75 * (1 + 6 / 9)) / 15;
    const stageOne = 6 / 5.75;
    expect(kcInitial(store, stageOne + 2, 5)).toBeCloseTo((15 - 9 * Math.exp(-fall)) / ((stageOne + 2) * 5), 12);
    expect([5, 10, 25, 40, 60].map((mm) => kcInitialForDepth(mm, 0.5, 1.1))).toEqual(
      [0.5, 0.5, 0.8, 1.1, 1.1].map((kc) => expect.closeTo(kc, 12)),
    );
    expect(depthOnWettedMm(12, 0.4)).toBeCloseTo(30, 12);
  });

  test("rules of localized cover meet where they should: all of it counts as 1, half is where Freeman & Garzoli bend (FAO-36, from memory)", () => {
    for (const rule of ["keller-karmeli", "freeman-garzoli", "decroix"] as const) {
      expect(localizedCoverFactor(rule, 1)).toBe(1);
    }
    expect(localizedCoverFactor("keller-karmeli", 0.85)).toBe(1);
    expect(localizedCoverFactor("keller-karmeli", 0.34)).toBeCloseTo(0.4, 12);
    expect(localizedCoverFactor("freeman-garzoli", 0.49)).toBe(0.49);
    expect(localizedCoverFactor("freeman-garzoli", 0.5)).toBe(0.75);
    expect(localizedCoverFactor("decroix", 0.6)).toBeCloseTo(0.7, 12);
    expect(localizedCoverFactor("decroix", 0.95)).toBe(1);
  });

  test("the pull limit moves between 1 and 5 mm a day (Feddes et al. 1978, from memory), in whatever unit it is given", () => {
    const limit = { highDemand: 20, lowDemand: 40 };
    expect([0, 1, 2, 3, 5, 9].map((mm) => pullLimitByDemand(mm, limit))).toEqual([40, 40, 35, 30, 20, 20]);
  });

  test("salt goes to EC and back, and its pull is 36 kPa a dS/m (Agriculture Handbook 60)", () => {
    expect(saltMgPerL(1)).toBe(640);
    expect(ecFromSaltMgPerL(saltMgPerL(2.3))).toBeCloseTo(2.3, 12);
    expect(osmoticHeadCm(1)).toBeCloseTo(-36 / 0.0980665, 0);
    expect(osmoticHeadCm(3)).toBeCloseTo(3 * osmoticHeadCm(1), 9);
    expect(extractEc({ soilWaterEcDsPerM: 5, theta: 0.23, thetaSaturated: 0.46 })).toBeCloseTo(2.5, 12);
  });

  test("plastic takes its share off the later coefficients only; residue half its cover off evaporation (FAO-56 ch. 10)", () => {
    expect(kcUnderPlastic([0.4, 1, 0.8], 0.25)).toEqual([0.1, 0.75, expect.closeTo(0.6, 12)]);
    expect([0, 0.3, 1].map(residueEvaporationCut)).toEqual([0, 0.15, 0.5]);
  });

  test("what is given is split into what the tree takes, what lies beside the roots, and the rest", () => {
    expect(practiceRatio({ name: "much", litresPerTreePerDay: 20, rootedShare: 0.6 }, 8)).toEqual({
      ...{ name: "much", givenL: 20, neededL: 8, ratio: 2.5, surplusL: 12 },
      split: { takenL: 8, withoutRootsL: 8, beyondNeedL: 4 },
    });
    expect(practiceRatio({ name: "little", litresPerTreePerDay: 10, rootedShare: 0.5 }, 8).split).toEqual({
      ...{ takenL: 5, withoutRootsL: 5, beyondNeedL: 0 },
    });
    expect(practiceRatio({ name: "unknown", litresPerTreePerDay: 6 }, 8)).not.toHaveProperty("split");
  });

  test("roots of an annual go down with Kcb (FAO-56 eq. 8-1)", () => {
    expect(rootDepthWithKcbM(crop, 0.15)).toBe(0.2);
    expect(rootDepthWithKcbM(crop, 0.645)).toBeCloseTo(0.5, 12);
    expect(rootDepthWithKcbM(crop, 1.14)).toBeCloseTo(0.8, 12);
  });
});
