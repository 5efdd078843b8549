import fc from "fast-check";
import {
  cloggingFindings,
  irrigationsPerDay,
  lineLife,
  microSprinklerRun,
  storedLitres,
  treesWithPlugged,
  waterHints,
  worstRisk,
} from "rootledger/lines";
import { describe, expect, test } from "vitest";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("clogging", () => {
  // Ayers & Westcot (1985), FAO Irrigation and Drainage Paper 29 rev. 1, table 19, after Nakayama (1982), read in a page quoting it.
  const table: readonly [string, number, number, number][] = [
    ["suspendedSolidsMgPerL", 49, 75, 101],
    ["pH", 6.9, 7.5, 8.1],
    ["dissolvedSolidsMgPerL", 499, 1000, 2001],
    ["manganeseMgPerL", 0.09, 0.8, 1.6],
    ["ironMgPerL", 0.09, 0.8, 1.6],
    ["hydrogenSulphideMgPerL", 0.4, 1, 2.1],
    ["bacteriaPerMl", 9_999, 30_000, 50_001],
  ];
  test.each(table)("%s: little, some, severe", (quantity, low, middle, high) => {
    const riskOf = (value: number) => cloggingFindings({ [quantity]: value })[0]?.risk;
    expect([riskOf(low), riskOf(middle), riskOf(high)]).toEqual(["little", "some", "severe"]);
  });

  test("the worst finding rules, and what is not known is not judged", () => {
    expect(worstRisk(cloggingFindings({}))).toBe("little");
    const findings = cloggingFindings({ ironMgPerL: 2, pH: 7.2, suspendedSolidsMgPerL: 10 });
    expect(worstRisk(findings)).toBe("severe");
    expect(waterHints(findings)).toEqual(["acid", "aerate-and-settle", "filter-finer", "larger-emitter"]);
    expect(() => cloggingFindings({ pH: 15 })).toThrow(RangeError);
    expect(() => cloggingFindings({ ironMgPerL: Number.NaN })).toThrow(RangeError);
  });
});

describe("a line's life", () => {
  test("a straight fall is found again, with the age at which it reaches the limit", () => {
    fc.assert(
      fc.property(number(0.001, 0.03), fc.array(number(0, 8), { minLength: 2, maxLength: 9 }), (fall, ages) => {
        fc.pre(Math.max(...ages) - Math.min(...ages) > 0.1);
        const tests = ages.map((ageYears) => ({ ageYears, lowQuarterUniformity: 0.95 - fall * ageYears }));
        const life = lineLife(tests);
        expect(life.fallPerYear).toBeCloseTo(fall, 8);
        expect(life.replaceAtYears! / (0.15 / fall)).toBeCloseTo(1, 4);
      }),
    );
  });

  test("a line that does not wear is not replaced; one test says nothing", () => {
    const level = [1, 2, 3].map((ageYears) => ({ ageYears, lowQuarterUniformity: 0.9 + 0.001 * ageYears }));
    expect(lineLife(level).replaceAtYears).toBeUndefined();
    expect(() => lineLife([{ ageYears: 1, lowQuarterUniformity: 0.9 }])).toThrow(RangeError);
  });

  // Binomial tail, for instance Abramowitz & Stegun (1964) 26.1.20; the terms written out.
  test("trees with plugged emitters by the binomial law", () => {
    expect(treesWithPlugged({ openPerTree: 3, pluggedFraction: 0.2, atLeast: 0 })).toBe(1);
    expect(treesWithPlugged({ openPerTree: 3, pluggedFraction: 0.2, atLeast: 2 })).toBeCloseTo(
      3 * 0.04 * 0.8 + 0.008,
      12,
    );
    expect(treesWithPlugged({ openPerTree: 3, pluggedFraction: 0.2, atLeast: 3 })).toBeCloseTo(0.008, 12);
    expect(treesWithPlugged({ openPerTree: 3, pluggedFraction: 0.2, atLeast: 4 })).toBe(0);
    expect(treesWithPlugged({ openPerTree: 3, pluggedFraction: 1, atLeast: 3 })).toBe(1);
  });
});

describe("two drippers against a micro-sprinkler", () => {
  // Department of Agriculture, Western Australia, citrus irrigation recommendations, worked example: loam, 9 m2 canopy, 30 cm; two
  // drippers hold 34 L, a sprinkler over the whole canopy 189 L; 62.5 L a day ask for two runs a day, or one every third
  // day. Readily available 70 mm/m is read from 189 L; each dripper wets a circle of 1 m (our reading). Tolerance 10 %, stated range.
  const loam = { readilyAvailableMmPerM: 70, rootedDepthM: 0.3 };
  test("replays the published example within a tenth", () => {
    const drippers = storedLitres({ ...loam, wettedM2: 2 * Math.PI * 0.25 });
    expect(Math.abs(drippers - 34)).toBeLessThan(3.4);
    expect(Math.ceil(irrigationsPerDay({ needLPerTreePerDay: 62.5, storedL: drippers }))).toBe(2);
    const sprinkler = storedLitres({ ...loam, wettedM2: 9 });
    expect(Math.abs(sprinkler - 189)).toBeLessThan(1);
    expect(Math.floor(1 / irrigationsPerDay({ needLPerTreePerDay: 62.5, storedL: sprinkler }))).toBe(3);
  });

  test("the sprinkler pays the litter at every run", () => {
    const once = microSprinklerRun({ flowLPerH: 40, wettedRadiusM: 1.5, litterStorageMm: 2 }, 120);
    const half = microSprinklerRun({ flowLPerH: 40, wettedRadiusM: 1.5, litterStorageMm: 2 }, 60);
    expect(2 * half.grossL - once.grossL).toBeCloseTo(2 * Math.PI * 2.25, 10);
    expect(microSprinklerRun({ flowLPerH: 40, wettedRadiusM: 1.5, litterStorageMm: 0 }, 60).grossL).toBe(60);
  });
});
