import {
  capillaryLengthCm,
  carselParrish,
  carselParrishCurve,
  defaultSoilCurve,
  type GreenAmptSoil,
  greenAmptPonded,
  greenAmptPondingDepthCm,
  greenAmptPondingTimeH,
  greenAmptUnderRain,
  rawlsGreenAmpt,
  sorptivityCmPerSqrtH,
  type TextureClass,
  textureClasses,
} from "rootledger/ground";
import { describe, expect, test } from "vitest";
import { expectRelative, expectWithin } from "./near.js";
import { yoloLightClay } from "./richards-soils.js";
import { wettingChecks } from "./wetting-data.js";

const soilOf = (inputs: {
  conductivityCmPerH: number;
  frontSuctionCm: number;
  effectivePorosity: number;
  effectiveSaturation: number;
}): GreenAmptSoil => ({
  conductivityCmPerH: inputs.conductivityCmPerH,
  frontSuctionCm: inputs.frontSuctionCm,
  thetaDeficit: (1 - inputs.effectiveSaturation) * inputs.effectivePorosity,
});

describe("Green & Ampt", () => {
  test.each(wettingChecks("green-ampt-ponded"))("%s", (_, { inputs, expected, tolerance }) => {
    const ours = greenAmptPonded(soilOf(inputs), inputs.hours);
    expectWithin(ours.cumulativeCm, expected.cumulativeCm, tolerance.cumulativeCm, "F");
    if (expected.rateCmPerH !== undefined) {
      expectWithin(ours.rateCmPerH, expected.rateCmPerH, tolerance.rateCmPerH, "f");
    }
  });

  test.each(wettingChecks("green-ampt-ponding"))("%s", (_, { inputs, expected, tolerance }) => {
    const soil = soilOf(inputs);
    expectWithin(greenAmptPondingTimeH(soil, inputs.rainCmPerH), expected.pondingTimeH, tolerance.pondingTimeH, "tp");
    expectWithin(greenAmptPondingDepthCm(soil, inputs.rainCmPerH), expected.depthCm, tolerance.depthCm, "Fp");
  });

  test.each(wettingChecks("green-ampt-rain"))("%s", (_, { inputs, expected, tolerance }) => {
    const ours = greenAmptUnderRain(soilOf(inputs), inputs.rainCmPerH, inputs.hours);
    expectWithin(ours.cumulativeCm, expected.cumulativeCm, tolerance.cumulativeCm, "F");
    expectWithin(ours.rateCmPerH, expected.rateCmPerH, tolerance.rateCmPerH, "f");
  });

  test("the class rows of Rawls, Brakensiek & Miller (1983) feed the same equation", () => {
    const row = rawlsGreenAmpt.clay;
    const thetaDeficit = 0.7 * row.effectivePorosity;
    const ours = greenAmptPonded({ ...row, thetaDeficit }, 1);
    const check = wettingChecks("green-ampt-ponded").find(([, { inputs }]) => inputs.conductivityCmPerH === 0.03);
    expectRelative(ours.cumulativeCm, check?.[1].expected.cumulativeCm, 0.001, "F in clay");
  });
});

describe("sorptivity", () => {
  test.each(wettingChecks("sorptivity"))("%s", (_, { inputs, expected, tolerance }) => {
    const ours = sorptivityCmPerSqrtH(yoloLightClay, inputs.initialHeadCm) / 60;
    expectRelative(ours, expected.sorptivityCmPerSqrtS, tolerance.relative, "S");
  });

  // White & Sully (1987), Water Resour. Res. 23:1514-1522, from memory: the capillary length is b S^2 / (rise x (K0 - Ki)),
  // b between 1/2 (sharp front) and pi/4 (constant diffusivity), usually near 0.55 in field soils.
  const curves = [
    ...(Object.keys(carselParrish) as TextureClass[]).map((name) => carselParrishCurve(name, "linear")),
    ...textureClasses.map((name) => defaultSoilCurve(name)),
  ];
  test.each(curves.map((curve) => [`${curve.name}, ${curve.source}`, curve] as const))("b of %s", (_, curve) => {
    const initialHeadCm = -1000;
    const s = sorptivityCmPerSqrtH(curve, initialHeadCm);
    const rise = curve.thetaSaturated - curve.thetaAt(initialHeadCm);
    const gain = curve.kSatCmPerH - curve.conductivityAt(initialHeadCm);
    const b = (capillaryLengthCm(curve, initialHeadCm) * rise * gain) / (s * s);
    expect(b).toBeGreaterThan(0.5);
    expect(b).toBeLessThan(Math.PI / 4);
  });
});
