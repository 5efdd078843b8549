import { needByMonth, needPeriods, practiceRatios, waterNeed } from "rootledger/tree";
import { describe, expect, test } from "vitest";

const question = {
  tree: { spacing: { treeSpacingM: 4, rowSpacingM: 5 }, canopyDiameterM: 3 },
  cover: { rule: "whole-ground" },
  reference: { kind: "et0" },
  periods: [
    { name: "January", days: 31, referenceMmPerDay: 6, coefficient: 0.8 },
    { name: "February", days: 28, referenceMmPerDay: 5, coefficient: 0.6, hotDayMmPerDay: 9, usefulRainLPerTree: 700 },
  ],
  ...{ hotDayRatio: 1.5, efficiencyFraction: 0.8, leachingFraction: 0.2 },
} as const;

describe("need, reckoned by hand on 20 m2 a tree", () => {
  const [january, february] = waterNeed(question).periods;

  test("of a day: depth, litres, and the same over a hectare of 500 trees", () => {
    // 6 mm x 0.8 = 4.8 mm on 20 m2 are 96 L; over 0.8 x 0.8 they are 150 L; 10,000 m2 hold 500 trees.
    expect(january!.meanDay).toEqual({
      ...{ depthMm: expect.closeTo(4.8, 9), netLPerTree: expect.closeTo(96, 9), grossLPerTree: expect.closeTo(150, 9) },
      ...{ netMm: expect.closeTo(4.8, 9), grossMm: expect.closeTo(7.5, 9) },
      ...{ netM3PerHa: expect.closeTo(48, 9), grossM3PerHa: expect.closeTo(75, 9) },
    });
    expect(january!.hotDay.netLPerTree).toBeCloseTo(144, 9);
    // A hot day of its own stands in for the ratio: 9 mm x 0.6 x 20 m2.
    expect(february!.hotDay.netLPerTree).toBeCloseTo(108, 9);
  });

  test("of a span, after the rain that roots got, and of all spans", () => {
    expect(january).toMatchObject({ name: "January", days: 31, referenceMmPerDay: 6, coefficient: 0.8 });
    expect(january!.netLPerTree).toBeCloseTo(31 * 96, 9);
    expect(january!.rainBeyondNeedLPerTree).toBe(0);
    // February: 28 x 60 L less 700 L.
    expect(february!.netLPerTree).toBeCloseTo(980, 9);
    expect(february!.grossLPerTree).toBeCloseTo(980 / 0.64, 9);
    expect(february!.netM3PerHa).toBeCloseTo(490, 9);
    expect(february!.grossM3PerHa).toBeCloseTo(490 / 0.64, 9);
    const all = waterNeed(question);
    expect(all.netLPerTree).toBeCloseTo(2976 + 980, 9);
    expect(all.grossLPerTree).toBeCloseTo(3956 / 0.64, 9);
    expect(all.netM3PerHa).toBeCloseTo(1978, 9);
    expect(all.grossM3PerHa).toBeCloseTo(1978 / 0.64, 9);
  });

  test("by a pan goes through its coefficient; a pan factor is no pan coefficient", () => {
    const by = (reference: Parameters<typeof waterNeed>[0]["reference"]) =>
      waterNeed({ ...question, reference }).periods[0]!.meanDay.depthMm;
    expect(by({ kind: "pan", panCoefficient: 0.75 })).toBeCloseTo(3.6, 9);
    expect(by({ kind: "pan-factor" })).toBeCloseTo(4.8, 9);
  });

  test("without a spacing says nothing of hectares", () => {
    const { meanDay, ...span } = waterNeed({
      ...question,
      ...{ tree: { canopyDiameterM: 2 }, cover: { rule: "canopy-ground" } },
    }).periods[0]!;
    expect(meanDay.netLPerTree).toBeCloseTo(4.8 * Math.PI, 9);
    for (const name of ["netMm", "grossMm", "netM3PerHa", "grossM3PerHa"]) expect(meanDay).not.toHaveProperty(name);
    for (const name of ["netM3PerHa", "grossM3PerHa"]) expect(span).not.toHaveProperty(name);
  });

  test("refuses figures below 0 by their names, and efficiencies that are none", () => {
    const [first] = question.periods;
    for (const [name, change] of [
      ["days", { days: -1 }],
      ["referenceMmPerDay", { referenceMmPerDay: -1 }],
      ["coefficient", { coefficient: Number.NaN }],
      ["hotMm", { hotDayMmPerDay: -1 }],
      ["rainL", { usefulRainLPerTree: -1 }],
    ] as const) {
      const ask = () => waterNeed({ ...question, periods: [{ ...first, ...change }] });
      expect(ask).toThrow(`waterNeed requires ${name} from 0: got`);
    }
    for (const efficiencyFraction of [0, 1.01, Number.NaN]) {
      const ask = () => waterNeed({ ...question, efficiencyFraction });
      expect(ask).toThrow(`an efficiency in (0, 1]: got ${efficiencyFraction}`);
    }
    expect(waterNeed({ ...question, efficiencyFraction: 1, leachingFraction: 0 }).grossLPerTree).toBeCloseTo(3956, 9);
  });
});

