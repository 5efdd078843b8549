import {
  carselParrishCurve,
  carselParrishParameters,
  drainCovered,
  fieldCapacities,
  fieldCapacityAssoulineOr,
  fieldCapacityAtTension,
  fieldCapacityByFlux,
  fieldCapacityTwarakavi,
  vanGenuchtenCurve,
} from "rootledger/ground";
import { describe, expect, test } from "vitest";
import { expectRelative, expectWithin } from "./near.js";
import { soilChecks } from "./soil-data.js";

describe("field capacity", () => {
  test.each(soilChecks("field-capacity"))("%s", (_, { inputs, expected, tolerance }) => {
    const parameters = carselParrishParameters(inputs.class);
    const curve = carselParrishCurve(inputs.class);
    const off = tolerance.absolute;
    expectWithin(fieldCapacityTwarakavi(parameters).theta, expected.twarakavi, off, "Twarakavi");
    expectWithin(fieldCapacityAssoulineOr(parameters).theta, expected.assoulineOr, off, "Assouline & Or");
    expectWithin(fieldCapacityByFlux(curve, 0.01).theta, expected["flux0.01CmPerD"], off, "flux");
    expectWithin(fieldCapacityAtTension(curve, 33).theta, expected.at33KPa, off, "33 kPa");
    const names = fieldCapacities(curve, parameters).map(({ criterion }) => criterion);
    expect(new Set(names).size).toBe(7);
  });

  test("Assouline & Or (2014): the tangent of Se(h) at its inflection meets zero at their field capacity (re-derived)", () => {
    const p = carselParrishParameters("loam");
    const m = 1 - 1 / p.n;
    const saturation = (suction: number): number => (1 + (p.alphaPerCm * suction) ** p.n) ** -m;
    // d2Se/dh2 = 0 at alpha h = m^(1/n).
    const inflection = m ** (1 / p.n) / p.alphaPerCm;
    const slope = (saturation(inflection + 1e-4) - saturation(inflection - 1e-4)) / 2e-4;
    const meets = inflection - saturation(inflection) / slope;
    expectRelative(fieldCapacityAssoulineOr(p).tensionKPa * 10.2, meets, 1e-6, "suction");
  });

  test.each(soilChecks("covered-drain"))("%s", (_, { inputs, expected, tolerance }) => {
    const { thetaResidual, thetaSaturated, alphaPerCm, n, kSatCmPerD, hours, columnCm, layerEdgesCm } = inputs;
    const curve = vanGenuchtenCurve(
      "case",
      { thetaResidual, thetaSaturated, alphaPerCm, n, kSatCmPerH: kSatCmPerD / 24 },
      "case",
      "linear",
    );
    const column = drainCovered([{ curve, thicknessCm: columnCm }], { hours });
    expectRelative(10 * column.drainedCm, expected.drainedMm, tolerance.drainedRelative, "drained");
    expect(Math.abs(column.residualCm)).toBeLessThan(1e-5);
    layerEdgesCm.slice(1).forEach((bottom: number, layer: number) => {
      const inside = [...column.theta].filter(
        (_theta, i) => column.depthCm[i] > layerEdgesCm[layer] && column.depthCm[i] < bottom,
      );
      const mean = inside.reduce((sum, theta) => sum + theta, 0) / inside.length;
      expectWithin(mean, expected.thetaLayers[layer], tolerance.theta, `theta above ${bottom} cm`);
    });
  });
});
