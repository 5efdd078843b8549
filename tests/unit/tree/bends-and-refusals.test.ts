import {
  canopyDensityFao56,
  coverFromKcb,
  densityCoefficient,
  evaporationCoefficient,
  evaporationReduction,
  exposedWetted,
  exposedWettedUnderDrip,
  kcbOverCoverCrop,
  kcOnDay,
  leachingRequirement,
  leachingRequirementFrequent,
  leafAreaFromKcb,
  meanKc,
  rootDepthShare,
  stageStartsDays,
} from "rootledger/tree";
import { describe, expect, test } from "vitest";

// FAO-56 (Allen et al. 1998), example 28 (dry beans): lengths 25, 25, 30, 20 days; Kcb 0.15, 1.19, 0.35.
const beans = { lengthsDays: [25, 25, 30, 20], kcInitial: 0.15, kcMiddle: 1.19, kcEnd: 0.35 } as const;

describe("the curve of a season", () => {
  test("turns on the days on which stages begin, FAO-56 example 28: 0.15 to day 25, 0.77 on day 40, 1.19 from 50 to 80, 0.35 on day 100", () => {
    expect([0, 25, 40, 50, 80, 95, 100].map((day) => Number(kcOnDay(beans, day).toFixed(2)))).toEqual([
      0.15, 0.15, 0.77, 1.19, 1.19, 0.56, 0.35,
    ]);
  });

  test("has as mean of a span the area below it, worked by hand", () => {
    expect(meanKc(beans, 0, 25)).toBeCloseTo(0.15, 12);
    expect(meanKc(beans, 20, 30)).toBeCloseTo((5 * 0.15 + 5 * 0.254) / 10, 12);
    expect(meanKc(beans, 25, 50)).toBeCloseTo((0.15 + 1.19) / 2, 12);
    expect(meanKc(beans, 0, 100)).toBeCloseTo((25 * 0.15 + 25 * 0.67 + 30 * 1.19 + 20 * 0.77) / 100, 12);
  });

  test("refuses days outside the season, spans without length and lengths that are none", () => {
    for (const day of [-0.1, 100.1, Number.NaN]) expect(() => kcOnDay(beans, day)).toThrow(/0 to 100/);
    for (const [from, to] of [
      [5, 5],
      [6, 5],
    ] as const)
      expect(() => meanKc(beans, from, to)).toThrow(RangeError);
    expect(() => meanKc(beans, 90, 101)).toThrow(RangeError);
    for (const length of [-1, Number.POSITIVE_INFINITY, Number.NaN]) {
      expect(() => stageStartsDays([25, length, 30, 20])).toThrow(RangeError);
    }
    expect(stageStartsDays([0, 0, 30, 20])).toEqual([0, 0, 0, 30, 50]);
  });
});

