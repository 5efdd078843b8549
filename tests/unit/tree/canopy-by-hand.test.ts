import fc from "fast-check";
import {
  canopyCover,
  canopyDensityFao56,
  canopyGroundM2,
  coverFromKcb,
  densityCoefficient,
  effectiveCover,
  evaporationCoefficient,
  evaporationReduction,
  exposedWetted,
  kcbByHeight,
  kcbFromLeafArea,
  kcbFullCover,
  kcbOverCoverCrop,
  leafAreaFromKcb,
  sparseKcb,
  stomatalReduction,
  thinStandReduction,
  treeGroundM2,
} from "rootledger/tree";
import { describe, expect, test } from "vitest";

// Allen, Pereira, Raes & Smith (1998), FAO Irrigation and Drainage Paper 56.

describe("ground under a canopy", () => {
  const square = { treeSpacingM: 2, rowSpacingM: 2 };

  test("is the disc until neighbours touch, in the row or across it, and all ground from the far corner on", () => {
    expect(treeGroundM2({ treeSpacingM: 4, rowSpacingM: 6 })).toBe(24);
    expect(canopyGroundM2(2, square)).toBeCloseTo(Math.PI, 12);
    // Corners lie sqrt(2) m away: a disc of 2 sqrt(2) m covers all four.
    expect(canopyGroundM2(2 * Math.SQRT2, square)).toBeCloseTo(4, 12);
    expect(canopyGroundM2(50, square)).toBeCloseTo(4, 12);
  });

  test("of a disc of radius 1 cut half a metre from its middle is the disc less its segments", () => {
    // Segment beyond d of a unit circle: acos(d) - d sqrt(1 - d2); at d = 0.5: 0.61418 m2.
    const segment = Math.acos(0.5) - 0.5 * Math.sqrt(0.75);
    expect(canopyGroundM2(2, { treeSpacingM: 1, rowSpacingM: 5 })).toBeCloseTo(Math.PI - 2 * segment, 12);
    expect(canopyGroundM2(2, { treeSpacingM: 5, rowSpacingM: 1 })).toBeCloseTo(Math.PI - 2 * segment, 12);
    expect(canopyCover(2, { treeSpacingM: 1, rowSpacingM: 5 })).toBeCloseTo((Math.PI - 2 * segment) / 5, 12);
    // Cut in the row and across it: segments at 0.8 m, which do not meet, since 0.8 sqrt(2) > 1.
    const small = Math.acos(0.8) - 0.8 * 0.6;
    expect(canopyGroundM2(2, { treeSpacingM: 1.6, rowSpacingM: 1.6 })).toBeCloseTo(Math.PI - 4 * small, 12);
  });

  test("wants lengths above 0", () => {
    const wrong = "canopyGroundM2 requires lengths above 0 m: got";
    expect(() => canopyGroundM2(0, square)).toThrow(`${wrong} 0, 2 and 2`);
    expect(() => canopyGroundM2(1, { ...square, treeSpacingM: 0 })).toThrow(`${wrong} 1, 0 and 2`);
    expect(() => canopyGroundM2(1, { ...square, rowSpacingM: 0 })).toThrow(`${wrong} 1, 2 and 0`);
    expect(() => canopyGroundM2(Number.NaN, square)).toThrow(`${wrong} NaN, 2 and 2`);
  });
});

describe("shade at noon (FAO-56 ch. 9, box 18)", () => {
  const hedge = { kind: "hedge", heightToWidth: 2 } as const;

  test("is the cover with the sun overhead; at 30 degrees twice that of round canopies, 1 + 2/tan 30 of hedges", () => {
    expect(effectiveCover(0.3, { kind: "round" }, Math.PI / 2)).toBeCloseTo(0.3, 12);
    expect(effectiveCover(0.3, hedge, Math.PI / 2)).toBeCloseTo(0.3, 12);
    expect(effectiveCover(0.3, { kind: "round" }, Math.PI / 6)).toBeCloseTo(0.6, 12);
    expect(effectiveCover(0.2, hedge, Math.PI / 6)).toBeCloseTo(0.2 * (1 + 2 * Math.sqrt(3)), 12);
    expect(effectiveCover(0.6, { kind: "round" }, Math.PI / 6)).toBe(1);
    expect([0, 1].map((cover) => effectiveCover(cover, hedge, 1))).toEqual([0, 1]);
  });

  test("wants a cover from 0 to 1 and a sun above the horizon, overhead at most", () => {
    for (const cover of [-0.01, 1.01, Number.NaN]) {
      expect(() => effectiveCover(cover, hedge, 1)).toThrow(`effectiveCover requires cover 0 to 1: got ${cover}`);
    }
    for (const sun of [0, Math.PI / 2 + 0.01, Number.NaN]) {
      expect(() => effectiveCover(0.5, hedge, sun)).toThrow(`a noon sun above 0 and up to pi/2: got ${sun}`);
    }
  });
});

