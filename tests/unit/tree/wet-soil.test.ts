import fc from "fast-check";
import {
  depthOnWettedMm,
  dualKcDay,
  figureStore,
  kcInitial,
  kcInitialForDepth,
  kcInitialPartlyWetted,
  rainEvents,
  stageOneDays,
  totalEvaporableWaterMm,
} from "rootledger/tree";
import { describe, expect, test } from "vitest";

// Allen, Pereira, Raes & Smith (1998), FAO Irrigation and Drainage Paper 56.

describe("evaporable water behind FAO-56's figures 29 and 30 (annex 7, from memory)", () => {
  test("light wettings: TEW 10, REW 6/sqrt(ET0) between 2.5 and 7", () => {
    // 6/sqrt(4) = 3; at 0.36 mm/day the line says 10, at 9 it says 2.
    expect([4, 0.36, 9].map((et0) => figureStore("light", et0))).toEqual(
      [3, 7, 2.5].map((readilyEvaporableMm) => ({ totalEvaporableMm: 10, readilyEvaporableMm })),
    );
  });

  test("heavy wettings: coarse soil to 15 and 6 mm, finer soil to 28 and 9, REW below TEW where the air asks for little", () => {
    expect(figureStore("heavy-coarse", 4)).toEqual({ totalEvaporableMm: 14, readilyEvaporableMm: 6 });
    expect(figureStore("heavy-coarse", 9)).toEqual({ totalEvaporableMm: 15, readilyEvaporableMm: 6 });
    expect(figureStore("heavy-fine", 4)).toEqual({ totalEvaporableMm: 26, readilyEvaporableMm: 9 });
    expect(figureStore("heavy-fine", 9)).toEqual({ totalEvaporableMm: 28, readilyEvaporableMm: 9 });
    expect(figureStore("heavy-coarse", 0.25)).toEqual({ totalEvaporableMm: 3.5, readilyEvaporableMm: 3.49 });
    expect(figureStore("heavy-fine", 0.25)).toEqual({ totalEvaporableMm: 6.5, readilyEvaporableMm: 6.49 });
  });

  test("need an ET0 above 0", () => {
    for (const et0 of [0, -1, Number.NaN]) {
      expect(() => figureStore("light", et0)).toThrow(`figureStore requires ET0 above 0 mm/day: got ${et0}`);
    }
  });
});

describe("mean Kc of bare soil between wettings (eqs 7-1 to 7-3)", () => {
  const store = { totalEvaporableMm: 15, readilyEvaporableMm: 6 };

  test("is 1.15 within stage one, 6/(1.15 x 5) = 1.043 days, and joins the curve there", () => {
    expect(stageOneDays(6, 5)).toBeCloseTo(1.0434783, 7);
    expect(kcInitial(store, 0.5, 5)).toBe(1.15);
    expect(kcInitial(store, stageOneDays(6, 5), 5)).toBe(1.15);
    expect(kcInitial(store, stageOneDays(6, 5) + 1e-9, 5)).toBeCloseTo(1.15, 6);
  });

  test("gives all evaporable water in the end, and less a day the rarer the wettings", () => {
    // After 200 days all 15 mm are gone: 15/(200 x 5).
    expect(kcInitial(store, 200, 5)).toBeCloseTo(0.015, 6);
    const days = fc.double({ min: 0.1, max: 60, noNaN: true });
    fc.assert(
      fc.property(days, days, (a, b) => {
        const often = kcInitial(store, Math.min(a, b), 5);
        const rarely = kcInitial(store, Math.max(a, b), 5);
        return rarely <= often + 1e-12 && often <= 1.15 && often * Math.min(a, b) * 5 <= 15 + 1e-9;
      }),
    );
  });

  test("falls by the worked sum of eq. 7-3 where nothing evaporates freely", () => {
    // REW 0, TEW 10, ET0 5: t1 = 0, Eso 5.75; four days: (10 - 10 exp(-4 x 5.75/10)) / (4 x 5) = 0.44987.
    expect(kcInitial({ totalEvaporableMm: 10, readilyEvaporableMm: 0 }, 4, 5)).toBeCloseTo(
      0.5 * (1 - Math.exp(-2.3)),
      12,
    );
  });

  test("refuses intervals, ET0 and stores that are none", () => {
    expect(() => kcInitial(store, 0, 5)).toThrow("kcInitial requires interval and ET0 above 0: got 0 and 5");
    expect(() => kcInitial(store, 3, 0)).toThrow("kcInitial requires interval and ET0 above 0: got 3 and 0");
    for (const readilyEvaporableMm of [-0.1, 15, 16, Number.NaN]) {
      expect(() => kcInitial({ ...store, readilyEvaporableMm }, 3, 5)).toThrow(
        `REW from 0 to below TEW: got ${readilyEvaporableMm}`,
      );
    }
  });

  test("lies between light and heavy wettings by depth (eq. 59), and counts wetted ground alone (eqs 60, 61)", () => {
    expect([5, 10, 25, 40, 60].map((mm) => kcInitialForDepth(mm, 0.4, 1))).toEqual([
      0.4,
      0.4,
      expect.closeTo(0.7, 12),
      1,
      1,
    ]);
    // Example 26: 12 mm on 0.4 of the ground are 30 mm there; 1.05 there is 0.42 over the field.
    expect([depthOnWettedMm(12, 0.4), kcInitialPartlyWetted(1.05, 0.4)]).toEqual([30, expect.closeTo(0.42, 12)]);
    expect(rainEvents(50, 2.5)).toBe(20);
  });
});

