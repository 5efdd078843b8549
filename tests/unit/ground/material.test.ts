import {
  brooksCoreyCurve,
  carselParrishCurve,
  carselParrishParameters,
  classSet,
  cosbyCampbellSimple,
  curveFromLimits,
  curveOfClassSet,
  curveOfMaterial,
  defaultSoilCurve,
  fieldCapacities,
  fieldCapacityByFlux,
  fieldCapacityTwarakavi,
  gravityTimeH,
  type Material,
  measuredCurve,
  philipInfiltration,
  type SoilCurve,
  saxtonRawls,
  saxtonRawlsCurve,
  structureFactors,
  textureCentre,
  vanGenuchtenCurve,
  withStones,
  withStructure,
} from "rootledger/ground";
import { headFromTension } from "rootledger/units";
import { describe, expect, test } from "vitest";

const heads = [0, -0.3, -5, -30, -100, -1000, -15000];
/** Theta and K of a curve at some heads. */
const drawn = (curve: SoilCurve): number[] =>
  heads.flatMap((headCm) => [curve.thetaAt(headCm), curve.conductivityAt(headCm), curve.capacityAt(headCm)]);

const shape = { thetaResidual: 0.07, thetaSaturated: 0.43, alphaPerCm: 0.02, n: 1.4, kSatCmPerH: 1.2 };
const campbell = { thetaResidual: 0.02, thetaSaturated: 0.45, airEntryCm: 15, lambda: 0.3, kSatCmPerH: 1.1 };
const points = [
  { headCm: 0, theta: 0.45, conductivityCmPerH: 2 },
  { headCm: -50, theta: 0.35, conductivityCmPerH: 0.2 },
  { headCm: -300, theta: 0.25, conductivityCmPerH: 1e-3 },
  { headCm: -15000, theta: 0.12, conductivityCmPerH: 1e-8 },
];
const particles = { sandFraction: 0.3, clayFraction: 0.35, organicMatterFraction: 0.02 };
const limits = { fieldCapacity: 0.31, fieldCapacityTensionKPa: 10, wiltingPoint: 0.16, saturation: 0.47 };
const named = classSet("clapp-hornberger-1978", "loam");
if (named === undefined) throw new Error("the set has a loam");

describe("what a soil is made of says its curve", () => {
  const loam = defaultSoilCurve("loam");
  const cases: readonly (readonly [string, Material, SoilCurve])[] = [
    ["a class", { texture: "loam" }, loam],
    ["a class of a named set", { texture: "loam", classSet: named }, curveOfClassSet(named, "loam")],
    ["a class with measured limits", { texture: "loam", limits }, curveFromLimits(loam, limits, "x")],
    [
      "a class with structure",
      { texture: "clay", structure: "tight" },
      withStructure(defaultSoilCurve("clay"), structureFactors(textureCentre("clay"), "tight"), "x"),
    ],
    ["an ordinary structure, which changes nothing", { texture: "loam", structure: "ordinary" }, loam],
    ["particles", { particles }, saxtonRawlsCurve(saxtonRawls(particles), "x")],
    [
      "particles with structure",
      { particles, structure: "crumbly" },
      withStructure(saxtonRawlsCurve(saxtonRawls(particles), "x"), structureFactors(particles, "crumbly"), "x"),
    ],
    ["van Genuchten's parameters", { vanGenuchten: shape }, vanGenuchtenCurve("x", shape, "x")],
    [
      "the same with a treatment near saturation",
      { vanGenuchten: shape, nearSaturation: "raw" },
      vanGenuchtenCurve("x", shape, "x", "raw"),
    ],
    ["Brooks and Corey's", { brooksCorey: campbell }, brooksCoreyCurve("x", campbell, "x")],
    ["points of one's own", { points }, measuredCurve("x", points, "x")],
    ["stones in it", { texture: "loam", stonesFraction: 0.2 }, withStones(loam, 0.2)],
  ];

  test.each(cases)("%s", (_, material, expected) => {
    const curve = curveOfMaterial(material, "mine");
    expect(drawn(curve)).toEqual(drawn(expected));
    expect([curve.thetaSaturated, curve.thetaResidual, curve.kSatCmPerH]).toEqual([
      expected.thetaSaturated,
      expected.thetaResidual,
      expected.kSatCmPerH,
    ]);
  });

  test("and each of these says something else", () => {
    const all = cases.map(([, material]) => drawn(curveOfMaterial(material, "mine")).join());
    expect(new Set(all).size).toBe(cases.length - 1);
  });
});

