import { describe, expect, test } from "vitest";
import { bisect } from "../../../packages/rootledger/src/numeric/bisect.js";
import { monotoneCubic } from "../../../packages/rootledger/src/numeric/monotone-cubic.js";
import { solveTridiagonal } from "../../../packages/rootledger/src/numeric/tridiagonal.js";

describe("bisect", () => {
  test("finds a root to the last digit, from either side", () => {
    expect(bisect((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
    expect(bisect((x) => 2 - x * x, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
    expect(bisect((x) => x, 0, 1)).toBe(0);
    expect(bisect((x) => x - 1, 0, 1)).toBe(1);
    expect(bisect((x) => x - 0.5, 0, 1)).toBe(0.5);
  });
  test("needs a change of sign", () => {
    expect(() => bisect((x) => x * x + 1, -1, 1)).toThrow(/change of sign between -1 and 1: got 2 and 2/);
    expect(() => bisect(() => Number.NaN, -1, 1)).toThrow(RangeError);
  });
});

describe("monotone cubic", () => {
  test("straight lines stay straight, also outside", () => {
    const line = monotoneCubic([0, 1, 3], [1, 3, 7]);
    for (const x of [-1, 0, 0.3, 1, 2.2, 3, 5]) {
      expect(line.at(x)).toBeCloseTo(1 + 2 * x, 12);
      expect(line.slopeAt(x)).toBeCloseTo(2, 12);
    }
  });
  test("turns only where the points turn", () => {
    const bump = monotoneCubic([0, 1, 2, 3], [0, 1, 1, 0]);
    expect(bump.slopeAt(1)).toBe(0);
    for (let x = 0; x <= 3; x += 0.01) expect(bump.at(x)).toBeLessThanOrEqual(1 + 1e-12);
  });
  test("refuses what is no table", () => {
    expect(() => monotoneCubic([0], [0])).toThrow(/at least two/);
    expect(() => monotoneCubic([0, 1], [0])).toThrow(/got 2 and 1/);
    expect(() => monotoneCubic([0, 0], [0, 1])).toThrow(/rising x: got 0 after 0/);
  });
});

test("tridiagonal: the second difference of a parabola (exact)", () => {
  // -x[i-1] + 2 x[i] - x[i+1] = -2 with x = i^2 and the known ends moved to the right side.
  const n = 8;
  const lower = new Float64Array(n).fill(-1);
  const diagonal = new Float64Array(n).fill(2);
  const upper = new Float64Array(n).fill(-1);
  const right = new Float64Array(n).fill(-2);
  right[n - 1] += (n + 1) ** 2;
  solveTridiagonal(lower, diagonal, upper, right);
  for (let i = 0; i < n; i++) expect(right[i]).toBeCloseTo((i + 1) ** 2, 10);
});
