import fc from "fast-check";
import {
  brooksCoreyCurve,
  classCurves,
  curveFromLimits,
  defaultSoilCurve,
  drainCovered,
  gardnerCurve,
  measuredCurve,
  profileLayers,
  type SoilCurve,
  saxtonRawls,
  saxtonRawlsCurve,
  structureFactors,
  type TextureClass,
  textureCentre,
  textureClasses,
  textureClassOf,
  vanGenuchtenCurve,
  waterTranslator,
  withStones,
  withStructure,
} from "rootledger/ground";
import { describe, expect, test } from "vitest";

const anyClass = fc.constantFrom<TextureClass>(...textureClasses);
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const limits = fc.record({
  thetaResidual: number(0, 0.2),
  thetaSaturated: number(0.3, 0.65),
  kSatCmPerH: number(0.01, 50),
});
const vanGenuchten = fc
  .record({
    limits,
    alphaPerCm: number(0.002, 0.3),
    n: number(1.05, 6),
    treatment: fc.constantFrom("raw" as const, "linear" as const, "minimum-capillary-height" as const),
  })
  .map(({ limits: range, alphaPerCm, n, treatment }) =>
    vanGenuchtenCurve("any", { ...range, alphaPerCm, n }, "any", treatment),
  );
const gardner = fc
  .record({
    limits,
    alphaPerCm: number(0.002, 0.3),
    n: number(1.05, 6),
    halfHeadCm: number(1, 100),
    exponent: number(1.2, 6),
  })
  .map(({ limits: range, ...shape }) => gardnerCurve({ ...range, ...shape }, "any", "any"));
const brooksCorey = fc
  .record({ limits, airEntryCm: number(1, 100), lambda: number(0.05, 3) })
  .map(({ limits: range, ...shape }) => brooksCoreyCurve("any", { ...range, ...shape }, "any"));
const measured = fc
  .array(fc.record({ drop: number(0.05, 1), fall: number(0.05, 1), dry: number(0.2, 2) }), {
    minLength: 1,
    maxLength: 12,
  })
  .map((steps) => {
    const points = [{ headCm: 0, theta: 0.5, conductivityCmPerH: 2 }];
    let x = 0;
    for (const { drop, fall, dry } of steps) {
      const last = points[points.length - 1];
      x += dry;
      points.push({
        headCm: -Math.expm1(x),
        theta: last.theta * (1 - 0.2 * drop),
        conductivityCmPerH: last.conductivityCmPerH * Math.exp(-4 * fall),
      });
    }
    return measuredCurve("any", points, "any");
  });
const named = anyClass.chain((name) => fc.constantFrom(...classCurves(name).map(({ curve }) => curve)));
const base = fc.oneof(vanGenuchten, gardner, brooksCorey, measured, named);
const changed = fc
  .record({ curve: base, pores: number(0.3, 1.4), flow: number(0.05, 8), stones: number(0, 0.6), name: anyClass })
  .map(({ curve, pores, flow, stones }) => {
    const room = 1 - curve.thetaAt(-81.6);
    const factor = Math.min(pores, (0.95 * room) / (curve.thetaSaturated - curve.thetaAt(-81.6)));
    return withStones(withStructure(curve, { macroporeFactor: factor, kSatFactor: flow }, "changed"), stones);
  });
const limited = fc
  .record({ name: anyClass, wiltingPoint: number(0.03, 0.3), more: number(0.02, 0.25), tension: number(5, 60) })
  .map(({ name, wiltingPoint, more, tension }) =>
    curveFromLimits(
      defaultSoilCurve(name),
      { wiltingPoint, fieldCapacity: wiltingPoint + more, fieldCapacityTensionKPa: tension },
      "limited",
    ),
  );
const anyCurve: fc.Arbitrary<SoilCurve> = fc.oneof(base, changed, limited);
/** Suctions from 0.001 cm to 100 000 cm, evenly in their logarithm. */
const logSuction = number(-3, 5);

describe("every curve", () => {
  test("theta and K rise with head, stay in their bounds and are full at and above zero head", () => {
    fc.assert(
      fc.property(anyCurve, logSuction, logSuction, (curve, a, b) => {
        const wet = -(10 ** Math.min(a, b));
        const dry = -(10 ** Math.max(a, b));
        const rounding = 1e-12;
        expect(curve.thetaAt(wet)).toBeGreaterThanOrEqual(curve.thetaAt(dry) - rounding);
        expect(curve.conductivityAt(wet)).toBeGreaterThanOrEqual(curve.conductivityAt(dry) * (1 - rounding));
        expect(curve.thetaAt(dry)).toBeGreaterThanOrEqual(curve.thetaResidual - rounding);
        expect(curve.thetaAt(wet)).toBeLessThanOrEqual(curve.thetaSaturated + rounding);
        expect(curve.conductivityAt(dry)).toBeGreaterThanOrEqual(0);
        for (const headCm of [0, 5]) {
          expect(Math.abs(curve.thetaAt(headCm) - curve.thetaSaturated)).toBeLessThan(rounding);
          expect(Math.abs(curve.conductivityAt(headCm) / curve.kSatCmPerH - 1)).toBeLessThan(rounding);
        }
      }),
      { numRuns: 1500 },
    );
  });

  test("capacity is the slope of theta: its integral over a stretch of head gives the difference of theta", () => {
    fc.assert(
      fc.property(anyCurve, number(-1, 4), (curve, a) => {
        const from = Math.log(10 ** a);
        const parts = 400;
        const width = 0.3 / parts;
        let sum = 0;
        for (let i = 0; i < parts; i++) {
          const suction = Math.exp(from + (i + 0.5) * width);
          sum += curve.capacityAt(-suction) * suction * width;
        }
        const lost = curve.thetaAt(-Math.exp(from)) - curve.thetaAt(-Math.exp(from + 0.3));
        // Midpoint rule: a kink inside one part costs at most that part.
        expect(Math.abs(sum - lost)).toBeLessThan(2e-4 + 2e-3 * lost);
      }),
      { numRuns: 500 },
    );
  });
});