describe("roots by depth, Y = 1 - beta^d (Gale & Grigal 1987)", () => {
  test("hold the given share above 20 cm where nothing is cut, the same again of the rest in the next 20 cm", () => {
    const shares = rootDepthShare([0, 20, 40, 5000], 5000, 0.85);
    expect(shares[0]).toBeCloseTo(0.85, 12);
    expect(shares[1]).toBeCloseTo(0.15 * 0.85, 12);
  });

  test("end at the rooted depth, within a layer too, and are whole from any top edge", () => {
    const shares = rootDepthShare([0, 20, 60, 100], 40, 0.85);
    const whole = 1 - 0.15 ** 2;
    expect(Array.from(shares, (share) => Number(share.toFixed(12)))).toEqual(
      [0.85 / whole, (0.15 * 0.85) / whole, 0].map((share) => Number(share.toFixed(12))),
    );
    expect(rootDepthShare([10, 20, 40], 40, 0.85).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  test("refuse shares and depths that are none", () => {
    for (const share of [0, 1, -0.1, Number.NaN]) expect(() => rootDepthShare([0, 20], 20, share)).toThrow(/topShare/);
    for (const depth of [0, -1, Number.NaN]) expect(() => rootDepthShare([0, 20], depth, 0.8)).toThrow(/depthCm/);
  });
});

test("leaching needs nothing for pure water and refuses what no fraction below 1 leaches (FAO-29: ECw / (5 ECe - ECw))", () => {
  expect(leachingRequirement(0, 2)).toBe(0);
  expect(leachingRequirement(2.4, 1)).toBeCloseTo(2.4 / 2.6, 12);
  for (const ecw of [2.5, 3, 5, 6]) expect(() => leachingRequirement(ecw, 1)).toThrow(/below 1/);
  expect(() => leachingRequirementFrequent(12, 6)).toThrow(/below 1/);
  expect(leachingRequirementFrequent(0, 6)).toBe(0);
  for (const ece of [0, -1, Number.NaN]) expect(() => leachingRequirement(0, ece)).toThrow(/eceDsPerM/);
  for (const ecw of [-0.1, Number.NaN]) expect(() => leachingRequirement(ecw, 2)).toThrow(/ecwDsPerM/);
});

describe("evaporation of the top soil", () => {
  test("is free to REW, nothing from TEW on, a line between (FAO-56 eq. 74, example 31: 0.96 at 9.45 mm, 0.02 at 19.79)", () => {
    const store = { totalEvaporableMm: 20, readilyEvaporableMm: 9 };
    const kr = [0, 9, 9.45, 14.5, 19.79, 20, 25].map((mm) => Number(evaporationReduction(mm, store).toFixed(2)));
    expect(kr).toEqual([1, 1, 0.96, 0.5, 0.02, 0, 0]);
  });

  test("comes from ground that is both wet and in the sun, whichever is less (FAO-56 eqs 71, 75, 76)", () => {
    expect([exposedWetted(0.08, 0.8), exposedWetted(0.6, 0.8)]).toEqual([0.8, 0.4]);
    expect(exposedWettedUnderDrip(0.6, 0.35)).toBeCloseTo(0.6 * 0.35, 12);
    expect(exposedWettedUnderDrip(0.95, 1)).toBeCloseTo(0.05, 12);
    expect(evaporationCoefficient({ kr: 1, kcMax: 1.2, kcb: 0.2, exposedWetted: 0.5 })).toBeCloseTo(0.6, 12);
    expect(evaporationCoefficient({ kr: 0.1, kcMax: 1.2, kcb: 0.2, exposedWetted: 0.5 })).toBeCloseTo(0.1, 12);
    const crop = { kcMin: 0.15, kcMax: 1.15 };
    expect(coverFromKcb({ ...crop, kcb: 0.65, heightM: 0 })).toBeCloseTo(0.5, 12);
    expect(coverFromKcb({ ...crop, kcb: 0.65, heightM: 2 })).toBeCloseTo(0.25, 12);
    expect(coverFromKcb({ ...crop, kcb: 0.15, heightM: 0 })).toBeCloseTo(0.01, 12);
    expect(coverFromKcb({ ...crop, kcb: 1.15, heightM: 0 })).toBe(0.99);
  });
});

test("density is the least of cover, height and 1, and leaf area refuses Kcb beyond full cover (FAO-56 eqs 97 and 98)", () => {
  const density = (cover: number, effectiveCover: number, heightM: number) =>
    canopyDensityFao56({ cover, effectiveCover, heightM });
  expect(density(0.1, 0.81, 1)).toBeCloseTo(0.2, 12);
  expect(density(0.6, 0.25, 1)).toBeCloseTo(0.5, 12);
  expect(density(0.6, 1, 1)).toBe(1);
  expect(densityCoefficient({ effectiveCover: 0.2, heightM: 3, multiplier: 1.5 })).toBeCloseTo(0.3, 12);
  expect(densityCoefficient({ effectiveCover: 0.25, heightM: 0, multiplier: 2 })).toBeCloseTo(0.25, 12);
  expect(kcbOverCoverCrop({ density: 0.5, kcbFull: 0.5, kcbCover: 0.9 })).toBeCloseTo(0.9 - 0.5 * 0.2, 12);
  expect(leafAreaFromKcb(0.15, 1.15)).toBe(-0);
  for (const kcb of [0.14, 1.15, 1.2]) expect(() => leafAreaFromKcb(kcb, 1.15)).toThrow(RangeError);
});
