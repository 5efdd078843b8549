import {
  avocadoHeatLimit,
  climateAdjustedKc,
  climateAdjustedKcEnd,
  climateWithinLimits,
  cropPresets,
  depletionFractionFor,
  floweringFactor,
  heatFactor,
  kcClimateTerm,
  kcMaximum,
  kcOnDay,
  kcUnderPlastic,
  leafLossFactor,
  meanKc,
  presetStages,
  pullLimitByDemand,
  readilyAvailableWaterMm,
  residueEvaporationCut,
  stageStartsDays,
  stressCoefficient,
} from "rootledger/tree";
import { describe, expect, test } from "vitest";

const near = (...values: number[]) => values.map((value) => expect.closeTo(value, 12));

describe("climate of a coefficient (FAO-56, Allen et al. 1998, eq. 62)", () => {
  const windy = { windAt2mMPerS: 4, rhMinPct: 25 };

  test("is taken at the limits of its fit, 1 to 6 m/s, 20 to 80 %, 0.1 to 10 m, and refused beyond", () => {
    // At 3 m: 0.04 (6 - 2) - 0.004 (20 - 45) = 0.26 and 0.04 (1 - 2) - 0.004 (80 - 45) = -0.18.
    expect(kcClimateTerm({ windAt2mMPerS: 6, rhMinPct: 20 }, 3)).toBeCloseTo(0.26, 12);
    expect(kcClimateTerm({ windAt2mMPerS: 1, rhMinPct: 80 }, 3)).toBeCloseTo(-0.18, 12);
    expect(kcClimateTerm(windy, 0.1)).toBeCloseTo(0.16 * (1 / 30) ** 0.3, 12);
    expect(kcClimateTerm(windy, 10)).toBeCloseTo(0.16 * (10 / 3) ** 0.3, 12);
    for (const wind of [0.99, 6.01, Number.NaN]) {
      expect(() => kcClimateTerm({ ...windy, windAt2mMPerS: wind }, 3)).toThrow(`windAt2mMPerS 1 to 6: got ${wind}`);
    }
    for (const rh of [19.9, 80.1]) {
      expect(() => kcClimateTerm({ ...windy, rhMinPct: rh }, 3)).toThrow(`rhMinPct 20 to 80: got ${rh}`);
    }
    for (const height of [0.09, 10.1]) {
      expect(() => kcClimateTerm(windy, height)).toThrow(`heightM 0.1 to 10: got ${height}`);
    }
  });

  test("beyond the limits is moved to the nearer one, each figure alone", () => {
    const moved = (windAt2mMPerS: number, rhMinPct: number) => climateWithinLimits({ windAt2mMPerS, rhMinPct });
    expect(moved(7, 50)).toEqual({ climate: { windAt2mMPerS: 6, rhMinPct: 50 }, moved: ["windAt2mMPerS"] });
    expect(moved(3, 10)).toEqual({ climate: { windAt2mMPerS: 3, rhMinPct: 20 }, moved: ["rhMinPct"] });
    expect(moved(6, 80).moved).toEqual([]);
    expect(moved(1, 20).moved).toEqual([]);
  });

  test("moves the end value from 0.45 on (eq. 65), and the greatest Kc is 1.2 + term or Kcb + 0.05 (eq. 72)", () => {
    expect([0.44, 0.45, 0.9].map((kc) => climateAdjustedKcEnd(kc, windy, 3))).toEqual(near(0.44, 0.61, 1.06));
    expect(climateAdjustedKc(0.3, windy, 3)).toBeCloseTo(0.46, 12);
    expect([0.9, 1.31, 1.4].map((kcb) => kcMaximum(windy, 3, kcb))).toEqual(near(1.36, 1.36, 1.45));
  });
});

describe("the curve of four stages (FAO-56 eq. 66)", () => {
  const curve = { lengthsDays: [10, 20, 30, 40], kcInitial: 0.2, kcMiddle: 1, kcEnd: 0.6 } as const;

  test("a tenth of a day on both sides of each bend", () => {
    expect([9.9, 10.1, 29.9, 30.1, 59.9, 60.1, 99.9].map((day) => kcOnDay(curve, day))).toEqual(
      near(0.2, 0.204, 0.996, 1, 1, 0.999, 0.601),
    );
    for (const day of [-0.1, 100.1]) {
      expect(() => kcOnDay(curve, day)).toThrow(`kcOnDay requires a day of the season, 0 to 100: got ${day}`);
    }
  });

  test("stages of no length: the curve leaps, and the last day is that of the end or of the middle", () => {
    expect(kcOnDay({ ...curve, lengthsDays: [10, 0, 30, 40] }, 10)).toBe(0.2);
    expect(kcOnDay({ ...curve, lengthsDays: [10, 0, 30, 40] }, 10.5)).toBe(1);
    expect(kcOnDay({ ...curve, lengthsDays: [10, 20, 30, 0] }, 60)).toBe(1);
    expect(() => stageStartsDays([10, -1, 30, 40])).toThrow("lengths of 0 days or more: got -1");
  });

  test("means of spans that begin, end or lie on bends", () => {
    expect(meanKc(curve, 5, 15)).toBeCloseTo((5 * 0.2 + 5 * 0.3) / 10, 12);
    expect(meanKc(curve, 30, 60)).toBe(1);
    expect(meanKc(curve, 5, 100)).toBeCloseTo((5 * 0.2 + 20 * 0.6 + 30 + 40 * 0.8) / 95, 12);
    expect(() => meanKc(curve, 7, 7)).toThrow("meanKc requires fromDay before toDay: got 7 and 7");
    expect(() => meanKc(curve, 7, 6)).toThrow("got 7 and 6");
  });
});

