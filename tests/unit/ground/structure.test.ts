import {
  carselParrishCurve,
  defaultSoilCurve,
  fieldCapacityByDrain,
  macroporeSuctionCm,
  structureFactors,
  textureCentre,
  textureClasses,
  withStructure,
} from "rootledger/ground";
import { describe, expect, test } from "vitest";

describe("structure", () => {
  test.each(textureClasses)("%s: only pores wetter than 8 kPa and kSat change, by the stated factors", (name) => {
    const ordinary = defaultSoilCurve(name);
    for (const word of ["tight", "crumbly"] as const) {
      const curve = defaultSoilCurve(name, word);
      const factors = structureFactors(textureCentre(name), word);
      for (const headCm of [-macroporeSuctionCm, -102, -204, -15300]) {
        expect(curve.thetaAt(headCm)).toBe(ordinary.thetaAt(headCm));
      }
      const kept = ordinary.thetaAt(-macroporeSuctionCm);
      const pores = (saturated: number): number => saturated - kept;
      expect(pores(curve.thetaSaturated)).toBeCloseTo(factors.macroporeFactor * pores(ordinary.thetaSaturated), 12);
      expect(curve.kSatCmPerH).toBeCloseTo(factors.kSatFactor * ordinary.kSatCmPerH, 12);
      // The dry branch of K stays: at 33 kPa within 10 %, at 1500 kPa within 0.1 %.
      const ratio = (headCm: number): number => curve.conductivityAt(headCm) / ordinary.conductivityAt(headCm);
      expect(Math.abs(ratio(-336.6) - 1)).toBeLessThan(0.1);
      expect(Math.abs(ratio(-15300) - 1)).toBeLessThan(0.001);
    }
  });

  test("the ranges named in the documentation are those of the twelve classes", () => {
    const range = (word: "tight" | "crumbly", key: "macroporeFactor" | "kSatFactor"): [number, number] => {
      const values = textureClasses.map((name) => structureFactors(textureCentre(name), word)[key]);
      return [Math.min(...values), Math.max(...values)];
    };
    const close = (ours: [number, number], printed: [number, number], digits: number): void => {
      expect(ours[0]).toBeCloseTo(printed[0], digits);
      expect(ours[1]).toBeCloseTo(printed[1], digits);
    };
    close(range("tight", "macroporeFactor"), [0.46, 0.88], 2);
    close(range("tight", "kSatFactor"), [0.1, 0.68], 2);
    close(range("crumbly", "macroporeFactor"), [1.12, 1.54], 2);
    close(range("crumbly", "kSatFactor"), [1.41, 3.55], 2);
  });

  test("a tight soil stays wetter two days after a soaking and every structure drains to 5-15 kPa", () => {
    for (const name of textureClasses) {
      const after = (["tight", "ordinary", "crumbly"] as const).map((word) =>
        fieldCapacityByDrain([{ toCm: 100, curve: defaultSoilCurve(name, word) }]),
      );
      for (const { tensionKPa } of after) {
        expect(tensionKPa).toBeGreaterThan(5);
        expect(tensionKPa).toBeLessThan(15);
      }
      expect(after[0].airFraction).toBeLessThan(after[1].airFraction);
      expect(after[1].airFraction).toBeLessThan(after[2].airFraction);
    }
  });

  test("factors must be above 0 and leave less than the whole volume", () => {
    const loam = carselParrishCurve("loam");
    expect(() => withStructure(loam, { macroporeFactor: 0, kSatFactor: 1 }, "x")).toThrow(
      /macroporeFactor above 0: got 0/,
    );
    expect(() => withStructure(loam, { macroporeFactor: 1, kSatFactor: Number.NaN }, "x")).toThrow(/kSatFactor/);
    expect(() => withStructure(loam, { macroporeFactor: 10, kSatFactor: 1 }, "x")).toThrow(/below 1/);
  });
});
