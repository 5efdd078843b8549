import fc from "fast-check";
import {
  capillaryLengthCm,
  gravityTimeH,
  greenAmptPonded,
  greenAmptPondingTimeH,
  greenAmptRateCmPerH,
  greenAmptTimeH,
  greenAmptUnderRain,
  philipInfiltration,
  type SoilCurve,
  sorptivityCmPerSqrtH,
} from "rootledger/ground";
import { describe, expect, test } from "vitest";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const near = (ours: number, theirs: number, relative: number): void =>
  expect(Math.abs(ours - theirs), `ours ${ours}, theirs ${theirs}`).toBeLessThanOrEqual(relative * Math.abs(theirs));
const soil = fc.record({
  conductivityCmPerH: number(0.01, 20),
  frontSuctionCm: number(1, 50),
  thetaDeficit: number(0.02, 0.5),
});

describe("Green & Ampt", () => {
  test("the time of the water is the time it was given, from seconds to months", () => {
    fc.assert(
      fc.property(soil, number(-6, 3), (ground, decade) => {
        const hours = 10 ** decade;
        const { cumulativeCm, rateCmPerH } = greenAmptPonded(ground, hours);
        near(greenAmptTimeH(ground, cumulativeCm), hours, 1e-11);
        expect(cumulativeCm).toBeGreaterThan(ground.conductivityCmPerH * hours);
        expect(rateCmPerH).toBeGreaterThan(ground.conductivityCmPerH);
      }),
    );
  });
  test("two spells under a pond are one long one", () => {
    fc.assert(
      fc.property(soil, number(0.01, 20), number(0.01, 20), (ground, first, second) => {
        const half = greenAmptPonded(ground, first);
        const both = greenAmptPonded(ground, second, half.cumulativeCm);
        near(both.cumulativeCm, greenAmptPonded(ground, first + second).cumulativeCm, 1e-11);
      }),
    );
  });
  test("early it is sorption, S^2 = 2 K psi d; late the rate is K", () => {
    fc.assert(
      fc.property(soil, (ground) => {
        const { conductivityCmPerH, frontSuctionCm, thetaDeficit } = ground;
        const sorptivity = Math.sqrt(2 * conductivityCmPerH * frontSuctionCm * thetaDeficit);
        const early = 1e-8 * gravityTimeH(sorptivity, conductivityCmPerH);
        near(greenAmptPonded(ground, early).cumulativeCm, sorptivity * Math.sqrt(early), 1e-3);
        // Philip's (1957) series of the same front goes on with A = 2/3 K.
        const later = 1e-3 * gravityTimeH(sorptivity, conductivityCmPerH);
        const philip = { sorptivityCmPerSqrtH: sorptivity, gravityCmPerH: (2 / 3) * conductivityCmPerH };
        near(greenAmptPonded(ground, later).cumulativeCm, philipInfiltration(philip, later).cumulativeCm, 1e-3);
        near(greenAmptPonded(ground, 1e8).rateCmPerH, conductivityCmPerH, 1e-3);
      }),
    );
  });
});

