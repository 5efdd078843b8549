import fc from "fast-check";
import { parseNeed } from "rootledger/scenario";
import { needArea, needPeriods, waterNeed } from "rootledger/tree";
import { describe, expect, test } from "vitest";

const plain = { hotDayRatio: 1.3, efficiencyFraction: 0.9, leachingFraction: 0.1 };
const spacing = { treeSpacingM: 4, rowSpacingM: 6 };
const january = { name: "January", days: 31, referenceMmPerDay: 6, coefficient: 0.8 };
const file = {
  format: 1,
  name: "block",
  ...spacing,
  canopyDiameterM: 3,
  reference: { kind: "et0" },
  periods: [january],
};

describe("need", () => {
  test("gross is net over efficiency and what is left of leaching; a hot day scales with its reference", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 12, noNaN: true }),
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (referenceMmPerDay, efficiencyFraction, leachingFraction) => {
          const { periods } = waterNeed({
            tree: { spacing },
            cover: { rule: "whole-ground" },
            reference: { kind: "pan", panCoefficient: 0.7 },
            periods: [{ ...january, referenceMmPerDay }],
            hotDayRatio: 1.5,
            efficiencyFraction,
            leachingFraction,
          });
          const { meanDay, hotDay } = periods[0];
          const net = referenceMmPerDay * 0.7 * 0.8 * 24;
          return (
            Math.abs(meanDay.netLPerTree - net) < 1e-9 &&
            Math.abs(meanDay.grossLPerTree * efficiencyFraction * (1 - leachingFraction) - net) < 1e-9 &&
            Math.abs(hotDay.netLPerTree - 1.5 * net) < 1e-9
          );
        },
      ),
    );
  });

  test("useful rain is taken off the span, and what is beyond the need is told", () => {
    const ask = (usefulRainLPerTree: number) =>
      waterNeed({
        ...plain,
        tree: { spacing },
        cover: { rule: "whole-ground" },
        reference: { kind: "et0" },
        periods: [{ ...january, usefulRainLPerTree }],
      }).periods[0];
    const wanted = ask(0).netLPerTree;
    expect(ask(100).netLPerTree).toBeCloseTo(wanted - 100, 9);
    expect(ask(wanted + 50)).toMatchObject({ netLPerTree: 0, grossLPerTree: 0 });
    expect(ask(wanted + 50).rainBeyondNeedLPerTree).toBeCloseTo(50, 9);
  });

  test("every rule counts at most the whole ground, and canopy ground needs no spacing", () => {
    const tree = { spacing, canopyDiameterM: 3, heightM: 3 };
    for (const rule of ["whole-ground", "canopy-ground", "density", "keller-karmeli", "decroix"] as const) {
      expect(needArea(tree, { rule }).countsM2).toBeLessThanOrEqual(24);
    }
    expect(needArea({ canopyDiameterM: 3 }, { rule: "canopy-ground" })).toEqual({
      countsM2: Math.PI * 2.25,
      canopyM2: Math.PI * 2.25,
    });
    expect(() => needArea({ canopyDiameterM: 3 }, { rule: "density" })).toThrow(/a spacing/);
    expect(() => needArea({ spacing, canopyDiameterM: 3 }, { rule: "density" })).toThrow(/a height/);
  });

  test("months of a daily record keep the sum of the daily products", () => {
    const et0 = Array.from({ length: 90 }, (_, day) => 2 + (day % 7));
    const kc = et0.map((_, day) => 0.6 + day / 900);
    const months = needPeriods("2025-12-15", et0, kc);
    expect(months.map(({ name, days }) => [name, days])).toEqual([
      ["2025-12", 17],
      ["2026-01", 31],
      ["2026-02", 28],
      ["2026-03", 14],
    ]);
    const total = months.reduce((sum, month) => sum + month.days * month.referenceMmPerDay * month.coefficient, 0);
    expect(total).toBeCloseTo(
      et0.reduce((sum, mm, day) => sum + mm * kc[day], 0),
      9,
    );
    for (const { referenceMmPerDay, hotDayMmPerDay } of months) {
      expect(hotDayMmPerDay).toBeGreaterThan(referenceMmPerDay);
    }
    expect(() => needPeriods("2025-12-15", [1, Number.NaN], [1, 1])).toThrow(/none on 2025-12-16/);
  });
});

describe("need file", () => {
  test("defaults are listed", () => {
    const parsed = parseNeed(file);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    expect(parsed.defaultsUsed.map(({ path, value }) => `${path} ${value}`)).toEqual([
      "cover.rule canopy-ground",
      "hotDayRatio 1.3",
      "efficiencyFraction 0.9",
      "leachingFraction 0",
    ]);
  });

  test.each([
    [{ ...file, canopyDiameterM: undefined, cover: { rule: "canopy-ground" } }, ["canopyDiameterM"]],
    [{ ...file, cover: { rule: "density" } }, ["heightM"]],
    [{ ...file, treeSpacingM: undefined, cover: { rule: "whole-ground" } }, ["treeSpacingM"]],
    [{ ...file, treeSpacingM: undefined }, ["treeSpacingM"]],
    [{ ...file, practice: [{ name: "a", litresPerTreePerDay: 5, period: "Juli" }] }, ["practice[0].period"]],
    [{ ...file, periods: [{ ...january, days: 0 }] }, ["periods[0].days"]],
    [{ ...file, canopyDiametreM: 3 }, ["canopyDiametreM"]],
    [{ ...file, reference: { kind: "pan" } }, ["reference.panCoefficient"]],
    [{ ...file, efficiencyFraction: 90 }, ["efficiencyFraction"]],
    [null, [""]],
  ])("fault %#", (input, paths) => {
    const parsed = parseNeed(JSON.parse(JSON.stringify(input)));
    expect(parsed.ok ? [] : parsed.faults.map(({ path }) => path)).toEqual(paths);
  });
});
