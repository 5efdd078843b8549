import { simulate } from "rootledger";
import { everyPart } from "rootledger/scenario";
import { rootedLaneShare } from "rootledger/tree";
import { expect, it } from "vitest";
import { scenarioWith, type Variation } from "../../support/scenario.js";

/** Litres of the window over its mm: the ground that it stands on, m2 per tree. */
function groundM2(variation: Variation): number {
  const scenario = scenarioWith({ days: 1, texture: "clay", ...variation });
  const { window } = simulate(scenario, everyPart(scenario));
  return window.litresPerTree / (window.waterAtAirReturnMm - window.waterAtPullLimitMm);
}

it("in even soil the window's litres are its mm over the ground that has roots, and no more", () => {
  // Lines at 0.5 m on both sides, roots 0.6 m to either side of each: 2.2 m of row width along 4 m.
  expect(groundM2({ roots: { lateral: { kind: "along-lines", halfWidthCm: 60 } } })).toBeCloseTo(2.2 * 4, 9);
  // Within 0.2 m of each line: four edges, whether or not they fall on lanes.
  expect(groundM2({ roots: { lateral: { kind: "along-lines", halfWidthCm: 20 } } })).toBeCloseTo(0.8 * 4, 9);
  // A disc that lies inside the tree's ground; a lane's part of it is a numerical integral.
  expect(groundM2({ roots: { lateral: { kind: "disc", radiusCm: 40 } } })).toBeCloseTo(Math.PI * 0.4 ** 2, 4);
  // All ground of the tree at most.
  expect(groundM2({ roots: { lateral: { kind: "along-lines", halfWidthCm: 400 } } })).toBeCloseTo(24, 9);
});

it("roots that grow stand on the ground of the last day", () => {
  const lateral = { kind: "disc", radiusCm: 30 } as const;
  const growth = [
    { date: "2025-12-01", depthCm: 30, radiusCm: 30 },
    { date: "2025-12-02", depthCm: 60, radiusCm: 50 },
  ];
  expect(groundM2({ days: 2, roots: { lateral, growth } })).toBeCloseTo(Math.PI * 0.5 ** 2, 4);
});

it("refuses lanes without roots", () => {
  const none = { kind: "along-lines", halfWidthCm: 10 } as const;
  expect(() => rootedLaneShare([50, 100], [0], 400, none)).toThrow(/roots in a lane: got none/);
});
