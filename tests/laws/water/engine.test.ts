import { readFileSync } from "node:fs";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { measure, simulate } from "rootledger";
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

const limits = { pullLimitHeadCm: -204, zeroUptakeHeadCm: -1020, airLimit: 0.1, airZero: 0.02, airReturnHeadCm: -51 };

function strip(texture: "sand" | "loam" | "clay loam" | "clay", headCm: number) {
  const grid = stripGrid({
    layerEdgesCm: layerEdges([60, 100]),
    laneEdgesCm: laneEdges([0], 150),
    rowLengthCm: 100,
    sides: 2,
  });
  const ground = fillGround(grid, [tabulateSoil(defaultSoilCurve(texture))], new Uint8Array(grid.cells));
  const engine = bucketEngine({
    ground,
    lines: { edge: Int32Array.of(0), share: Float64Array.of(1) },
    roots: { share: new Float64Array(grid.cells).fill(1 / grid.cells), compensationOnset: 1 },
    innerEdge: "mirror",
    stress: twoLimits(limits),
  });
  const state = { timeH: 0, theta: thetaAtHead(ground, headCm) };
  const fluxes = emptyFluxes(grid);
  const forcing = {
    emitterCm3PerH: 0,
    rainCm3PerH: new Float64Array(grid.lanes),
    evaporationCm3PerH: new Float64Array(grid.lanes).fill(5),
    transpirationCm3PerH: 150,
  };
  const hours = (count: number): void => {
    for (let h = 0; h < count; h++) {
      forcing.emitterCm3PerH = state.timeH % 24 < 2 ? 3000 : 0;
      engine.advance(state, forcing, state.timeH + 1, fluxes);
    }
  };
  return { grid, state, fluxes, hours };
}

describe("laws of the bucket engine", () => {
  it("keeps a wetter start wetter, cell by cell, with fresh water and no compensation", () => {
    for (const texture of ["sand", "loam", "clay loam", "clay"] as const) {
      const wetter = strip(texture, -150);
      const drier = strip(texture, -300);
      let worst = 0;
      for (let day = 0; day < 10; day++) {
        wetter.hours(24);
        drier.hours(24);
        wetter.state.theta.forEach((theta, c) => {
          worst = Math.max(worst, drier.state.theta[c] - theta);
        });
      }
      // Two runs take different steps, so a tenth of the engine's 0.003 is allowed.
      expect(worst, texture).toBeLessThan(3e-4);
    }
  });

  // The bounds are the engine's own stated errors on these soils (compare/floors): 3 to 4 % of demand, 2.5 % of the water.
  it.each(["sand", "loam", "clay loam"] as const)(
    "changes its measures less than its stated error when steps or lanes are halved, on %s",
    (texture) => {
      const scenario = scenarioWith({ texture, days: 14, programme: calendar("daily", 1, 1, 133) });
      const usual = simulate(scenario);
      const applied = measure(usual, "applied").values[0];
      for (const options of [{ thetaDoubtPerStep: 0.0025 }, { lanes: 16 }]) {
        const finer = simulate(scenario, options);
        const change = (id: string): number => Math.abs(measure(finer, id).values[0] - measure(usual, id).values[0]);
        expect(change("transpiration-ratio"), JSON.stringify(options)).toBeLessThan(0.04);
        expect(change("below-roots") / applied, JSON.stringify(options)).toBeLessThan(0.025);
        expect(change("airless") / 336, JSON.stringify(options)).toBeLessThan(0.03);
      }
    },
  );

  it("makes no object, array or closure while the water moves", () => {
    setFlagsFromString("--expose-gc");
    const gc = runInNewContext("gc") as () => void;
    const { hours, fluxes } = strip("loam", -100);
    // Before the compiler is done with the loop every number is boxed, and on a busy machine it comes late: so what the loop makes is
    // asked again until it is done. A loop that makes something makes it in every stretch.
    hours(24 * 250);
    const stretches: number[] = [];
    while (stretches.length < 12 && !(Math.min(...stretches) < 32)) {
      gc();
      const stepsBefore = fluxes.subSteps;
      const before = process.memoryUsage().heapUsed;
      hours(24 * 60);
      const grown = process.memoryUsage().heapUsed - before;
      const steps = fluxes.subSteps - stepsBefore;
      expect(steps).toBeGreaterThan(1000);
      stretches.push(grown / steps);
    }
    // A closure or an array takes 64 bytes or more. What is left is numbers boxed at calls, 16 bytes each.
    expect(Math.min(...stretches), `bytes a step: ${stretches.join(", ")}`).toBeLessThan(32);
  });

  it("raises nothing to a power in the hot loop", () => {
    const files = [
      "bucket",
      "bucket-flows",
      "bucket-hold",
      "bucket-solve",
      "bucket-surface",
      "bucket-values",
      "boundary",
      "bottom",
      "cascade",
      "ground",
      "overfill",
      "stress",
      "uptake",
      "evaporation",
    ];
    for (const file of files) {
      const text = readFileSync(new URL(`../../../packages/rootledger/src/water/${file}.ts`, import.meta.url), "utf8");
      const code = text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/\/\/.*$/gm, "");
      expect(code, file).not.toMatch(/\*\*|Math\.pow/);
    }
  });
});
