import {
  defaultPriors,
  elementaryEffects,
  morrisDesign,
  sobolDesign,
  sobolIndices,
  whatToMeasure,
} from "rootledger/chance";
import { describe, expect, test } from "vitest";
import { scenarioWith } from "../../support/scenario.js";

function answersAt(points: Float64Array, unknowns: number, model: (x: Float64Array) => number): Float64Array {
  const answers = new Float64Array(points.length / unknowns);
  for (let row = 0; row < answers.length; row++) {
    answers[row] = model(points.subarray(row * unknowns, (row + 1) * unknowns));
  }
  return answers;
}

/** Ishigami & Homma (1990), with the constants of Saltelli et al. (2008), Global Sensitivity Analysis: The Primer: a 7, b 0.1. */
function ishigami(u: Float64Array): number {
  const [x1, x2, x3] = Array.from(u, (share) => Math.PI * (2 * share - 1)) as [number, number, number];
  return Math.sin(x1) + 7 * Math.sin(x2) ** 2 + 0.1 * x3 ** 4 * Math.sin(x1);
}

/** The g function of Saltelli & Sobol' (1995), with the coefficients of the Primer. */
const coefficients = [0, 1, 4.5, 9, 99, 99, 99, 99];
const g = (u: Float64Array): number =>
  coefficients.reduce((product, a, i) => product * ((Math.abs(4 * u[i]! - 2) + a) / (1 + a)), 1);

/** Estimates from 8192 random rows; four standard errors of a first-order index are about 0.05 at most (from repeats). */
const base = 8192;

describe("Sobol indices", () => {
  test("of the Ishigami function are the analytic ones, as printed to four digits", () => {
    const design = sobolDesign(3, base, "ishigami");
    const found = sobolIndices(design, answersAt(design.points, 3, ishigami));
    [
      [0.3139, 0.5576],
      [0.4424, 0.4424],
      [0, 0.2437],
    ].forEach(([first, total], i) => {
      expect(Math.abs(found[i]!.first - first!)).toBeLessThan(0.05);
      expect(Math.abs(found[i]!.total - total!)).toBeLessThan(0.05);
    });
  });

  test("of the g function are the analytic ones: V_i = 1 / (3 (1 + a_i)^2)", () => {
    const design = sobolDesign(8, base, "g");
    const found = sobolIndices(design, answersAt(design.points, 8, g));
    const parts = coefficients.map((a) => 1 / (3 * (1 + a) ** 2));
    const whole = parts.reduce((product, v) => product * (1 + v), 1) - 1;
    parts.forEach((v, i) => {
      expect(Math.abs(found[i]!.first - v / whole)).toBeLessThan(0.05);
      const total = (v * ((whole + 1) / (1 + v))) / whole;
      expect(Math.abs(found[i]!.total - total)).toBeLessThan(0.05);
    });
  });

  test("leave out rows without an answer, and refuse too few answers", () => {
    const design = sobolDesign(3, 4000, "gaps");
    const answers = answersAt(design.points, 3, ishigami);
    answers[7] = Number.NaN;
    for (const { first, total } of sobolIndices(design, answers)) expect(Number.isFinite(first + total)).toBe(true);
    expect(() => sobolIndices(design, answers.subarray(1))).toThrow(RangeError);
    expect(sobolIndices(design, new Float64Array(answers.length))[0]).toEqual({ first: 0, total: 0 });
  });
});

describe("Morris screening", () => {
  test("of a straight line finds its slopes exactly and no curvature", () => {
    const design = morrisDesign(3, 6, "line");
    const effects = elementaryEffects(
      design,
      answersAt(design.points, 3, ([x, y, z]) => 2 * x! - 5 * y! + 0 * z!),
    );
    expect(effects.map(({ mean }) => Math.round(mean * 1e9) / 1e9)).toEqual([2, -5, 0]);
    expect(effects.map(({ meanAbsolute }) => Math.round(meanAbsolute * 1e9) / 1e9)).toEqual([2, 5, 0]);
    for (const { deviation } of effects) expect(deviation).toBeLessThan(1e-9);
  });

  test("keeps every point on the grid of four levels and moves one unknown at a time", () => {
    const { points, unknowns } = morrisDesign(4, 5, "grid");
    for (const value of points) expect([0, 1, 2, 3].some((level) => Math.abs(3 * value - level) < 1e-9)).toBe(true);
    for (let row = 0; row < points.length / unknowns - 1; row++) {
      if (row % (unknowns + 1) === unknowns) continue;
      const moved = Array.from({ length: unknowns }, (_, i) => points[(row + 1) * unknowns + i]! - points[row * unknowns + i]!);
      expect(moved.filter((change) => Math.abs(change) > 1e-9).map((change) => Math.abs(change).toFixed(6))).toEqual([
        "0.666667",
      ]);
    }
  });

  // Saltelli et al. (2008), the Primer: the smaller a coefficient, the more its unknown matters.
  test("ranks the unknowns of the g function by their coefficients", () => {
    const design = morrisDesign(8, 200, "rank");
    const effects = elementaryEffects(design, answersAt(design.points, 8, g)).map(({ meanAbsolute }) => meanAbsolute);
    expect(effects[0]!).toBeGreaterThan(effects[1]!);
    expect(effects[1]!).toBeGreaterThan(effects[2]!);
    expect(effects[2]!).toBeGreaterThan(effects[3]!);
    expect(effects[3]!).toBeGreaterThan(Math.max(...effects.slice(4)));
  });
});

test("every default unknown has words for what to measure and how", () => {
  const { soil, block } = scenarioWith();
  for (const { id } of defaultPriors({ block, soils: [soil] }, { weatherYears: 2 }).unknowns) {
    expect(whatToMeasure[id].how.length).toBeGreaterThan(20);
  }
});
