import { defaultSoilCurve, type TextureClass, tabulateSoil } from "rootledger/ground";
import {
  bucketEngine,
  clearFaces,
  emptyFluxes,
  faceSums,
  fillGround,
  laneEdges,
  layerEdges,
  refinedRichardsEngine,
  spillEngine,
  stripGrid,
  thetaAtHead,
  twoLimits,
  type WaterSetup,
} from "rootledger/water";
import { describe, expect, it } from "vitest";

const limits = { pullLimitHeadCm: -204, zeroUptakeHeadCm: -1020, airLimit: 0.1, airZero: 0.02, airReturnHeadCm: -51 };

function setupOf(textures: readonly [TextureClass, TextureClass], bypass?: WaterSetup["bypass"]): WaterSetup {
  const grid = stripGrid({
    layerEdgesCm: layerEdges([40, 100]),
    laneEdgesCm: laneEdges([30], 150),
    rowLengthCm: 100,
    sides: 2,
  });
  const material = Uint8Array.from({ length: grid.cells }, (_, c) =>
    grid.layerEdgesCm[(c / grid.lanes) | 0] < 40 ? 0 : 1,
  );
  const ground = fillGround(
    grid,
    textures.map((texture) => tabulateSoil(defaultSoilCurve(texture))),
    material,
  );
  return {
    ground,
    lines: { edge: Int32Array.of(grid.laneEdgesCm.indexOf(30)), share: Float64Array.of(1) },
    roots: { share: new Float64Array(grid.cells).fill(1 / grid.cells), compensationOnset: 0.5 },
    innerEdge: "mirror",
    stress: twoLimits(limits),
    ...(bypass === undefined ? {} : { bypass }),
  };
}

/** Largest difference between a cell's change of water and what its faces, roots and evaporation say, over the cell's volume. */
function worstGap(setup: WaterSetup, make: "bucket" | "richards" | "spill", hours: number): number {
  const { ground } = setup;
  const { grid } = ground;
  const { layers, lanes, cells, volumeCm3 } = grid;
  const engine =
    make === "bucket"
      ? bucketEngine(setup)
      : make === "richards"
        ? refinedRichardsEngine({
            ground,
            lines: setup.lines,
            roots: setup.roots,
            innerEdge: setup.innerEdge,
            stress: setup.stress,
          })
        : spillEngine({ ...setup, fieldCapacity: thetaAtHead(ground, -100), order: "drain-then-uptake" });
  const state = { timeH: 0, theta: thetaAtHead(ground, -60) };
  const faces = faceSums(grid);
  const fluxes = { ...emptyFluxes(grid), faces };
  const forcing = {
    emitterCm3PerH: 0,
    rainCm3PerH: new Float64Array(lanes),
    evaporationCm3PerH: grid.laneAreaCm2.map((area) => area * 0.02),
    transpirationCm3PerH: 400,
  };
  let worst = 0;
  for (let hour = 0; hour < hours; hour++) {
    forcing.emitterCm3PerH = hour % 24 < 5 ? 9000 : 0;
    forcing.rainCm3PerH.set(grid.laneAreaCm2.map((area) => (hour % 24 > 2 && hour % 24 < 9 ? area * 1.5 : 0)));
    const before = Float64Array.from(state.theta);
    const uptake = Float64Array.from(fluxes.uptakeCm3);
    const runoff = fluxes.runoffCm3;
    clearFaces(faces);
    engine.advance(state, forcing, hour + 1, fluxes);
    let entered = 0;
    for (let j = 0; j < lanes; j++) entered += faces.intakeCm3[j] - forcing.rainCm3PerH[j];
    worst = Math.max(worst, Math.abs(entered - forcing.emitterCm3PerH + (fluxes.runoffCm3 - runoff)) / volumeCm3[0]);
    for (let c = 0; c < cells; c++) {
      const j = c % lanes;
      let net = before[c] * volumeCm3[c] - (fluxes.uptakeCm3[c] - uptake[c]) - faces.downCm3[c] - faces.sideCm3[c];
      net += c < lanes ? faces.intakeCm3[j] - faces.evaporationCm3[j] - faces.crackCm3[j] : faces.downCm3[c - lanes];
      if (j > 0) net += faces.sideCm3[c - 1];
      if (((c / lanes) | 0) === faces.crackLayer) net += faces.crackCm3[j];
      worst = Math.max(worst, Math.abs(net / volumeCm3[c] - state.theta[c]));
    }
  }
  expect(layers).toBeGreaterThan(5);
  return worst;
}

describe("water through the faces", () => {
  const cracks = { fraction: 0.3, toDepthCm: 45 };
  it.each([
    ["loam throughout", "bucket", setupOf(["loam", "loam"])],
    ["sand over clay", "bucket", setupOf(["sand", "clay"])],
    ["clay that floods", "bucket", setupOf(["clay", "clay"])],
    ["cracked clay", "bucket", setupOf(["clay", "clay"], cracks)],
    ["spilling loam", "spill", setupOf(["loam", "loam"])],
  ] as const)("accounts for every change of every cell: %s, %s", (_, engine, setup) => {
    expect(worstGap(setup, engine, 72)).toBeLessThan(1e-11);
  });

  it("does so on the slow engine's finer cells", () => {
    expect(worstGap(setupOf(["loam", "loam"]), "richards", 12)).toBeLessThan(1e-10);
  });
});
