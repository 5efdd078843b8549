import {
  capillaryLengthCm,
  defaultSoilCurve,
  gravityTimeH,
  greenAmptPonded,
  greenAmptPondingDepthCm,
  greenAmptRateCmPerH,
  greenAmptTimeH,
  greenAmptUnderRain,
  philipInfiltration,
  sorptivityCmPerSqrtH,
} from "rootledger/ground";
import {
  aminEkhmaj,
  buriedFront,
  estimateWetting,
  flowEffect,
  hemisphereRadiusCm,
  scaledReachDown,
  scaledReachSideways,
  schwartzmanZur,
  steadyMatricFluxCm2PerH,
  stripPondFlowCm2PerH,
  stripPondHalfWidthCm,
  surfaceFront,
  woodingPondFlowCm3PerH,
  woodingPondRadiusCm,
} from "rootledger/lines";
import { expect, test } from "vitest";

// The examples in the doc comments, to the digits printed there.
test("examples of wetting and ponds", () => {
  const soil = { kSatCmPerH: 2, alphaPerCm: 0.05 };
  const run = { emitterFlowCm3PerH: 4000, volumeCm3: 12000, kSatCmPerH: 2 };
  expect(woodingPondFlowCm3PerH(15.529, soil)).toBeCloseTo(4000, -1);
  expect(woodingPondRadiusCm(4000, soil)).toBeCloseTo(15.529, 3);
  expect(stripPondFlowCm2PerH(10, soil)).toBeCloseTo(86.3, 1);
  expect(stripPondHalfWidthCm(86.3, soil)).toBeCloseTo(10, 1);
  expect(hemisphereRadiusCm(12000, 0.2)).toBeCloseTo(30.6, 1);
  expect(schwartzmanZur(run).widthCm).toBeCloseTo(52.3, 1);
  expect(schwartzmanZur(run).depthCm).toBeCloseTo(32.3, 1);
  expect(aminEkhmaj(run, 0.2).widthCm).toBeCloseTo(58.8, 1);
  expect(aminEkhmaj(run, 0.2).depthCm).toBeCloseTo(28.3, 1);
  const given = { volumeCm3: 12000, thetaRise: 0.2, alphaPerCm: 0.05 };
  expect(surfaceFront(given).radiusCm).toBeCloseTo(25.951, 3);
  expect(surfaceFront(given).depthCm).toBeCloseTo(36.22, 2);
  expect(buriedFront(given).upCm).toBeCloseTo(19, 1);
  expect(buriedFront(given).downCm).toBeCloseTo(31.2, 1);
  expect(scaledReachSideways(1)).toBeCloseTo(1.09046, 5);
  expect(scaledReachDown(1)).toBeCloseTo(1.92413, 5);
  const source = { placement: "surface", flowCm3PerH: 4000, alphaPerCm: 0.05 } as const;
  expect(steadyMatricFluxCm2PerH(source, { radiusCm: 40, depthCm: 0 })).toBeCloseTo(2.363, 3);
  const loam = { emitterFlowCm3PerH: 4000, volumeCm3: 8000, kSatCmPerH: 1.04, alphaPerCm: 0.145 };
  expect(flowEffect(loam, 0.28).effect).toBe("pond-wider");
  const wet = estimateWetting({ ...run, alphaPerCm: 0.05, thetaInitial: 0.1, thetaSaturated: 0.4, meanThetaRise: 0.2 });
  expect(wet.all.widthCm.ratio).toBeCloseTo(1.21, 2);
});

test("examples of infiltration", () => {
  const siltLoam = { conductivityCmPerH: 0.65, frontSuctionCm: 16.7, thetaDeficit: 0.3402 };
  expect(greenAmptRateCmPerH({ ...siltLoam, thetaDeficit: 0.34 }, 3.17)).toBeCloseTo(1.81, 2);
  expect(greenAmptPonded(siltLoam, 1).cumulativeCm).toBeCloseTo(3.17, 2);
  expect(greenAmptTimeH(siltLoam, 3.167)).toBeCloseTo(1, 3);
  expect(greenAmptPondingDepthCm({ ...siltLoam, thetaDeficit: 0.34 }, 5)).toBeCloseTo(0.85, 2);
  expect(greenAmptUnderRain(siltLoam, 5, 1).cumulativeCm).toBeCloseTo(3.02, 2);
  expect(philipInfiltration({ sorptivityCmPerSqrtH: 2, gravityCmPerH: 0.5 }, 1)).toEqual({
    cumulativeCm: 2.5,
    rateCmPerH: 1.5,
  });
  expect(gravityTimeH(2, 0.5)).toBe(16);
  // "About": these follow the default class curves, which may be fitted anew.
  expect(Math.abs(sorptivityCmPerSqrtH(defaultSoilCurve("loam"), -1000) / 3.7 - 1)).toBeLessThan(0.25);
  expect(Math.abs(1 / capillaryLengthCm(defaultSoilCurve("loam"), -1000) / 0.05 - 1)).toBeLessThan(0.25);
});
