import { describe, it } from "vitest";
import { expectRelative, expectWithin } from "./near.js";
import { column } from "./richards-column.js";
import { exponentialSoil } from "./richards-soils.js";

describe("Gardner (1958), Soil Sci. 85:228-232: evaporation from a water table", () => {
  // K = kSat e^(alpha h): h = ln[(1 + q/kSat) e^(-alpha z) - q/kSat] / alpha at height z, limiting q = kSat / (e^(alpha L) - 1).
  it("profile and limiting rate of the exponential soil", () => {
    const alphaPerCm = 0.05;
    const depthCm = 60;
    const curve = exponentialSoil({ alphaPerCm, kSatCmPerH: 1, thetaResidual: 0.05, thetaSaturated: 0.4 });
    const run = column({
      curve,
      depthCm,
      cells: 240,
      startHeadCm: (z) => -(depthCm - z),
      top: { headCm: -1000 },
      bottom: { kind: "head", headCm: 0 },
      options: { longestStepH: 1e4 },
    });
    run.runTo(1e5);
    const before = run.drainedCm();
    run.runTo(1.1e5);
    const q = -(run.drainedCm() - before) / 1e4;
    expectRelative(q, 1 / (Math.exp(alphaPerCm * depthCm) - 1), 0.002, "limiting rate");
    for (const height of [10, 30, 50]) {
      const exact = Math.log((1 + q) * Math.exp(-alphaPerCm * height) - q) / alphaPerCm;
      expectWithin(run.headAt(depthCm - height), exact, 0.05, `head ${height} cm above the water table`);
    }
  });
});
