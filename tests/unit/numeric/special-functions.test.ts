import { describe, expect, test } from "vitest";
import { erfc, scaledErfc } from "../../../packages/rootledger/src/numeric/error-function.js";
import { scaledExponentialIntegral } from "../../../packages/rootledger/src/numeric/exponential-integral.js";
import { integrate } from "../../../packages/rootledger/src/numeric/integrate.js";

const expectClose = (ours: number, theirs: number, relative: number): void =>
  expect(Math.abs(ours / theirs - 1), `ours ${ours}, theirs ${theirs}`).toBeLessThanOrEqual(relative);

// 16 digits from a 30-digit computation with mpmath; the first ten agree with Abramowitz & Stegun (1964), tables 7.1 and 5.1.
describe("complementary error function", () => {
  test.each([
    [-3, 1.9999779095030015],
    [-0.5, 1.5204998778130465],
    [0.1, 0.8875370839817152],
    [1, 0.15729920705028513],
    [1.9, 0.00720957076474253],
    [2, 0.004677734981047266],
    [3, 2.209049699858544e-5],
    [5, 1.537459794428035e-12],
    [10, 2.088487583762545e-45],
  ])("erfc(%f)", (x, theirs) => expectClose(erfc(x), theirs, 1e-13));
  test.each([
    [0.1, 0.8964569799691267],
    [1, 0.427583576155807],
    [1.9, 0.26650937366167265],
    [2, 0.25539567631050575],
    [2.1, 0.24511912334517236],
    [10, 0.05614099274382259],
  ])("scaled at %f", (x, theirs) => expectClose(scaledErfc(x), theirs, 1e-13));
  test("refuses the side where the scale overflows", () => {
    expect(() => scaledErfc(-1)).toThrow("scaledErfc requires x of at least 0: got -1");
  });
});

describe("exponential integral, scaled", () => {
  test.each([
    [1e-8, 17.843465267485485],
    [0.01, 4.078511443456426],
    [0.5, 0.9229106324837305],
    [1, 0.5963473623231941],
    [1.4, 0.4712925524860814],
    [1.6, 0.42748797529942806],
    [2, 0.3613286168882226],
    [5, 0.1704221762847322],
    [20, 0.04771854549596084],
    [700, 0.0014265364183008867],
  ])("exp(x) E1(x) at %f", (x, theirs) => expectClose(scaledExponentialIntegral(x), theirs, 1e-13));
  test("refuses zero", () => expect(() => scaledExponentialIntegral(0)).toThrow(RangeError));
});

describe("integral between two points", () => {
  test("one piece is exact for polynomials of degree 22", () => {
    for (let degree = 0; degree <= 22; degree++) {
      expectClose(
        integrate((x) => x ** degree, 0, 1, 1e9),
        1 / (degree + 1),
        1e-14,
      );
    }
    expect(Math.abs(integrate((x) => x ** 24, -1, 1, 1e9) - 2 / 25)).toBeGreaterThan(1e-10);
  });
  test("takes a bend, a peak and an endless end", () => {
    expectClose(
      integrate((x) => Math.abs(x - 0.3), 0, 1),
      0.29,
      1e-10,
    );
    expectClose(
      integrate((x) => 1 / (1e-6 + x * x), -1, 1),
      2000 * Math.atan(1000),
      1e-9,
    );
    expectClose(
      integrate((x) => -Math.log(x), 0, 1),
      1,
      1e-9,
    );
  });
  test("finds a peak at one end that its first points hardly see", () => {
    expectClose(
      integrate((x) => Math.exp(-1000 * x), 0, 40),
      1e-3,
      1e-9,
    );
    expect(integrate((x) => Math.exp(-800 * (1 + x)), 0, 40)).toBeLessThan(1e-290);
    expect(integrate(() => 0, 0, 1)).toBe(0);
  });
  test("refuses what does not settle", () => {
    expect(() => integrate((x) => 1 / x, 0, 1)).toThrow(/a function it can settle|a finite function/);
  });
  test("refuses what is not finite", () => {
    expect(() => integrate(() => Number.NaN, 0, 1)).toThrow(/finite function: got NaN between 0 and 1/);
  });
});