describe("texture", () => {
  const texture = fc
    .record({ a: number(0, 1), b: number(0, 1) })
    .map(({ a, b }) =>
      a + b > 1 ? { sandFraction: 1 - a, clayFraction: 1 - b } : { sandFraction: a, clayFraction: b },
    )
    .filter(({ sandFraction, clayFraction }) => sandFraction + clayFraction <= 1);

  test("every point of the triangle has a class, and the centres lie in their own", () => {
    fc.assert(fc.property(texture, (point) => textureClasses.includes(textureClassOf(point))));
    for (const name of textureClasses) expect(textureClassOf(textureCentre(name))).toBe(name);
  });

  test("Saxton & Rawls either refuses or gives ordered water contents, and a looser soil conducts more", () => {
    fc.assert(
      fc.property(texture, number(0, 0.08), (point, organicMatterFraction) => {
        let soil: ReturnType<typeof saxtonRawls>;
        try {
          soil = saxtonRawls({ ...point, organicMatterFraction });
        } catch (fault) {
          expect(fault).toBeInstanceOf(RangeError);
          return;
        }
        expect(soil.theta1500).toBeLessThan(soil.theta33);
        expect(soil.theta33).toBeLessThan(soil.thetaSaturated);
        if (soil.airEntryKPa < 33) expect(saxtonRawlsCurve(soil, "any").thetaAt(-1000)).toBeGreaterThan(0);
        const loose = structureFactors(point, "crumbly", organicMatterFraction);
        expect(loose.macroporeFactor).toBeGreaterThan(1);
        expect(loose.kSatFactor).toBeGreaterThan(1);
      }),
      { numRuns: 400 },
    );
  });
});

describe("covered drain", () => {
  test("accounts for its water, is wetter below in uniform soil, and dries with time", () => {
    fc.assert(
      fc.property(
        anyClass,
        fc.constantFrom("tight" as const, "ordinary" as const, "crumbly" as const),
        number(1, 60),
        (name, word, hours) => {
          const layers = [{ curve: defaultSoilCurve(name, word), thicknessCm: 50 }];
          const early = drainCovered(layers, { hours });
          const late = drainCovered(layers, { hours: 2 * hours });
          expect(Math.abs(early.residualCm)).toBeLessThan(1e-5);
          for (let i = 1; i < early.theta.length; i++) {
            expect(early.theta[i]).toBeGreaterThanOrEqual(early.theta[i - 1] - 1e-9);
          }
          for (let i = 0; i < early.theta.length; i++) {
            expect(late.theta[i]).toBeLessThanOrEqual(early.theta[i] + 1e-9);
          }
          expect(late.drainedCm).toBeGreaterThan(early.drainedCm);
        },
      ),
      { numRuns: 25 },
    );
  });

  test("follows any set of class curves in any order of horizons, also where water perches", () => {
    const layer = fc.record({ curve: named, cells: fc.integer({ min: 2, max: 16 }) });
    fc.assert(
      fc.property(fc.array(layer, { minLength: 1, maxLength: 4 }), (horizons) => {
        const layers = horizons.map(({ curve, cells }) => ({ curve, thicknessCm: 2.5 * cells }));
        const column = drainCovered(layers, { hours: 48 });
        expect(Math.abs(column.residualCm)).toBeLessThan(1e-5);
        expect(column.headCm.every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  test("halving the cell moves the drained water by less than 0.5 %", () => {
    for (const name of textureClasses) {
      const layers = [{ curve: defaultSoilCurve(name), thicknessCm: 100 }];
      const coarse = drainCovered(layers, { hours: 48, cellCm: 2.5 });
      const fine = drainCovered(layers, { hours: 48, cellCm: 1.25 });
      expect(Math.abs(coarse.drainedCm / fine.drainedCm - 1), name).toBeLessThan(0.005);
    }
  });
});

describe("root zone", () => {
  const zone = fc
    .array(fc.record({ name: anyClass, thickness: fc.integer({ min: 5, max: 40 }), stones: number(0, 0.5) }), {
      minLength: 1,
      maxLength: 4,
    })
    .map((horizons) => {
      let toCm = 0;
      return horizons.map(({ name, thickness, stones }) => {
        toCm += thickness;
        return { toCm, curve: defaultSoilCurve(name), stonesFraction: stones };
      });
    });

  test("layers add up to the depth asked for", () => {
    fc.assert(
      fc.property(zone, number(0, 50), number(1, 150), (profile, fromCm, thickness) => {
        const sum = profileLayers(profile, fromCm, fromCm + thickness).reduce(
          (all, layer) => all + layer.thicknessCm,
          0,
        );
        expect(sum).toBeCloseTo(thickness, 9);
      }),
    );
  });

  test("depletion and tension lead to each other in any profile", () => {
    fc.assert(
      fc.property(zone, number(0, 1), (profile, depletionFraction) => {
        const translator = waterTranslator({
          layers: profileLayers(profile, 0, 60),
          full: { tensionKPa: 8.5 },
          areaM2: 5,
        });
        const reading = translator.fromDepletionFraction(depletionFraction);
        const back = translator.fromTension(reading.tensionKPa);
        expect(back.depletionFraction).toBeCloseTo(depletionFraction, 9);
        expect(back.depletionL).toBeCloseTo(5 * reading.depletionMm, 6);
      }),
    );
  });
});
