import fc from "fast-check";
import { column, measure, simulate } from "rootledger";
import { defaultSoilCurve, tabulateSoil } from "rootledger/ground";
import {
  bucketEngine,
  emptyFluxes,
  fillGround,
  laneEdges,
  layerEdges,
  stripGrid,
  thetaAtHead,
  twoLimits,
} from "rootledger/water";
import { describe, expect, it } from "vitest";
import { calendar, scenarioWith } from "../../support/scenario.js";

const texture = fc.constantFrom("sand", "sandy loam", "loam", "clay loam", "clay" as const);
const structure = fc.constantFrom("ordinary", "crumbly" as const);
/** Fresh water, a calendar, no compensation. */
const anyBlock = fc.record({
  texture,
  structure,
  days: fc.integer({ min: 4, max: 12 }),
  everyDays: fc.integer({ min: 1, max: 4 }),
  litresPerDay: fc.integer({ min: 10, max: 160 }),
  et0Mm: fc.constantFrom(2, 5, 8),
  pluggedPerTree: fc.constantFrom(0, 0, 14),
});

describe("more water", () => {
  it("never raises thirsty root-hours nor lowers airless ones", { timeout: 200_000 }, () => {
    let worst = 0;
    fc.assert(
      fc.property(anyBlock, fc.double({ min: 1.05, max: 1.6, noNaN: true }), (block, more) => {
        const open = (20 - block.pluggedPerTree) / 20;
        const of = (factor: number) => {
          const litres = block.litresPerDay * block.everyDays * open * factor;
          const programme = calendar("any", block.everyDays, 1, litres);
          const roots = { lateral: { kind: "wetted-lanes" }, compensationOnset: 1 } as const;
          return simulate(scenarioWith({ ...block, programme, roots }));
        };
        const [less, plenty] = [of(1), of(more)];
        const hours = 24 * block.days;
        const change = (id: string): number => (measure(plenty, id).values[0]! - measure(less, id).values[0]!) / hours;
        worst = Math.max(worst, change("thirsty"), -change("airless"));
        // Two runs take different sub-steps, each moving a cell by up to 0.01 m3/m3: a thousandth of the hours (fitted).
        expect(change("thirsty"), "thirsty").toBeLessThan(1e-3);
        expect(change("airless"), "airless").toBeGreaterThan(-1e-3);
      }),
      { numRuns: 40 },
    );
    console.log(`more water: largest step the wrong way ${(100 * worst).toFixed(2)} % of the hours`);
  });
});

describe("splitting a dose", () => {
  it("conserves its litres exactly, valve and ledger alike", () => {
    fc.assert(
      fc.property(anyBlock, fc.integer({ min: 2, max: 6 }), fc.constantFrom(15, 60, 120), (block, pulses, gap) => {
        const open = (20 - block.pluggedPerTree) / 20;
        const litres = Math.min(block.litresPerDay * block.everyDays, 240) * open;
        const of = (count: number) =>
          simulate(
            scenarioWith({ ...block, days: 5, programme: calendar("any", block.everyDays, count, litres, 0, gap) }),
          );
        const [whole, split] = [of(1), of(pulses)];
        const applied = (result: typeof whole): number => measure(result, "applied").values[0]!;
        // Runs start at midnight and end within their days, so none is cut at the season's end.
        const runs = Math.ceil(5 / block.everyDays);
        expect(Math.abs(applied(whole) - runs * litres)).toBeLessThan(1e-9 * runs * litres);
        expect(Math.abs(applied(split) - applied(whole))).toBeLessThan(1e-9 * applied(whole));
        expect(split.ledger.emitterCm3[0]! / 1000).toBeCloseTo(applied(split), 9);
      }),
      { numRuns: 20 },
    );
  });
});

describe("roots", () => {
  it("move only water they can reach: none from cells without roots, none beyond what a cell gives", () => {
    const grid = stripGrid({
      layerEdgesCm: layerEdges([60, 100]),
      laneEdgesCm: laneEdges([50], 300),
      rowLengthCm: 400,
      sides: 2,
    });
    fc.assert(
      fc.property(
        texture,
        fc.array(fc.integer({ min: 0, max: 3 }), { minLength: grid.cells, maxLength: grid.cells }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        fc.integer({ min: 0, max: 2 }),
        (soil, weights, compensationOnset, wetness) => {
          const total = weights.reduce((sum, w) => sum + w, 0);
          fc.pre(total > 0);
          const ground = fillGround(grid, [tabulateSoil(defaultSoilCurve(soil))], new Uint8Array(grid.cells));
          const share = Float64Array.from(weights, (w) => w / total);
          const limits = { pullLimitHeadCm: -204, zeroUptakeHeadCm: -1020, airLimit: 0.1, airZero: 0.02 };
          const engine = bucketEngine({
            ground,
            lines: { edge: Int32Array.of(grid.laneEdgesCm.indexOf(50)), share: Float64Array.of(1) },
            roots: { share, compensationOnset },
            innerEdge: "mirror",
            stress: twoLimits({ ...limits, airReturnHeadCm: -51 }),
          });
          const state = { timeH: 0, theta: thetaAtHead(ground, [-80, -300, -2000][wetness]!) };
          const fluxes = emptyFluxes(grid);
          const forcing = {
            emitterCm3PerH: 0,
            rainCm3PerH: new Float64Array(grid.lanes),
            evaporationCm3PerH: new Float64Array(grid.lanes),
            transpirationCm3PerH: 8000,
          };
          let wantedCm3 = 0;
          for (let hour = 0; hour < 48; hour++) {
            forcing.emitterCm3PerH = hour % 24 < 2 ? 32000 : 0;
            engine.advance(state, forcing, hour + 1, fluxes);
            wantedCm3 += forcing.transpirationCm3PerH;
          }
          let sum = 0;
          share.forEach((roots, c) => {
            if (roots === 0) expect(fluxes.uptakeCm3[c]).toBe(0);
            expect(fluxes.uptakeCm3[c]).toBeGreaterThanOrEqual(0);
            sum += fluxes.uptakeCm3[c]!;
            expect(state.theta[c]).toBeGreaterThanOrEqual(ground.thetaResidual[c]!);
          });
          expect(sum).toBeCloseTo(fluxes.transpirationCm3, 3);
          expect(sum).toBeLessThanOrEqual(wantedCm3 * (1 + 1e-9));
        },
      ),
      { numRuns: 30 },
    );
  });

  it("drier than zero uptake draw nothing", () => {
    const result = simulate(
      scenarioWith({ days: 3, programme: { name: "none", runs: [] }, start: { tensionKPa: 200, kind: "same-state" } }),
    );
    expect(column(result.days, "transpired").values.every((litres) => litres === 0)).toBe(true);
    expect(measure(result, "thirsty").values[0]).toBeCloseTo(72, 9);
  });
});
