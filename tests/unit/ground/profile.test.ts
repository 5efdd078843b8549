import {
  curveAt,
  curveFromLimits,
  defaultSoilCurve,
  fieldCapacityByDrain,
  profileLayers,
  requireProfile,
  withStones,
  withThetaMapped,
} from "rootledger/ground";
import { describe, expect, test } from "vitest";

const sandyLoam = defaultSoilCurve("sandy loam");
const clay = defaultSoilCurve("clay");
const profile = [
  { toCm: 30, curve: sandyLoam },
  { toCm: 80, curve: clay, stonesFraction: 0.2 },
];

describe("profile", () => {
  test("layers follow horizons and the last one goes on", () => {
    expect(profileLayers(profile, 0, 100).map(({ thicknessCm }) => thicknessCm)).toEqual([30, 70]);
    expect(profileLayers(profile, 20, 50).map(({ curve, thicknessCm }) => [curve.name, thicknessCm])).toEqual([
      ["sandy loam", 10],
      ["stony clay", 20],
    ]);
    expect(profileLayers(profile, 90, 100)).toHaveLength(1);
  });

  test("a boundary belongs to the horizon above", () => {
    expect(curveAt(profile, 30).name).toBe("sandy loam");
    expect(curveAt(profile, 30.01).name).toBe("stony clay");
    expect(curveAt(profile, 500).name).toBe("stony clay");
  });

  test("refuses horizons that do not go down", () => {
    expect(() => requireProfile([])).toThrow(/at least one horizon: got 0/);
    expect(() => requireProfile([profile[1], profile[0]])).toThrow(/got toCm 30 after 80/);
    expect(() => requireProfile([{ toCm: Number.NaN, curve: clay }])).toThrow(/got toCm NaN/);
    expect(() => profileLayers(profile, 50, 50)).toThrow(/fromCm < toCm/);
  });

  test("stones take their share of the water", () => {
    const stony = withStones(clay, 0.2);
    expect(stony.thetaAt(-100)).toBeCloseTo(0.8 * clay.thetaAt(-100), 12);
    expect(withStones(clay, 0)).toBe(clay);
    expect(() => withStones(clay, 1)).toThrow(/stonesFraction in \[0, 1\): got 1/);
  });

  test("sandy loam holds more over clay than over itself, two days after a soaking", () => {
    const over = (below: typeof clay): number =>
      fieldCapacityByDrain([
        { toCm: 30, curve: sandyLoam },
        { toCm: 100, curve: below },
      ]).waterCm;
    expect(over(clay)).toBeGreaterThan(over(sandyLoam));
  });

  test("depths that do not fit the drain's cells are refused", () => {
    expect(() => fieldCapacityByDrain(profile, { depthCm: 31 })).toThrow(/steps of 2.5 cm: got 31/);
    expect(() => fieldCapacityByDrain(profile, { depthCm: 120 })).toThrow(/depthCm <= columnCm: got 120, 100/);
  });
});

describe("curve from measured limits", () => {
  const limits = { fieldCapacity: 0.26, fieldCapacityTensionKPa: 10, wiltingPoint: 0.11 };
  const loam = defaultSoilCurve("loam");

  test("passes through them and keeps the class's large pores and conductivity", () => {
    const mine = curveFromLimits(loam, limits, "my loam");
    expect(mine.thetaAt(-102)).toBeCloseTo(0.26, 12);
    expect(mine.thetaAt(-15300)).toBeCloseTo(0.11, 12);
    expect(mine.thetaSaturated - 0.26).toBeCloseTo(loam.thetaSaturated - loam.thetaAt(-102), 12);
    expect(mine.conductivityAt(-50)).toBe(loam.conductivityAt(-50));
    expect(curveFromLimits(loam, { ...limits, saturation: 0.5 }, "my loam").thetaSaturated).toBeCloseTo(0.5, 12);
  });

  test("refuses limits out of order", () => {
    expect(() => curveFromLimits(loam, { ...limits, wiltingPoint: 0.3 }, "x")).toThrow(/got 0.3, 0.26/);
    expect(() => curveFromLimits(loam, { ...limits, saturation: 0.2 }, "x")).toThrow(/fieldCapacity < saturation/);
    expect(() => curveFromLimits(loam, { ...limits, fieldCapacityTensionKPa: 1500 }, "x")).toThrow(
      /between 0 and 1500/,
    );
  });

  test("a map of water contents must rise and span the curve", () => {
    const flat = [
      { from: 0, to: 0 },
      { from: loam.thetaSaturated, to: 0 },
    ];
    expect(() => withThetaMapped(loam, flat, "x", "x")).toThrow(/knots that rise/);
    expect(() => withThetaMapped(loam, flat.slice(1), "x", "x")).toThrow(/at least two knots/);
    const short = [
      { from: 0, to: 0 },
      { from: 0.3, to: 0.4 },
    ];
    expect(() => withThetaMapped(loam, short, "x", "x")).toThrow(/or less to 0.4595/);
  });
});
