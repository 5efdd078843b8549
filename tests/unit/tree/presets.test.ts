import { cropPresets, type Disputed, faoKcbTable, faoKcTable, faoRootTable } from "rootledger/tree";
import { describe, expect, test } from "vitest";

const rows = {
  avocado: { kc: "avocado, no ground cover", root: "avocado" },
  citrus: { kc: "citrus, no ground cover, 70 % canopy", root: "citrus 70 % canopy" },
  blueberry: { kc: "berries (bushes)", root: "berries (bushes)" },
  strawberry: { kc: "strawberries", root: "strawberries" },
};

describe.each(Object.entries(cropPresets))("%s", (name, preset) => {
  const numbers: Disputed[] = [
    ...Object.values(preset.kc),
    ...Object.values(preset.kcb),
    preset.heightM,
    preset.rootDepthCm,
    preset.topShare,
    preset.depletionFraction,
    preset.pullLimitKPa,
    preset.zeroUptakeKPa,
    preset.airLimitFraction,
    preset.airReturnKPa,
  ];

  test("every number has a source and says whether it was read, recalled or chosen", () => {
    for (const { value, source, verified, others } of numbers) {
      expect(value).toBeGreaterThan(0);
      for (const one of [{ source, verified }, ...others]) {
        expect(one.source.length).toBeGreaterThan(8);
        expect(/our choice/.test(one.source)).toBe(one.verified === "choice");
      }
    }
  });

  test("coefficients are those of the FAO-56 rows that they name", () => {
    const { kc, root } = rows[name as keyof typeof rows];
    const single = faoKcTable[kc];
    const basal = faoKcbTable[kc];
    expect([preset.kc.initial.value, preset.kc.middle.value, preset.kc.end.value]).toEqual([
      single.kcInitial,
      single.kcMiddle,
      single.kcEnd,
    ]);
    expect([preset.kcb.initial.value, preset.kcb.middle.value, preset.kcb.end.value]).toEqual([
      basal.kcbInitial,
      basal.kcbMiddle,
      basal.kcbEnd,
    ]);
    expect(preset.heightM.value).toBe(single.heightM);
    const p = faoRootTable[root].depletionFraction;
    expect([preset.depletionFraction, ...preset.depletionFraction.others].map(({ value }) => value)).toContain(p);
  });

  test("limits follow one another and canopies grow", () => {
    expect(preset.airReturnKPa.value).toBeLessThan(preset.pullLimitKPa.value);
    expect(preset.pullLimitKPa.value).toBeLessThan(preset.zeroUptakeKPa.value);
    preset.canopy.slice(1).forEach((point, i) => {
      expect(point.ageYears).toBeGreaterThan(preset.canopy[i].ageYears);
      expect(point.diameterM).toBeGreaterThan(preset.canopy[i].diameterM);
    });
    for (const event of preset.sensitive) expect(preset.phenologyNorth).toHaveProperty(event);
  });
});

test("where sources disagree on avocado, both sides are there", () => {
  const { kc, depletionFraction, pullLimitKPa, rootDepthCm } = cropPresets.avocado;
  const spread = (d: Disputed): number => Math.max(...[d, ...d.others].map(({ value }) => value)) / d.value;
  expect(kc.middle.others.length).toBeGreaterThanOrEqual(3);
  expect(spread(depletionFraction)).toBeGreaterThan(2);
  expect(spread(pullLimitKPa)).toBeGreaterThanOrEqual(2);
  expect(rootDepthCm.others.length).toBeGreaterThanOrEqual(3);
});
