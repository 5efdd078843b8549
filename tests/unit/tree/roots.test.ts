import fc from "fast-check";
import { rootDepthShareWithLitter, rootDepthWithKcbM, rootedLaneShare, rootsOnDay } from "rootledger/tree";
import { describe, expect, test } from "vitest";

const near = (...values: number[]) => values.map((value) => expect.closeTo(value, 12));

describe("roots sideways along lines", () => {
  const along = (edges: number[], lines: number[], halfWidthCm: number) =>
    Array.from(rootedLaneShare(edges, lines, 400, { kind: "along-lines", halfWidthCm }));

  test("reach the half width on both sides of a line", () => {
    // A line at 50 cm and 20 cm to each side: from 30 to 70 cm.
    expect(along([0, 25, 40, 60, 80, 100], [50], 20)).toEqual(near(0, 10 / 15, 1, 0.5, 0));
  });

  test("of a line near the row come in from its mirror image across the row too, once", () => {
    // A line at 10 cm covers -10 to 30, its mirror image -30 to 10; one at 0 and its image are the same ground.
    expect(along([0, 20, 40], [10], 20)).toEqual(near(1, 0.5));
    expect(along([0, 50, 100], [0], 60)).toEqual(near(1, 0.2));
    // A line at 30 cm covers 10 to 50: the first 10 cm stay bare though the mirror image ends at -10.
    expect(along([0, 50], [30], 20)).toEqual(near(0.8));
  });

  test("of lines that overlap count once, of lines that do not, each; in any order of the lines", () => {
    // 10-50 and 30-70 make 10-70; 10-30 and 60-80 make 40 cm of 100.
    expect(along([0, 100], [30, 50], 20)).toEqual(near(0.6));
    expect(along([0, 100], [20, 70], 10)).toEqual(near(0.4));
    expect(along([0, 100], [70, 20], 10)).toEqual(near(0.4));
    // A span within another adds nothing: 20 cm round 50 lies within the ground of the same line given twice.
    expect(along([0, 100], [50, 50], 20)).toEqual(near(0.4));
  });

  test("never cover less for a wider reach, nor more than the lane", () => {
    const cm = fc.double({ min: 1, max: 150, noNaN: true });
    fc.assert(
      fc.property(fc.array(cm, { minLength: 1, maxLength: 4 }), cm, cm, (lines, a, b) => {
        const edges = [0, 10, 25, 60, 400];
        const slim = along(edges, [...lines, 0], Math.min(a, b));
        const wide = along(edges, [...lines, 0], Math.max(a, b));
        return slim.every((share, lane) => share <= wide[lane] + 1e-12 && wide[lane] <= 1 + 1e-12);
      }),
    );
  });

  test("are refused where no lane has any", () => {
    expect(() => along([0, 50], [100], 50)).toThrow("rootedLaneShare requires roots in a lane: got none");
    expect(along([0, 50], [100], 51)).toEqual(near(0.02));
  });
});

test("a disc of roots covers pi r2 of the strip's ground where it is whole within it", () => {
  const share = rootedLaneShare([0, 25, 50, 75, 100], [0], 400, { kind: "disc", radiusCm: 50 });
  const covered = share.reduce((sum, part) => sum + part * 25 * 400, 0);
  // Half the disc lies on one side of the row; the midpoint rule on 64 slices is good to half a percent.
  expect(covered / (0.5 * Math.PI * 50 * 50)).toBeCloseTo(1, 2);
  expect([...share.subarray(2)]).toEqual([0, 0]);
  expect(share[0]).toBeGreaterThan(share[1]);
});

