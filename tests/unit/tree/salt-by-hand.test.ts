import fc from "fast-check";
import {
  concentrationFactor,
  eceAtFraction,
  ecFromSaltMgPerL,
  extractEc,
  leachingRequirement,
  leachingRequirementFrequent,
  osmoticHeadCm,
  saltFactor,
  saltMgPerL,
  soilWaterEcByQuarter,
  stressFromHarvest,
} from "rootledger/tree";
import { describe, expect, test } from "vitest";

const near = (...values: number[]) => values.map((value) => expect.closeTo(value, 12));

describe("salt", () => {
  const crop = { thresholdDsPerM: 2, slopePerDsPerM: 0.125 };

  test("the line of a crop: 1 to its threshold, half at 6 dS/m, nothing from 10 on (Maas & Hoffman 1977)", () => {
    expect([2, 2.8, 6, 9.2, 10, 11].map((ece) => saltFactor(crop, ece))).toEqual(near(1, 0.9, 0.5, 0.1, 0, 0));
    // Evapotranspiration falls less where ky is more (FAO-56 eq. 89): 1 - 0.125/1.25 x 4.
    expect(saltFactor(crop, 6, 1.25)).toBeCloseTo(0.6, 12);
    expect([1, 0.75, 0].map((fraction) => eceAtFraction(crop, fraction))).toEqual([2, 4, 10]);
    for (const fraction of [-0.01, 1.01, Number.NaN]) {
      expect(() => eceAtFraction(crop, fraction)).toThrow(
        `eceAtFraction requires a fraction from 0 to 1: got ${fraction}`,
      );
    }
    expect(() => saltFactor(crop, 3, -1)).toThrow("saltFactor requires ky above 0: got -1");
    expect(() => saltFactor({ ...crop, slopePerDsPerM: -1 }, 3)).toThrow("a slope above 0: got -1");
    expect(saltFactor(crop, 0)).toBe(1);
  });

  test("the harvest looked back on gives the stress (FAO-56 eq. 103)", () => {
    expect([1, 0.6, 0].map((harvestRatio) => stressFromHarvest({ harvestRatio, ky: 1.25 }))).toEqual(
      near(1, 0.68, 0.2),
    );
    for (const harvestRatio of [-0.01, 1.01, Number.NaN]) {
      expect(() => stressFromHarvest({ harvestRatio, ky: 1 })).toThrow(`harvestRatio from 0 to 1: got ${harvestRatio}`);
    }
    for (const ky of [0, -1]) {
      expect(() => stressFromHarvest({ harvestRatio: 0.5, ky })).toThrow(`ky above 0: got ${ky}`);
    }
  });

  test("of the water and of its extract", () => {
    expect([saltMgPerL(0), ecFromSaltMgPerL(0), ecFromSaltMgPerL(1280)]).toEqual([0, 0, 2]);
    expect(() => saltMgPerL(-0.1)).toThrow("saltMgPerL requires ecDsPerM from 0: got -0.1");
    expect(() => ecFromSaltMgPerL(-1)).toThrow("ecFromSaltMgPerL requires mgPerL from 0: got -1");
    expect(extractEc({ soilWaterEcDsPerM: 4, theta: 0.2, thetaSaturated: 0.5 })).toBeCloseTo(1.6, 12);
    expect(extractEc({ soilWaterEcDsPerM: 0, theta: 0.2, thetaSaturated: 0.5 })).toBe(0);
    for (const theta of [0, 0.51, Number.NaN]) {
      expect(() => extractEc({ soilWaterEcDsPerM: 4, theta, thetaSaturated: 0.5 })).toThrow(
        `theta above 0 and up to thetaSaturated: got ${theta}`,
      );
    }
    expect(() => extractEc({ soilWaterEcDsPerM: -1, theta: 0.2, thetaSaturated: 0.5 })).toThrow("an EC from 0: got -1");
    expect(osmoticHeadCm(0)).toBeCloseTo(0, 12);
    expect(() => osmoticHeadCm(-0.1)).toThrow("osmoticHeadCm requires an EC from 0: got -0.1");
  });

  // Ayers & Westcot (1985), FAO-29 Rev. 1, Example 2 and table 3: 40, 30, 20 and 10 % of the water from each quarter of the depth.
  test("of the soil's water by quarters, at half of the water leaching: 1, 1/0.8, 1/0.65, 1/0.55, 1/0.5", () => {
    expect([...soilWaterEcByQuarter(1, 0.5)]).toEqual(near(1, 1.25, 1 / 0.65, 1 / 0.55, 2));
    expect([...soilWaterEcByQuarter(0, 1)]).toEqual([0, 0, 0, 0, 0]);
    expect(concentrationFactor(0.5)).toBeCloseTo((1 + 1.25 + 1 / 0.65 + 1 / 0.55 + 2) / 10, 12);
    for (const fraction of [0, 1.01, -0.1]) {
      expect(() => soilWaterEcByQuarter(1, fraction)).toThrow(`a leaching fraction in (0, 1]: got ${fraction}`);
    }
    expect(() => soilWaterEcByQuarter(-0.1, 0.5)).toThrow("soilWaterEcByQuarter requires ecwDsPerM from 0: got -0.1");
  });

  test("more of it in the water or less in the soil never asks for less leaching", () => {
    const ec = fc.double({ min: 0, max: 4, noNaN: true });
    fc.assert(
      fc.property(ec, ec, fc.double({ min: 2, max: 8, noNaN: true }), (a, b, ece) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        return (
          leachingRequirement(low, ece) <= leachingRequirement(high, ece) &&
          leachingRequirement(low, ece + 1) <= leachingRequirement(low, ece) &&
          leachingRequirementFrequent(low, ece + 0.1) <= leachingRequirementFrequent(high, ece + 0.1)
        );
      }),
    );
    expect(() => leachingRequirementFrequent(-1, 2)).toThrow(
      "leachingRequirementFrequent requires ecwDsPerM from 0: got -1",
    );
    expect(() => leachingRequirementFrequent(1, 0)).toThrow(
      "leachingRequirementFrequent requires eceDsPerM above 0: got 0",
    );
    expect(leachingRequirementFrequent(3, 6)).toBe(0.25);
  });
});
