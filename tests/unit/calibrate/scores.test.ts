import { dayBlocks, fitScores, parseMoisture } from "rootledger/calibrate";
import { expect, test } from "vitest";

/**
 * By hand from the definitions: Nash & Sutcliffe (1970), J. Hydrology 10:282-290, eq. 3; Gupta et al. (2009), J. Hydrology 377:80-91,
 * eqs 9 and 10.
 */
test("twice the readings: correlation 1, both ratios 2", () => {
  const scores = fitScores([1, 2, 3], [2, 4, 6]);
  // Misses 1, 2, 3: mean square 14/3; spread about the mean 2/3.
  expect(scores.rmse).toBeCloseTo(Math.sqrt(14 / 3), 12);
  expect(scores.bias).toBeCloseTo(2, 12);
  expect(scores.nse).toBeCloseTo(1 - 14 / 2, 12);
  expect(scores.kge).toBeCloseTo(1 - Math.SQRT2, 12);
});

test("four readings worked by hand", () => {
  // Readings 0.20 0.30 0.25 0.35, mean 0.275; model 0.22 0.28 0.27 0.33, mean 0.275.
  // Misses 0.02 -0.02 0.02 -0.02: mean square 0.0004, sum of squares 0.0016; readings' sum of squares 0.0125; model's 0.0061;
  // products 0.004125 + 0.000125 + 0.000125 + 0.004125 = 0.0085.
  const scores = fitScores([0.2, 0.3, 0.25, 0.35], [0.22, 0.28, 0.27, 0.33]);
  expect(scores.rmse).toBeCloseTo(0.02, 12);
  expect(scores.bias).toBeCloseTo(0, 12);
  expect(scores.nse).toBeCloseTo(1 - 0.0016 / 0.0125, 12);
  const correlation = 0.0085 / Math.sqrt(0.0125 * 0.0061);
  const spreads = Math.sqrt(0.0061 / 0.0125);
  expect(scores.kge).toBeCloseTo(1 - Math.sqrt((correlation - 1) ** 2 + (spreads - 1) ** 2), 12);
});

test("the mean of the readings has an efficiency of 0, the readings themselves of 1", () => {
  expect(fitScores([1, 2, 6], [3, 3, 3]).nse).toBeCloseTo(0, 12);
  expect(fitScores([1, 2, 6], [1, 2, 6])).toEqual({ count: 3, rmse: 0, bias: 0, nse: 1, kge: 1 });
});

test("a missing reading is left out, a model without a value is refused", () => {
  expect(fitScores([1, Number.NaN, 3], [1, 9, 3]).count).toBe(2);
  expect(() => fitScores([1, 2], [1, Number.NaN])).toThrow(/finite model values: got NaN at 1/);
  expect(() => fitScores([Number.NaN], [1])).toThrow(/requires a reading/);
  expect(() => fitScores([1, 2], [1])).toThrow(/as many model values/);
  expect(fitScores([2, 2], [1, 3]).nse).toBeNaN();
});

test("blocks take turns and cover every day once", () => {
  const blocks = dayBlocks(95, 30);
  expect(blocks.map(({ use }) => use)).toEqual(["train", "test", "train", "test"]);
  expect(blocks.at(-1)).toEqual({ from: 90, to: 95, use: "test" });
  expect(() => dayBlocks(10, 0)).toThrow(/whole days and blocks/);
});

const season = { startDate: "2026-01-01", days: 3 };
const header = "time,depthCm,fromLineCm,theta";

test("reads a file of readings and counts those that are missing", () => {
  const text = `\uFEFF${header}\n2026-01-01T06:00,20,10,0.31\n2026-01-02 12:30,50,-5,\n2026-01-03T24:00,50,-5,0.4\n`;
  expect(parseMoisture(text, season)).toEqual({
    ok: true,
    missing: 1,
    readings: [
      { hour: 6, depthCm: 20, fromLineCm: 10, theta: 0.31 },
      { hour: 72, depthCm: 50, fromLineCm: -5, theta: 0.4 },
    ],
  });
});

test.each([
  ["", "empty-file", ""],
  ["time,depthCm,theta\n1,2,3\n", "missing-column", "line 1"],
  [`${header},flag\na,b,c,d,e\n`, "unknown-column", "line 1"],
  [`${header}\n2026-01-01T06:00,20,10\n`, "wrong-cell-count", "line 2"],
  [`${header}\n2026-02-30T06:00,20,10,0.3\n`, "not-a-time", "line 2, time"],
  [`${header}\n1 Jan,20,10,0.3\n`, "not-a-time", "line 2, time"],
  [`${header}\n2026-01-05T06:00,20,10,0.3\n`, "outside-season", "line 2, time"],
  [`${header}\n2026-01-01T06:00,20 cm,10,0.3\n`, "not-a-number", "line 2, depthCm"],
  [`${header}\n2026-01-01T06:00,20,10,31\n`, "out-of-range", "line 2, theta"],
])("names what is wrong with a file: %j", (text, code, path) => {
  const parsed = parseMoisture(text, season);
  expect(!parsed.ok && parsed.faults[0]).toMatchObject({ code, path });
});
