import { describe, expect, test } from "vitest";
import { erfc } from "../../packages/rootledger/src/numeric/error-function.js";
import { type ColumnRun, runColumn } from "./solute-column.js";

const spread = (alongCm: number) => ({ alongCm, acrossCm: 0, inWaterCm2PerH: 0 });

/**
 * Content of the soil water under a flux-type inlet: Lindstrom et al. (1967); van Genuchten & Alves (1982), USDA Technical
 * Bulletin 1661, solution A2 (formula from memory).
 */
function resident(x: number, t: number, v: number, d: number): number {
  const root = 2 * Math.sqrt(d * t);
  const far = (x + v * t) / root;
  const tail = (1 + (v * x) / d + (v * v * t) / d) * Math.exp((v * x) / d) * erfc(far);
  return (
    0.5 * erfc((x - v * t) / root) +
    Math.sqrt((v * v * t) / (Math.PI * d)) * Math.exp(-((x - v * t) ** 2) / (4 * d * t)) -
    0.5 * tail
  );
}

/** Content of the water that passes a depth: Ogata & Banks (1961), USGS Professional Paper 411-A. */
function passing(x: number, t: number, v: number, d: number): number {
  const root = 2 * Math.sqrt(d * t);
  return 0.5 * (erfc((x - v * t) / root) + Math.exp((v * x) / d) * erfc((x + v * t) / root));
}

const base: ColumnRun = {
  layerCm: 10,
  layers: 12,
  theta: 0.3,
  fluxCmPerH: 0.15,
  hours: 80,
  spreading: spread(2),
};

describe("solute front in a column, against the advection-dispersion equation", () => {
  test.each([
    [2, 1.25],
    [2, 2.5],
    [5, 2.5],
    [10, 2.5],
  ])(
    "dispersivity %d cm on slices of %d cm: van Genuchten & Alves (1982) A2 within 0.01 of the inlet's content",
    (alongCm, sliceCm) => {
      const { depthCm, content } = runColumn({ ...base, spreading: spread(alongCm), sliceCm });
      const v = base.fluxCmPerH / base.theta;
      const worst = depthCm.map((x, s) => Math.abs(content[s] - resident(x, base.hours, v, v * alongCm)));
      expect(Math.max(...worst)).toBeLessThan(0.01);
    },
  );

  test("what passes 60 cm follows Ogata & Banks (1961): 1 % of the pore volume", () => {
    const v = base.fluxCmPerH / base.theta;
    const hours = 150;
    const { sums } = runColumn({ ...base, hours, rootedLayers: 6 });
    let passed = 0;
    for (let t = 0.25; t < hours; t += 0.5) passed += passing(60, t, v, v * 2) * 0.5 * base.fluxCmPerH;
    expect(Math.abs(sums.belowRootsMg - passed)).toBeLessThan(0.01 * 60 * base.theta);
  });

  test.each([5, 10, 15, 30, 60])(
    "layers of %d cm give the same: leached of a dose in the top 5 cm, within 0.01",
    (layerCm) => {
      // The dose lies in the top 5 cm, two slices; the reference are slices of 0.625 cm.
      const at = (sliceCm: number, cm: number): number => {
        const run = {
          ...base,
          layerCm: cm,
          layers: 120 / cm,
          sliceCm,
          inContent: 0,
          hours: 100,
          start: (_: number, s: number) => (s < Math.round(5 / sliceCm) ? 1 : 0),
          rootedLayers: 60 / cm,
        };
        const { sums, startMg } = runColumn(run);
        return sums.belowRootsMg / startMg;
      };
      const fine = at(0.625, 5);
      expect(fine).toBeGreaterThan(0.2);
      expect(fine).toBeLessThan(0.8);
      expect(Math.abs(at(2.5, layerCm) - fine)).toBeLessThan(0.01);
    },
  );

  test("books close to rounding and nothing overshoots, even without dispersion", () => {
    const run = runColumn({ ...base, spreading: spread(0), hours: 60 });
    expect(Math.abs(run.residual)).toBeLessThan(1e-12 * run.sums.enteredMg[0]);
    expect(Math.max(...run.content)).toBeLessThanOrEqual(1 + 1e-12);
    expect(Math.min(...run.content)).toBeGreaterThanOrEqual(-1e-15);
    const v = base.fluxCmPerH / base.theta;
    const front = run.depthCm.filter((_, s) => run.content[s] > 0.05 && run.content[s] < 0.95).length;
    expect(front).toBeLessThanOrEqual(5);
    const reached = run.endMg / base.theta;
    expect(reached).toBeCloseTo(v * 60, 8);
  });
});
