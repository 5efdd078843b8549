import { elementaryEffects, morrisDesign, sobolDesign, sobolIndices } from "rootledger/chance";
import { describe, expect, test } from "vitest";

type Model = (x: Float64Array) => number;

function answersAt(points: Float64Array, unknowns: number, model: Model): Float64Array {
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
const g: Model = (u) => coefficients.reduce((product, a, i) => product * ((Math.abs(4 * u[i]! - 2) + a) / (1 + a)), 1);

const seeds = 40;
const base = 1024;

/**
 * The mean of an index over independent seeds lies within three of its own standard errors of the published value, and that
 * error is small enough for this to say something. Both estimators divide by an estimated variance, a bias of about one over
 * the base, far below the errors here.
 */
function expectPublished(unknowns: number, model: Model, published: readonly (readonly [number, number])[]): void {
  const runs = Array.from({ length: seeds }, (_, seed) => {
    const design = sobolDesign(unknowns, base, seed);
    return sobolIndices(design, answersAt(design.points, unknowns, model));
  });
  published.forEach((pair, i) => {
    (["first", "total"] as const).forEach((kind, k) => {
      const found = runs.map((run) => run[i]![kind]);
      const mean = found.reduce((sum, value) => sum + value, 0) / seeds;
      const variance = found.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (seeds - 1);
      const standardError = Math.sqrt(variance / seeds);
      expect(standardError).toBeLessThan(0.01);
      expect(Math.abs(mean - pair[k]!), `${kind} of unknown ${i}: ${mean}`).toBeLessThan(3 * standardError + 5e-5);
    });
  });
}

describe("Sobol indices", () => {
  // Analytic, as printed to four digits (hence 5e-5): Saltelli et al. (2008), the Primer, from memory; they follow from
  // V = a^2/8 + b pi^4/5 + b^2 pi^8/18 + 1/2, V1 = (1 + b pi^4/5)^2 / 2, V2 = a^2/8, V13 = b^2 pi^8 (1/18 - 1/50).
  test("of the Ishigami function are the analytic ones", () => {
    const [a, b] = [7, 0.1];
    const v1 = (1 + (b * Math.PI ** 4) / 5) ** 2 / 2;
    const v2 = a ** 2 / 8;
    const v13 = b ** 2 * Math.PI ** 8 * (1 / 18 - 1 / 50);
    const whole = a ** 2 / 8 + (b * Math.PI ** 4) / 5 + (b ** 2 * Math.PI ** 8) / 18 + 1 / 2;
    const printed = [
      [0.3139, 0.5576],
      [0.4424, 0.4424],
      [0, 0.2437],
    ] as const;
    [
      [v1, v1 + v13],
      [v2, v2],
      [0, v13],
    ].forEach(([first, total], i) => {
      expect(Math.abs(first! / whole - printed[i]![0])).toBeLessThan(6e-5);
      expect(Math.abs(total! / whole - printed[i]![1])).toBeLessThan(6e-5);
    });
    expectPublished(3, ishigami, printed);
  });

  test("of the g function are the analytic ones: V_i = 1 / (3 (1 + a_i)^2), V = product of (1 + V_i) less 1", () => {
    const parts = coefficients.map((a) => 1 / (3 * (1 + a) ** 2));
    const whole = parts.reduce((product, v) => product * (1 + v), 1) - 1;
    expectPublished(
      8,
      g,
      parts.map((v) => [v / whole, (v * ((whole + 1) / (1 + v))) / whole]),
    );
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
    const line: Model = ([x, y, z]) => 2 * x! - 5 * y! + 0 * z!;
    const effects = elementaryEffects(design, answersAt(design.points, 3, line));
    expect(effects.map(({ mean }) => Math.round(mean * 1e9) / 1e9)).toEqual([2, -5, 0]);
    expect(effects.map(({ meanAbsolute }) => Math.round(meanAbsolute * 1e9) / 1e9)).toEqual([2, 5, 0]);
    for (const { deviation } of effects) expect(deviation).toBeLessThan(1e-9);
  });

  // Exact over the grid's 4 levels and steps of 2/3, worked out by hand: x y has effects y over {0, 1/3, 2/3, 1}, mean 1/2.
  test("of a product finds the mean of the other factor, and its spread as interaction", () => {
    const design = morrisDesign(2, 4000, "product");
    const [x, y] = elementaryEffects(
      design,
      answersAt(design.points, 2, ([a, b]) => a! * b!),
    );
    const gridDeviation = Math.sqrt(5 / 36);
    const threeErrors = (3 * gridDeviation) / Math.sqrt(4000);
    for (const { mean, deviation } of [x!, y!]) {
      expect(Math.abs(mean - 0.5)).toBeLessThan(threeErrors);
      expect(Math.abs(deviation - gridDeviation)).toBeLessThan(threeErrors);
    }
  });

  test("keeps every point on the grid of four levels and moves one unknown at a time", () => {
    const { points, unknowns } = morrisDesign(4, 5, "grid");
    for (const value of points) expect([0, 1, 2, 3].some((level) => Math.abs(3 * value - level) < 1e-9)).toBe(true);
    for (let row = 0; row < points.length / unknowns - 1; row++) {
      if (row % (unknowns + 1) === unknowns) continue;
      const at = (r: number, i: number): number => points[r * unknowns + i]!;
      const moves = Array.from({ length: unknowns }, (_, i) => Math.abs(at(row + 1, i) - at(row, i)));
      expect(moves.filter((move) => move > 1e-9).map((move) => move.toFixed(6))).toEqual(["0.666667"]);
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
