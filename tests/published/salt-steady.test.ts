import { concentrationFactor, leachingRequirement, maasHoffmanTable, saltFactor } from "rootledger/tree";
import {
  burnsFraction,
  faceSums,
  scotterFraction,
  soluteGrid,
  soluteSums,
  soluteTransport,
  stripGrid,
  usualSpreading,
} from "rootledger/water";
import { describe, expect, test } from "vitest";
import { runColumn } from "./solute-column.js";

const rootedCm = 60;
const layerCounts = [4, 8, 16, 32];

/** Soil water over ECw at the surface and below each quarter of the roots, in the long run. */
function steadyEc(leachingFraction: number, layers: number, alongCm: number): number[] {
  const share = [0.4, 0.3, 0.2, 0.1];
  const coarse = stripGrid({
    layerEdgesCm: Array.from({ length: layers + 1 }, (_, i) => (rootedCm * i) / layers),
    laneEdgesCm: [0, 1],
    rowLengthCm: 1,
    sides: 1,
  });
  const grid = soluteGrid(coarse);
  const { advance } = soluteTransport({
    grid,
    spreading: { alongCm, acrossCm: 0, inWaterCm2PerH: 0 },
    thetaSaturated: new Float64Array(layers).fill(0.45),
    rootedLayers: layers,
  });
  const faces = faceSums(coarse);
  const theta = new Float64Array(layers).fill(0.3);
  const hours = 20;
  const entering = 0.1 * hours;
  const drawn = entering * (1 - leachingFraction);
  const uptakeCm3 = Float64Array.from(
    { length: layers },
    (_, i) => drawn * share[Math.floor((4 * i) / layers)] * (4 / layers),
  );
  faces.intakeCm3[0] = entering;
  let flow = entering;
  for (let i = 0; i < layers; i++) {
    flow -= uptakeCm3[i];
    faces.downCm3[i] = flow;
  }
  const mass = new Float64Array(grid.cells);
  const edges = { intakeMgPerCm3: Float64Array.of(1), bottomMgPerCm3: 0, uptakeShare: 0, mostUptakeMg: 0 };
  const move = { hours, thetaBefore: theta, thetaAfter: theta, faces, uptakeCm3 };
  const sums = soluteSums(1);
  for (let t = 0; t < 6000; t += hours) advance(mass, move, edges, sums);
  const content = Array.from(mass, (mg, s) => mg / (0.3 * grid.thicknessCm[s]));
  const quarter = content.length / 4;
  const below = [1, 2, 3].map((k) => 0.5 * (content[k * quarter - 1] + content[k * quarter]));
  return [1, ...below, content[content.length - 1]];
}

/** ECe over ECw as FAO-29 reckons it: half the mean of the five. */
const factorOf = (ec: readonly number[]): number => ec.reduce((sum, value) => sum + value, 0) / ec.length / 2;

describe("salt of the root zone in the long run, Ayers & Westcot (1985), FAO-29 Rev. 1, table 3 (from memory)", () => {
  const printed = [
    [0.1, 2.1],
    [0.15, 1.6],
    [0.2, 1.3],
    [0.3, 1.0],
    [0.5, 0.8],
  ] as const;

  test.each(printed)("leaching fraction %d: ECe is %d ECw on 4 to 32 layers", (fraction, factor) => {
    for (const layers of layerCounts) {
      // Printed to one decimal.
      expect(Math.abs(factorOf(steadyEc(fraction, layers, 0)) - factor)).toBeLessThan(0.0501);
      // The usual dispersivity spreads salt upward against the flow; tolerance fitted.
      expect(Math.abs(factorOf(steadyEc(fraction, layers, usualSpreading.alongCm)) - factor)).toBeLessThan(0.08);
    }
  });

  test("and below the roots the water is ECw over the leaching fraction, whatever the layers", () => {
    for (const layers of layerCounts) {
      expect(steadyEc(0.15, layers, 0)[4]).toBeCloseTo(1 / 0.15, 2);
      expect(steadyEc(0.15, layers, usualSpreading.alongCm)[4]).toBeCloseTo(1 / 0.15, 2);
    }
  });
});

