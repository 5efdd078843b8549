import { main } from "@rootledger/cli";
import { yearsPlan } from "rootledger/advise";
import { parsePlan, planJsonSchema } from "rootledger/scenario";
import { describe, expect, test } from "vitest";
import { dataPath, dataText, type Editable } from "../support/demo-files.js";
import { memoryIo } from "../support/memory-io.js";

const demo = (): Editable => JSON.parse(dataText("demo/plan.json"));

async function run(...argv: string[]) {
  const { io, written } = memoryIo();
  return { code: await main(["plan", ...argv], io), ...written };
}

function planned(edit: (file: Editable) => void = () => {}) {
  const file = demo();
  edit(file);
  const parsed = parsePlan(file);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  const { offsetsM, emitterSpacingM, treeSpacingM, rowSpacingM, sector, ...rest } = parsed.plan;
  const layout = { offsetsM, emitterSpacingM, treeSpacingM, rowSpacingM };
  return yearsPlan({ ...rest, layout, ...(sector === undefined ? {} : { sector }) });
}

describe("the plan over years", () => {
  test("prints canopy, litres, emitters, lines, fertiliser and cautions", async () => {
    const { code, stdout } = await run(dataPath("demo/plan.json"));
    expect(code).toBe(0);
    expect(stdout).toMatch(/^10 +4\.6 +2\.3 .* 20\/20 +100 % .* 600 /m);
    expect(stdout).toMatch(/guard against backflow/);
    expect(stdout).toMatch(/No yield is promised/);
    const { stdout: csv } = await run(dataPath("demo/plan.json"), "--csv");
    expect(csv.trim().split("\n")).toHaveLength(8);
    const { stdout: json } = await run(dataPath("demo/plan.json"), "--json");
    expect(JSON.parse(json).years).toHaveLength(7);
  });

  test("litres, open emitters and fertiliser never fall as the tree grows", () => {
    const { years } = planned();
    for (let y = 1; y < years.length; y++) {
      const [before, now] = [years[y - 1]!, years[y]!];
      expect(now.peak.meanDay.grossLPerTree).toBeGreaterThan(before.peak.meanDay.grossLPerTree);
      expect(now.plug.openPerTree).toBeGreaterThanOrEqual(before.plug.openPerTree);
      expect(now.nutrientsG.N).toBeGreaterThan(before.nutrientsG.N!);
      before.open.forEach((open, at) => {
        if (open) expect(now.open[at]).toBe(true);
      });
    }
  });

  // Common practice, no source: emitters between young trees are plugged, opened as roots reach out in the second year, and a
  // further line is added then. Directions, not numbers.
  test("young trees have emitters plugged between them, and a further line comes into use in the second or third year", () => {
    const { years, lines } = planned((file) => {
      file.offsetsM = [-0.7, 0, 0.7];
      file.emitterSpacingM = 0.5;
    });
    expect(years[0]!.plug.pluggedPerTree).toBeGreaterThan(years[0]!.plug.openPerTree);
    expect(lines.find(({ offsetM }) => offsetM === 0)?.opensAtYears).toBe(0);
    const outer = lines.find(({ offsetM }) => offsetM === 0.7)?.opensAtYears;
    expect(outer).toBeGreaterThan(0.5);
    expect(outer).toBeLessThan(3);
  });

  test("a line out of reach never opens", () => {
    const { lines } = planned((file) => {
      file.offsetsM = [0, -2.9, 2.9];
    });
    expect(lines.map(({ opensAtYears }) => opensAtYears)).toEqual([0, undefined, undefined]);
  });

  test("reports every fault with its path, those of the need file too", async () => {
    const file = demo();
    file.agesYears = [1, 1];
    file.emitterSpacingM = 5;
    const both = parsePlan(file);
    expect(both.ok ? [] : both.faults.map(({ path }) => path)).toEqual(["agesYears[1]", "emitterSpacingM"]);
    const spoiled = parsePlan({ ...demo(), wettedRadiusM: -1, strange: 1, need: { format: 1 } });
    const faults = spoiled.ok ? [] : spoiled.faults;
    expect(faults.map(({ path }) => path)).toEqual(["wettedRadiusM", "strange", "need.name", "need.reference"]);
    const bareNeed = parsePlan({ ...demo(), need: { format: 1, name: "no months", reference: { kind: "et0" } } });
    const needPaths = bareNeed.ok ? [] : bareNeed.faults.map(({ path }) => path);
    expect(needPaths.length).toBeGreaterThan(0);
    for (const path of needPaths) expect(path).toMatch(/^need\.|^need$/);
    expect(parsePlan(3).ok).toBe(false);
    const { need: _, ...bare } = demo();
    expect(parsePlan(bare).ok).toBe(false);
    expect(planJsonSchema().required).toContain("need");
  });
});