test("total evaporable water is what lies from field capacity to half the wilting point (eq. 73): 0.25 and 0.12 hold 19 mm in 10 cm", () => {
  expect(totalEvaporableWaterMm(0.25, 0.12, 0.1)).toBeCloseTo(19, 12);
});

describe("a day of the dual coefficient by hand (eqs 69, 71, 74, 77, 79)", () => {
  const store = { totalEvaporableMm: 20, readilyEvaporableMm: 9 };
  const day = { et0Mm: 5, kcb: 0.2, kcMax: 1.2, exposedWetted: 0.8 };

  test("dry: Kr (20 - 14.5)/11 = 0.5, Ke 0.5, 2.5 mm over the field are 3.125 mm of the wetted ground", () => {
    expect(dualKcDay(14.5, store, day)).toEqual({
      kr: 0.5,
      ke: 0.5,
      kc: 0.7,
      evaporationMm: 2.5,
      cropEtMm: 3.5,
      percolationMm: 0,
      depletionMm: 17.625,
    });
  });

  test("wetted early: 4 mm of irrigation on 0.4 are 10 mm there, rain 3 less run-off 1 are 2 mm", () => {
    const wet = { ...day, rainMm: 3, runoffMm: 1, irrigationMm: 4, wettedFraction: 0.4 };
    // De before 14.5 - 12 = 2.5: Kr 1; Ke is the smaller of 1.2 - 0.2 and 0.8 x 1.2 = 0.96; 4.8 mm over the field, 6 mm there.
    expect(dualKcDay(14.5, store, wet)).toMatchObject({
      kr: 1,
      ke: expect.closeTo(0.96, 12),
      percolationMm: 0,
      depletionMm: expect.closeTo(8.5, 12),
    });
    // De 5 - 12 = -7: 7 mm drain; the layer starts full.
    expect(dualKcDay(5, store, wet)).toMatchObject({ percolationMm: 7, depletionMm: expect.closeTo(6, 12) });
    // Exactly full: nothing drains.
    expect(dualKcDay(12, store, wet).percolationMm).toBe(0);
  });

  test("wetted late: Kr of the dry morning, the water after the evaporation", () => {
    const late = { ...day, rainMm: 12, waterComes: "late" as const };
    // 14.5 + 3.125 - 12 = 5.625.
    expect(dualKcDay(14.5, store, late)).toMatchObject({ kr: 0.5, percolationMm: 0, depletionMm: 5.625 });
    // 14.5 + 3.125 - 20 = -2.375 drains.
    expect(dualKcDay(14.5, store, { ...late, rainMm: 20 })).toMatchObject({ percolationMm: 2.375, depletionMm: 0 });
  });

  test("wants wetted and sunny ground, and the share that irrigation wets, up to all of it", () => {
    for (const exposedWetted of [0, -0.1, Number.NaN]) {
      expect(() => dualKcDay(5, store, { ...day, exposedWetted })).toThrow(
        `dualKcDay requires exposedWetted above 0: got ${exposedWetted}`,
      );
    }
    for (const wettedFraction of [0, -0.1, 1.01, Number.NaN]) {
      expect(() => dualKcDay(5, store, { ...day, irrigationMm: 4, wettedFraction })).toThrow(
        `wettedFraction in (0, 1] beside irrigation: got ${wettedFraction}`,
      );
    }
    expect(() => dualKcDay(5, store, { ...day, irrigationMm: 4 })).toThrow(/beside irrigation: got 0/);
    expect(dualKcDay(14.5, store, { ...day, irrigationMm: 4, wettedFraction: 1 }).depletionMm).toBeCloseTo(
      // 10.5: Kr 9.5/11, 0.8636 x 5 mm over the field.
      10.5 + ((9.5 / 11) * 5) / 0.8,
      12,
    );
  });
});
