import { fertigationMgPerL, shortestFertigatedRunMinutes, usualInjection } from "rootledger/lines";
import {
  concentrationFactor,
  eceAtFraction,
  extractEc,
  faoSaltTable,
  leachingRequirement,
  leachingRequirementFrequent,
  maasHoffmanTable,
  osmoticHeadCm,
  saltFactor,
  saltMgPerL,
  soilWaterEcByQuarter,
} from "rootledger/tree";
import { describe, expect, test } from "vitest";

const line = (crop: string) => {
  const row = maasHoffmanTable[crop];
  return { thresholdDsPerM: row.thresholdDsPerM?.[0] ?? 0, slopePerDsPerM: row.slopePerDsPerM?.[0] ?? 0 };
};

describe("tolerance to salt", () => {
  test("levels of avocado: Ayers & Westcot (1985), FAO-29 table 4, from memory: 1.3, 1.8, 2.5, 3.7, 6.0", () => {
    const levels = [1, 0.9, 0.75, 0.5, 0].map((fraction) => eceAtFraction(line("avocado"), fraction));
    [1.3, 1.8, 2.5, 3.7, 6].forEach((printed, i) => {
      expect(levels[i]).toBeCloseTo(printed, 0);
      expect(Math.abs(levels[i] - printed)).toBeLessThan(0.07);
    });
  });

  test("a row that prints a rating has no numbers, and every other row has both", () => {
    for (const row of [...Object.values(faoSaltTable), ...Object.values(maasHoffmanTable)]) {
      expect(row.slopePerDsPerM === undefined).toBe(row.thresholdDsPerM === undefined);
    }
    expect(faoSaltTable.avocado).toEqual({ rating: "S", verified: "seen" });
  });

  test("is 1 up to the threshold, falls, and ends at 0", () => {
    const crop = line("orange");
    expect([0, 1.7, eceAtFraction(crop, 0.5), 8, 80].map((ece) => saltFactor(crop, ece))).toEqual([
      1,
      1,
      expect.closeTo(0.5, 12),
      0,
      0,
    ]);
    expect(() => saltFactor(crop, -1)).toThrow("saltFactor requires eceDsPerM from 0: got -1");
    expect(() => saltFactor(crop, Number.NaN)).toThrow(RangeError);
    expect(() => saltFactor(crop, 2, 0)).toThrow(/ky/);
    expect(() => saltFactor({ ...crop, slopePerDsPerM: 0 }, 2)).toThrow(/slope/);
    expect(() => eceAtFraction(crop, 1.1)).toThrow(RangeError);
  });
});

describe("leaching", () => {
  test("the frequent form asks for less than the ordinary one at the threshold of every crop of the table", () => {
    for (const crop of Object.keys(maasHoffmanTable)) {
      const tolerance = line(crop);
      const ordinary = leachingRequirement(0.7, tolerance.thresholdDsPerM);
      expect(leachingRequirementFrequent(0.7, eceAtFraction(tolerance, 0))).toBeLessThan(ordinary);
    }
  });

  test("water too salty for any fraction below 1 is refused", () => {
    expect(() => leachingRequirement(5, 1)).toThrow(/a fraction below 1 can leach: got ECw 5 dS\/m/);
    expect(() => leachingRequirement(2.5, 1)).toThrow(RangeError);
    expect(() => leachingRequirementFrequent(12, 6)).toThrow(RangeError);
    expect(() => leachingRequirement(-1, 1)).toThrow(RangeError);
    expect(() => leachingRequirement(1, 0)).toThrow(RangeError);
  });

  test("salt balance: what leaves below is ECw over the leaching fraction", () => {
    for (const fraction of [0.05, 0.15, 0.5, 1])
      expect(soilWaterEcByQuarter(1.2, fraction)[4]).toBeCloseTo(1.2 / fraction, 10);
    expect(concentrationFactor(1)).toBe(0.5);
    expect(() => soilWaterEcByQuarter(1, 0)).toThrow(RangeError);
    expect(() => soilWaterEcByQuarter(-1, 0.2)).toThrow(RangeError);
  });
});

test("salt of the water, its extract and its osmotic head", () => {
  // 640 mg/L and 36 kPa for each dS/m: US Salinity Laboratory (1954), Agriculture Handbook 60, from memory.
  expect(saltMgPerL(1)).toBe(640);
  expect(osmoticHeadCm(1)).toBeCloseTo(-36 * 10.2, 10);
  expect(extractEc({ soilWaterEcDsPerM: 3, theta: 0.46, thetaSaturated: 0.46 })).toBe(3);
  expect(() => extractEc({ soilWaterEcDsPerM: 3, theta: 0.5, thetaSaturated: 0.46 })).toThrow(RangeError);
  expect(() => osmoticHeadCm(-1)).toThrow(RangeError);
  expect(() => saltMgPerL(Number.NaN)).toThrow(RangeError);
});

test("fertigation refuses what cannot be", () => {
  expect(() => fertigationMgPerL({ productKg: 1, nutrientFraction: 13, waterM3: 1 })).toThrow(/nutrientFraction/);
  expect(() => fertigationMgPerL({ productKg: 1, nutrientFraction: 0.1, waterM3: 0 })).toThrow(/waterM3/);
  expect(() => fertigationMgPerL({ productKg: -1, nutrientFraction: 0.1, waterM3: 1 })).toThrow(/productKg/);
  // Zekri et al. (2018); UF/IFAS Circular 1410: travel 20-30, inject 30-45 at least, flush 30 at least.
  expect(shortestFertigatedRunMinutes(usualInjection)).toBeGreaterThanOrEqual(80);
});
