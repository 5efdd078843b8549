import { tabulateSoil, vanGenuchtenCurve } from "rootledger/ground";
import { emptyFluxes, fillGround, spillEngine, stripGrid } from "rootledger/water";
import { expect, test } from "vitest";

/**
 * One day of two stacked buckets, worked by hand; the rule is FAO-56's (Allen et al. 1998, eqs 85 and 88): what is above field capacity
 * leaves downward at once, then roots draw.
 *
 *   on 1 m2               top, 20 cm, fc 0.30    bottom, 30 cm, fc 0.25
 *   at dawn               0.28 = 56 mm           0.24 = 72 mm
 *   12 mm of rain         68, keeps 60, 8 down   80, keeps 75, 5 below
 *   5 mm drawn, 70 : 30   56.5 mm = 0.2825       73.5 mm = 0.245
 *   books                 128 + 12 = 130 + 5 below + 5 drawn
 */
test("a day of two buckets comes out as by hand, and its books close", () => {
  const grid = stripGrid({ layerEdgesCm: [0, 20, 50], laneEdgesCm: [0, 100], rowLengthCm: 100, sides: 1 });
  const curve = vanGenuchtenCurve(
    "spans both",
    { thetaResidual: 0.01, thetaSaturated: 0.6, alphaPerCm: 0.02, n: 1.4, kSatCmPerH: 1 },
    "any curve that spans the example",
  );
  const engine = spillEngine({
    ground: fillGround(grid, [tabulateSoil(curve)], new Uint8Array(2)),
    lines: { edge: Int32Array.of(0), share: Float64Array.of(1) },
    roots: { share: Float64Array.of(0.7, 0.3), compensationOnset: 1 },
    innerEdge: "mirror",
    fieldCapacity: Float64Array.of(0.3, 0.25),
    order: "drain-then-uptake",
    stress: ({ thirst, air, state }) => {
      thirst.fill(1);
      air.fill(1);
      state.fill(0);
    },
    evaporation: (out) => {
      out.fill(0);
    },
  });
  const state = { timeH: 0, theta: Float64Array.of(0.28, 0.24) };
  const fluxes = emptyFluxes(grid);
  // 1 mm on 1 m2 is 1000 cm3.
  const perDay = (mm: number): number => (mm * 1000) / 24;
  const forcing = {
    emitterCm3PerH: 0,
    rainCm3PerH: Float64Array.of(perDay(12)),
    evaporationCm3PerH: Float64Array.of(0),
    transpirationCm3PerH: perDay(5),
  };
  engine.advance(state, forcing, 24, fluxes);
  expect(state.theta[0]).toBeCloseTo(0.2825, 12);
  expect(state.theta[1]).toBeCloseTo(0.245, 12);
  expect(fluxes.downwardCm3[0]).toBeCloseTo(8000, 8);
  expect(fluxes.bottomCm3).toBeCloseTo(5000, 8);
  expect(fluxes.transpirationCm3).toBeCloseTo(5000, 8);
  const stored = (state.theta[0] ?? 0) * 200_000 + (state.theta[1] ?? 0) * 300_000;
  expect(stored).toBeCloseTo(130_000, 6);
});