describe("Green & Ampt under rain", () => {
  const rain = number(0.01, 50);
  test("what falls goes in or is left over; never more than a pond takes", () => {
    fc.assert(
      fc.property(soil, rain, number(0.01, 30), (ground, rainCmPerH, hours) => {
        const ours = greenAmptUnderRain(ground, rainCmPerH, hours);
        near(ours.cumulativeCm + ours.excessCm, rainCmPerH * hours, 1e-12);
        expect(ours.excessCm).toBeGreaterThanOrEqual(0);
        expect(ours.cumulativeCm).toBeLessThanOrEqual(greenAmptPonded(ground, hours).cumulativeCm * (1 + 1e-12));
        expect(ours.excessCm > 0).toBe(hours > greenAmptPondingTimeH(ground, rainCmPerH));
      }),
    );
  });
  test("a shower in two parts is the shower", () => {
    fc.assert(
      fc.property(soil, rain, number(0.01, 10), number(0.01, 10), (ground, rainCmPerH, first, second) => {
        const whole = greenAmptUnderRain(ground, rainCmPerH, first + second);
        const half = greenAmptUnderRain(ground, rainCmPerH, first);
        const rest = greenAmptUnderRain(ground, rainCmPerH, second, half.cumulativeCm);
        near(rest.cumulativeCm, whole.cumulativeCm, 1e-9);
        expect(Math.abs(half.excessCm + rest.excessCm - whole.excessCm)).toBeLessThan(1e-9 * rainCmPerH * 20);
      }),
    );
  });
  test("rain that the wetted soil passes never ponds", () => {
    const ground = { conductivityCmPerH: 1, frontSuctionCm: 10, thetaDeficit: 0.3 };
    expect(greenAmptPondingTimeH(ground, 1)).toBe(Number.POSITIVE_INFINITY);
    expect(greenAmptUnderRain(ground, 1, 1000)).toEqual({
      cumulativeCm: 1000,
      rateCmPerH: 1,
      pondingAfterH: Number.POSITIVE_INFINITY,
      excessCm: 0,
    });
  });
  test("at ponding the rate is the rain", () => {
    fc.assert(
      fc.property(soil, number(1.1, 20), (ground, times) => {
        const rainCmPerH = times * ground.conductivityCmPerH;
        const depthCm = rainCmPerH * greenAmptPondingTimeH(ground, rainCmPerH);
        near(greenAmptRateCmPerH(ground, depthCm), rainCmPerH, 1e-12);
      }),
    );
  });
});

describe("sorptivity and capillary length", () => {
  // K = kSat exp(alpha h) with theta in step: closed forms with E = 1 - exp(alpha h0).
  const exponential = (alphaPerCm: number): SoilCurve => ({
    name: "exponential",
    source: "Gardner (1958)",
    thetaResidual: 0,
    thetaSaturated: 0.4,
    kSatCmPerH: 3,
    thetaAt: (headCm) => 0.4 * Math.exp(alphaPerCm * headCm),
    conductivityAt: (headCm) => 3 * Math.exp(alphaPerCm * headCm),
    capacityAt: (headCm) => 0.4 * alphaPerCm * Math.exp(alphaPerCm * headCm),
  });
  test("of an exponential soil: 1/alpha, and S^2 = 3/2 theta kSat (E^2)/alpha by Parlange's weights", () => {
    fc.assert(
      fc.property(number(0.005, 0.4), number(-5000, -1), (alphaPerCm, headCm) => {
        const curve = exponential(alphaPerCm);
        near(capillaryLengthCm(curve, headCm), 1 / alphaPerCm, 1e-8);
        const part = -Math.expm1(alphaPerCm * headCm);
        near(sorptivityCmPerSqrtH(curve, headCm) ** 2, (1.5 * 0.4 * 3 * part * part) / alphaPerCm, 1e-8);
      }),
    );
  });
  test("drier soil draws more", () => {
    const curve = exponential(0.05);
    expect(sorptivityCmPerSqrtH(curve, -100)).toBeGreaterThan(sorptivityCmPerSqrtH(curve, -20));
  });
});

test("refused: no soil, no time, water owed", () => {
  const ground = { conductivityCmPerH: 1, frontSuctionCm: 10, thetaDeficit: 0.3 };
  expect(() => greenAmptPonded({ ...ground, thetaDeficit: 0 }, 1)).toThrow(
    "greenAmptPonded requires thetaDeficit above 0: got 0",
  );
  expect(() => greenAmptPonded(ground, 0)).toThrow(RangeError);
  expect(() => greenAmptPonded(ground, 1, -1)).toThrow(/depth of water of at least 0: got -1/);
  expect(() => greenAmptUnderRain(ground, 0.5, 1, Number.NaN)).toThrow(RangeError);
  expect(() => greenAmptUnderRain(ground, 0.5, 1, -2)).toThrow(RangeError);
  expect(() => greenAmptUnderRain(ground, Number.NaN, 1)).toThrow(RangeError);
  expect(() => philipInfiltration({ sorptivityCmPerSqrtH: 1, gravityCmPerH: -1 }, 1)).toThrow(RangeError);
  expect(() => capillaryLengthCm({ ...({} as SoilCurve) }, 0)).toThrow(/below 0 cm: got 0/);
});
