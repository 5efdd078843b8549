import fc from "fast-check";
import { fertigationDose, fertigationMgPerL } from "rootledger/lines";
import { expect, test } from "vitest";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test("grams put in are grams that come out: sector, run and injection agree to 1e-9", () => {
  fc.assert(
    fc.property(
      number(0.001, 50),
      number(1, 5000),
      number(1, 300),
      number(30, 600),
      (n, trees, litresPerTree, runMinutes) => {
        const dose = fertigationDose({ gramsPerTree: { N: n }, trees, litresPerTree, runMinutes, waterEcDsPerM: 0.3 });
        const total = 1000 * dose.kgPerSector.N!;
        const near = (grams: number) => expect(Math.abs(grams - total)).toBeLessThanOrEqual(1e-9 * total);
        near((dose.mgPerL.N! / 1000) * litresPerTree * trees);
        const injecting = Math.min(45, runMinutes) / runMinutes;
        near((dose.mgPerLInjecting.N! / 1000) * litresPerTree * injecting * trees);
        const byProduct = fertigationMgPerL({
          productKg: total / 1000 / 0.3,
          nutrientFraction: 0.3,
          waterM3: (litresPerTree * trees) / 1000,
        });
        expect(Math.abs(byProduct - dose.mgPerL.N!)).toBeLessThanOrEqual(1e-9 * byProduct);
      },
    ),
  );
});

// Common practice, no source: 5 g N, 2 g P2O5 and 5 g K for a young tree, meant per tree and not certainly per day.
test("that dose in a young tree's 8 L of one day raises the concentration warning; spread over a month's water it does not", () => {
  const gramsPerTree = { N: 5, P2O5: 2, K: 5 };
  const daily = fertigationDose({ gramsPerTree, trees: 400, litresPerTree: 8, runMinutes: 120, waterEcDsPerM: 0.3 });
  expect(daily.mgPerL.N).toBeCloseTo(625, 9);
  expect(daily.warnings.map(({ code }) => code)).toEqual(["too-concentrated"]);
  const spread = { N: 5 / 30, P2O5: 2 / 30, K: 5 / 30 };
  const monthly = fertigationDose({
    gramsPerTree: spread,
    trees: 400,
    litresPerTree: 8,
    runMinutes: 120,
    waterEcDsPerM: 0.3,
  });
  expect(monthly.warnings).toEqual([]);
});

// Zekri et al. (2018); UF/IFAS Circular 1410: travel 20-30 min, inject at least 30-45, flush at least 30.
test("a run shorter than travel, injection and flush is named", () => {
  const short = fertigationDose({
    gramsPerTree: { N: 1 },
    trees: 10,
    litresPerTree: 40,
    runMinutes: 80,
    waterEcDsPerM: 0,
  });
  expect(short.warnings).toEqual([{ code: "run-too-short", runMinutes: 80, shortestMinutes: 100 }]);
  expect([short.injectFromMinutes, short.injectToMinutes, short.flushMinutes]).toEqual([25, 70, 10]);
  expect(() =>
    fertigationDose({ gramsPerTree: { N: -1 }, trees: 1, litresPerTree: 1, runMinutes: 1, waterEcDsPerM: 0 }),
  ).toThrow(RangeError);
});
