import fc from "fast-check";
import { emittersOfTree, openNearest, openWithin, plugPlan, type RowLayout, wettedGround } from "rootledger/lines";
import { describe, expect, test } from "vitest";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const layout = { offsetsM: [-0.4, 0.4], treeSpacingM: 4, rowSpacingM: 6, emitterSpacingM: 0.4 };
const young = { rootRadiusM: 0.5, canopyDiameterM: 0.8, wettedRadiusM: 0.1, pressureCompensating: true };

describe("emitters along the row", () => {
  test("lie evenly about the trunk", () => {
    const places = emittersOfTree(layout);
    expect(places).toHaveLength(20);
    for (const line of layout.offsetsM) {
      const along = places.filter(({ acrossM }) => acrossM === line).map(({ alongM }) => alongM);
      expect(along.reduce((a, b) => a + b, 0)).toBeCloseTo(0, 10);
      expect(along[1]! - along[0]!).toBeCloseTo(0.4, 12);
    }
  });

  test("the nearest ones are those within their own reach", () => {
    fc.assert(
      fc.property(number(1, 8), number(0.2, 1), fc.nat(), (treeSpacingM, emitterSpacingM, nth) => {
        const row: RowLayout = { offsetsM: [-0.3, 0.5], treeSpacingM, emitterSpacingM };
        const places = emittersOfTree(row);
        const count = 1 + (nth % places.length);
        const open = openNearest(places, count);
        expect(open.filter(Boolean)).toHaveLength(count);
        const reach = Math.max(...places.filter((_, at) => open[at]).map(({ fromTrunkM }) => fromTrunkM));
        const within = openWithin(places, reach);
        open.forEach((kept, at) => {
          if (kept) expect(within[at]).toBe(true);
        });
        places.forEach(({ fromTrunkM }, at) => {
          if (!open[at]) expect(fromTrunkM).toBeGreaterThanOrEqual(reach);
        });
      }),
    );
  });
});

describe("a plug plan", () => {
  const planOf = (open: boolean[], more: Partial<Parameters<typeof plugPlan>[0]> = {}) =>
    plugPlan({ layout, emitterFlowLPerH: 1.6, open, ...young, ...more });

  // Own arithmetic on a young block: two of twenty emitters stand over the roots, a tenth of the water; with four open, a half.
  test("tells the useful share before and after plugging: 2 of 20 is 10 %, 2 of 4 is 50 %", () => {
    const line = { ...layout, offsetsM: [0], emitterSpacingM: 0.2 };
    const row = emittersOfTree(line);
    const planOfRow = (open: boolean[]) =>
      plugPlan({ ...young, layout: line, emitterFlowLPerH: 1, open, rootRadiusM: 0.25, wettedRadiusM: 0.04 });
    expect(planOfRow(row.map(() => true)).usefulShare).toBeCloseTo(0.1, 12);
    expect(planOfRow(openNearest(row, 4)).usefulShare).toBeCloseTo(0.5, 12);
    // So 6.3 L for the ball put 63 L on the ground with all open, 13 L with four.
    expect(6.3 / planOfRow(row.map(() => true)).usefulShare).toBeCloseTo(63, 9);
    expect(Math.round(6.3 / planOfRow(openNearest(row, 4)).usefulShare)).toBe(13);
  });

  test("warns of a sector below the smallest flow, of rising pressure, of a wet trunk and of circles apart", () => {
    const places = emittersOfTree(layout);
    const plan = planOf(openNearest(places, 4), {
      pressureCompensating: false,
      wettedRadiusM: 0.15,
      sector: { trees: 100, smallestFlowLPerH: 1000 },
    });
    expect(plan.sectorFlow).toEqual({ nowLPerH: 640, allOpenLPerH: 3200 });
    expect(plan.warnings.map(({ code }) => code)).toEqual([
      "circles-do-not-join",
      "pressure-rises",
      "below-smallest-flow",
    ]);
    expect(
      planOf(
        places.map(() => true),
        { wettedRadiusM: 0.5 },
      ).warnings.map(({ code }) => code),
    ).toEqual(["wets-trunk"]);
  });

  test("useful water and wet areas grow with the roots and never exceed what there is", () => {
    const places = emittersOfTree(layout);
    fc.assert(
      fc.property(number(0.1, 1), number(0, 2), number(0, 2), fc.integer({ min: 1, max: 20 }), (wet, a, b, count) => {
        const [small, large] = a < b ? [a, b] : [b, a];
        const open = openNearest(places, count);
        const less = planOf(open, { wettedRadiusM: wet, rootRadiusM: small });
        const more = planOf(open, { wettedRadiusM: wet, rootRadiusM: large });
        expect(more.usefulShare).toBeGreaterThanOrEqual(less.usefulShare - 1e-12);
        expect(more.usefulShare).toBeLessThanOrEqual(1 + 1e-12);
        expect(more.ground.onRootsM2).toBeGreaterThanOrEqual(less.ground.onRootsM2 - 1e-9);
        expect(more.ground.bareWithoutRootsM2).toBeLessThanOrEqual(less.ground.bareWithoutRootsM2 + 1e-9);
        expect(less.ground.wettedM2).toBeLessThanOrEqual(24 + 1e-9);
        expect(less.ground.wettedM2).toBeLessThanOrEqual(count * Math.PI * wet * wet * 1.01);
      }),
    );
  });
});

describe("wetted ground", () => {
  const one = [{ alongM: 0, acrossM: 0, fromTrunkM: 0 }];
  const field = { treeSpacingM: 4, rowSpacingM: 6, rootRadiusM: 0, canopyRadiusM: 0 };

  test("of circles apart is the sum of circles, of circles in one place one circle, of a full line the strip (geometry)", () => {
    const apart = [-1, 1].map((alongM) => ({ alongM, acrossM: 0, fromTrunkM: 1 }));
    const circle = Math.PI * 0.25;
    expect(wettedGround(apart, [true, true], { ...field, wettedRadiusM: 0.5 }).wettedM2).toBeCloseTo(2 * circle, 3);
    expect(wettedGround([...one, ...one], [true, true], { ...field, wettedRadiusM: 0.5 }).wettedM2).toBeCloseTo(
      circle,
      3,
    );
    const line = emittersOfTree({ offsetsM: [0], treeSpacingM: 4, emitterSpacingM: 0.02 });
    const strip = wettedGround(
      line,
      line.map(() => true),
      { ...field, wettedRadiusM: 0.5 },
    );
    expect(strip.wettedM2).toBeCloseTo(4, 2);
  });

  test("counts once what neighbours' circles share across the trees' border", () => {
    const border = [{ alongM: 2, acrossM: 0, fromTrunkM: 2 }];
    const circle = Math.PI * 0.25;
    expect(wettedGround(border, [true], { ...field, wettedRadiusM: 0.5 }).wettedM2).toBeCloseTo(circle, 3);
  });
});
