import { refereeFineness, richardsEngine, richardsGrid, stripGrid } from "rootledger/water";
import { describe, expect, it } from "vitest";
import { column } from "../published/richards-column.js";
import { exponentialSoil } from "../published/richards-soils.js";
import { tableOf } from "./reference-soil.js";
import { runStrip, stripCases } from "./strip-case.js";

// Gardner (1958), Soil Sci. 85:228-232: steady rise from a water table to a dry surface in an exponential soil has a closed
// form, so the error in space can be measured against it.
describe("order of convergence", () => {
  const alphaPerCm = 0.05;
  const depthCm = 60;
  const curve = exponentialSoil({ alphaPerCm, kSatCmPerH: 1, thetaResidual: 0.05, thetaSaturated: 0.4 });
  const topHeadCm = -90;

  function rateError(cells: number, between: "potential" | "mean"): number {
    const run = column({
      curve,
      depthCm,
      cells,
      startHeadCm: (z) => -(depthCm - z),
      top: { headCm: topHeadCm },
      bottom: { kind: "head", headCm: 0 },
      options: { between, longestStepH: 1e4, balanceTheta: 1e-9 },
    });
    run.runTo(1e4);
    const before = run.drainedCm();
    run.runTo(1.1e4);
    const across = Math.exp(-alphaPerCm * depthCm);
    const exact = (across - Math.exp(alphaPerCm * topHeadCm)) / (1 - across);
    return Math.abs(-(run.drainedCm() - before) / 1e3 - exact);
  }

  it.each(["potential", "mean"] as const)("second in space, steady rise, flow by %s", (between) => {
    const errors = [60, 120, 240].map((cells) => rateError(cells, between));
    for (let k = 0; k < 2; k++) expect(Math.log2(errors[k] / errors[k + 1])).toBeGreaterThan(1.8);
  });

  it("first in time, a draining column", () => {
    const drained = (longestStepH: number): number => {
      const run = column({
        curve: tableOf(sandyLoam()).curve,
        depthCm: 50,
        cells: 50,
        startHeadCm: () => -5,
        top: { fluxCmPerH: 0 },
        bottom: { kind: "free-drainage" },
        options: { longestStepH, thetaErrorPerStep: 1, balanceTheta: 1e-10 },
      });
      run.runTo(0.01);
      run.runTo(12);
      return run.drainedCm();
    };
    const [a, b, c] = [0.1, 0.05, 0.025].map(drained);
    expect(Math.log2((a - b) / (b - c))).toBeGreaterThan(0.8);
    expect(Math.log2((a - b) / (b - c))).toBeLessThan(1.3);
  });
});

const sandyLoam = () => {
  const found = stripCases.find((c) => c.id === "C_sandy_loam_f3.2_long_weekly");
  if (!found) throw new Error("no sandy loam case");
  return found.soils[0];
};

describe("the referee's cells", () => {
  const reference = stripCases.find((c) => c.id === "C_sandy_loam_f3.2_long_weekly");
  const coarse = stripGrid({
    layerEdgesCm: [0, 20, 40, 60, 100],
    laneEdgesCm: [0, 10, 20, 30, 45, 60, 100, 150],
    rowLengthCm: 100,
    sides: 2,
  });

  function outcome(factor: number, thetaErrorPerStep: number) {
    if (!reference) throw new Error("no sandy loam case");
    const f = refereeFineness;
    const grid = richardsGrid(
      coarse,
      { lineCm: [0], horizonCm: [] },
      {
        laneAtLineCm: f.laneAtLineCm * factor,
        laneGrowth: f.laneGrowth * factor,
        widestLaneCm: f.widestLaneCm * factor,
        layerAtSurfaceCm: f.layerAtSurfaceCm * factor,
        layerAtHorizonCm: f.layerAtHorizonCm * factor,
        layerGrowth: f.layerGrowth * factor,
        thickestLayerCm: f.thickestLayerCm * factor,
      },
    );
    return runStrip(
      reference,
      (setup) => richardsEngine({ ...setup, options: { thetaErrorPerStep } }),
      [...grid.layerEdgesCm],
      [...grid.laneEdgesCm],
    );
  }

  // Limits: the error that the engine states for itself, 0.005 in uptake and 1 % of the 72 L/m applied.
  it("change little when there are twice as many, or steps are finer", { timeout: 300_000 }, () => {
    const usual = outcome(1, 0.01);
    for (const finer of [outcome(0.7, 0.01), outcome(1, 0.004)]) {
      expect(Math.abs(finer.uptakeRatio - usual.uptakeRatio)).toBeLessThan(0.005);
      expect(Math.abs(finer.drainage60L - usual.drainage60L)).toBeLessThan(0.72);
      expect(Math.abs(finer.storageMeanL / usual.storageMeanL - 1)).toBeLessThan(0.005);
      expect(Math.abs(finer.halfWidth20MaxCm - usual.halfWidth20MaxCm)).toBeLessThan(1);
    }
  });
});
