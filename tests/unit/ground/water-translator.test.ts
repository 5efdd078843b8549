import {
  defaultSoilCurve,
  fieldCapacityByDrain,
  measuredCurve,
  profileLayers,
  waterTranslator,
} from "rootledger/ground";
import { describe, expect, test } from "vitest";

/** A sand that holds 33 mm/m between 8 and 20 kPa and 62 between 8 and 1500 (Agriculture Victoria, table 1). */
const sand = measuredCurve(
  "sand",
  [
    { headCm: 0, theta: 0.4, conductivityCmPerH: 10 },
    { headCm: -81.6, theta: 0.112, conductivityCmPerH: 0.01 },
    { headCm: -204, theta: 0.079, conductivityCmPerH: 0.001 },
    { headCm: -15300, theta: 0.05, conductivityCmPerH: 1e-9 },
  ],
  "table",
);

describe("water translator", () => {
  // 24 m2 of ground a tree, 20 % wetted.
  const zone = waterTranslator({
    layers: [{ curve: sand, thicknessCm: 30 }],
    full: { tensionKPa: 8 },
    areaM2: 0.2 * 24,
  });

  test("30 cm of that sand lend 9.9 mm or 47.5 L from 8 to 20 kPa, 53 % of what they hold to 1500 kPa (arithmetic)", () => {
    const dry = zone.fromTension(20);
    expect(dry.depletionMm).toBeCloseTo(9.9, 9);
    expect(dry.depletionL).toBeCloseTo(9.9 * 4.8, 9);
    expect(zone.availableMm).toBeCloseTo(18.6, 9);
    expect(dry.depletionFraction).toBeCloseTo(33 / 62, 9);
  });

  test("every unit leads back to the others", () => {
    for (const tensionKPa of [1, 8, 20, 200, 1500]) {
      const reading = zone.fromTension(tensionKPa);
      expect(zone.fromDepletionMm(reading.depletionMm).tensionKPa).toBeCloseTo(tensionKPa, 6);
      expect(zone.fromDepletionFraction(reading.depletionFraction).tensionKPa).toBeCloseTo(tensionKPa, 6);
      expect(zone.fromDepletionL(reading.depletionL ?? Number.NaN).tensionKPa).toBeCloseTo(tensionKPa, 6);
    }
  });

  test("wetter than full is a negative depletion, down to saturation", () => {
    expect(zone.fromTension(2).depletionMm).toBeLessThan(0);
    expect(zone.fromDepletionMm(zone.fullMm - zone.saturatedMm).tensionKPa).toBe(0);
    expect(() => zone.fromDepletionMm(zone.fullMm - zone.saturatedMm - 1)).toThrow(/requires water between/);
    expect(() => zone.fromDepletionFraction(2)).toThrow(/requires water between/);
  });

  test("full can be what a profile holds after two covered days", () => {
    const profile = [
      { toCm: 20, curve: defaultSoilCurve("loam") },
      { toCm: 100, curve: defaultSoilCurve("clay loam") },
    ];
    const drained = fieldCapacityByDrain(profile);
    const mixed = waterTranslator({
      layers: profileLayers(profile, 0, 30),
      full: { waterMm: 10 * drained.waterCm },
    });
    expect(mixed.fromDepletionFraction(0).tensionKPa).toBeGreaterThan(5);
    expect(mixed.fromDepletionFraction(0).tensionKPa).toBeLessThan(15);
    expect(mixed.fromTension(20).depletionL).toBeUndefined();
    expect(() => mixed.fromDepletionL(5)).toThrow(/requires areaM2/);
  });

  test("50 % depletion is a far higher tension in clay loam than in sand: a percentage does not travel between soils", () => {
    const half = (name: "sand" | "clay loam"): number =>
      waterTranslator({
        layers: [{ curve: defaultSoilCurve(name), thicknessCm: 30 }],
        full: { tensionKPa: 8 },
      }).fromDepletionFraction(0.5).tensionKPa;
    // Read off the published table: about 20 kPa in sand, about 200 kPa in clay loam; half and double are our allowance.
    expect(half("sand")).toBeGreaterThan(10);
    expect(half("sand")).toBeLessThan(40);
    expect(half("clay loam")).toBeGreaterThan(50);
    expect(half("clay loam")).toBeLessThan(400);
  });

  test("refuses nonsense", () => {
    const layers = [{ curve: sand, thicknessCm: 30 }];
    expect(() => waterTranslator({ layers, full: { tensionKPa: 1500 } })).toThrow(/more water when full/);
    expect(() => waterTranslator({ layers, full: { tensionKPa: 8 }, areaM2: 0 })).toThrow(/areaM2 above 0: got 0/);
    expect(() => zone.fromTension(-1)).toThrow(/tensionKPa from 0/);
    expect(() => zone.fromTension(Number.NaN)).toThrow(/got NaN/);
  });
});
