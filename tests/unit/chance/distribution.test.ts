import { type Distribution, drawMaker, type Priors, quantileOf } from "rootledger/chance";
import { describe, expect, test } from "vitest";

describe("quantiles of a distribution", () => {
  test.each<[Distribution, number, number]>([
    [{ kind: "uniform", from: 2, to: 6 }, 0.25, 3],
    [{ kind: "log-uniform", from: 0.1, to: 10 }, 0.5, 1],
    // Triangular on 0, 1, 4: F(1) = 1/4, F(x) = 1 - (4 - x)^2 / 12 above the mode.
    [{ kind: "triangular", from: 0, mode: 1, to: 4 }, 0.25, 1],
    [{ kind: "triangular", from: 0, mode: 1, to: 4 }, 1 - 1 / 12, 3],
    [{ kind: "choice", values: [5, 7], weights: [1, 3] }, 0.24, 5],
    [{ kind: "choice", values: [5, 7], weights: [1, 3] }, 0.25, 7],
    // Printed normal table: 97.5 % below 1.959964.
    [{ kind: "normal", mean: 10, deviation: 2, from: -90, to: 110 }, 0.975, 13.919928],
  ])("%j at %d", (spread, share, value) => {
    expect(quantileOf(spread, share)).toBeCloseTo(value, 5);
  });

  test.each<Distribution>([
    { kind: "uniform", from: 1, to: 3 },
    { kind: "log-uniform", from: 1, to: 3 },
    { kind: "triangular", from: 1, mode: 3, to: 3 },
    { kind: "normal", mean: 9, deviation: 2, from: 1, to: 3 },
  ])("ends of %j are its bounds", (spread) => {
    expect(quantileOf(spread, 0)).toBeCloseTo(1, 9);
    expect(quantileOf(spread, 1)).toBeCloseTo(3, 9);
  });

  test.each<[Distribution, RegExp]>([
    [{ kind: "uniform", from: 3, to: 3 }, /from below to/],
    [{ kind: "log-uniform", from: 0, to: 3 }, /above 0/],
    [{ kind: "triangular", from: 0, mode: 4, to: 3 }, /mode within/],
    [{ kind: "normal", mean: 0, deviation: 0, from: -1, to: 1 }, /deviation above 0/],
    [{ kind: "choice", values: [], weights: [] }, /at least one/],
    [{ kind: "choice", values: [1], weights: [-1] }, /weights above 0/],
  ])("%j is refused", (spread, rule) => {
    const priors: Priors = { unknowns: [{ id: "kcb", unit: "factor", spread, source: "test" }], correlations: [] };
    expect(() => drawMaker({ kind: "priors", priors, seed: 1 })).toThrow(rule);
  });
});
