import fc from "fast-check";
import { column, measure, simulate } from "rootledger";
import { rainHeld, type Scenario } from "rootledger/scenario";
import { describe, expect, it } from "vitest";
import { scenarioWith, type Variation } from "../../support/scenario.js";

type Surface = NonNullable<Scenario["block"]["surface"]>;

const bare: Surface = { evaporation: "soil-limited", evaporableDepthCm: 10, canopyStorageMm: 0 };

function withSurface(surface: Surface | undefined, variation: Variation = {}): Scenario {
  const scenario = scenarioWith(variation);
  const soil = { ...scenario.soil, readilyEvaporableMm: 6 };
  if (surface === undefined) return scenario;
  const rain = rainHeld(surface, scenario.weather.rainMm);
  return {
    ...scenario,
    soil,
    block: { ...scenario.block, surface: rain === undefined ? surface : { ...surface, rain } },
  };
}

const layer = (where: "under-canopy" | "all-ground", evaporationFactor: number, storageMm: number, days = 14) => ({
  where,
  evaporationFactor: new Float64Array(days).fill(evaporationFactor),
  storageMm: new Float64Array(days).fill(storageMm),
});

const total = (scenario: Scenario, name: string): number =>
  column(simulate(scenario).days, name).values.reduce((sum, value) => sum + value, 0);

const groundM2 = 24;

describe("a season with something between weather and soil", () => {
  it("closes its books for any of it, and rain is what fell", () => {
    fc.assert(
      fc.property(
        fc.record({
          evaporation: fc.constantFrom("soil-limited" as const, "two-stage" as const),
          evaporableDepthCm: fc.double({ min: 5, max: 20, noNaN: true }),
          canopyStorageMm: fc.constantFrom(0, 0.8, 3),
          layer: fc.constantFrom(undefined, layer("under-canopy", 0.6, 2), layer("all-ground", 0.2, 6)),
          curveNumber: fc.constantFrom(undefined, 60, 90, 100),
        }),
        fc.array(fc.constantFrom(0, 0, 0.3, 4, 45, 130), { minLength: 7, maxLength: 7 }),
        ({ layer: laid, curveNumber, ...rest }, rainMm) => {
          const surface = {
            ...rest,
            ...(laid === undefined ? {} : { layer: laid }),
            ...(curveNumber === undefined ? {} : { curveNumber }),
          };
          const { ledger, days, status } = simulate(withSurface(surface, { rainMm, days: 7 }));
          expect(status.kind).toBe("finished");
          expect(Math.abs(ledger.residualFraction[0] ?? 1)).toBeLessThan(1e-9);
          const fellL = rainMm.reduce<number>((sum, mm) => sum + mm, 0) * groundM2;
          expect((ledger.rainCm3[0] ?? Number.NaN) / 1000).toBeCloseTo(fellL, 6);
          const held = ["heldByCanopy", "heldByLayer"].flatMap((name) => [...column(days, name).values]);
          for (const litres of held) expect(litres).toBeGreaterThanOrEqual(0);
          expect(held.reduce((sum, litres) => sum + litres, 0)).toBeLessThanOrEqual(fellL + 1e-6);
        },
      ),
      { numRuns: 40 },
    );
  });

  it("answers as without it where nothing of it is on", () => {
    const rainMm = [0, 12, 0, 3];
    const plain = simulate(withSurface(undefined, { rainMm }));
    const off = simulate(withSurface(bare, { rainMm }));
    expect(off.ledger).toEqual(plain.ledger);
    expect(column(off.days, "rootZoneWater").values).toEqual(column(plain.days, "rootZoneWater").values);
  });

  it("holds a light rain in litter, and of a heavy one no more than its store", () => {
    const surface = { ...bare, layer: layer("all-ground", 1, 2) };
    expect(total(withSurface(surface, { rainMm: [1.5] }), "heldByLayer")).toBeCloseTo(1.5 * groundM2, 9);
    expect(total(withSurface(surface, { rainMm: [30] }), "heldByLayer")).toBeCloseTo(2 * groundM2, 9);
  });

  it("holds nothing of what the drip lines give under it", () => {
    const dry = simulate(withSurface(undefined));
    const under = simulate(withSurface({ ...bare, layer: layer("all-ground", 1, 8) }));
    expect(under.ledger.heldByLayerCm3[0]).toBe(0);
    expect(measure(under, "transpiration").values).toEqual(measure(dry, "transpiration").values);
  });

  it("holds rain in leaves over the canopy's ground only", () => {
    const rain = 200;
    const held = total(withSurface({ ...bare, canopyStorageMm: 1 }, { rainMm: [rain] }), "heldByCanopy");
    // The disc of 4.6 m is cut where neighbours 4 m apart meet: two segments lie beyond. Lanes integrate it in steps.
    const radius = 2.3;
    const segment = radius * radius * Math.acos(2 / radius) - 2 * Math.sqrt(radius * radius - 4);
    expect(held).toBeCloseTo(Math.PI * radius * radius - 2 * segment, 2);
  });

  it("lets a thicker layer evaporate less and rain count less, both ways", () => {
    const rainMm = [3, 0, 0, 3, 0, 0, 3];
    const seasons = [0, 0.2, 0.5, 1].map((step) =>
      simulate(withSurface({ ...bare, layer: layer("all-ground", 1 - 0.5 * step, 3 * step) }, { rainMm })),
    );
    for (let i = 1; i < seasons.length; i++) {
      const [thin, thick] = [seasons[i - 1]?.ledger, seasons[i]?.ledger];
      expect(thick?.evaporationCm3[0]).toBeLessThan(thin?.evaporationCm3[0] ?? Number.NaN);
      expect(thick?.heldByLayerCm3[0]).toBeGreaterThan(thin?.heldByLayerCm3[0] ?? Number.NaN);
    }
  });

  it("runs off by curve number what TR-55 table 2-1 prints: 3.0 in at CN 80 give 1.25 in", () => {
    const scenario = withSurface({ ...bare, curveNumber: 80 }, { rainMm: [0, 76.2], texture: "sand" });
    expect(total(scenario, "runoff") / groundM2 / 25.4).toBeCloseTo(1.25, 2);
  });

  it("dries by two stages no faster than the demand, and ever less", () => {
    const dry = { days: 30, programme: { name: "none", runs: [] }, texture: "loam" } as const;
    const two = simulate(withSurface({ ...bare, evaporation: "two-stage" }, dry));
    const evaporated = column(two.days, "evaporated").values;
    const most = 1.2 * 6 * groundM2;
    for (const litres of evaporated) expect(litres).toBeLessThanOrEqual(most);
    // REW of 6 mm lasts a day at 7.2 mm; from then on the second stage falls.
    for (let d = 3; d < 30; d++) expect(evaporated[d]).toBeLessThan(evaporated[d - 1] ?? Number.NaN);
  });

  it("refuses a layer that ends before the season, and REW beyond TEW", () => {
    const short = withSurface({ ...bare, layer: layer("all-ground", 1, 1, 3) });
    expect(() => simulate(short)).toThrow(/requires 14 days of tree and surface: got 3/);
    const scenario = withSurface({ ...bare, evaporation: "two-stage" });
    const soaked = { ...scenario, soil: { ...scenario.soil, readilyEvaporableMm: 60 } };
    expect(() => simulate(soaked)).toThrow(/requires REW below TEW/);
  });
});