describe("van Genuchten near saturation", () => {
  const m = 1 - 1 / shape.n;
  const saturation = (headCm: number): number => (1 + (shape.alphaPerCm * -headCm) ** shape.n) ** -m;
  const mualem = (s: number): number => s ** 0.5 * (1 - (1 - s ** (1 / m)) ** m) ** 2;

  test("raw is Mualem's curve (van Genuchten 1980, eqs 3 and 8)", () => {
    const raw = vanGenuchtenCurve("x", shape, "x", "raw");
    for (const headCm of [-0.5, -1, -20, -500]) {
      expect(raw.thetaAt(headCm)).toBeCloseTo(0.07 + 0.36 * saturation(headCm), 12);
      expect(raw.conductivityAt(headCm) / (1.2 * mualem(saturation(headCm)))).toBeCloseTo(1, 9);
    }
  });

  test("linear goes straight from -1 cm to kSat where n is below 1.5, and nowhere else", () => {
    const raw = vanGenuchtenCurve("x", shape, "x", "raw");
    const linear = vanGenuchtenCurve("x", shape, "x");
    const atOne = raw.conductivityAt(-1);
    expect(linear.conductivityAt(0)).toBe(1.2);
    expect(linear.conductivityAt(-0.25)).toBeCloseTo(1.2 + 0.25 * (atOne - 1.2), 12);
    expect(linear.conductivityAt(-1)).toBeCloseTo(atOne, 12);
    expect(linear.conductivityAt(-1.5)).toBe(raw.conductivityAt(-1.5));
    const steep = { ...shape, n: 1.5 };
    expect(vanGenuchtenCurve("x", steep, "x").conductivityAt(-0.25)).toBe(
      vanGenuchtenCurve("x", steep, "x", "raw").conductivityAt(-0.25),
    );
  });

  test("a least capillary height keeps the soil full to -2 cm and scales both functions below (Vogel et al. 2000)", () => {
    const full = vanGenuchtenCurve("x", shape, "x", "minimum-capillary-height");
    const [sHeight, kHeight] = [saturation(-2), mualem(saturation(-2))];
    for (const headCm of [0, -1, -2]) {
      expect([full.thetaAt(headCm), full.conductivityAt(headCm), full.capacityAt(headCm)]).toEqual([0.43, 1.2, 0]);
    }
    for (const headCm of [-2.5, -40, -800]) {
      expect(full.thetaAt(headCm)).toBeCloseTo(0.07 + (0.36 * saturation(headCm)) / sHeight, 12);
      expect(full.conductivityAt(headCm) / ((1.2 * mualem(saturation(headCm))) / kHeight)).toBeCloseTo(1, 9);
      const step = 1e-3;
      const slope = (full.thetaAt(headCm + step) - full.thetaAt(headCm - step)) / (2 * step);
      expect(full.capacityAt(headCm) / slope).toBeCloseTo(1, 5);
    }
  });

  test("refuses what no soil has, by name and value", () => {
    for (const [change, said] of [
      [{ kSatCmPerH: 0 }, "kSatCmPerH above 0: got 0"],
      [{ thetaResidual: -0.01 }, /vanGenuchtenCurve requires/],
      [{ thetaResidual: 0.43 }, /vanGenuchtenCurve requires/],
      [{ thetaSaturated: 1 }, /vanGenuchtenCurve requires/],
    ] as const) {
      expect(() => vanGenuchtenCurve("x", { ...shape, ...change }, "x")).toThrow(said);
    }
    expect(() => vanGenuchtenCurve("x", { ...shape, thetaResidual: 0 }, "x")).not.toThrow();
  });
});

