import { defaultSoilCurve, tabulateSoil } from "rootledger/ground";
import { emptyFluxes, fillGround, richardsEngine, stripGrid, thetaAtHead, twoLimits } from "rootledger/water";
import { expect, it } from "vitest";

const limits = { pullLimitHeadCm: -204, zeroUptakeHeadCm: -1020, airLimit: 0.1, airZero: 0.02, airReturnHeadCm: -51 };

// A head of -1e7 cm is about oven-dry (pF 7; Schofield 1935): no head of the engine's table lies beyond it.
it.each(["sand", "loam", "clay"] as const)(
  "dries the top of %s for a summer, no further than a head can say",
  (texture) => {
    const layerEdgesCm = [0, 1, 2, 4, 8, 16, 32];
    const grid = stripGrid({ layerEdgesCm, laneEdgesCm: [0, 100], rowLengthCm: 100, sides: 1 });
    const curve = defaultSoilCurve(texture);
    const ground = fillGround(grid, [tabulateSoil(curve)], new Uint8Array(grid.cells));
    const engine = richardsEngine({
      ground,
      lines: { edge: Int32Array.of(0), share: Float64Array.of(1) },
      roots: { share: new Float64Array(grid.cells).fill(1 / grid.cells), compensationOnset: 1 },
      innerEdge: "mirror",
      stress: twoLimits(limits),
      bottom: { kind: "free-drainage" },
    });
    const state = { timeH: 0, theta: thetaAtHead(ground, -5000) };
    state.theta[0] = curve.thetaAt(-1e6);
    const stored = (): number => state.theta.reduce((sum, t, c) => sum + t * grid.volumeCm3[c], 0);
    const before = stored();
    const fluxes = emptyFluxes(grid);
    const none = new Float64Array(1);
    const advance = (emitterCm3PerH: number, evaporationCm3PerH: number): void => {
      const forcing = {
        emitterCm3PerH,
        rainCm3PerH: none,
        evaporationCm3PerH: Float64Array.of(evaporationCm3PerH),
        transpirationCm3PerH: 0,
      };
      engine.advance(state, forcing, state.timeH + 1, fluxes);
    };
    for (let h = 0; h < 24 * 60; h++) advance(0, h % 24 >= 7 && h % 24 < 19 ? 500 : 0);
    expect(Math.min(...state.theta)).toBeGreaterThan(curve.thetaAt(-1e7) - 1e-4);
    for (let h = 0; h < 6; h++) advance(5000, 0);
    expect(state.theta[0]).toBeGreaterThan(curve.thetaAt(-1000));
    const gone = fluxes.evaporationCm3 + fluxes.bottomCm3 + fluxes.runoffCm3 - fluxes.emitterCm3;
    expect(Math.abs(before - gone - stored()) / before).toBeLessThan(1e-9);
  },
);
