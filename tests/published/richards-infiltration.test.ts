import type { SoilCurve } from "rootledger/ground";
import { describe, expect, test } from "vitest";
import { column } from "./richards-column.js";
import { haverkampSand, yoloLightClay } from "./richards-soils.js";

// The figures of these cases are in data/published/richards.json and are checked with all others: Celia et al. (1990), Haverkamp et al. (1977),
// Philip (1957). Here: that the books close to 1e-6 of what came in, which no publication prints.
describe("infiltration by Richards' equation closes its books", () => {
  const shape = (curve: SoilCurve, startHeadCm: number, depthCm: number) => ({
    curve,
    depthCm,
    cells: 200,
    startHeadCm: () => startHeadCm,
  });

  test.each([
    [
      "Celia et al. (1990), sand, heads held",
      { ...shape(haverkampSand, -61.5, 40), top: { headCm: -20.7 }, bottom: { kind: "head", headCm: -61.5 } },
      0.1,
    ],
    [
      "Haverkamp et al. (1977), sand, constant flux",
      { ...shape(haverkampSand, -61.5, 70), top: { fluxCmPerH: 13.69 }, bottom: { kind: "free-drainage" } },
      0.4,
    ],
    [
      "Yolo light clay, saturated surface",
      { ...shape(yoloLightClay, -600, 40), top: { headCm: 0 }, bottom: { kind: "free-drainage" } },
      2.8,
    ],
  ] as const)("%s", (_, asked, hours) => {
    const run = column({ ...asked, options: { thetaErrorPerStep: 1e-3 } });
    run.runTo(hours);
    expect(run.infiltratedCm()).toBeGreaterThan(0.1);
    expect(Math.abs(run.residualCm()) / run.infiltratedCm()).toBeLessThan(1e-6);
  });
});
