import { practiceRatios, waterNeed } from "rootledger/tree";
import { describe, expect, test } from "vitest";

const question = (treeSpacingM: number, et0Mm: number, kc: number) => ({
  tree: { spacing: { treeSpacingM, rowSpacingM: 6 } },
  cover: { rule: "whole-ground" } as const,
  reference: { kind: "et0" } as const,
  periods: [{ name: "month", days: 31, referenceMmPerDay: et0Mm, coefficient: kc }],
  hotDayRatio: 1.3,
  efficiencyFraction: 0.85,
  leachingFraction: 0,
});

// CNR / INIA Chile, irrigation card Hass, Valparaiso region (seen): what to apply in January and July, L per tree and day, at 6 x 6, 6 x 5 and
// 6 x 4 m. The card states no efficiency; 0.85 is ours, and 12 % the spread of what it implies (0.80 to 0.92 in these months).
describe.each([
  { place: "Quillota, January", et0Mm: 7.5, kc: 0.7, card: [228, 190, 152] },
  { place: "Quillota, July", et0Mm: 1.4, kc: 0.5, card: [31, 26, 21] },
  { place: "Limache, January", et0Mm: 5.7, kc: 0.7, card: [170, 141, 113] },
])("$place", ({ et0Mm, kc, card }) => {
  test.each([6, 5, 4])("at 6 x %i m", (treeSpacingM) => {
    const [period] = waterNeed(question(treeSpacingM, et0Mm, kc)).periods;
    const printed = card[6 - treeSpacingM];
    expect(Math.abs(period.meanDay.grossLPerTree / printed - 1)).toBeLessThan(0.12);
    // 1 mm on 1 m2 is 1 L; 1 mm is 10 m3/ha.
    expect(period.meanDay.netMm).toBeCloseTo(et0Mm * kc, 12);
    expect(period.netM3PerHa).toBeCloseTo(310 * et0Mm * kc, 9);
  });
});

test("peak demand at Quillota is 7 to 8 times that of winter (the card: 228 and 31 L)", () => {
  const day = (et0Mm: number, kc: number) => waterNeed(question(6, et0Mm, kc)).periods[0].meanDay.netLPerTree;
  expect(day(7.5, 0.7) / day(1.4, 0.5)).toBeGreaterThan(7);
  expect(day(7.5, 0.7) / day(1.4, 0.5)).toBeLessThan(8);
});

// Common practice, no source: trees in their first year are given 8, then 10, 15 and 20 L per tree and day as they grow, and more when it
// is hot. Canopies, ET0 and Kc of the comparison are ours. Nothing is tuned: computed need is smaller, and that is what is shown.
test("first-year practice is above the computed need of first-year canopies by every rule for cover", () => {
  const ages = [
    { litresPerTreePerDay: 8, canopyDiameterM: 0.6 },
    { litresPerTreePerDay: 10, canopyDiameterM: 0.8 },
    { litresPerTreePerDay: 15, canopyDiameterM: 1 },
    { litresPerTreePerDay: 20, canopyDiameterM: 1.2 },
  ].map((age) => ({ name: `${age.litresPerTreePerDay} L`, ...age }));
  const rules = ["canopy-ground", "keller-karmeli", "freeman-garzoli", "density"] as const;
  const ratios = rules.map((rule) => {
    const tree = { spacing: { treeSpacingM: 4, rowSpacingM: 6 }, heightM: 1.2 };
    return practiceRatios({ ...question(4, 6.5, 0.85), tree, cover: { rule } }, ages).map(({ ratio }) => ratio);
  });
  for (const [i, row] of ratios.entries()) {
    console.log(`first-year practice over need, ${rules[i]}: ${row.map((ratio) => ratio.toFixed(1)).join(" ")}`);
    for (const ratio of row) expect(ratio).toBeGreaterThan(1);
  }
});

test("the split of a practice adds up to what is given", () => {
  const tree = { spacing: { treeSpacingM: 4, rowSpacingM: 6 }, canopyDiameterM: 1.2 };
  const [young] = practiceRatios({ ...question(4, 6.5, 0.85), tree, cover: { rule: "canopy-ground" } }, [
    { name: "twenty", litresPerTreePerDay: 20, rootedShare: 0.4 },
  ]);
  const { takenL = 0, withoutRootsL = 0, beyondNeedL = 0 } = young.split ?? {};
  expect(takenL + withoutRootsL + beyondNeedL).toBeCloseTo(20, 12);
  expect(withoutRootsL).toBeCloseTo(12, 12);
  expect(takenL).toBeCloseTo(young.neededL, 12);
});
