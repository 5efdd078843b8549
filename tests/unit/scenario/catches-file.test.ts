import { readFileSync } from "node:fs";
import { measure, simulate } from "rootledger";
import { parseScenario } from "rootledger/scenario";
import { describe, expect, test } from "vitest";
import { dataPath, demoFiles, demoJson, type Editable } from "../../support/demo-files.js";

const parsed = (edit: (lines: Editable) => void) => {
  const file = demoJson("scenario");
  file.season.days = 4;
  file.start = { kind: "same-state", tensionKPa: 10 };
  edit(file.block.lines);
  return parseScenario(file, demoFiles);
};

const faults = (edit: (lines: Editable) => void) => {
  const read = parsed(edit);
  return read.ok ? [] : read.faults.map(({ code, path }) => `${code} ${path}`);
};

describe("a catch-can test in the file", () => {
  // Twelve cans with the low quarter of Merriam & Keller (1978), Farm irrigation system evaluation: definition from memory, cans ours.
  test("gives the low-quarter uniformity of the published check, and the under-fed tree its water", () => {
    const checks: Editable[] = JSON.parse(readFileSync(dataPath("published/uniformity.json"), "utf8"));
    const cans = checks.find(({ id }) => id === "cu-du-formula")!;
    const read = parsed((lines) => {
      lines.catches = { volumesMl: cans.inputs.depth_mm };
    });
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    const { lowQuarterUniformityFraction } = read.scenario.block.lines;
    expect(Math.abs(100 * lowQuarterUniformityFraction - cans.expected.du_lq_pct)).toBeLessThanOrEqual(
      cans.tolerance.du_lq_pct,
    );
    const told = read.defaultsUsed.find(({ path }) => path === "block.lines.lowQuarterUniformityFraction");
    expect(told?.value).toBe("0.800");
    expect(told?.source).toMatch(/12 catches.*Merriam/);
    const applied = measure(simulate(read.scenario, { trees: ["mean", "under-fed"] }), "applied").values;
    expect(applied[1]! / applied[0]!).toBeCloseTo(lowQuarterUniformityFraction, 12);
  });

  test("flows say the same as volumes, and tell where their mean is not the emitter's flow", () => {
    const flowsLPerH = [1.2, 1.3, 1.1, 1.25, 1.35, 1.15, 1.3, 1.2];
    const byFlow = parsed((lines) => {
      lines.catches = { flowsLPerH };
    });
    const byVolume = parsed((lines) => {
      lines.catches = { volumesMl: flowsLPerH.map((flow) => flow * 100) };
    });
    if (!byFlow.ok || !byVolume.ok) throw new Error("faults");
    const of = (read: typeof byFlow) => read.scenario.block.lines.lowQuarterUniformityFraction;
    expect(of(byFlow)).toBeCloseTo(of(byVolume), 12);
    expect(byFlow.notes.join()).toMatch(/caught at 1\.23 L\/h on the mean.*says 1\.6/);
    expect(byVolume.notes.join()).not.toMatch(/caught/);
  });

  test("every fault is reported with its path", () => {
    expect(
      faults((lines) => {
        lines.catches = {};
      }),
    ).toEqual(["exactly-one-of block.lines.catches"]);
    expect(
      faults((lines) => {
        lines.catches = { volumesMl: [9, 9, 9, 9], flowsLPerH: [1, 1, 1, 1] };
        lines.lowQuarterUniformityFraction = 0.9;
      }),
    ).toEqual(["exactly-one-of block.lines.catches", "not-beside block.lines.lowQuarterUniformityFraction"]);
    expect(
      faults((lines) => {
        lines.catches = { volumesMl: [0, 90, 100, 95] };
      }),
    ).toEqual(["low-quarter-dry block.lines.catches.volumesMl"]);
    expect(
      faults((lines) => {
        lines.catches = { volumesMl: [90, -1, "x"], minutes: 5 };
      }),
    ).toEqual([
      "below-minimum block.lines.catches.volumesMl[1]",
      "wrong-type block.lines.catches.volumesMl[2]",
      "too-few block.lines.catches.volumesMl",
      "unknown-key-no-likeness block.lines.catches.minutes",
    ]);
  });

  test("a single dry can of many lowers the uniformity and is no fault", () => {
    const read = parsed((lines) => {
      lines.catches = { volumesMl: [0, 100, 100, 100, 100, 100, 100, 100] };
    });
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    expect(read.scenario.block.lines.lowQuarterUniformityFraction).toBeCloseTo(50 / 87.5, 12);
  });
});
