import fc from "fast-check";
import { createSketch, type PlainSketch } from "rootledger/chance";
import { describe, expect, test } from "vitest";

const values = (length: { minLength: number; maxLength: number }) =>
  fc.array(fc.oneof(fc.double({ noNaN: true, min: -1e6, max: 1e6 }), fc.integer({ min: -3, max: 3 })), length);

function sketchOf(list: readonly number[]): PlainSketch {
  const sketch = createSketch();
  for (const value of list) sketch.add(value);
  return sketch.plain();
}

const spread = (seed: number, n: number): number[] => {
  let state = seed;
  return Array.from({ length: n }, () => {
    state = (state * 48271) % 2147483647;
    const u = state / 2147483647;
    return (u - 0.4) * Math.exp(8 * u);
  });
};

describe("a sketch", () => {
  test("says the same whatever the order and the split, also past the switch to bins", () => {
    fc.assert(
      fc.property(
        values({ minLength: 1, maxLength: 60 }),
        fc.integer({ min: 1, max: 4 }),
        fc.constantFrom(0, 1000, 1024, 1500),
        (list, parts, more) => {
          const all = [...list, ...spread(11, more)];
          const whole = sketchOf(all);
          const split = Array.from({ length: parts }, (_, k) => sketchOf(all.filter((__, i) => i % parts === k)));
          const merged = createSketch();
          for (const part of split.reverse()) merged.merge(JSON.parse(JSON.stringify(part)));
          expect(merged.plain()).toEqual(whole);
          expect(merged.band(0.05)).toEqual(createSketch(whole).band(0.05));
        },
      ),
      { numRuns: 60 },
    );
  });

  test("changes every sign exactly when its values do", () => {
    fc.assert(
      fc.property(values({ minLength: 1, maxLength: 80 }), fc.constantFrom(0, 1200), (list, more) => {
        const all = [...list, ...spread(5, more)];
        const one = createSketch(sketchOf(all)).band(0.05);
        const other = createSketch(sketchOf(all.map((value) => -value))).band(0.05);
        expect(other.low === -one.high && other.high === -one.low && other.median === -one.median).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  // Hyndman & Fan (1996), The American Statistician 50:361-365, type 7: linear at (n - 1) share.
  test("keeps small sets exactly: 1 to 21 has its fifth percentile at 2", () => {
    const band = createSketch(sketchOf(Array.from({ length: 21 }, (_, i) => i + 1))).band(0.05);
    expect(band).toEqual({ low: 2, median: 11, high: 20 });
    expect(createSketch(sketchOf([1, 2, 3, 10])).band(0.05)).toEqual({
      low: 1 + 0.05 * 3,
      median: 2.5,
      high: 10 - 0.05 * 3 * 7,
    });
  });

  test("is right within 0.1 % of the value beyond 1,024 values", () => {
    const list = spread(3, 20_000);
    const sorted = [...list].sort((a, b) => a - b);
    const band = createSketch(sketchOf(list)).band(0.05);
    const near = (ours: number, exact: number) => expect(Math.abs(ours / exact - 1)).toBeLessThan(1.1e-3);
    near(band.low, sorted[999]! + 0.95 * (sorted[1000]! - sorted[999]!));
    near(band.median, (sorted[9999]! + sorted[10_000]!) / 2);
    near(band.high, sorted[19_000]! - 0.95 * (sorted[19_000]! - sorted[18_999]!));
  });

  test("hardly grows once its bins are there: three times the values, under 1.4 times the bins", () => {
    const sizeAfter = (n: number): number => sketchOf(spread(9, n)).bins.length / 2;
    expect(sizeAfter(300_000)).toBeLessThan(1.4 * sizeAfter(100_000));
    expect(sizeAfter(300_000)).toBeLessThan(12_000);
  });

  test("refuses a value that is not finite, and has nothing to say when empty", () => {
    expect(() => createSketch().add(Number.NaN)).toThrow(RangeError);
    expect(createSketch().band(0.05)).toEqual({ low: Number.NaN, median: Number.NaN, high: Number.NaN });
  });
});
