import { panCoefficientFromRegression, panCoefficientFromTable, panFetchesM } from "rootledger/weather";
import { describe, expect, test } from "vitest";

describe("table and regression of FAO-56, both from memory but for the cells above, agree as two accounts of one pan", () => {
  // The regressions were fitted to the table (FAO-56 ch. 4) and hold for wind of 1 to 8 m/s and humidity of 30 to 84 %: the ends
  // and middles of that stand for the classes. The table steps by 0.05: typically half a step apart at most is our fence, for
  // want of a printed error. Single cells differ by up to 0.054.
  const points = [
    { regressionWind: 1, tableWind: 1 },
    { regressionWind: 3.5, tableWind: 3.5 },
    { regressionWind: 6.5, tableWind: 6.5 },
    { regressionWind: 8, tableWind: 8.5 },
  ];
  test.each(["green", "dry"] as const)("%s fetch: root mean square difference within 0.025", (kind) => {
    const differences: number[] = [];
    for (const { regressionWind, tableWind } of points) {
      for (const rhMeanPct of [30, 57, 84]) {
        for (const fetchM of panFetchesM) {
          const site = { siting: kind, fetchM, rhMeanPct };
          const fromTable = panCoefficientFromTable({ ...site, windAt2mMPerS: tableWind });
          differences.push(panCoefficientFromRegression({ ...site, windAt2mMPerS: regressionWind }) - fromTable);
        }
      }
    }
    expect(differences.length).toBe(48);
    const meanSquare = differences.reduce((sum, difference) => sum + difference * difference, 0) / differences.length;
    expect(Math.sqrt(meanSquare)).toBeLessThan(0.025);
  });
});