describe("roots in the litter layer", () => {
  const edges = [0, 5, 25, 65];

  test("have their share of the litter, evenly, and the vertical law below it", () => {
    const share = rootDepthShareWithLitter([0, 2, 5, 25, 45, 65], 65, 0.8, { thicknessCm: 5, share: 0.25 });
    // Gale & Grigal (1987): 0.8 of the roots in the top 20 cm of soil, 0.8 of the rest in the next, cut at 60 cm.
    const whole = 1 - 0.2 ** 3;
    const soil = [0.8, 0.16, 0.032].map((part) => (0.75 * part) / whole);
    expect([...share]).toEqual(near(0.1, 0.15, ...soil));
  });

  test("takes a share between none and all, and is a layer whose lower edge lies above the rooted depth", () => {
    for (const share of [0, 1, -0.1, 1.1, Number.NaN]) {
      expect(() => rootDepthShareWithLitter(edges, 65, 0.85, { thicknessCm: 5, share })).toThrow(
        `a share in (0, 1): got ${share}`,
      );
    }
    for (const thicknessCm of [0, 4, 65]) {
      expect(() => rootDepthShareWithLitter(edges, 65, 0.85, { thicknessCm, share: 0.2 })).toThrow(
        `litter as a layer above the rooted depth, 65 cm: got ${thicknessCm} cm`,
      );
    }
    expect(() => rootDepthShareWithLitter(edges, 25, 0.85, { thicknessCm: 25, share: 0.2 })).toThrow(
      /25 cm: got 25 cm/,
    );
    const [litter, top, below] = rootDepthShareWithLitter(edges, 25, 0.85, { thicknessCm: 5, share: 0.2 });
    expect([litter, top, below]).toEqual(near(0.2, 0.8, 0));
  });
});

describe("roots that grow with the basal coefficient (FAO-56 annex 8, eq. 8-1)", () => {
  // The beans of FAO-56's annex 8: 0.2 m at Kcb 0.15, 0.8 m at 1.14.
  const beans = { zrMinM: 0.2, zrMaxM: 0.8, kcbInitial: 0.15, kcbMiddle: 1.14 };

  test("start at the least, end at the greatest depth and are halfway at the mean of the two coefficients", () => {
    expect([0.15, 0.645, 1.14].map((kcb) => rootDepthWithKcbM(beans, kcb))).toEqual(near(0.2, 0.5, 0.8));
  });

  test("are told from the initial to the middle stage only", () => {
    for (const kcb of [0.14, 1.15, Number.NaN]) {
      expect(() => rootDepthWithKcbM(beans, kcb)).toThrow(`rootDepthWithKcbM requires Kcb 0.15 to 1.14: got ${kcb}`);
    }
  });
});

describe("roots dug up at dates", () => {
  // Day numbers count from 0000-03-01.
  const dug = [
    { date: "0000-03-11", depthCm: 20, radiusCm: 30 },
    { date: "0000-03-21", depthCm: 60 },
    { date: "0000-03-31", depthCm: 80, radiusCm: 110 },
  ];
  const at = (day: number) => rootsOnDay(dug, day, 90);

  test("are constant before the first and after the last date, what was dug on each, and a line between", () => {
    expect([0, 10].map(at)).toEqual([dug[0], dug[0]].map(({ depthCm, radiusCm }) => ({ depthCm, radiusCm })));
    expect(at(14)).toEqual({ depthCm: 36, radiusCm: 54 });
    // A point that names no radius takes the one given.
    expect(at(20)).toEqual({ depthCm: 60, radiusCm: 90 });
    expect(at(25)).toEqual({ depthCm: 70, radiusCm: 100 });
    expect([30, 31, 999].map(at)).toEqual([80, 80, 80].map((depthCm) => ({ depthCm, radiusCm: 110 })));
  });

  test("are refused without a date, and with two on one day", () => {
    expect(() => rootsOnDay([], 0, 10)).toThrow("rootsOnDay requires at least one point: got 0");
    expect(() => rootsOnDay([dug[0], dug[1], dug[1]], 0, 10)).toThrow(
      "rootsOnDay requires rising dates: got 0000-03-21 after 0000-03-21",
    );
    expect(() => rootsOnDay([{ date: "no day", depthCm: 5 }, dug[0]], 0, 10)).toThrow(/rising dates/);
  });
});
