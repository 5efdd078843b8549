import fc from "fast-check";
import {
  avocadoHeatLimit,
  canopyCover,
  canopyDensityFao56,
  canopyDiameterM,
  canopyGroundM2,
  climateWithinLimits,
  densityCoefficient,
  dualKcDay,
  effectiveCover,
  floweringFactor,
  heatFactor,
  kcbOverCoverCrop,
  kcClimateTerm,
  leafAreaFromKcb,
  leafLossFactor,
  sparseKcb,
} from "rootledger/tree";
import { describe, expect, test } from "vitest";

const length = fc.double({ min: 0.2, max: 12, noNaN: true });

describe("canopy on the ground", () => {
  test("a free disc is a circle, a hedge wider than the row covers all", () => {
    expect(canopyGroundM2(3, { treeSpacingM: 6, rowSpacingM: 6 })).toBeCloseTo(Math.PI * 2.25, 12);
    expect(canopyCover(100, { treeSpacingM: 4, rowSpacingM: 6 })).toBeCloseTo(1, 12);
  });

  test("cover lies between 0 and 1 and never falls as the canopy grows", () => {
    fc.assert(
      fc.property(length, length, length, length, (a, b, treeSpacingM, rowSpacingM) => {
        const spacing = { treeSpacingM, rowSpacingM };
        const small = canopyCover(Math.min(a, b), spacing);
        const large = canopyCover(Math.max(a, b), spacing);
        return small > 0 && small <= large + 1e-12 && large <= 1 + 1e-12;
      }),
    );
  });

  test("cut discs against a count of 400 x 400 points", () => {
    const spacing = { treeSpacingM: 3, rowSpacingM: 5 };
    for (const diameter of [2, 3.4, 4.4, 5.6]) {
      let inside = 0;
      for (let i = 0; i < 400; i++) {
        for (let j = 0; j < 400; j++) {
          const x = ((i + 0.5) / 400 - 0.5) * spacing.treeSpacingM;
          const y = ((j + 0.5) / 400 - 0.5) * spacing.rowSpacingM;
          if (Math.hypot(x, y) < diameter / 2) inside++;
        }
      }
      expect(Math.abs(canopyCover(diameter, spacing) - inside / 160_000)).toBeLessThan(0.002);
    }
  });

  test("shade is at least the cover seen from above, and all of the ground at most", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0.05, max: Math.PI / 2, noNaN: true }),
        (cover, sun) => {
          const round = effectiveCover(cover, { kind: "round" }, sun);
          const hedge = effectiveCover(cover, { kind: "hedge", heightToWidth: 1 }, sun);
          return round >= cover - 1e-12 && round <= 1 && hedge >= cover - 1e-12 && hedge <= 1;
        },
      ),
    );
    expect(() => effectiveCover(0.5, { kind: "round" }, -0.1)).toThrow(/noon sun/);
  });

  test("density is between 0 and 1 by either rule; full shade gives the full coefficient", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), length, (shade, heightM) => {
        const ours = densityCoefficient({ effectiveCover: shade, heightM, multiplier: 1.5 });
        const older = canopyDensityFao56({ cover: shade, effectiveCover: shade, heightM });
        return ours >= 0 && ours <= 1 && older >= ours - 1e-12 && older <= 1;
      }),
    );
    expect(sparseKcb(densityCoefficient({ effectiveCover: 1, heightM: 3, multiplier: 1.5 }), 1.2)).toBe(1.2);
    expect(kcbOverCoverCrop({ density: 0.5, kcbFull: 0.8, kcbCover: 1 })).toBeCloseTo(0.95, 12);
    expect(() => leafAreaFromKcb(1.3, 1.2)).toThrow(RangeError);
  });

  test("canopy over the years is linear between tapes and needs rising ages", () => {
    const tapes = [
      { ageYears: 0, diameterM: 0.5 },
      { ageYears: 4, diameterM: 4.5 },
    ];
    expect([-1, 0, 1, 4, 9].map((age) => canopyDiameterM(tapes, age))).toEqual([0.5, 0.5, 1.5, 4.5, 4.5]);
    expect(() => canopyDiameterM([...tapes].reverse(), 1)).toThrow(/rising ages/);
  });
});

describe("climate, heat, leaves and flowers", () => {
  test("outside its range the climate term is refused, and moving into it is told", () => {
    expect(() => kcClimateTerm({ windAt2mMPerS: 0.5, rhMinPct: 45 }, 3)).toThrow(/windAt2mMPerS 1 to 6: got 0.5/);
    const { climate, moved } = climateWithinLimits({ windAt2mMPerS: 0.5, rhMinPct: 90 });
    expect({ climate, moved }).toEqual({
      climate: { windAt2mMPerS: 1, rhMinPct: 80 },
      moved: ["windAt2mMPerS", "rhMinPct"],
    });
    expect(climateWithinLimits({ windAt2mMPerS: 2, rhMinPct: 45 }).moved).toEqual([]);
  });

  test("losing leaves costs less than its share in a dense canopy, and all of it when none is left", () => {
    expect(leafLossFactor(1, 3)).toBe(1);
    expect(leafLossFactor(0, 3)).toBe(0);
    expect(leafLossFactor(0.5, 3)).toBeGreaterThan(0.5);
    expect(leafLossFactor(0.5, 0.1)).toBeCloseTo(0.5, 1);
  });

  test("heat acts above 31 C only, flowers not unless asked for", () => {
    expect([20, 31, 40, 45].map((airC) => heatFactor(airC, avocadoHeatLimit))).toEqual([1, 1, 0.5, 0.5]);
    expect(floweringFactor(0)).toBe(1);
    expect(() => floweringFactor(1)).toThrow(/0 to 0.9/);
  });
});

describe("the surface layer of the dual coefficient", () => {
  const store = { totalEvaporableMm: 18, readilyEvaporableMm: 8 };
  const mm = fc.double({ min: 0, max: 60, noNaN: true });

  test("closes its books whenever the water comes", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 18, noNaN: true }),
        mm,
        mm,
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        fc.constantFrom("early", "late"),
        (before, rainMm, irrigationMm, exposedWetted, waterComes) => {
          const day = dualKcDay(before, store, {
            et0Mm: 6,
            kcb: 0.4,
            kcMax: 1.2,
            exposedWetted,
            rainMm,
            irrigationMm,
            wettedFraction: 0.4,
            waterComes,
          });
          const water = rainMm + irrigationMm / 0.4;
          const closure = before - water + day.evaporationMm / exposedWetted + day.percolationMm - day.depletionMm;
          return Math.abs(closure) < 1e-9 && day.depletionMm >= 0 && day.percolationMm >= 0;
        },
      ),
    );
  });

  test("irrigation needs the share that it wets", () => {
    const day = { et0Mm: 5, kcb: 0.3, kcMax: 1.2, exposedWetted: 0.5, irrigationMm: 10 };
    expect(() => dualKcDay(0, store, day)).toThrow(/wettedFraction/);
  });
});
