import {
  et0PanMmPerDay,
  type PanSiting,
  panCoefficientFromRegression,
  panCoefficientFromTable,
  panFetchesM,
} from "rootledger/weather";
import { describe, expect, test } from "vitest";
import { testTopic } from "./weather-data.js";

const siting: Readonly<Record<string, PanSiting>> = { A: "green", B: "dry" };
const windMPerS: Readonly<Record<string, number>> = {
  "light <2": 1.5,
  "moderate 2-5": 3.5,
  "strong 5-8": 6.5,
  "very strong >8": 9,
};
const rhPct: Readonly<Record<string, number>> = { "<40": 30, "40-70": 55, ">70": 80 };

testTopic("pan", {
  "fao56-ex21-pan-table": (given) => {
    const mean = given.epan_mm_day.reduce((sum: number, mm: number) => sum + mm, 0) / given.epan_mm_day.length;
    const coefficient = panCoefficientFromTable({
      siting: "green",
      fetchM: given.fetch_m,
      windAt2mMPerS: given.u2_m_s,
      rhMeanPct: given.rhmean_pct,
    });
    return { kp: coefficient, epan_mean_mm_day: mean, eto_mm_day: et0PanMmPerDay(mean, coefficient) };
  },
  "fao56-tab05-pan-cells": (given) => ({
    kp: given.cells.map(([side, wind, rh, fetch]: string[]) =>
      panCoefficientFromTable({
        siting: siting[side],
        fetchM: Number.parseFloat(fetch),
        windAt2mMPerS: windMPerS[wind],
        rhMeanPct: rhPct[rh],
      }),
    ),
  }),
});

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