test("Philip's two terms: I = S sqrt(t) + A t, its rate half of S / sqrt(t) and A (Philip 1957, from memory)", () => {
  expect(philipInfiltration({ sorptivityCmPerSqrtH: 3, gravityCmPerH: 0.4 }, 4)).toEqual({
    cumulativeCm: expect.closeTo(7.6, 12),
    rateCmPerH: expect.closeTo(0.75 + 0.4, 12),
  });
  expect(philipInfiltration({ sorptivityCmPerSqrtH: 2, gravityCmPerH: 0 }, 0.25).rateCmPerH).toBeCloseTo(2, 12);
  for (const [soil, hours] of [
    [{ sorptivityCmPerSqrtH: 0, gravityCmPerH: 0 }, 1],
    [{ sorptivityCmPerSqrtH: 2, gravityCmPerH: -0.1 }, 1],
    [{ sorptivityCmPerSqrtH: 2, gravityCmPerH: 0 }, 0],
  ] as const) {
    expect(() => philipInfiltration(soil, hours)).toThrow(/philipInfiltration requires/);
  }
  expect(gravityTimeH(3, 1.5)).toBe(4);
  for (const [s, k] of [
    [0, 1],
    [1, 0],
  ] as const)
    expect(() => gravityTimeH(s, k)).toThrow(/gravityTimeH requires/);
});

test("Cosby's formulas of one fraction each, by hand at 40 % sand and 20 % clay (Cosby et al. 1984, from memory)", () => {
  // 2.91 + 0.159 x 20; 10^(1.88 - 0.524) cm; 10^(-0.884 + 0.612) inches an hour; (48.9 - 5.04) %.
  expect(cosbyCampbellSimple({ sandFraction: 0.4, clayFraction: 0.2 })).toEqual({
    b: expect.closeTo(6.09, 9),
    airEntryCm: expect.closeTo(22.7, 1),
    kSatCmPerH: expect.closeTo(2.54 * 0.53456, 4),
    thetaSaturated: expect.closeTo(0.4386, 9),
  });
  for (const [sandFraction, clayFraction] of [
    [-0.01, 0.2],
    [0.2, -0.01],
    [0.7, 0.31],
    [Number.NaN, 0.2],
  ] as const) {
    expect(() => cosbyCampbellSimple({ sandFraction, clayFraction })).toThrow(/^cosby requires .*: got /);
  }
  for (const [sandFraction, clayFraction] of [
    [0, 1],
    [1, 0],
    [0.7, 0.3],
  ] as const) {
    expect(() => cosbyCampbellSimple({ sandFraction, clayFraction })).not.toThrow();
  }
});

describe("field capacity side by side", () => {
  const loam = carselParrishParameters("loam");
  const curve = carselParrishCurve("loam");
  const criteriaOf = (of: SoilCurve, parameters?: typeof loam): string[] =>
    fieldCapacities(of, parameters).map(({ criterion }) => criterion);

  test("by every criterion that the soil allows", () => {
    const always = ["covered-drain-48-h", "flux-0.1-cm-per-d", "flux-0.01-cm-per-d", "10-kpa", "33-kpa"];
    expect(criteriaOf(curve)).toEqual(always);
    expect(criteriaOf(curve, loam)).toEqual([...always, "twarakavi-2009", "assouline-or-2014"]);
    // A soil that conducts 0.05 cm a day at most never drains at 0.1.
    const slow = vanGenuchtenCurve("slow", { ...shape, kSatCmPerH: 0.05 / 24 }, "x");
    expect(criteriaOf(slow)).toEqual(always.filter((name) => name !== "flux-0.1-cm-per-d"));
    for (const { theta, tensionKPa } of fieldCapacities(curve, loam)) {
      expect(curve.thetaAt(headFromTension(tensionKPa))).toBeCloseTo(theta, 2);
    }
  });

  test("by Twarakavi's closed form as by hand: n^(-0.6 (2 + log10 24.96)) of the pores of Carsel and Parrish's loam", () => {
    const { theta, tensionKPa } = fieldCapacityTwarakavi(loam);
    expect(theta).toBeCloseTo(0.078 + 0.352 * 1.56 ** (-0.6 * (2 + Math.log10(24.96))), 4);
    expect(curve.thetaAt(headFromTension(tensionKPa))).toBeCloseTo(theta, 6);
  });

  test("by a flux within what the soil conducts, said in cm a day", () => {
    expect(24 * curve.conductivityAt(headFromTension(fieldCapacityByFlux(curve, 0.1).tensionKPa))).toBeCloseTo(0.1, 5);
    const most = 24 * curve.kSatCmPerH;
    for (const flux of [0, -1, most, Number.NaN]) {
      expect(() => fieldCapacityByFlux(curve, flux)).toThrow(`between 0 and kSat (${most} cm/d): got ${flux}`);
    }
  });
});
