import { column, measure, simulate } from "rootledger";
import { defaults } from "rootledger/scenario";
import { rootDepthShare } from "rootledger/tree";
import type { Result } from "rootledger/water";
import { describe, expect, it } from "vitest";
import { calendar, scenarioWith } from "../support/scenario.js";

// Every fact in this file is common practice, no source. They are directions, not numbers.

/** Mean distance from the line and mean depth, cm, of the water a run brought, at an hour after its start. */
function centreOfWetting(result: Result, hour: number) {
  const { section } = result;
  const theta = result.cells?.theta ?? new Float64Array();
  const cells = section.thetaSaturated.length;
  let gained = 0;
  let distance = 0;
  let depth = 0;
  for (let c = 0; c < cells; c++) {
    const water = Math.max(0, theta[hour * cells + c] - theta[c]) * section.volumeCm3[c];
    const lane = c % section.lanes;
    const layer = Math.floor(c / section.lanes);
    gained += water;
    distance += (water * (section.laneEdgesCm[lane] + section.laneEdgesCm[lane + 1])) / 2;
    depth += (water * (section.layerEdgesCm[layer] + section.layerEdgesCm[layer + 1])) / 2;
  }
  return { distanceCm: distance / gained, depthCm: depth / gained };
}

const oneRun = (texture: "sand" | "clay", emitterFlowLPerH: number) =>
  simulate(
    scenarioWith({
      texture,
      days: 2,
      et0Mm: 0,
      offsetsM: [0],
      emitterFlowLPerH,
      programme: {
        name: "one run",
        runs: [{ startH: 1, everyDays: 9, firstDay: 0, pulses: 1, gapMinutes: 0, amount: { litresPerTree: 60 } }],
      },
      start: { tensionKPa: 30, kind: "same-state" },
    }),
    { cells: { fromHour: 0, hours: 36 } },
  );

describe("common practice, no source", () => {
  it("heavy soil spreads water sideways, light soil lets it down", () => {
    for (const hour of [6, 24]) {
      const sand = centreOfWetting(oneRun("sand", 1.6), hour);
      const clay = centreOfWetting(oneRun("clay", 1.6), hour);
      expect(clay.distanceCm, `sideways after ${hour} h`).toBeGreaterThan(sand.distanceCm);
      expect(sand.depthCm, `down after ${hour} h`).toBeGreaterThan(clay.depthCm);
    }
  });

  it("a lower flow wets gently: at no hour are as many roots without air as under a high flow", () => {
    const most = (flow: number): number => {
      const result = oneRun("clay", flow);
      return column(result.hours, "airlessShare").values.reduce((a, b) => Math.max(a, b), 0);
    };
    expect(most(0.7)).toBeLessThan(most(2.3));
  });

  it("87 % of the roots in the top 20 cm lies within the range of the default", () => {
    const [low, high] = (defaults.topShare.published ?? "").split("-").map(Number);
    expect(low).toBeLessThanOrEqual(0.87);
    expect(high).toBeGreaterThanOrEqual(0.87);
    const [least, most] = [low, high].map((share) => rootDepthShare([0, 20, 60], 60, share)[0]);
    expect(least).toBeLessThanOrEqual(0.87);
    expect(most).toBeGreaterThanOrEqual(0.87);
  });
});

describe("what the three arms show", () => {
  // Direction and size from fine-grid Richards runs of the same kind (weekly, daily, four pulses): interval matters on
  // coarse soil, pulsing of a daily dose changes drainage little.
  const arms = (texture: "sand" | "loam" | "clay loam") =>
    [calendar("weekly", 7, 1, 770), calendar("daily", 1, 1, 110), calendar("pulses", 1, 4, 110)].map((programme) =>
      simulate(scenarioWith({ texture, days: 28, programme })),
    );
  const lost = (result: Result): number =>
    measure(result, "below-roots").values[0] / measure(result, "applied").values[0];

  it("on sand the weekly run loses far more below the roots than the daily one", () => {
    const [weekly, daily] = arms("sand");
    expect(lost(weekly) - lost(daily)).toBeGreaterThan(0.1);
  });

  it("pulsing changes drainage less than interval does, on every soil", () => {
    for (const soil of ["sand", "loam", "clay loam"] as const) {
      const [weekly, daily, pulses] = arms(soil).map(lost);
      expect(Math.abs(daily - pulses), soil).toBeLessThan(Math.abs(weekly - daily));
    }
  });
});
