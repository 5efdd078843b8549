import { compare, measure } from "rootledger";
import { parseComparison, withOwnLines } from "rootledger/scenario";
import { expect, it } from "vitest";
import { demoFiles, demoJson } from "../../support/demo-files.js";

/** The demo's daily run through its two lines, and the same litres through three. */
function threeLines() {
  const file = demoJson("comparison");
  file.season.days = 10;
  file.start = { kind: "same-state" };
  const daily = file.programmes[1];
  file.programmes = [daily, { ...daily, name: "three lines", lines: { offsetsM: [-0.8, 0, 0.8] } }];
  return file;
}

it("runs a programme through lines of its own: the same litres in less time, on more ground, as one question", () => {
  const parsed = parseComparison(threeLines(), demoFiles);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  // In sand, where the lines' wet strips do not join.
  const { arms: all, changes, badges } = compare(parsed.comparison, { trees: ["mean"] });
  const arms = all.filter(({ soil }) => soil === "sand");
  const [two, three] = arms.map((arm) => arm.result);
  expect(badges.find(({ id }) => id === "same-water")?.holds).toBe(true);
  expect(changes[0]?.questions).toEqual(["lines"]);
  // 20 and 30 emitters of 1.6 L/h: 133 L take 4.16 and 2.77 h.
  expect((two!.valveH[1]! - two!.valveH[0]!) / (three!.valveH[1]! - three!.valveH[0]!)).toBeCloseTo(1.5, 9);
  expect(Array.from(three!.section.lineAtCm)).toEqual([0, 80]);
  expect(three!.window.litresPerTree).toBeGreaterThan(1.2 * two!.window.litresPerTree);
  for (const { result } of arms) expect(measure(result, "applied").values[0]).toBeCloseTo(1330, 6);
});

it("gives each line of its own the water that a line holds", () => {
  const file = threeLines();
  file.block.lines.drainOut = { innerDiameterMm: 14 };
  const parsed = parseComparison(file, demoFiles);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  const { block, programmes } = parsed.comparison;
  const held = (i: number): number => withOwnLines(block, programmes[i]!).lines.drainOut!.contentLPerTree;
  expect(held(1) / held(0)).toBeCloseTo(1.5, 12);
});

it("reports lines of a programme as it reports the block's", () => {
  const file = threeLines();
  file.programmes[1].lines.offsetsM = [-0.8, 0, 0.7];
  const parsed = parseComparison(file, demoFiles);
  expect(parsed.ok ? [] : parsed.faults.map(({ code, path }) => `${code} ${path}`)).toEqual([
    "not-mirrored programmes[1].lines.offsetsM[0]",
    "not-mirrored programmes[1].lines.offsetsM[2]",
  ]);
});
