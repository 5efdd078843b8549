import { osmoticTensionKPa, saxtonRawls, saxtonRawlsGravel, textureCentre } from "rootledger/ground";
import { describe, expect, test } from "vitest";
import { expectRelative, expectWithin } from "./near.js";
import { soilChecks } from "./soil-data.js";

// biome-ignore lint/suspicious/noExplicitAny: the fields of the check file.
const soilOf = (inputs: any) =>
  saxtonRawls({
    sandFraction: inputs.sandPercent / 100,
    clayFraction: inputs.clayPercent / 100,
    organicMatterFraction: inputs.organicMatterPercent / 100,
    densityFactor: inputs.densityFactor ?? 1,
  });

describe("Saxton & Rawls (2006)", () => {
  test.each(soilChecks("saxton-rawls-class"))("%s", (_, { inputs, expected, tolerance }) => {
    const soil = soilOf(inputs);
    const { percent, kSatMmPerH, densityGPerCm3 } = tolerance;
    expectWithin(100 * soil.theta1500, expected.wiltingPercent, percent, "wilting");
    expectWithin(100 * soil.theta33, expected.fieldCapacityPercent, percent, "field capacity");
    expectWithin(100 * soil.thetaSaturated, expected.saturationPercent, percent, "saturation");
    expectWithin(100 * (soil.theta33 - soil.theta1500), expected.availablePercent, percent, "available");
    expectWithin(10 * soil.kSatCmPerH, expected.kSatMmPerH, kSatMmPerH, "kSat");
    expectWithin(soil.densityGPerCm3, expected.densityGPerCm3, densityGPerCm3, "density");
    const centre = textureCentre(inputs.class);
    expect([100 * centre.sandFraction, 100 * centre.clayFraction]).toEqual([inputs.sandPercent, inputs.clayPercent]);
  });

  test.each(soilChecks("saxton-rawls-equations"))("%s", (_, { inputs, expected, tolerance }) => {
    const soil = soilOf(inputs);
    const ours: Record<string, number> = { ...soil, notes: 0, kSatMmPerH: 10 * soil.kSatCmPerH };
    for (const [name, value] of Object.entries(expected)) {
      expectRelative(ours[name], value as number, tolerance.relative, name);
    }
  });

  test.each(soilChecks("saxton-rawls-salt"))("%s", (_, { inputs, expected, tolerance }) => {
    expectRelative(osmoticTensionKPa(inputs), expected.osmoticTensionKPa, tolerance.relative, "osmotic tension");
  });

  test.each(soilChecks("saxton-rawls-air"))("%s", (_, { inputs, expected, tolerance }) => {
    for (const [name, air] of Object.entries(expected)) {
      const soil = saxtonRawls({
        ...textureCentre(name as Parameters<typeof textureCentre>[0]),
        organicMatterFraction: inputs.organicMatterPercent / 100,
      });
      expectWithin(soil.thetaSaturated - soil.theta33, air as number, tolerance.absolute, name);
    }
  });

  test("sand and loamy sand: the air-entry equation is negative (-0.96 and -0.92 kPa) and the note says it was raised", () => {
    for (const [name, printed] of [
      ["sand", -0.96],
      ["loamy sand", -0.92],
    ] as const) {
      const soil = saxtonRawls({ ...textureCentre(name), organicMatterFraction: 0.025 });
      expectWithin(soil.computedAirEntryKPa, printed, 0.005, name);
      expect(soil.airEntryKPa).toBe(0.1);
      expect(soil.notes).toContain("air-entry-raised");
    }
  });

  test("gravel: the paper's conductivity ratio is Peck & Watson's (1979) 2(1 - R)/(2 + R) by volume (identity, derived)", () => {
    for (const gravelWeightFraction of [0, 0.1, 0.3, 0.6, 0.9]) {
      const effect = saxtonRawlsGravel({ gravelWeightFraction, densityGPerCm3: 1.43 });
      const R = effect.gravelVolumeFraction;
      expectRelative(effect.kSatRatio, (2 * (1 - R)) / (2 + R), 1e-12, "kSat ratio");
      // Weight of gravel over weight of the whole gives the weight fraction back.
      expectWithin((2.65 * R) / effect.bulkDensityGPerCm3, gravelWeightFraction, 1e-12, "weight");
    }
  });
});