describe("nitrate leached by drainage, Burns (1975) and Scotter, White & Dyson (1993)", () => {
  const depthCm = 45;
  const theta = 0.3;
  const leached = (drainageCm: number, layers: number, alongCm: number): number => {
    const { sums, startMg } = runColumn({
      layerCm: rootedCm / layers,
      layers: layers * 2,
      theta,
      fluxCmPerH: 0.15,
      hours: drainageCm / 0.15,
      spreading: { alongCm, acrossCm: 0, inWaterCm2PerH: 0 },
      sliceCm: rootedCm / 32,
      inContent: 0,
      start: (_, s) => (s === 0 ? 1 : 0),
      rootedLayers: (layers * depthCm) / rootedCm,
    });
    return sums.belowRootsMg / startMg;
  };
  const drainage = [6, 9, 12];

  test("up to a pore volume the cells stay within 0.17 of both, and the mean of three depths of drainage within 0.05", () => {
    // A dispersivity of 5 cm; tolerances fitted. Beyond a pore volume Burns holds a tail back that an even column does not.
    const differences = drainage.map((cm) => {
      const ours = leached(cm, 8, 5);
      const at = { drainageCm: cm, thetaFieldCapacity: theta, depthCm };
      expect(Math.abs(burnsFraction(at) - scotterFraction(at, rootedCm / 32))).toBeLessThan(0.02);
      return ours - burnsFraction(at);
    });
    for (const difference of differences) expect(Math.abs(difference)).toBeLessThan(0.17);
    expect(Math.abs(differences.reduce((sum, d) => sum + d, 0) / 3)).toBeLessThan(0.05);
  });

  test("4 to 32 layers give the same fraction", () => {
    for (const cm of drainage) {
      const all = layerCounts.map((layers) => leached(cm, layers, usualSpreading.alongCm));
      expect(Math.max(...all) - Math.min(...all)).toBeLessThan(1e-6);
    }
  });
});

describe("published bands of water and trees", () => {
  const line = (crop: string) => {
    const { thresholdDsPerM, slopePerDsPerM } = maasHoffmanTable[crop];
    return { thresholdDsPerM: thresholdDsPerM?.[0] ?? Number.NaN, slopePerDsPerM: slopePerDsPerM?.[0] ?? Number.NaN };
  };
  const usualFraction = 0.15;

  test("water above 0.75 dS/m troubles avocado (Crowley 2008, California Avocado Society Yearbook 91): ECe nears the threshold", () => {
    const ece = 0.75 * concentrationFactor(usualFraction);
    expect(ece / line("avocado").thresholdDsPerM).toBeGreaterThan(0.8);
    expect(ece / line("avocado").thresholdDsPerM).toBeLessThan(1.1);
  });

  test("water of 0.3 and 0.5 dS/m is good for avocado (Western Australia agriculture department): no loss", () => {
    for (const ecw of [0.3, 0.5]) expect(saltFactor(line("avocado"), ecw * concentrationFactor(usualFraction))).toBe(1);
  });

  test("the threshold of avocado lies in the band 0.5 to 1.5 dS/m (FAO-29 1.3, a field trial about 0.6)", () => {
    expect(line("avocado").thresholdDsPerM).toBeGreaterThanOrEqual(0.5);
    expect(line("avocado").thresholdDsPerM).toBeLessThanOrEqual(1.5);
  });

  test("strawberry may lose above 1 dS/m of water (Hanson & Bendixen 2004, California Agriculture 58(1))", () => {
    const left = (ecw: number): number => saltFactor(line("strawberry"), ecw * concentrationFactor(usualFraction));
    expect(left(1.1)).toBeLessThan(1);
    expect(left(0.6)).toBe(1);
  });

  test("the leaching requirement is a fraction, or refused (Rhoades 1974 in FAO-29)", () => {
    for (let ecw = 0; ecw < 3; ecw += 0.1) {
      const fraction = leachingRequirement(ecw, line("avocado").thresholdDsPerM);
      expect(fraction).toBeGreaterThanOrEqual(0);
      expect(fraction).toBeLessThan(1);
    }
    expect(() => leachingRequirement(3.5, line("avocado").thresholdDsPerM)).toThrow(RangeError);
  });
});