describe("Kcb of thin canopies", () => {
  test("of full cover rises with height to 2 m (eq. 100), and with wind and dry air (eq. 99)", () => {
    expect([0.5, 1.5, 2, 5].map(kcbByHeight)).toEqual([1.05, 1.15, 1.2, 1.2].map((kcb) => expect.closeTo(kcb, 12)));
    // 4 m/s and 25 %: 0.08 + 0.08, at 3 m as it is.
    expect(kcbFullCover(3, { windAt2mMPerS: 4, rhMinPct: 25 })).toBeCloseTo(1.36, 12);
  });

  test("is less for leaves that close more than those of field crops (eq. 102), the same for theirs", () => {
    const air = { slopeKPaPerC: 0.2, gammaKPaPerC: 0.1, windAt2mMPerS: 5 };
    // 0.34 x 5 = 1.7: (0.2 + 0.1 x 2.7) / (0.2 + 0.1 x (1 + 1.7 x 4)) = 0.47 / 0.98.
    expect(stomatalReduction({ ...air, leafResistanceSPerM: 400 })).toBeCloseTo(0.47 / 0.98, 12);
    expect(stomatalReduction({ ...air, leafResistanceSPerM: 100 })).toBe(1);
  });

  test("with a cover crop below: the gain by density, half as much loss where the trees use less than the crop below", () => {
    const over = (kcbFull: number) => kcbOverCoverCrop({ density: 0.5, kcbFull, kcbCover: 0.6 });
    expect([1, 0.6, 0.2].map(over)).toEqual([0.8, 0.6, 0.5].map((kcb) => expect.closeTo(kcb, 12)));
  });

  test("from leaves and back (eq. 97), between the least and that of full cover", () => {
    // 1 - exp(-0.7 LAI) is a half at LAI ln 2 / 0.7.
    const half = Math.LN2 / 0.7;
    expect(kcbFromLeafArea(half, 1.15)).toBeCloseTo(0.65, 12);
    expect(leafAreaFromKcb(0.65, 1.15)).toBeCloseTo(half, 12);
    expect(kcbFromLeafArea(half, 1.2, 0.2)).toBeCloseTo(0.7, 12);
    expect(leafAreaFromKcb(0.7, 1.2, 0.2)).toBeCloseTo(half, 12);
    expect([0, 1].map((density) => sparseKcb(density, 1.2))).toEqual([0.15, expect.closeTo(1.2, 12)]);
    expect(sparseKcb(0.5, 1.2, 0.3)).toBeCloseTo(0.75, 12);
    for (const kcb of [0.14, 1.15, Number.NaN]) {
      expect(() => leafAreaFromKcb(kcb, 1.15)).toThrow(`Kcb from 0.15 to below 1.15: got ${kcb}`);
    }
  });

  test("a quarter of the usual cover takes off a half (eq. 94)", () => {
    expect([thinStandReduction(0.2, 0.8), thinStandReduction(0.8, 0.8)]).toEqual([expect.closeTo(0.5, 12), 0]);
  });

  test("density rises with cover and shade and falls with nothing (eq. 98; Allen & Pereira 2009, from memory)", () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, fc.double({ min: 0, max: 8, noNaN: true }), (a, b, heightM) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const fao = (cover: number) => canopyDensityFao56({ cover, effectiveCover: cover, heightM });
        const later = (effectiveCover: number) => densityCoefficient({ effectiveCover, heightM, multiplier: 1.5 });
        return fao(low) <= fao(high) && later(low) <= later(high);
      }),
    );
    // A sun overhead of 0.64 shade on 1 m: 0.8 by height, less than 2 x 0.64 and 1.5 x 0.64.
    expect(canopyDensityFao56({ cover: 0.64, effectiveCover: 0.64, heightM: 1 })).toBeCloseTo(0.8, 12);
    expect(densityCoefficient({ effectiveCover: 0.64, heightM: 1, multiplier: 1.5 })).toBeCloseTo(0.8, 12);
    expect(densityCoefficient({ effectiveCover: 1, heightM: 1, multiplier: 2 })).toBe(1);
  });
});

describe("wet ground under a canopy", () => {
  test("cover from Kcb: at least 0.01 of Kcb counts, at most 0.99 of the ground, the power grows with height (eq. 76)", () => {
    const crop = { kcMin: 0.2, kcMax: 1.2 };
    expect(coverFromKcb({ ...crop, kcb: 0.1, heightM: 0 })).toBeCloseTo(0.01, 12);
    expect(coverFromKcb({ ...crop, kcb: 0.45, heightM: 2 })).toBeCloseTo(0.0625, 12);
    expect(coverFromKcb({ ...crop, kcb: 1.18, heightM: 0 })).toBeCloseTo(0.98, 12);
    expect(coverFromKcb({ ...crop, kcb: 1.199, heightM: 0 })).toBe(0.99);
  });

  test("Kr, few and Ke never rise as the soil dries and the canopy closes", () => {
    const store = { totalEvaporableMm: 18, readilyEvaporableMm: 8 };
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, share, (a, b, wetted) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const ke = (depletion: number) =>
          evaporationCoefficient({
            kr: evaporationReduction(25 * depletion, store),
            kcMax: 1.2,
            kcb: 0.4,
            exposedWetted: wetted,
          });
        return (
          exposedWetted(high, wetted) <= exposedWetted(low, wetted) && ke(high) <= ke(low) && ke(low) <= 0.8 + 1e-12
        );
      }),
    );
  });
});
