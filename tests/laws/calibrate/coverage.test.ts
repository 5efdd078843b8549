import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { boundedFit, dampedLeastSquares, fitSpread } from "rootledger/calibrate";
import { expect, test } from "vitest";
import { chanceStream } from "../../../packages/rootledger/src/numeric/chance-stream.js";

const leastSquares = dampedLeastSquares(levenbergMarquardt);
const readings = 160;
const sigma = 0.02;
const share = 0.9;

/** A drying column and a slow wave: two unknowns, neither linear. */
const modelAt = (lnRate: number, gain: number): number[] =>
  Array.from(
    { length: readings },
    (_, i) => 0.15 + 0.2 * Math.exp((-Math.exp(lnRate) * (i % 40)) / 40) + gain * Math.sin(i / 9),
  );

/**
 * Truths drawn from what is expected, noise first-order autoregressive: how often the 90 % interval holds the truth. The binomial
 * spread of 2 x 600 cases about 0.90 is 0.009, so 0.86 to 0.94 leaves another 0.015 for what t and the slopes leave out.
 */
test.each([0, 0.5, 0.8])(
  "90 %% intervals hold nine truths in ten, noise correlated by %f from reading to reading",
  (r) => {
    const { normal } = chanceStream(20261125, 0, `noise ${r}`);
    let held = 0;
    let sumOfWidths = 0;
    const cases = 600;
    for (let k = 0; k < cases; k++) {
      const truth = { lnRate: 0.4 * normal(), gain: 0.02 + 0.02 * normal() };
      let noise = sigma * normal();
      const read = modelAt(truth.lnRate, truth.gain).map((theta) => {
        noise = r * noise + Math.sqrt(1 - r * r) * sigma * normal();
        return theta + noise;
      });
      const ofValues = (values: Readonly<Record<string, number>>) => modelAt(values.lnRate ?? 0, values.gain ?? 0);
      const unknowns = [
        { name: "lnRate", expected: 0, spread: 0.4 },
        { name: "gain", expected: 0.02, spread: 0.02 },
      ];
      const fit = boundedFit(unknowns, read, sigma, { leastSquares, iterations: 15 }, ofValues);
      const at = (z: readonly number[]) => modelAt(0.4 * (z[0] ?? 0), 0.02 + 0.02 * (z[1] ?? 0));
      const best = at(fit.spreads);
      const columns = [0, 1].map((u) => {
        const up = at(fit.spreads.map((z, i) => (i === u ? z + 0.01 : z)));
        const down = at(fit.spreads.map((z, i) => (i === u ? z - 0.01 : z)));
        return up.map((value, i) => (value - (down[i] ?? 0)) / 0.02);
      });
      const spread = fitSpread(
        {
          residuals: best.map((value, i) => value - (read[i] ?? 0)),
          slopes: best.map((_, i) => columns.map((column) => column[i] ?? 0)),
          series: read.map(() => 0),
          atH: read.map((_, i) => 24 * i),
          sigma,
        },
        share,
      );
      [truth.lnRate / 0.4, (truth.gain - 0.02) / 0.02].forEach((z, u) => {
        const half = spread.halfWidths[u] ?? 0;
        sumOfWidths += half;
        if (Math.abs((fit.spreads[u] ?? 0) - z) <= half) held++;
      });
    }
    const covered = held / (2 * cases);
    console.log(
      `noise correlated by ${r}: 90 % intervals held ${(100 * covered).toFixed(1)} % of 1200 truths, mean half width ${(sumOfWidths / (2 * cases)).toFixed(2)} spreads`,
    );
    expect(covered).toBeGreaterThanOrEqual(0.86);
    expect(covered).toBeLessThanOrEqual(0.94);
  },
);

test("readings that tell too little leave the intervals of what was expected; series out of order are refused", () => {
  const few = { residuals: [0.01, 0.01], slopes: [[1], [1]], series: [0, 0], atH: [0, 24], sigma };
  const spread = fitSpread(few, share);
  expect(spread.enough).toBe(false);
  // The normal's 0.95 quantile.
  expect(spread.halfWidths[0]).toBeCloseTo(1.6449, 4);
  expect(() => fitSpread({ ...few, atH: [24, 0] }, share)).toThrow(/in time order/);
});
