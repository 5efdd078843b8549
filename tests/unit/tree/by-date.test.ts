import {
  canopyDiameterM,
  isMonthDay,
  kcByStage,
  kcbByDay,
  needByMonth,
  needPeriods,
  otherHemisphere,
  stageByDay,
  stageSpans,
} from "rootledger/tree";
import { describe, expect, test } from "vitest";

const near = (...values: number[]) => values.map((value) => expect.closeTo(value, 12));

describe("a basal coefficient given at dates", () => {
  const points = [
    { date: "2025-01-03", kcb: 0.2 },
    { date: "2025-01-07", kcb: 1 },
    { date: "2025-01-08", kcb: 0.6 },
  ];

  test("is constant before the first and after the last, and a line between", () => {
    expect([...kcbByDay("2025-01-01", 10, points)]).toEqual(near(0.2, 0.2, 0.2, 0.4, 0.6, 0.8, 1, 0.6, 0.6, 0.6));
    // A season that begins between two dates, and one that begins after all of them.
    expect([...kcbByDay("2025-01-06", 3, points)]).toEqual(near(0.8, 1, 0.6));
    expect([...kcbByDay("2025-02-01", 2, points)]).toEqual([0.6, 0.6]);
    expect([...kcbByDay("2024-12-01", 2, points)]).toEqual([0.2, 0.2]);
  });

  test("wants dates that rise", () => {
    expect(() => kcbByDay("2025-01-01", 5, [])).toThrow("kcbByDay requires at least one point: got 0");
    expect(() => kcbByDay("2025-01-01", 5, [points[0], points[0]])).toThrow(
      "kcbByDay requires rising dates: got 2025-01-03 after 2025-01-03",
    );
    expect(() => kcbByDay("2025-01-01", 5, [points[0], points[2], points[1]])).toThrow(
      "got 2025-01-07 after 2025-01-08",
    );
  });
});

describe("canopies by age", () => {
  const tapes = [
    { ageYears: 1, diameterM: 0.5 },
    { ageYears: 3, diameterM: 2.5 },
    { ageYears: 4, diameterM: 3 },
  ];

  test("are what was taped at each age, with a line between", () => {
    expect([0, 1, 1.5, 3, 3.5, 4, 20].map((age) => canopyDiameterM(tapes, age))).toEqual(
      near(0.5, 0.5, 1, 2.5, 2.75, 3, 3),
    );
    expect(canopyDiameterM([{ ageYears: 2, diameterM: 1.5 }], 7)).toBe(1.5);
  });

  test("want ages that rise", () => {
    expect(() => canopyDiameterM([], 1)).toThrow("canopyDiameterM requires at least one point: got 0");
    expect(() => canopyDiameterM([tapes[0], tapes[0]], 1)).toThrow("canopyDiameterM requires rising ages: got 1 years");
    expect(() => canopyDiameterM([tapes[0], tapes[2], tapes[1]], 1)).toThrow("got 3 years");
  });
});

describe("stages", () => {
  const rest = { name: "rest", starts: { monthDay: "06-01" } };
  const fruit = { name: "fruit", starts: { monthDay: "01-01" } };

  test("a day of the year is two digits, a line and two digits, and nothing round them", () => {
    expect(["06-01", "12-31", "2025-06-01", "06-011", " 06-01", "06-31", "0-601", ""].map(isMonthDay)).toEqual([
      ...[true, true],
      ...[false, false, false, false, false, false],
    ]);
    for (const text of ["06-31", "2025-06-01"]) {
      expect(() => otherHemisphere(text)).toThrow(`otherHemisphere requires a day as MM-DD: got ${text}`);
    }
    // April and November end on the 30th.
    expect(["10-31", "05-31", "07-15"].map(otherHemisphere)).toEqual(["04-30", "11-30", "01-15"]);
  });

  test("of the year before reach into the season, and spans end where the next begins", () => {
    const spans = stageSpans("2025-12-30", 5, [rest, fruit]);
    expect(spans.map(({ stage, fromDay, toDay }) => [stage, toDay - fromDay])).toEqual([
      // From 1 June 214 days to New Year, from then 151 to June.
      [0, 214],
      [1, 151],
    ]);
    expect([...stageByDay("2025-12-30", 5, [rest, fruit])]).toEqual([0, 0, 1, 1, 1]);
    // A season that ends on the day before a stage does not have it; one that begins on its first day has not the one before.
    expect(stageSpans("2025-12-30", 2, [rest, fruit]).map(({ stage }) => stage)).toEqual([0]);
    expect(stageSpans("2026-01-01", 2, [rest, fruit]).map(({ stage }) => stage)).toEqual([1]);
    // In mid-year too the next one is known, and the one before.
    const midYear = stageSpans("2025-07-01", 5, [rest, fruit]);
    expect(midYear.map(({ stage, fromDay, toDay }) => [stage, toDay - fromDay])).toEqual([[0, 214]]);
    const both = stageSpans("2025-05-31", 2, [rest, fruit]);
    expect(both.map(({ stage, fromDay, toDay }) => [stage, toDay - fromDay])).toEqual([
      [1, 151],
      [0, 214],
    ]);
    // One stage alone returns every year and holds it all, from a year before the season.
    expect([...stageByDay("2025-01-01", 2, [rest])]).toEqual([0, 0]);
  });

  test("by day of the season or by date come once; days before all of them have none", () => {
    const stages = [
      { name: "late", starts: { date: "2025-03-05" } },
      { name: "early", starts: { day: 2 } },
    ];
    expect([...stageByDay("2025-03-01", 6, stages)]).toEqual([-1, -1, 1, 1, 0, 0]);
    expect(stageSpans("2025-03-01", 6, stages).map(({ toDay, fromDay }) => toDay - fromDay)).toEqual([
      2,
      Number.POSITIVE_INFINITY,
    ]);
    const seen = [{ name: "bloom", starts: { event: "flower" } }];
    expect([...stageByDay("2025-03-01", 3, seen, { flower: "2025-03-02" })]).toEqual([-1, 0, 0]);
  });

  test("give a line from one coefficient to the next, and keep the last where nothing follows", () => {
    const stages = [
      { name: "early", starts: { day: -2 }, kcFrom: 0.2, kcTo: 0.6 },
      { name: "late", starts: { day: 2 }, kcFrom: 0.6, kcTo: 0.9 },
    ];
    expect([...kcByStage("2025-03-01", 4, stages)]).toEqual(near(0.4, 0.5, 0.9, 0.9));
    expect(() => kcByStage("2025-03-01", 4, [])).toThrow(
      "kcByStage requires a stage that holds on the first day, 2025-03-01: got none",
    );
    expect([...kcByStage("2025-03-01", 1, [{ ...stages[0], starts: { day: 0 } }])]).toEqual([0.6]);
  });
});

