import fc from "fast-check";
import {
  avocadoLitter,
  canopyInterceptionMm,
  canopyStores,
  curveNumberByFormula,
  curveNumberFor,
  curveNumberRows,
  curveNumberRunoffMm,
  gravelEvaporationCut,
  heldByLayerMm,
  litterLayer,
  litterMassKgPerM2,
  rainOnRoots,
  rainReachingSoil,
  rainThatCountsMm,
  scsEffectiveRainMm,
  storageFactor,
  twoStageDay,
  twoStageSoils,
  wetTwoStage,
} from "rootledger/water";
import { describe, expect, test } from "vitest";

const mm = fc.double({ min: 0, max: 200, noNaN: true });

describe("litter layer", () => {
  test("thickens with the years towards the balance of fall and decay, and rots away when leaves are raked off", () => {
    const years = [0, 1, 2, 5, 10, 30].map((age) => litterMassKgPerM2(avocadoLitter, age));
    years.slice(1).forEach((mass, i) => {
      expect(mass).toBeGreaterThan(years[i]);
    });
    expect(years[5]).toBeCloseTo(avocadoLitter.litterfallKgPerM2Year / avocadoLitter.decayPerYear, 6);
    const raked = { ...avocadoLitter, litterfallKgPerM2Year: 0 };
    expect(litterMassKgPerM2(raked, 1, 0.8)).toBeCloseTo(0.4, 12);
  });

  test("works both ways: the older it is, the less evaporates and the more light rain it holds", () => {
    const layers = [0, 1, 3, 10].map((age) => litterLayer(litterMassKgPerM2(avocadoLitter, age)));
    layers.slice(1).forEach((layer, i) => {
      expect(layer.evaporationFactor).toBeLessThan(layers[i].evaporationFactor);
      expect(layer.storageMm).toBeGreaterThan(layers[i].storageMm);
    });
    expect(layers[0]).toEqual({ coverFraction: 0, evaporationFactor: 1, storageMm: 0 });
    // Forest floors of pine and eucalypt held 2.8 and 1.7 mm (Puttuhena & Cordery 1996, J. Hydrology 180:283; seen): ours of
    // ten years lies in the same range.
    expect(layers[3].storageMm).toBeGreaterThan(1.7);
    expect(layers[3].storageMm).toBeLessThan(2.8);
    expect([heldByLayerMm(1, 2.5), heldByLayerMm(9, 2.5)]).toEqual([1, 2.5]);
  });

  test("gravel is bounded to the thickness measured", () => {
    expect(gravelEvaporationCut(0)).toBe(0);
    expect(gravelEvaporationCut(3.5)).toBeCloseTo(0.675, 12);
    expect(() => gravelEvaporationCut(12)).toThrow(/0 to 10 cm/);
  });
});

describe("canopy interception", () => {
  test("never more than falls on the canopy, nor than it can hold", () => {
    fc.assert(
      fc.property(mm, fc.double({ min: 0, max: 1, noNaN: true }), (rainMm, coverFraction) => {
        const held = canopyInterceptionMm({ rainMm, coverFraction, storageMm: 1 });
        return held >= 0 && held <= coverFraction * Math.min(rainMm, 1) + 1e-12;
      }),
    );
  });

  test("storms of 7 to 20 mm lose what orchards were seen to lose, 5 to 15 %, less the heavier they are", () => {
    // Citrus 5.8-9.3 % (Li et al. 1997, HortScience 32:1059), apple rows about 15 % (de Miranda & Butler 1986, J. Hydrology
    // 87:245), both seen; neither abstract gives the depth of the storms, so these are ours, and the store is our choice.
    const share = (rainMm: number): number =>
      canopyInterceptionMm({ rainMm, coverFraction: 1, storageMm: canopyStores.evergreen.storageMm }) / rainMm;
    expect(share(7)).toBeLessThan(0.15);
    expect(share(20)).toBeGreaterThan(0.049);
    expect(share(20)).toBeLessThan(share(7));
  });
});

