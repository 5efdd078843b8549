import fc from "fast-check";
import { measure, simulate } from "rootledger";
import { createSimulation } from "rootledger/scenario";
import { measuresByPart, rootHours, rootHoursByWetting } from "rootledger/water";
import { describe, expect, it } from "vitest";
import { calendar, scenarioWith } from "../../support/scenario.js";

const textures = ["sand", "loam", "clay loam", "clay"] as const;
const total = (rows: readonly { thirsty: number; fine: number; airless: number }[]) =>
  rows.reduce(
    (sum, row) => ({
      thirsty: sum.thirsty + row.thirsty,
      fine: sum.fine + row.fine,
      airless: sum.airless + row.airless,
    }),
    { thirsty: 0, fine: 0, airless: 0 },
  );

const anyRun = fc.record({
  texture: fc.constantFrom(...textures),
  everyDays: fc.integer({ min: 1, max: 5 }),
  pulses: fc.integer({ min: 1, max: 4 }),
  litresPerEmitter: fc.integer({ min: 1, max: 14 }),
  lateral: fc.constantFrom(
    { kind: "wetted-lanes" } as const,
    { kind: "disc", radiusCm: 120 } as const,
    { kind: "along-lines", halfWidthCm: 50 } as const,
  ),
  pluggedPerTree: fc.constantFrom(0, 16),
  depthsCm: fc.constantFrom([10, 20, 40], [7, 33], []),
  distancesCm: fc.constantFrom([], [20, 40], [3, 77, 150]),
});

type AnyRun = typeof anyRun extends fc.Arbitrary<infer T> ? T : never;

const scenarioOf = ({ texture, everyDays, pulses, litresPerEmitter, lateral, pluggedPerTree }: AnyRun) =>
  scenarioWith({
    texture,
    days: 6,
    pluggedPerTree,
    roots: { lateral },
    programme: calendar("any", everyDays, pulses, litresPerEmitter * (20 - pluggedPerTree)),
  });