describe("spans of a daily record", () => {
  // Twenty days of 1 to 20 mm: eighteen are below 19 mm.
  const twenty = Array.from({ length: 20 }, (_, i) => ((i * 7) % 20) + 1);

  test("have the mean, the figure that nine days of ten stay below, and the coefficient weighted by the reference", () => {
    const kc = twenty.map((mm) => (mm > 10 ? 1 : 0.5));
    const [march] = needPeriods("2025-03-01", twenty, kc);
    expect(march).toMatchObject({ name: "2025-03", days: 20, referenceMmPerDay: 10.5, hotDayMmPerDay: 19 });
    // 155 mm at 1 and 55 mm at 0.5, of 210 mm.
    expect(march.coefficient).toBeCloseTo((155 + 27.5) / 210, 12);
    expect(needPeriods("2025-03-01", [3], [0.7])).toEqual([
      { name: "2025-03", days: 1, referenceMmPerDay: 3, hotDayMmPerDay: 3, coefficient: expect.closeTo(0.7, 12) },
    ]);
  });

  test("without any reference have the plain mean of the coefficient", () => {
    expect(needPeriods("2025-03-01", [0, 0], [0.4, 0.8])[0].coefficient).toBeCloseTo(0.6, 12);
  });

  test("over years are months from January, as long as their mean", () => {
    // From 31 January 2024 to 1 March 2025.
    const days = 366 + 30;
    const months = needByMonth("2024-01-31", new Array(days).fill(4), new Array(days).fill(0.5));
    expect(months.map(({ name }) => name)).toEqual([
      ...["January", "February", "March", "April", "May", "June", "July", "August", "September", "October"],
      ...["November", "December"],
    ]);
    // January: 1 of 2024, 31 of 2025; February: 29 and 28; March: 31 and 1.
    expect(months.slice(0, 4).map((month) => month.days)).toEqual([16, 28.5, 16, 30]);
    expect(months[5]).toMatchObject({ referenceMmPerDay: 4, hotDayMmPerDay: 4, coefficient: expect.closeTo(0.5, 12) });
  });

  test("of one year are as long as in the record, in the order of the year", () => {
    const named = (startDate: string, days: number) =>
      needByMonth(startDate, new Array(days).fill(4), new Array(days).fill(0)).map(({ name, days }) => [name, days]);
    expect(named("2024-02-01", 60)).toEqual([
      ["February", 29],
      ["March", 31],
    ]);
    expect(named("2024-10-30", 96)).toEqual([
      ["January", 31],
      ["February", 2],
      ["October", 2],
      ["November", 30],
      ["December", 31],
    ]);
  });

  test("want a coefficient and a number on every day", () => {
    expect(() => needPeriods("2025-03-01", [1, 2], [1])).toThrow(
      "needPeriods requires a coefficient a day: got 1 for 2 days",
    );
    expect(() => needByMonth("2025-03-01", [1, 2, 3], [1, 1, Number.NaN])).toThrow(
      "needPeriods requires numbers on every day: got none on 2025-03-03",
    );
  });
});
