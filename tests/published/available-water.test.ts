import {
  depletionFractionFor,
  readilyAvailableWaterMm,
  stressCoefficient,
  totalAvailableWaterMm,
} from "rootledger/tree";
import { describe, expect, it } from "vitest";
import { expectWithin } from "./near.js";

// Allen, R.G., Pereira, L.S., Raes, D., Smith, M. (1998). Crop evapotranspiration. FAO Irrigation and Drainage Paper 56.
describe("FAO-56 chapter 8", () => {
  const soils = [
    { name: "loamy sand", fieldCapacity: 0.15, wiltingPoint: 0.06 },
    { name: "silt", fieldCapacity: 0.32, wiltingPoint: 0.15 },
    { name: "silty clay", fieldCapacity: 0.35, wiltingPoint: 0.23 },
  ];

  // Example 36, eq. 82-83; printed in whole mm, tolerance half of that; seen.
  it.each([
    { crop: "onion", depthM: 0.4, p: 0.3, taw: [36, 68, 48], raw: [11, 20, 14] },
    { crop: "maize", depthM: 1.2, p: 0.55, taw: [108, 204, 144], raw: [59, 112, 79] },
  ])("Example 36: TAW and RAW of $crop", ({ depthM, p, taw, raw }) => {
    soils.forEach((soil, k) => {
      const total = totalAvailableWaterMm(soil.fieldCapacity, soil.wiltingPoint, depthM);
      expectWithin(total, taw[k], 0.5, `TAW on ${soil.name}`);
      expectWithin(readilyAvailableWaterMm(total, p), raw[k], 0.5, `RAW on ${soil.name}`);
    });
  });

  // Table 22, footnote 2 and its limits 0.1 and 0.8, seen; the inputs are ours, so agreement shows only that it was copied right.
  it("Table 22: p adjusted for ETc", () => {
    const cases = [
      [0.5, 5, 0.5],
      [0.5, 8, 0.38],
      [0.3, 8, 0.18],
      [0.7, 2, 0.8],
      [0.2, 9, 0.1],
    ];
    for (const [table, etc, p] of cases)
      expectWithin(depletionFractionFor(table, etc), p, 0.005, `p ${table} at ${etc} mm/d`);
  });

  // Example 37, eq. 81-84: tomato on silt, printed to 0.01 (Ks) and 0.1 mm; tolerance half of that; seen.
  it("Example 37: ten days of drying", () => {
    const ks = [1, 1, 0.97, 0.91, 0.85, 0.8, 0.75, 0.7, 0.66, 0.62];
    const etc = [6, 6, 5.8, 5.4, 5.1, 4.8, 4.5, 4.2, 3.9, 3.7];
    const depletionEnd = [61, 67, 72.8, 78.3, 83.4, 88.2, 92.6, 96.9, 100.8, 104.5];
    const total = totalAvailableWaterMm(0.32, 0.12, 0.8);
    expectWithin(total, 160, 0.5, "TAW");
    expectWithin(readilyAvailableWaterMm(total, 0.4), 64, 0.5, "RAW");
    let depletionMm = 55;
    for (let day = 0; day < 10; day++) {
      const ours = stressCoefficient(depletionMm, total, 0.4);
      expectWithin(ours, ks[day], 0.005, `Ks of day ${day + 1}`);
      expectWithin(ours * 1.2 * 5, etc[day], 0.05, `ETc adj of day ${day + 1}`);
      depletionMm += ours * 1.2 * 5;
      expectWithin(depletionMm, depletionEnd[day], 0.05, `Dr after day ${day + 1}`);
    }
  });

  // Equations 80 and 81, seen; inputs ours.
  it("eq. 80-81: adjusted ETc, single and dual coefficient", () => {
    const ks = stressCoefficient(75, 100, 0.5);
    expect(ks).toBe(0.5);
    expectWithin((ks * 0.9 + 0.2) * 5, 3.25, 0.005, "dual");
    expectWithin(ks * 1.1 * 5, 2.75, 0.005, "single");
  });
});