describe("what holds demand back", () => {
  test("heat: a line from 31 to 40 C", () => {
    expect([31, 32, 35.5, 39.1, 40].map((airC) => heatFactor(airC, avocadoHeatLimit))).toEqual(
      near(1, 1 - 0.5 / 9, 0.75, 0.55, 0.5),
    );
  });

  test("lost leaves: (1 - exp(-0.7 x 3 x 0.5)) / (1 - exp(-2.1)) of a full canopy's (FAO-56 eq. 97)", () => {
    expect(leafLossFactor(0.5, 3)).toBeCloseTo((1 - Math.exp(-1.05)) / (1 - Math.exp(-2.1)), 12);
    for (const [share, lai] of [
      [-0.1, 3],
      [1.1, 3],
      [0.5, 0],
      [Number.NaN, 3],
      [0.5, Number.NaN],
    ]) {
      expect(() => leafLossFactor(share, lai)).toThrow(`a share 0 to 1 and LAI above 0: got ${share} and ${lai}`);
    }
  });

  test("flowers: up to the 90 % that they add to the surface", () => {
    expect([0.1, 0.9].map(floweringFactor)).toEqual([1.1, 1.9]);
    for (const increase of [-0.1, 0.91]) {
      expect(() => floweringFactor(increase)).toThrow(`an increase of 0 to 0.9: got ${increase}`);
    }
  });

  test("plastic and residue (FAO-56 ch. 10; example 45: cucumber 1.0 and 0.75 become 0.85 and 0.64 at 15 %)", () => {
    expect(kcUnderPlastic([0.4, 1, 0.75], 0.15)).toEqual(near(0.1, 0.85, 0.6375));
    expect(kcUnderPlastic([0.4, 1, 0.75], 0)).toEqual([0.1, 1, 0.75]);
    expect([0, 0.5, 1].map(residueEvaporationCut)).toEqual([0, 0.25, 0.5]);
    for (const value of [-0.01, 1.01, Number.NaN]) {
      expect(() => residueEvaporationCut(value)).toThrow(`residueEvaporationCut requires cover 0 to 1: got ${value}`);
    }
    for (const value of [-0.01, 1, Number.NaN]) {
      expect(() => kcUnderPlastic([0.4, 1, 0.75], value)).toThrow(`a reduction from 0 to below 1: got ${value}`);
    }
  });

  test("pull limit: constant to 1 and from 5 mm a day, a line between (Feddes et al. 1978, from memory)", () => {
    const limit = { highDemand: -300, lowDemand: -700 };
    expect([0, 1, 2, 3, 4.5, 5, 9].map((mm) => pullLimitByDemand(mm, limit))).toEqual([
      ...[-700, -700, -600, -500, -350, -300, -300],
    ]);
    for (const mm of [-0.1, Number.NaN]) {
      expect(() => pullLimitByDemand(mm, limit)).toThrow(`demandMmPerDay of at least 0: got ${mm}`);
    }
  });
});

describe("water that is held and taken (FAO-56 eqs 83 and 84, table 22)", () => {
  test("p stays within 0.1 and 0.8, 0.04 for each mm from 5", () => {
    expect([5, 6, 4].map((etc) => depletionFractionFor(0.5, etc))).toEqual(near(0.5, 0.46, 0.54));
    expect([depletionFractionFor(0.15, 9), depletionFractionFor(0.7, 1)]).toEqual([0.1, 0.8]);
  });

  test("Ks is 1 to RAW, nothing beyond TAW", () => {
    expect(readilyAvailableWaterMm(100, 0.4)).toBe(40);
    expect([0, 40, 70, 100, 130].map((mm) => stressCoefficient(mm, 100, 0.4))).toEqual(near(1, 1, 0.5, 0, 0));
  });
});

test("the four stages of a preset run from one anchor of the season to the next, at the events that begin them", () => {
  const { initial, middle, end } = cropPresets.avocado.kc;
  expect(presetStages(cropPresets.avocado, "kc")).toEqual(
    [
      ["initial", "rest", initial, initial],
      ["development", "growth", initial, middle],
      ["middle", "full", middle, middle],
      ["late", "decline", middle, end],
    ].map(([name, event, from, to]) => ({
      name,
      starts: { event },
      kcFrom: (from as typeof initial).value,
      kcTo: (to as typeof initial).value,
    })),
  );
});
