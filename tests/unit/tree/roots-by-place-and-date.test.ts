import { kcbByDay, rootDepthShare, rootDepthShareWithLitter, rootedLaneShare, rootsOnDay } from "rootledger/tree";
import { describe, expect, test } from "vitest";

/** The library counts days from 1 March of year 0, 719,468 days before 1 January 1970. */
const dayNumber = (date: string): number => Date.parse(date) / 86_400_000 + 719_468;
const close = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 12));

describe("roots on a day", () => {
  const points = [
    { date: "2025-01-01", depthCm: 20, radiusCm: 30 },
    { date: "2025-01-11", depthCm: 30, radiusCm: 50 },
    { date: "2025-02-10", depthCm: 60 },
  ];
  const on = (date: string) => rootsOnDay(points, dayNumber(date), 90);

  test("stand before the first date and after the last, and go in a straight line between", () => {
    expect(on("2024-06-01")).toEqual({ depthCm: 20, radiusCm: 30 });
    expect(on("2025-01-01")).toEqual({ depthCm: 20, radiusCm: 30 });
    expect(on("2025-01-06")).toEqual({ depthCm: 25, radiusCm: 40 });
    expect(on("2025-01-11")).toEqual({ depthCm: 30, radiusCm: 50 });
    // Ten of thirty days; the last point names no radius, so it is the one given.
    expect(on("2025-01-21")).toEqual({ depthCm: expect.closeTo(40, 12), radiusCm: expect.closeTo(50 + 40 / 3, 12) });
    expect(on("2025-02-10")).toEqual({ depthCm: 60, radiusCm: 90 });
    expect(on("2026-01-01")).toEqual({ depthCm: 60, radiusCm: 90 });
  });

  test("need a date, and dates that rise", () => {
    expect(() => rootsOnDay([], 0, 20)).toThrow("rootsOnDay requires at least one point: got 0");
    expect(() => rootsOnDay([points[1]!, points[0]!], 0, 20)).toThrow("got 2025-01-01 after 2025-01-11");
    expect(() => rootsOnDay([points[0]!, points[0]!], 0, 20)).toThrow(/rising dates/);
    expect(rootsOnDay([{ date: "2025-01-01", depthCm: 25 }], 0, 20)).toEqual({ depthCm: 25, radiusCm: 20 });
  });
});

describe("roots in litter", () => {
  const litter = { thicknessCm: 6, share: 0.3 };

  test("are even over its depth, the others lie below by the law of depth", () => {
    const shares = rootDepthShareWithLitter([0, 2, 6, 16, 46], 46, 0.85, litter);
    const below = rootDepthShare([0, 10, 40], 40, 0.85);
    expect([...shares]).toEqual(close([0.1, 0.2, 0.7 * below[0]!, 0.7 * below[1]!]));
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  test("need a share that leaves some for the soil, and litter that is a layer above the rooted depth", () => {
    const ask =
      (change: Partial<typeof litter>, depthCm = 46) =>
      () =>
        rootDepthShareWithLitter([0, 2, 6, 16, 46], depthCm, 0.85, { ...litter, ...change });
    for (const share of [0, 1, -0.1, Number.NaN]) expect(ask({ share })).toThrow(`a share in (0, 1): got ${share}`);
    for (const thicknessCm of [0, 5, 46]) expect(ask({ thicknessCm })).toThrow(`46 cm: got ${thicknessCm} cm`);
    expect(ask({}, 6)).toThrow("6 cm: got 6 cm");
    expect(ask({}, 7)).not.toThrow();
  });
});

describe("roots on the lanes of a strip", () => {
  const near = (edges: readonly number[], lines: readonly number[], halfWidthCm: number) => [
    ...rootedLaneShare(edges, lines, 400, { kind: "along-lines", halfWidthCm }),
  ];

  test("along a line lie within its half-width, to either side", () => {
    expect(near([0, 20, 40, 60, 100], [50], 15)).toEqual(close([0, 0.25, 1, 0.125]));
    expect(near([40, 60], [50], 30)).toEqual([1]);
  });

  test("of a line at the tree row count once, of its mirror image too", () => {
    expect(near([0, 50, 100], [0], 60)).toEqual(close([1, 0.2]));
    // A line 10 cm from the row: it reaches 30 cm, its image beyond the row reaches 10 cm on this side, within the same ground.
    expect(near([0, 10, 40], [10], 20)).toEqual(close([1, 20 / 30]));
    // A line 30 cm out with 35 cm to either side: ground from 0 to 5 cm lies within reach of both.
    expect(near([0, 20, 80], [30], 35)).toEqual(close([1, 45 / 60]));
  });

  test("of two lines that overlap count once, in whatever order the lines come", () => {
    for (const lines of [
      [40, 60],
      [60, 40],
    ]) {
      expect(near([0, 20, 50, 100], lines, 15)).toEqual(close([0, 25 / 30, 25 / 50]));
    }
    // One reach within the other's.
    expect(near([0, 100], [50, 52], 10)).toEqual(close([0.22]));
    expect(near([0, 100], [20, 80], 10)).toEqual(close([0.4]));
  });

  test("of a disc lie within its radius, and not beyond the tree's length of row", () => {
    const disc = (edges: readonly number[], radiusCm: number, rowLengthCm = 400) => [
      ...rootedLaneShare(edges, [0], rowLengthCm, { kind: "disc", radiusCm }),
    ];
    expect(disc([0, 10, 20], 5)[1]).toBe(0);
    expect(disc([0, 1], 1000, 100)).toEqual([1]);
    // Half a disc of 100 cm over 400 cm of row: pi 100^2 / 2 of 100 x 400 cm2; the midpoint rule is good to 1e-3.
    expect(disc([0, 100], 100)[0]).toBeCloseTo(Math.PI / 8, 3);
  });

  test("must lie in some lane", () => {
    expect(() => near([0, 10, 20], [100], 15)).toThrow("rootedLaneShare requires roots in a lane: got none");
  });
});

describe("Kcb by day", () => {
  const points = [
    { date: "2025-10-03", kcb: 0.5 },
    { date: "2025-10-05", kcb: 0.7 },
    { date: "2025-10-09", kcb: 0.3 },
  ];

  test("goes through its points, straight between them and constant beyond", () => {
    expect([...kcbByDay("2025-10-01", 11, points)]).toEqual(
      close([0.5, 0.5, 0.5, 0.6, 0.7, 0.6, 0.5, 0.4, 0.3, 0.3, 0.3]),
    );
    // A season that begins between two points, or behind them all.
    expect([...kcbByDay("2025-10-06", 2, points)]).toEqual(close([0.6, 0.5]));
    expect([...kcbByDay("2026-01-01", 2, points)]).toEqual(close([0.3, 0.3]));
    expect([...kcbByDay("2025-10-01", 3, points.slice(0, 1))]).toEqual(close([0.5, 0.5, 0.5]));
  });

  test("needs a point, and dates that rise", () => {
    expect(() => kcbByDay("2025-10-01", 3, [])).toThrow("at least one point: got 0");
    expect(() => kcbByDay("2025-10-01", 3, [points[1]!, points[0]!])).toThrow("got 2025-10-03 after 2025-10-05");
    expect(() => kcbByDay("2025-10-01", 3, [points[0]!, points[0]!])).toThrow(/rising dates/);
  });
});
