import { type Correlation, drawMaker, type Prior, type UnknownId } from "rootledger/chance";
import { describe, expect, test } from "vitest";

const uniform = (id: UnknownId): Prior => ({
  id,
  unit: "factor",
  spread: { kind: "uniform", from: 0, to: 1 },
  source: "test",
});

const drawsOf = (ids: readonly UnknownId[], correlations: readonly Correlation[] = [], seed: string | number = 7) =>
  drawMaker({ kind: "priors", priors: { unknowns: ids.map(uniform), correlations }, seed });

describe("a member's draw", () => {
  test("depends on the seed and the member alone, not on what was drawn before", () => {
    const forward = drawsOf(["kcb", "k-sat"]);
    const backward = drawsOf(["kcb", "k-sat"]);
    const members = [0, 1, 2, 99, 5000];
    const one = members.map((m) => forward(m).values);
    const other = [...members].reverse().map((m) => backward(m).values);
    expect(other.reverse()).toEqual(one);
    expect(drawsOf(["kcb", "k-sat"], [], 8)(0).values).not.toEqual(one[0]);
  });

  test("of one unknown is the same with and without another beside it", () => {
    const alone = drawsOf(["kcb"]);
    const beside = drawsOf(["k-sat", "kcb"]);
    for (let m = 0; m < 20; m++) expect(beside(m).values[1]).toBe(alone(m).values[0]);
  });

  test("is uniform where the prior is: deciles of 4000 members within five standard errors", () => {
    const draw = drawsOf(["kcb"]);
    const counts = new Array<number>(10).fill(0);
    for (let m = 0; m < 4000; m++) counts[Math.floor(10 * draw(m).values[0]!)]!++;
    for (const count of counts) expect(Math.abs(count - 400)).toBeLessThan(5 * Math.sqrt(4000 * 0.1 * 0.9));
  });

  // Spearman's rank correlation of a Gaussian copula: (6/pi) asin(r/2) (Nelsen 2006, An Introduction to Copulas, ex. 5.1.2).
  test.each([-0.8, -0.3, 0.5])("correlated by r %d has the rank correlation of the copula", (r) => {
    const draw = drawsOf(["kcb", "k-sat"], [{ a: "kcb", b: "k-sat", r }]);
    const n = 4000;
    let sum = 0;
    for (let m = 0; m < n; m++) {
      const [u, v] = draw(m).values;
      sum += (u! - 0.5) * (v! - 0.5);
    }
    expect(Math.abs((12 * sum) / n - (6 / Math.PI) * Math.asin(r / 2))).toBeLessThan(5 / Math.sqrt(n));
  });

  test("comes from the user's own table row by row", () => {
    const draw = drawMaker({ kind: "own", ids: ["kcb", "k-sat"], values: Float64Array.of(0.9, 2, 1.1, 0.5) });
    expect(draw(1)).toEqual({ member: 1, ids: ["kcb", "k-sat"], values: Float64Array.of(1.1, 0.5) });
    expect(() => draw(2)).toThrow(/below 2/);
  });

  test.each<[string, () => unknown, RegExp]>([
    ["an unknown twice", () => drawsOf(["kcb", "kcb"]), /kcb twice/],
    [
      "a correlation with an absent unknown",
      () => drawsOf(["kcb"], [{ a: "kcb", b: "k-sat", r: 0.1 }]),
      /its unknowns/,
    ],
    ["a correlation of 1", () => drawsOf(["kcb", "k-sat"], [{ a: "kcb", b: "k-sat", r: 1 }]), /between -1 and 1/],
    [
      "correlations that contradict one another",
      () =>
        drawsOf(
          ["kcb", "k-sat", "structure"],
          [
            { a: "kcb", b: "k-sat", r: 0.9 },
            { a: "k-sat", b: "structure", r: 0.9 },
            { a: "kcb", b: "structure", r: -0.9 },
          ],
        ),
      /hold together/,
    ],
    [
      "a table with half a row",
      () => drawMaker({ kind: "own", ids: ["kcb", "k-sat"], values: Float64Array.of(1) }),
      /whole rows/,
    ],
  ])("%s is refused", (_, make, rule) => {
    expect(make).toThrow(rule);
  });
});
