import {
  airLimits,
  burnsFraction,
  burnsHalfDepthCm,
  cellwiseFraction,
  gasDiffusivityRatio,
  oxygenDepth,
  oxygenInAirCm2PerH,
  oxygenInAirGPerM3,
  oxygenReach,
  oxygenSolubility,
  q10Factor,
  scotterFraction,
  steadyOxygenAt,
} from "rootledger/water";
import { describe, expect, test } from "vitest";

describe("oxygen by formula", () => {
  test("diffusivity in air 1.8e-5 m2/s at 0 C and 2.1e-5 at 25 C (Hillel 1998, from memory)", () => {
    const m2PerS = (celsius: number) => oxygenInAirCm2PerH(celsius) / 3.6e7;
    expect(m2PerS(0)).toBeCloseTo(1.8e-5, 8);
    expect(m2PerS(25)).toBeCloseTo(2.1e-5, 7);
  });

  test("8.3 mg/L dissolves at 25 C and 10.1 at 15 C (standard tables of saturated fresh water, from memory; within 6 %: Henry constant of two digits, dry air)", () => {
    const dissolved = (celsius: number) => oxygenInAirGPerM3(celsius) * oxygenSolubility(celsius);
    expect(Math.abs(dissolved(25) / 8.26 - 1)).toBeLessThan(0.06);
    expect(Math.abs(dissolved(15) / 10.08 - 1)).toBeLessThan(0.06);
  });

  test("the profile is full at the surface, and both 0 and flat where oxygen ends", () => {
    const soil = { diffusivity: 2, surface: 0.3, demand: 1, decay: 1.5 };
    const end = oxygenDepth(soil);
    expect(steadyOxygenAt(soil, 0)).toBe(0.3);
    expect(steadyOxygenAt(soil, end * 0.9999)).toBeCloseTo(0, 6);
    expect(steadyOxygenAt(soil, end + 1)).toBe(0);
    expect(oxygenReach(1)).toBe(Number.POSITIVE_INFINITY);
    expect(steadyOxygenAt({ ...soil, demand: 0.01 }, 100)).toBeCloseTo(0.3 - 0.01 * 1.125, 8);
  });

  test("arguments out of range are refused", () => {
    expect(() => oxygenReach(0)).toThrow(RangeError);
    expect(() => oxygenDepth({ diffusivity: 0, surface: 1, demand: 1, decay: 1 })).toThrow(/diffusivity/);
    expect(() => steadyOxygenAt({ diffusivity: 1, surface: 1, demand: 1, decay: 1 }, -1)).toThrow(RangeError);
    expect(() => gasDiffusivityRatio("penman", 0.5, 0.4)).toThrow(RangeError);
    expect(() => oxygenInAirGPerM3(90)).toThrow(/-5 to 50 C: got 90/);
    expect(() => q10Factor(0, 20, 20)).toThrow(RangeError);
    expect(gasDiffusivityRatio("buckingham", 0.2, 0.4)).toBeCloseTo(0.04, 12);
  });

  test("every limit has its source", () => {
    for (const { source, figures } of Object.values(airLimits)) {
      expect(source.length).toBeGreaterThan(10);
      expect(figures.length).toBeGreaterThan(0);
    }
  });
});

describe("leaching by formula", () => {
  const soil = { drainageCm: 10, thetaFieldCapacity: 0.25 };

  test("half is leached to 28.1 cm (Burns 1975, his equation)", () => {
    expect(burnsHalfDepthCm(soil)).toBeCloseTo(28.1, 1);
    expect(burnsFraction({ ...soil, depthCm: burnsHalfDepthCm(soil) })).toBeCloseTo(0.5, 12);
  });

  test("thin cells come to the continuous form", () => {
    const cells = (cellCm: number) => cellwiseFraction({ ...soil, depthCm: 30, cellCm });
    expect(cells(1)).toBe(burnsFraction({ ...soil, depthCm: 30 }));
    expect(cells(0.001)).toBeCloseTo(scotterFraction({ ...soil, depthCm: 30 }), 5);
  });

  test("no drainage leaches nothing; a dose worked in counts from its middle", () => {
    expect(burnsFraction({ ...soil, drainageCm: 0, depthCm: 30 })).toBe(0);
    expect(scotterFraction({ ...soil, drainageCm: 0, depthCm: 30 })).toBe(0);
    expect(scotterFraction({ ...soil, depthCm: 30 }, 20)).toBeCloseTo(scotterFraction({ ...soil, depthCm: 20 }), 12);
    expect(() => scotterFraction({ ...soil, depthCm: 30 }, 40)).toThrow(RangeError);
    expect(() => burnsFraction({ ...soil, depthCm: 0 })).toThrow(RangeError);
    expect(() => burnsFraction({ ...soil, thetaFieldCapacity: 25, depthCm: 1 })).toThrow(/thetaFieldCapacity/);
    expect(() => cellwiseFraction({ ...soil, depthCm: 30, cellCm: 0 })).toThrow(RangeError);
  });
});
