import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { defaultSoilCurve, textureClasses } from "rootledger/ground";
import { expect, test } from "vitest";
import { dataFile } from "../../../packages/rootledger/fit/data-file.js";
import { fitAll } from "../../../packages/rootledger/fit/default-set.js";
import { residualTable } from "../../../packages/rootledger/fit/residual-table.js";

const inPackage = (path: string): string =>
  readFileSync(fileURLToPath(new URL(`../../../packages/rootledger/${path}`, import.meta.url)), "utf8");

test("the committed default classes and their residual table are what the fit makes", () => {
  const classes = fitAll();
  expect(inPackage("src/ground/default-classes.ts")).toBe(dataFile(classes));
  expect(inPackage("fit/RESIDUALS.md")).toBe(residualTable(classes));
});

/** Classes in which clay rises, the sand or silt family staying the same. */
const families = [
  ["sand", "loamy sand", "sandy loam", "loam", "clay loam", "clay"],
  ["silt", "silt loam", "silty clay loam", "silty clay"],
  ["loamy sand", "sandy loam", "sandy clay loam", "sandy clay"],
] as const;

test("no class is an outlier: along rising clay, water rises and air and kSat fall", () => {
  for (const family of families) {
    for (let i = 1; i < family.length; i++) {
      const coarser = defaultSoilCurve(family[i - 1]);
      const finer = defaultSoilCurve(family[i]);
      const between = `${family[i - 1]} to ${family[i]}`;
      for (const headCm of [-51, -81.6, -204, -336.6, -15300]) {
        expect(finer.thetaAt(headCm), `${between} theta at ${headCm} cm`).toBeGreaterThan(coarser.thetaAt(headCm));
      }
      for (const headCm of [-51, -81.6, -102]) {
        const air = (curve: typeof finer): number => curve.thetaSaturated - curve.thetaAt(headCm);
        expect(air(finer), `${between} air at ${headCm} cm`).toBeLessThan(air(coarser));
      }
      expect(finer.kSatCmPerH, `${between} kSat`).toBeLessThan(coarser.kSatCmPerH);
    }
  }
});

test("conductivity at 8 kPa is 2 to 10 mm/d in every class, so that no texture stays soaked by its curve alone", () => {
  for (const name of textureClasses) {
    const mmPerD = 240 * defaultSoilCurve(name).conductivityAt(-81.6);
    expect(mmPerD, name).toBeGreaterThan(2);
    expect(mmPerD, name).toBeLessThan(10);
  }
});