describe("a daily record by months", () => {
  test("of each year: mean, hot day, coefficient weighted with the reference", () => {
    const et0 = [...Array.from({ length: 10 }, (_, d) => d + 1), 4, 6];
    const kc = [...Array.from({ length: 10 }, () => 0.5), 0.3, 0.8];
    const months = needPeriods("2025-01-22", et0, kc);
    expect(months).toEqual([
      // Of 1 to 10 nine days are below 10; the mean of the products over the mean is 0.5.
      { name: "2025-01", days: 10, referenceMmPerDay: 5.5, hotDayMmPerDay: 10, coefficient: 0.5 },
      { name: "2025-02", days: 2, referenceMmPerDay: 5, hotDayMmPerDay: 6, coefficient: expect.closeTo(0.6, 12) },
    ]);
  });

  test("over the years: months in the order of the year, days the mean of the years that have them", () => {
    const days = 31 + 28 + 31;
    const months = needByMonth(
      "2024-12-01",
      Array.from({ length: 365 + days - 59 }, (_, d) => (d < 31 ? 6 : d >= 365 ? 8 : 2)),
      Array.from({ length: 365 + days - 59 }, (_, d) => (d < 31 ? 0.5 : d >= 365 ? 0.75 : 1)),
    );
    expect(months.map(({ name }) => name)).toEqual([
      ...["January", "February", "March", "April", "May", "June"],
      ...["July", "August", "September", "October", "November", "December"],
    ]);
    // Two Decembers, 31 days each: mean reference 7 mm, coefficient (6 x 0.5 + 8 x 0.75) / 14.
    expect(months[11]).toEqual({
      ...{ name: "December", days: 31, referenceMmPerDay: 7, hotDayMmPerDay: 8 },
      coefficient: expect.closeTo(9 / 14, 12),
    });
    expect(months[0]).toEqual({ name: "January", days: 31, referenceMmPerDay: 2, hotDayMmPerDay: 2, coefficient: 1 });
    expect(months[1]!.days).toBe(28);
    // 369 days from 29 January of a leap year: one January of 3 days, one of 31.
    const ones = new Array(369).fill(1);
    expect(needByMonth("2024-01-29", ones, ones)[0]!.days).toBe(17);
  });

  test("with no demand at all keeps the plain mean of the coefficient", () => {
    expect(needPeriods("2025-06-01", [0, 0], [0.4, 0.6])[0]).toMatchObject({ referenceMmPerDay: 0, coefficient: 0.5 });
  });

  test("needs a coefficient for each day, and numbers", () => {
    expect(() => needByMonth("2025-01-01", [1, 2], [1])).toThrow("got 1 for 2 days");
    expect(() => needPeriods("2025-01-01", [1, 2], [1, Number.NaN])).toThrow("got none on 2025-01-02");
    // A coefficient of 0 is a number.
    expect(needPeriods("2025-01-01", [1], [0])[0]!.coefficient).toBe(0);
  });
});

test("practices stand beside the need of their own canopy and span, by default the largest", () => {
  const canopy = { ...question, cover: { rule: "canopy-ground" }, leachingFraction: 0 } as const;
  const [old, young, inFebruary] = practiceRatios(canopy, [
    { name: "old", litresPerTreePerDay: 40 },
    { name: "young", litresPerTreePerDay: 8, canopyDiameterM: 1 },
    { name: "in February", litresPerTreePerDay: 40, period: "February" },
  ]);
  const m2 = (diameter: number) => (Math.PI / 4) * diameter ** 2;
  expect(old!.neededL).toBeCloseTo(4.8 * m2(3), 9);
  expect(young!.neededL).toBeCloseTo(4.8 * m2(1), 9);
  expect(inFebruary!.neededL).toBeCloseTo(3 * m2(3), 9);
  expect(() => practiceRatios(canopy, [{ name: "x", litresPerTreePerDay: 1, period: "May" }])).toThrow(
    "practiceRatios requires a span of the question: got May",
  );
});
