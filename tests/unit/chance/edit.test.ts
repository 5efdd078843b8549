import { type Draw, defaultPriors, drawMaker, editComparison, type UnknownId } from "rootledger/chance";
import { scenarioOf } from "rootledger/compare";
import { type Comparison, rainHeld, simulate } from "rootledger/scenario";
import { expect, test } from "vitest";
import { curveOfMaterial } from "../../../packages/rootledger/src/ground/material.js";
import { calendar, scenarioWith } from "../../support/scenario.js";

const { soil, programme: _, ...common } = scenarioWith({ days: 6, rainMm: [0, 12, 0, 0, 3, 0] });
const surface = { evaporation: "soil-limited", evaporableDepthCm: 10, canopyStorageMm: 1 } as const;
const rain = rainHeld(surface, common.weather.rainMm)!;
const comparison: Comparison = {
  ...common,
  remark: "",
  soils: [soil],
  programmes: [calendar("daily", 1, 1, 110)],
  block: {
    ...common.block,
    surface: { ...surface, rain },
    tree: {
      ...common.block.tree,
      days: { kcb: new Float64Array(6).fill(0.9), kcMax: new Float64Array(6).fill(1.1) },
      limits: {
        ...common.block.tree.limits,
        pullLimitLowDemandKPa: 40,
        periods: [{ name: "flowering", from: "12-01", to: "12-03", limits: { pullLimitKPa: 12, airReturnKPa: 6 } }],
      },
    },
  },
};
const draw = (values: Partial<Record<UnknownId, number>>): Draw => ({
  member: 0,
  ids: Object.keys(values) as UnknownId[],
  values: Float64Array.from(Object.values(values)),
});

test("a drawn limit moves its periods and low demand by the same factor", () => {
  const { limits } = editComparison(comparison, draw({ "pull-limit": 30, "air-return": 4 })).block.tree;
  expect(limits).toMatchObject({ pullLimitKPa: 30, pullLimitLowDemandKPa: 60, airReturnKPa: 4, zeroUptakeKPa: 100 });
  expect(limits.periods![0]!.limits.pullLimitKPa).toBeCloseTo(18, 12);
  expect(limits.periods![0]!.limits.airReturnKPa).toBeCloseTo(4.8, 12);
});

test("a drawn coefficient moves every day's and keeps Kc max 0.05 above it (FAO-56, eq. 72)", () => {
  const { days } = editComparison(comparison, draw({ kcb: 1.2 })).block.tree;
  expect(days!.kcb[0]).toBeCloseTo(1.08, 12);
  expect(days!.kcMax[0]).toBeCloseTo(1.13, 12);
  expect(editComparison(comparison, draw({ kcb: 0.9 })).block.tree.days!.kcMax[0]).toBe(1.1);
});

test("a drawn year brings its own rain, and what leaves hold of it", () => {
  const wet = { ...comparison.weather, rainMm: new Float64Array(6).fill(4) };
  const edited = editComparison(comparison, draw({ "weather-year": 1 }), [wet]);
  expect(edited.weather).toBe(wet);
  expect(edited.block.surface!.rain).toEqual(rainHeld(surface, wet.rainMm));
  expect(edited.block.surface!.rain).not.toEqual(rain);
});

test("default draws of a season with periods and low demand contradict no limit", () => {
  const priors = defaultPriors(comparison);
  const drawOf = drawMaker({ kind: "priors", priors, seed: 5 });
  const oneDay = { ...comparison, season: { ...comparison.season, days: 1 } };
  for (let member = 0; member < 60; member++) {
    const edited = editComparison(oneDay, drawOf(member));
    const result = simulate(scenarioOf(edited, edited.soils[0]!, edited.programmes[0]!));
    expect(result.status.kind).toBe("finished");
  }
});

test("the ends of every default prior can be run, two at a time", () => {
  const { unknowns } = defaultPriors(comparison);
  const ends = (spread: (typeof unknowns)[number]["spread"]): number[] =>
    spread.kind === "choice" ? [spread.values[0]!, spread.values.at(-1)!] : [spread.from, spread.to];
  const oneDay = { ...comparison, season: { ...comparison.season, days: 1 } };
  for (const a of unknowns) {
    for (const b of unknowns) {
      if (a.id >= b.id) continue;
      for (const x of ends(a.spread)) {
        for (const y of ends(b.spread)) {
          const edited = editComparison(oneDay, draw({ [a.id]: x, [b.id]: y }));
          if (edited.block.tree.limits.pullLimitKPa === edited.block.tree.limits.airReturnKPa) continue;
          const result = simulate(scenarioOf(edited, edited.soils[0]!, edited.programmes[0]!));
          expect(result.status.kind, `${a.id} ${x}, ${b.id} ${y}`).toBe("finished");
        }
      }
    }
  }
});

test("a drawn field capacity bends the curve of a texture class and leaves its pores; a curve of one's own stays", () => {
  const tenKPaCm = -101.97;
  const curveOfEdited = (factor: number) => {
    const [edited] = editComparison(comparison, draw({ "field-capacity": factor })).soils;
    return curveOfMaterial(edited!.horizons[0]!, "edited");
  };
  const usual = curveOfMaterial(soil.horizons[0]!, "usual");
  const held = (curve: typeof usual) => curve.thetaAt(tenKPaCm) - curve.thetaAt(150 * tenKPaCm);
  expect(held(curveOfEdited(1.15)) / held(usual)).toBeCloseTo(1.15, 3);
  expect(curveOfEdited(1.15).thetaSaturated).toBeCloseTo(usual.thetaSaturated, 12);
  expect(curveOfEdited(1).thetaAt(-300)).toBeCloseTo(usual.thetaAt(-300), 9);
  const own = {
    toCm: 100,
    brooksCorey: { thetaSaturated: 0.4, thetaResidual: 0.05, airEntryCm: 15, lambda: 0.4, kSatCmPerH: 2 },
  };
  const ownSoils = { ...comparison, soils: [{ ...soil, horizons: [own as never] }] };
  expect(editComparison(ownSoils, draw({ "field-capacity": 1.2 })).soils[0]!.horizons[0]).toEqual(own);
});
