import {
  carselParrish,
  carselParrishCurve,
  clappHornberger,
  clappHornbergerCurve,
  cosbyCampbell,
  rawlsGreenAmpt,
  vanGenuchtenCurve,
} from "rootledger/ground";
import { describe, expect, test } from "vitest";
import { expectRelative } from "./near.js";
import { soilChecks } from "./soil-data.js";

describe("hydraulic functions and class means", () => {
  test.each(soilChecks("van-genuchten"))("%s", (_, { inputs, expected, tolerance }) => {
    const { class: name, kSatCmPerD, headCm, ...retention } = inputs;
    const curve = vanGenuchtenCurve(name, { ...retention, kSatCmPerH: kSatCmPerD / 24 }, "printed", "raw");
    const saturation = (curve.thetaAt(headCm) - curve.thetaResidual) / (curve.thetaSaturated - curve.thetaResidual);
    expectRelative(saturation, expected.effectiveSaturation, tolerance.relative, "Se");
    expectRelative(curve.thetaAt(headCm), expected.theta, tolerance.relative, "theta");
    expectRelative(24 * curve.conductivityAt(headCm), expected.conductivityCmPerD, tolerance.relative, "K");
    // The shipped class table has the same row.
    expect(carselParrish[name as keyof typeof carselParrish]).toMatchObject({ ...retention, kSatCmPerD });
    expect(carselParrishCurve(name, "raw").thetaAt(headCm)).toBe(curve.thetaAt(headCm));
  });

  test.each(soilChecks("clapp-hornberger"))("%s", (_, { inputs, expected, tolerance }) => {
    const { class: name, ...row } = inputs;
    expect(clappHornberger[name as keyof typeof clappHornberger]).toMatchObject(row);
    const curve = clappHornbergerCurve(name);
    const share = tolerance.relative;
    expectRelative(curve.thetaAt(-336.6), expected["thetaAt336.6Cm"], share, "theta 336.6 cm");
    expectRelative(curve.thetaAt(-15296), expected.thetaAt15296Cm, share, "theta 15296 cm");
    const headAt80 = -row.airEntryCm * 0.8 ** -row.b;
    const ours = 24 * curve.conductivityAt(headAt80);
    expectRelative(ours, expected["conductivityAt0.8SaturationCmPerD"], share, "K at 80 % of saturation");
  });

  test.each(soilChecks("cosby"))("%s", (_, { inputs, expected, tolerance }) => {
    const ours = cosbyCampbell({
      sandFraction: inputs.sandPercent / 100,
      clayFraction: inputs.clayPercent / 100,
    });
    const share = tolerance.relative;
    expectRelative(ours.b, expected.b, share, "b");
    expectRelative(ours.airEntryCm, expected.airEntryCm, share, "air entry");
    expectRelative(ours.kSatCmPerH / 2.54, expected.kSatInchPerH, share, "kSat");
    expectRelative(100 * ours.thetaSaturated, expected.thetaSaturatedPercent, share, "saturation");
  });

  test.each(soilChecks("green-ampt-row"))("%s", (_, { inputs, expected }) => {
    expect(rawlsGreenAmpt[inputs.class as keyof typeof rawlsGreenAmpt]).toMatchObject(expected);
  });

  test("Vogel, van Genuchten & Cislerova (2000): a capillary height of -2 cm changes fine soil strongly", () => {
    // The paper says so in words; "more than twice at -10 cm, and more than in sand" is our reading of "strongly".
    const factor = (name: "clay" | "sand"): number =>
      carselParrishCurve(name, "minimum-capillary-height").conductivityAt(-10) /
      carselParrishCurve(name, "raw").conductivityAt(-10);
    expect(factor("clay")).toBeGreaterThan(2);
    expect(factor("clay")).toBeGreaterThan(factor("sand"));
  });
});
