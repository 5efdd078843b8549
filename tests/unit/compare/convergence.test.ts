import { simulate } from "rootledger";
import { convergence } from "rootledger/compare";
import type { Comparison } from "rootledger/scenario";
import { expect, test } from "vitest";
import { cutInto } from "../../../packages/rootledger/src/compare/convergence.js";
import { calendar, scenarioWith } from "../../support/scenario.js";

const { soil, programme: _, ...common } = scenarioWith({ days: 6, texture: "clay loam" });
const comparison: Comparison = {
  ...common,
  remark: "",
  soils: [soil],
  programmes: [calendar("daily", 1, 1, 110), calendar("four pulses", 1, 4, 110)],
};

test("tells what halving step and layers changes for each programme, and which step is safe", () => {
  const { finenesses, rows, flips, safeThetaChangePerStep, layersFine } = convergence(comparison);
  expect(finenesses[0]).toEqual({ thetaDoubtPerStep: 0.005, layerParts: 1 });
  expect(rows).toHaveLength(2 * 4);
  for (const { usual, changes, floor, unit } of rows) {
    expect(changes).toHaveLength(finenesses.length);
    expect(changes[0]).toBe(0);
    expect(Number.isFinite(usual) && changes.every(Number.isFinite)).toBe(true);
    expect(floor).toBeGreaterThan(0);
    expect(unit).not.toBe("");
  }
  expect(rows.some(({ changes }) => changes[1] !== 0)).toBe(true);
  expect(rows.some(({ changes }) => changes[3] !== 0)).toBe(true);
  expect(safeThetaChangePerStep).toBe(0.005);
  expect(layersFine).toBe(true);
  expect(flips).toEqual([]);
});

test("the usual values are those of an ordinary run", () => {
  const { rows } = convergence({ ...comparison, programmes: [calendar("daily", 1, 1, 110)] });
  const result = simulate({ ...common, soil, programme: calendar("daily", 1, 1, 110) });
  const airless = result.measures.find(({ id }) => id === "airless")?.values[0];
  expect(rows.find(({ measureId }) => measureId === "airless")?.usual).toBe(airless);
});

test("cuts layers into equal parts and keeps every edge", () => {
  expect(cutInto([0, 5, 20], 2)).toEqual([0, 2.5, 5, 12.5, 20]);
  expect(cutInto([0, 5, 20], 1)).toEqual([0, 5, 20]);
});

test("is for the bucket engine", () => {
  expect(() => convergence({ ...comparison, engine: "richards" })).toThrow(/requires the bucket engine/);
});