describe("rain on its way to the soil", () => {
  test("splits without loss; 4 mm hardly pass a canopy and ten years of litter, 30 mm mostly do", () => {
    fc.assert(
      fc.property(mm, fc.double({ min: 0, max: 1, noNaN: true }), mm, (rainMm, canopyFraction, layerStorageMm) => {
        const { canopyMm, layerMm, soilMm } = rainReachingSoil(rainMm, {
          canopyFraction,
          canopyStorageMm: 1,
          layerStorageMm,
        });
        return Math.abs(canopyMm + layerMm + soilMm - rainMm) < 1e-9 && soilMm >= -1e-12 && layerMm >= 0;
      }),
    );
    const layerStorageMm = litterLayer(litterMassKgPerM2(avocadoLitter, 10)).storageMm;
    const share = (rainMm: number): number =>
      rainReachingSoil(rainMm, { canopyFraction: 0.8, canopyStorageMm: 1, layerStorageMm }).soilMm / rainMm;
    expect(share(4)).toBeLessThan(0.2);
    expect(share(30)).toBeGreaterThan(0.85);
    expect(() => rainReachingSoil(1, { canopyFraction: 0, canopyStorageMm: 1, layerStorageMm: -1 })).toThrow(/layer/);
  });
});

describe("run-off", () => {
  test("never negative, never more than the rain, and rises with the curve number", () => {
    fc.assert(
      fc.property(mm, fc.integer({ min: 30, max: 99 }), (rain, cn) => {
        const q = curveNumberRunoffMm(rain, cn);
        return q >= 0 && q <= rain && curveNumberRunoffMm(rain, cn + 1) >= q;
      }),
    );
  });

  test("table and formula of the antecedent condition differ by 2.3 at most, and both order dry, usual, wet", () => {
    for (const { usual } of curveNumberRows) {
      for (const condition of ["dry", "wet"] as const) {
        expect(Math.abs(curveNumberFor(condition, usual) - curveNumberByFormula(condition, usual))).toBeLessThan(2.3);
      }
      if (usual < 100) {
        expect(curveNumberFor("dry", usual)).toBeLessThan(usual);
        expect(curveNumberFor("wet", usual)).toBeGreaterThan(usual);
      }
    }
    expect(curveNumberFor("dry", 72)).toBeCloseTo(51 + (2 / 5) * (57 - 51), 12);
    expect(() => curveNumberFor("wet", 20)).toThrow(/30 to 100/);
  });
});

describe("effective rain", () => {
  test("never more than rain or crop ET; the storage cubic is not carried past its table", () => {
    fc.assert(
      fc.property(mm, mm, (rainMm, cropEtMm) => {
        const effective = scsEffectiveRainMm({ rainMm, cropEtMm });
        return effective >= 0 && effective <= rainMm && effective <= cropEtMm;
      }),
    );
    expect(() => storageFactor(200)).toThrow(/20 to 175/);
  });

  test("on roots only: 4 mm counts as nothing, and no more counts than the soil has room for", () => {
    const day = { interceptedMm: 1, rootedGroundM2: 8, roomMm: 10, countsAboveMm: rainThatCountsMm };
    expect(rainOnRoots({ ...day, rainMm: 4 })).toEqual({ usefulL: 0, beyondRoomL: 0, heldBackL: 32 });
    expect(rainOnRoots({ ...day, rainMm: 20 })).toEqual({ usefulL: 80, beyondRoomL: 72, heldBackL: 8 });
  });

  test("all rain on rooted ground is accounted for", () => {
    fc.assert(
      fc.property(mm, mm, mm, (rainMm, interceptedMm, roomMm) => {
        const to = rainOnRoots({ rainMm, interceptedMm, roomMm, rootedGroundM2: 3, countsAboveMm: 5 });
        return Math.abs(to.usefulL + to.beyondRoomL + to.heldBackL - 3 * rainMm) < 1e-9;
      }),
    );
  });
});

describe("two-stage evaporation (Ritchie 1972)", () => {
  test("never above the potential, and a deep rain starts it afresh", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.double({ min: 0, max: 12, noNaN: true }), fc.double({ min: 0, max: 30, noNaN: true })), {
          maxLength: 40,
        }),
        (days) => {
          let state = wetTwoStage;
          return days.every(([potential, rain]) => {
            const day = twoStageDay(twoStageSoils.loam, state, potential, rain);
            state = day.state;
            return day.evaporationMm >= 0 && day.evaporationMm <= potential + 1e-12 && state.stageTwoMm >= 0;
          });
        },
      ),
    );
    const dry = { stageOneMm: 9, stageTwoMm: 10 };
    expect(twoStageDay(twoStageSoils.loam, dry, 6, 30).evaporationMm).toBe(6);
    expect(twoStageDay(twoStageSoils.loam, dry, 6).evaporationMm).toBeLessThan(1);
  });
});