describe("the root-hours ledger", () => {
  it("sums its three classes to all root-hours, whatever the bands, parts and roots", () => {
    fc.assert(
      fc.property(anyRun, (run) => {
        const result = simulate(scenarioOf(run), { trees: ["under-fed", "mean"] });
        for (const tree of [0, 1]) {
          const rows = rootHours(result, { ...run, tree, parts: "each" });
          const sums = total(rows);
          for (const id of ["thirsty", "fine", "airless"] as const) {
            expect(Math.abs(sums[id] - measure(result, id).values[tree]!), id).toBeLessThan(1e-9 * 144);
          }
          expect(Math.abs(sums.thirsty + sums.fine + sums.airless - 144)).toBeLessThan(1e-9 * 144);
          for (const row of rows) expect(Math.min(row.thirsty, row.fine, row.airless)).toBeGreaterThan(-1e-9);
          const { wetted, others } = rootHoursByWetting(result, tree);
          expect(total([wetted, others]).thirsty).toBeCloseTo(sums.thirsty, 9);
        }
      }),
      { numRuns: 20 },
    );
  });

  it("is the same after a restart at any hour", () => {
    fc.assert(
      fc.property(anyRun, fc.integer({ min: 1, max: 143 }), (run, hour) => {
        const through = createSimulation(scenarioOf(run));
        while (through.hour() < hour) through.step();
        const snapshot = JSON.parse(JSON.stringify(through.snapshot()));
        const again = createSimulation(scenarioOf(run));
        again.restore(snapshot);
        while (through.status().kind === "running") through.step();
        while (again.status().kind === "running") again.step();
        expect(again.result().rootHours.values).toEqual(through.result().rootHours.values);
        expect(rootHours(again.result(), run)).toEqual(rootHours(through.result(), run));
      }),
      { numRuns: 8 },
    );
  });

  it("names months, limit periods or the given parts, and their days and sums add up to the season's", () => {
    const scenario = scenarioWith({ texture: "clay", days: 40, programme: calendar("weekly", 7, 1, 700) });
    const months = simulate(scenario);
    expect(months.rootHours.parts).toEqual(["2025-12", "2026-01"]);
    const { limits } = scenario.block.tree;
    const flowering = { name: "flowering", from: "12-10", to: "12-20", limits: { airLimitFraction: 0.15 } };
    const tree = { ...scenario.block.tree, limits: { ...limits, periods: [flowering] } };
    const periods = simulate({ ...scenario, block: { ...scenario.block, tree } });
    expect(periods.rootHours.parts).toEqual(["other days", "flowering"]);
    const partOfDay = Array.from({ length: 40 }, (_, day) => (day < 15 ? "fruit set" : "growth"));
    const stages = simulate(scenario, { partOfDay });
    expect(rootHours(stages, { depthsCm: [], parts: "each" }).map(({ part }) => part)).toEqual(["fruit set", "growth"]);
    for (const result of [months, periods, stages]) {
      const parts = measuresByPart(result);
      expect(parts.reduce((days, part) => days + part.days, 0)).toBe(40);
      const rows = rootHours(result, { depthsCm: [], parts: "each" });
      for (const id of ["thirsty", "airless", "fine"] as const) {
        const sum = parts.reduce((hours, { sums }) => hours + sums[id]!, 0);
        expect(sum).toBeCloseTo(measure(result, id).values[0]!, 9);
        parts.forEach(({ sums }, p) => {
          expect(rows[p]![id]).toBeCloseTo(sums[id]!, 9);
        });
      }
      const applied = parts.reduce((litres, { sums }) => litres + sums.applied!, 0);
      expect(applied).toBeCloseTo(measure(result, "applied").values[0]!, 9);
    }
    expect(() => simulate(scenario, { partOfDay: ["one day"] })).toThrow(/40 days: got 1/);
  });

  it("keeps roots of a disc outside the wetted lanes apart: the field's dry roots do not hide the wet ones", () => {
    const roots = { lateral: { kind: "disc", radiusCm: 200 } } as const;
    const disc = simulate(scenarioWith({ texture: "sand", days: 21, roots, programme: calendar("daily", 1, 2, 120) }));
    const { wetted, others } = rootHoursByWetting(disc);
    const share = (sum: typeof wetted) => sum.thirsty / (sum.thirsty + sum.fine + sum.airless);
    expect(share(others)).toBeGreaterThan(2 * share(wetted));
    const adapted = { lateral: { kind: "wetted-lanes" } } as const;
    const lanes = simulate(scenarioWith({ texture: "sand", days: 2, roots: adapted }));
    const outside = total([rootHoursByWetting(lanes).others]);
    // Roots are even within a lane, wetted ground may end inside one.
    expect(outside.thirsty + outside.fine + outside.airless).toBeLessThan(0.25 * 48);
  });
});

describe("bands of the root-hours ledger", () => {
  const result = simulate(scenarioWith({ texture: "clay", days: 5, programme: calendar("daily", 1, 1, 200) }));

  it("puts airless hours of clay near the line and on top", () => {
    const [near, far] = rootHours(result, { depthsCm: [], distancesCm: [20] });
    const share = (row: typeof near) => row!.airless / (row!.thirsty + row!.fine + row!.airless);
    expect(share(near)).toBeGreaterThan(share(far));
  });

  it("refuses bands that do not rise and trees that are not there", () => {
    expect(() => rootHours(result, { depthsCm: [20, 10] })).toThrow(/rising depthsCm above 0: got 20, 10/);
    expect(() => rootHours(result, { distancesCm: [0] })).toThrow(/distancesCm/);
    expect(() => rootHours(result, { tree: 1 })).toThrow(/tree from 0 to 0: got 1/);
    expect(() => measuresByPart(result, -1)).toThrow(/tree/);
  });
});
