import { column, simulate } from "rootledger";
import { defaultSoilCurve } from "rootledger/ground";
import type { Scenario } from "rootledger/scenario";
import { evaporationReduction } from "rootledger/tree";
import { describe, expect, test } from "vitest";
import { evaporableMm } from "../../packages/rootledger/src/water/evaporation.js";
import { scenarioWith } from "../support/scenario.js";

// Allen et al. (1998), FAO-56 eqs 73 and 74, Kc max 1.2: bookkeeping of one store, to which nothing rises from below.
const et0Mm = 6;
const kcMax = 1.2;

/** Evaporation after each day by the bookkeeping, an hour at a time, mm. */
function byBookkeeping(totalEvaporableMm: number, readilyEvaporableMm: number, days: number): number[] {
  let depletionMm = 0;
  return Array.from({ length: days }, () => {
    for (let hour = 0; hour < 24; hour++) {
      const kr = evaporationReduction(depletionMm, { totalEvaporableMm, readilyEvaporableMm });
      depletionMm += (kr * kcMax * et0Mm) / 24;
    }
    return depletionMm;
  });
}

/** Bare ground that dries from field capacity, no deeper than `toCm`, nothing entering or leaving below; after each day, mm. */
function bySeason(texture: "loam" | "clay", readilyEvaporableMm: number, toCm: number): number[] {
  const block = scenarioWith({
    days: 30,
    et0Mm,
    texture,
    horizons: [{ toCm, texture, structure: "ordinary" }],
    roots: { depthCm: 10 },
    programme: { name: "none", runs: [] },
    bottom: { kind: "impeding", conductivityMmPerH: 1e-9 },
    start: { tensionKPa: 10, kind: "same-state" },
  });
  const bare: Scenario = {
    ...block,
    block: {
      ...block.block,
      surface: { evaporation: "two-stage", evaporableDepthCm: 10, canopyStorageMm: 0 },
      tree: { ...block.block.tree, canopyDiameterM: 0.01, kcb: [{ date: "2025-12-01", kcb: 0 }] },
    },
    soil: { ...block.soil, readilyEvaporableMm },
  };
  let sum = 0;
  return [...column(simulate(bare).days, "evaporated").values].map((litres) => {
    sum += litres / 24;
    return sum;
  });
}

// REW: FAO-56 table 19, middle of loam 8-10 mm and of clay 8-12 mm.
describe.each([
  ["loam", 9],
  ["clay", 10],
] as const)("two-stage evaporation of bare %s in a season", (texture, rew) => {
  const tew = evaporableMm(defaultSoilCurve(texture, "ordinary"), 10);
  const paper = byBookkeeping(tew, rew, 30);

  test("of a slab as deep as the evaporable depth is FAO-56's for three days, and never more than its TEW", () => {
    const slab = bySeason(texture, rew, 10);
    // Fitted to what was found: 1 % for two days and 7 % on the third; from then on the lower cell gives by flow alone.
    for (const [day, share] of [0.01, 0.01, 0.07].entries()) {
      expect(Math.abs((slab[day] ?? Number.NaN) / (paper[day] ?? Number.NaN) - 1), `day ${day}`).toBeLessThan(share);
    }
    const last = slab.at(-1) ?? Number.NaN;
    expect(last).toBeLessThanOrEqual(tew);
    expect(last).toBeGreaterThan(0.75 * tew);
  });

  test("goes on over deeper ground, from which water rises: the bookkeeping leaves that out", () => {
    const deep = bySeason(texture, rew, 100);
    expect(Math.abs((deep[0] ?? Number.NaN) / (paper[0] ?? Number.NaN) - 1)).toBeLessThan(0.01);
    expect(deep.at(-1)).toBeGreaterThan(tew);
  });
});
