import { vanGenuchtenCurve } from "rootledger/ground";
import { describe, it } from "vitest";
import { expectRelative, expectWithin } from "./near.js";
import { column } from "./richards-column.js";
import { exponentialSoil, powerSoil } from "./richards-soils.js";

// Constant flux below kSat with free drainage tends to the head where K = flux (unit gradient). Carsel & Parrish (1988),
// Water Resour. Res. 24:755-769, loam means (from memory); theta and head follow from the van Genuchten-Mualem functions.
it("unit gradient: 0.1 cm/d through loam", () => {
  const curve = vanGenuchtenCurve(
    "loam",
    { thetaResidual: 0.078, thetaSaturated: 0.43, alphaPerCm: 0.036, n: 1.56, kSatCmPerH: 24.96 / 24 },
    "Carsel & Parrish (1988)",
    "raw",
  );
  const run = column({
    curve,
    depthCm: 50,
    cells: 50,
    startHeadCm: () => -100,
    top: { fluxCmPerH: 0.1 / 24 },
    bottom: { kind: "free-drainage" },
    options: { longestStepH: 1000 },
  });
  run.runTo(24 * 3650);
  for (const depth of [0.5, 25, 49.5]) {
    expectWithin(run.headAt(depth), -70, 1, `head at ${depth} cm`);
    expectRelative(curve.conductivityAt(run.headAt(depth)), 0.1 / 24, 1e-4, `K at ${depth} cm`);
  }
  expectWithin(run.theta[25], 0.2724, 0.0003, "theta");
});

describe("Gardner (1958), Soil Sci. 85:228-232: evaporation from a water table", () => {
  // Limiting rate = A a / L^n for K = a / |h|^n; Gardner prints A = 3.77, 2.46, 1.76, 1.52 (from memory), the closed form
  // [pi / (n sin(pi/n))]^n gives 3.761, 2.467, 1.768, 1.522.
  it.each([
    { n: 1.5, constant: 3.761 },
    { n: 2, constant: 2.467 },
    { n: 3, constant: 1.768 },
    { n: 4, constant: 1.522 },
  ])("limiting rate for n = $n", ({ n, constant }) => {
    const depthCm = 100;
    const a = 1e-3 * depthCm ** n;
    const run = column({
      curve: powerSoil({ a, b: 0.002 * 10 ** n, n }),
      depthCm,
      cells: 400,
      startHeadCm: (z) => -(depthCm - z),
      top: { headCm: -9e6 },
      bottom: { kind: "head", headCm: 0 },
      options: { longestStepH: 1e4 },
    });
    run.runTo(1e5);
    const before = run.drainedCm();
    run.runTo(1.1e5);
    const rate = -(run.drainedCm() - before) / 1e4;
    expectRelative((rate * depthCm ** n) / a, constant, 0.005, "A");
  });

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
