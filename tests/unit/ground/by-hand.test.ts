import {
  classSet,
  curveOfClassSet,
  defaultSoilCurve,
  drainCovered,
  fieldCapacityByDrain,
  measuredCurve,
  type SoilCurve,
  saxtonRawls,
  saxtonRawlsCurve,
  saxtonRawlsGravel,
  waterTranslator,
  withStones,
} from "rootledger/ground";
import { headFromTension } from "rootledger/units";
import { describe, expect, test } from "vitest";

const loam = defaultSoilCurve("loam");
const sand = defaultSoilCurve("sand");

test("stones take their share of the pores, and of the flow 2(1 - R)/(2 + R) is left (Peck & Watson 1979, from memory)", () => {
  // A fifth of the volume: 1.6 / 2.2 of the flow.
  const stony = withStones(loam, 0.2);
  for (const headCm of [0, -50, -1000]) {
    expect(stony.thetaAt(headCm)).toBeCloseTo(0.8 * loam.thetaAt(headCm), 12);
    expect(stony.capacityAt(headCm)).toBeCloseTo(0.8 * loam.capacityAt(headCm), 12);
    expect(stony.conductivityAt(headCm) / loam.conductivityAt(headCm)).toBeCloseTo(1.6 / 2.2, 12);
  }
  expect(stony.kSatCmPerH / loam.kSatCmPerH).toBeCloseTo(1.6 / 2.2, 12);
  expect([stony.thetaSaturated, stony.thetaResidual]).toEqual([
    expect.closeTo(0.8 * loam.thetaSaturated, 12),
    expect.closeTo(0.8 * loam.thetaResidual, 12),
  ]);
  expect(withStones(loam, 0)).toBe(loam);
  for (const share of [-0.01, 1, Number.NaN]) expect(() => withStones(loam, share)).toThrow(`in [0, 1): got ${share}`);
});

test("gravel by weight as Saxton & Rawls (2006) reckon it, by hand at 30 % and 1.43 g/cm3", () => {
  // 1.43 / 2.65 = 0.53962; 0.53962 x 0.3 / (1 - 0.3 x 0.46038) = 0.18783 of the volume; 1.43 x 0.81217 + 2.65 x 0.18783.
  expect(saxtonRawlsGravel({ gravelWeightFraction: 0.3, densityGPerCm3: 1.43 })).toEqual({
    gravelVolumeFraction: expect.closeTo(0.18783, 5),
    bulkDensityGPerCm3: expect.closeTo(1.65915, 4),
    waterRatio: expect.closeTo(0.81217, 5),
    kSatRatio: expect.closeTo(0.74245, 4),
  });
});

test("Saxton & Rawls' conductivity below saturation is kSat (theta/thetaS)^(3 + 2/lambda) (eq. 17)", () => {
  const soil = saxtonRawls({ sandFraction: 0.4, clayFraction: 0.2, organicMatterFraction: 0.025 });
  const curve = saxtonRawlsCurve(soil, "loam");
  for (const kPa of [33, 100, 1500]) {
    const headCm = headFromTension(kPa);
    const expected = soil.kSatCmPerH * (curve.thetaAt(headCm) / soil.thetaSaturated) ** (3 + 2 / soil.lambda);
    expect(curve.conductivityAt(headCm) / expected).toBeCloseTo(1, 9);
  }
  const both = { sandFraction: 0.7, clayFraction: 0.4, organicMatterFraction: 0.02 };
  expect(() => saxtonRawls(both)).toThrow(/sandFraction \+ clayFraction up to 1: got 1\.1/);
});

test("Clapp & Hornberger's sand conducts 1.056 cm a minute, 63.36 cm an hour (table 2, from memory)", () => {
  const set = classSet("clapp-hornberger-1978", "sand");
  expect(set && curveOfClassSet(set, "sand").kSatCmPerH).toBeCloseTo(63.36, 9);
  const particles = classSet("saxton-rawls-2006", "sand");
  expect(particles && curveOfClassSet(particles, "sand").thetaAt(-336)).toBeGreaterThan(0.02);
});

test("the covered drain says what is drained, stored and left to air, over two soils by their thickness", () => {
  const { waterCm, theta, airFraction } = fieldCapacityByDrain(
    [
      { toCm: 20, curve: sand },
      { toCm: 100, curve: loam },
    ],
    { depthCm: 50 },
  );
  expect(waterCm).toBeCloseTo(50 * theta, 12);
  expect(airFraction + theta).toBeCloseTo(0.4 * sand.thetaSaturated + 0.6 * loam.thetaSaturated, 12);
  expect(() => drainCovered([{ curve: loam, thicknessCm: 10 }], { hours: 1, cellCm: 0 })).toThrow(
    "drainCovered requires cellCm above 0: got 0",
  );
});

describe("a covered drain that its solver cannot take in one step", () => {
  test("is taken in shorter ones, and keeps its books: a soil whose conductivity falls a thousandfold within a centimetre", () => {
    const cliff = (headCm: number): number => 1 / (1 + Math.exp(-20 * (headCm + 12)));
    const abrupt: SoilCurve = {
      ...loam,
      name: "abrupt",
      conductivityAt: (headCm) => loam.conductivityAt(headCm) * (1e-3 + cliff(headCm)),
    };
    const { residualCm, drainedCm, headCm } = drainCovered([{ curve: abrupt, thicknessCm: 50 }], { hours: 24 });
    expect(drainedCm).toBeGreaterThan(0);
    expect(Math.abs(residualCm)).toBeLessThan(1e-4);
    expect(headCm.every(Number.isFinite)).toBe(true);
  });

  test("is refused where no step is short enough", () => {
    const none: SoilCurve = { ...loam, conductivityAt: () => Number.NaN };
    expect(() => drainCovered([{ curve: none, thicknessCm: 50 }], { hours: 24 })).toThrow(
      "drainCovered requires a curve its solver can follow",
    );
  });
});

test("1 mm on 1 m2 is 1 L", () => {
  const translator = waterTranslator({
    layers: [{ thicknessCm: 60, curve: loam }],
    full: { tensionKPa: 10 },
    areaM2: 12.5,
  });
  const reading = translator.fromDepletionMm(8);
  expect(reading.depletionMm).toBeCloseTo(8, 9);
  expect(reading.depletionL).toBeCloseTo(100, 9);
});

test("the capacity of a measured curve is the slope of its water, beyond its driest point too, and 0 when full", () => {
  const curve = measuredCurve(
    "own",
    [
      { headCm: 0, theta: 0.45, conductivityCmPerH: 2 },
      { headCm: -50, theta: 0.35, conductivityCmPerH: 0.2 },
      { headCm: -300, theta: 0.25, conductivityCmPerH: 1e-3 },
      { headCm: -3000, theta: 0.15, conductivityCmPerH: 1e-6 },
    ],
    "own",
  );
  for (const headCm of [-10, -120, -900, -3500, -20_000]) {
    const step = 1e-4 * -headCm;
    const slope = (curve.thetaAt(headCm + step) - curve.thetaAt(headCm - step)) / (2 * step);
    expect(curve.capacityAt(headCm) / slope).toBeCloseTo(1, 4);
  }
  expect([curve.capacityAt(0), curve.capacityAt(5), curve.thetaAt(5), curve.conductivityAt(5)]).toEqual([
    0, 0, 0.45, 2,
  ]);
  expect(curve.thetaAt(-20_000)).toBeLessThan(0.15);
});
