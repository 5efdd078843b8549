import { carselParrishCurve, type MeasuredPoint, measuredCurve } from "rootledger/ground";
import { describe, expect, test } from "vitest";

const points: MeasuredPoint[] = [
  { headCm: 0, theta: 0.45, conductivityCmPerH: 1 },
  { headCm: -10, theta: 0.43, conductivityCmPerH: 0.5 },
  { headCm: -100, theta: 0.3, conductivityCmPerH: 0.01 },
  { headCm: -1000, theta: 0.2, conductivityCmPerH: 0.0001 },
];
const curve = measuredCurve("mine", points, "laboratory");

describe("measured curve", () => {
  test("passes through its points", () => {
    for (const point of points) {
      expect(curve.thetaAt(point.headCm)).toBeCloseTo(point.theta, 12);
      expect(curve.conductivityAt(point.headCm)).toBeCloseTo(point.conductivityCmPerH, 12);
    }
  });

  test("goes on drying beyond its last point towards 0", () => {
    expect(curve.thetaAt(-15300)).toBeLessThan(0.2);
    expect(curve.thetaAt(-15300)).toBeGreaterThan(0);
    expect(curve.conductivityAt(-15300)).toBeLessThan(0.0001);
    expect(curve.conductivityAt(-15300)).toBeGreaterThan(0);
  });

  test("with 30 points of a van Genuchten loam it stays within 0.0005 of it between them", () => {
    const loam = carselParrishCurve("loam", "raw");
    const heads = [0, ...Array.from({ length: 29 }, (_, i) => -(10 ** (-1 + i * 0.19)))];
    const copy = measuredCurve(
      "copy",
      heads.map((headCm) => ({
        headCm,
        theta: loam.thetaAt(headCm),
        conductivityCmPerH: loam.conductivityAt(headCm),
      })),
      "van Genuchten",
    );
    for (let x = -1; x < 4.3; x += 0.013) {
      expect(Math.abs(copy.thetaAt(-(10 ** x)) - loam.thetaAt(-(10 ** x)))).toBeLessThan(0.0005);
    }
  });

  const broken: [string, MeasuredPoint[], RegExp][] = [
    ["one point", points.slice(0, 1), /at least two points: got 1/],
    ["no point at saturation", points.slice(1), /headCm 0 in the first point: got -10/],
    ["heads out of order", [points[0], points[2], points[1]], /headCm falling from point 1 to 2: got -100, -10/],
    ["theta that does not fall", [points[0], { ...points[1], theta: 0.45 }], /theta falling from point 0 to 1/],
    ["theta of 1", [{ ...points[0], theta: 1 }, points[1]], /theta between 0 and 1 in point 0: got 1/],
    ["K that rises", [points[0], { ...points[1], conductivityCmPerH: 2 }], /not rising from point 0 to 1: got 1, 2/],
    ["K of 0", [points[0], { ...points[1], conductivityCmPerH: 0 }], /above 0 in point 1: got 0/],
    [
      "a head that is no number",
      [points[0], { ...points[1], headCm: Number.NaN }],
      /finite headCm in point 1: got NaN/,
    ],
  ];
  test.each(broken)("refuses %s", (_, table, message) => {
    expect(() => measuredCurve("mine", table, "laboratory")).toThrow(message);
  });
});
