import { defaultSoilCurve, tabulateSoil } from "rootledger/ground";
import {
  bucketEngine,
  emptyFluxes,
  fillGround,
  laneEdges,
  stripGrid,
  thetaAtHead,
  twoLimits,
  uptakeInto,
} from "rootledger/water";
import { describe, expect, it } from "vitest";

const layers = [0, 5, 10, 20, 30, 40, 60, 80, 100];
const limits = {
  pullLimitHeadCm: -204,
  zeroUptakeHeadCm: -1020,
  airLimit: 0.1,
  airZero: 0.02,
  airReturnHeadCm: -51,
};

/** Lines at +-40 cm over lanes that span both sides, or the half strip that stands for it. */
function run(texture: "sand" | "clay loam" | "clay", half: readonly number[], whole: "half" | "both sides") {
  const lanes =
    whole === "half"
      ? half
      : [
          ...half
            .slice(1)
            .map((x) => -x)
            .reverse(),
          ...half,
        ];
  const grid = stripGrid({
    layerEdgesCm: layers,
    laneEdgesCm: lanes,
    rowLengthCm: 400,
    sides: whole === "half" ? 2 : 1,
  });
  const ground = fillGround(grid, [tabulateSoil(defaultSoilCurve(texture))], new Uint8Array(grid.cells));
  const share = new Float64Array(grid.cells).fill(1 / grid.cells);
  const edges = (whole === "half" ? [40] : [-40, 40]).map((x) => lanes.indexOf(x));
  const engine = bucketEngine({
    ground,
    lines: { edge: Int32Array.from(edges), share: Float64Array.from(edges, () => 1 / edges.length) },
    roots: { share, compensationOnset: 1 },
    innerEdge: whole === "half" ? "mirror" : "open",
    stress: twoLimits(limits),
    uptake: uptakeInto,
  });
  const state = { timeH: 0, theta: thetaAtHead(ground, -100) };
  const fluxes = emptyFluxes(grid);
  for (let hour = 0; hour < 72; hour++) {
    const forcing = {
      emitterCm3PerH: hour % 24 < 9 ? 60_000 : 0,
      rainCm3PerH: Float64Array.from(grid.laneAreaCm2, (area) => (hour < 4 ? 0.5 * area : 0)),
      evaporationCm3PerH: Float64Array.from(grid.laneAreaCm2, (area) => 0.02 * area),
      transpirationCm3PerH: 3000,
    };
    engine.advance(state, forcing, hour + 1, fluxes);
  }
  return { grid, theta: state.theta, fluxes };
}

// The two sides of one run see the same sub-steps, so they agree to rounding. The half strip and the whole one add up in
// another order; rounding stays rounding (tests/laws/water/rounding.test.ts), so they agree as well.
describe("mirror images", () => {
  const half = laneEdges([40], 150, 8);
  for (const texture of ["sand", "clay loam", "clay"] as const) {
    it(`both sides of the row on ${texture} are alike and equal the half strip`, () => {
      const both = run(texture, half, "both sides");
      const one = run(texture, half, "half");
      const n = both.grid.lanes;
      for (let i = 0; i < both.grid.layers; i++) {
        for (let j = 0; j < n; j++) {
          const mirrored = both.theta[i * n + (n - 1 - j)];
          expect(Math.abs(both.theta[i * n + j] - mirrored)).toBeLessThan(1e-9);
        }
        for (let j = 0; j < one.grid.lanes; j++) {
          expect(Math.abs(one.theta[i * one.grid.lanes + j] - both.theta[i * n + n / 2 + j])).toBeLessThan(1e-9);
        }
      }
      const applied = one.fluxes.emitterCm3 + one.fluxes.rainCm3;
      expect(Math.abs(one.fluxes.bottomCm3 - both.fluxes.bottomCm3) / applied).toBeLessThan(1e-9);
      expect(Math.abs(one.fluxes.runoffCm3 - both.fluxes.runoffCm3) / applied).toBeLessThan(1e-9);
    });
  }
});
