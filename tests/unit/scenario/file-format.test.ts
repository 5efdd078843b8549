import {
  comparisonJsonSchema,
  cropDefaults,
  defaults,
  ruleDefaults,
  scenarioJsonSchema,
  solutesDefaults,
  surfaceDefaults,
} from "rootledger/scenario";
import { describe, expect, it } from "vitest";
import { pathText, shortText } from "../../../packages/rootledger/src/scenario/faults.js";
import { migrated } from "../../../packages/rootledger/src/scenario/migrate.js";
import { nearestWord } from "../../../packages/rootledger/src/scenario/nearest-word.js";

describe("JSON Schema", () => {
  it("names the parts of both files and forbids unknown keys", () => {
    const scenario = scenarioJsonSchema();
    expect(scenario.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
    expect(scenario.required).toEqual(["format", "name", "season", "block", "weather", "soil", "programme"]);
    expect(scenario.additionalProperties).toBe(false);
    const comparison = comparisonJsonSchema();
    expect(comparison.required).toEqual(["format", "name", "season", "block", "weather", "soils", "programmes"]);
  });

  it("describes every field, and gives each default with its source", () => {
    const undescribed: string[] = [];
    const shown: unknown[] = [];
    const walk = (schema: unknown, path: string): void => {
      if (typeof schema !== "object" || schema === null) return;
      const node = schema as Record<string, unknown>;
      if (node.default !== undefined) shown.push(node.default);
      const leaf = node.type === "number" || node.type === "integer" || node.type === "string";
      if (leaf && node.const === undefined && node.description === undefined) undescribed.push(path);
      for (const [key, child] of Object.entries((node.properties ?? {}) as object)) walk(child, `${path}.${key}`);
      walk(node.items, `${path}[]`);
      for (const branch of (node.oneOf ?? []) as unknown[]) walk(branch, path);
    };
    walk(scenarioJsonSchema(), "scenario");
    expect(undescribed).toEqual([]);
    const fields = Object.entries(defaults).filter(([name]) => name !== "lateralKind" && name !== "bottomKind");
    const { mulchWhere } = surfaceDefaults;
    const { coefficient, leafAreaIndex, heatLimitC, heatClosedC, heatClosedFraction } = cropDefaults;
    const crop = [coefficient, leafAreaIndex, heatLimitC, heatClosedC, heatClosedFraction];
    // A horizon and a nursery ball each have a structure.
    const twice = [defaults.structure];
    const laid = [...Object.values(surfaceDefaults), mulchWhere, ...crop, ...twice, ...Object.values(solutesDefaults)];
    const clockOfEachRule = new Array(5).fill([defaults.firstDay, defaults.pulses]).flat();
    const ruled = [...Object.values(ruleDefaults), ...clockOfEachRule];
    const expected = [...fields.map(([, entry]) => entry), ...laid, ...ruled];
    expect(shown.map(String).sort()).toEqual(expected.map((entry) => String(entry.value)).sort());
  });
});

describe("migration between formats", () => {
  const steps = {
    1: (file: Readonly<Record<string, unknown>>) => ({ ...file, format: 2, title: file.name }),
    2: (file: Readonly<Record<string, unknown>>) => ({ ...file, format: 3, done: true }),
  };

  it("goes step by step and leaves the given file alone", () => {
    const file = Object.freeze({ format: 1, name: "block" });
    const now = migrated(file, steps, 3);
    expect(now).toEqual({ ok: true, file: { format: 3, name: "block", title: "block", done: true } });
    expect(file).toEqual({ format: 1, name: "block" });
  });

  it("refuses a format from the future or from before the first", () => {
    expect(migrated({ format: 4 }, steps, 3)).toMatchObject({
      ok: false,
      fault: { code: "unknown-format", received: "4" },
    });
    expect(migrated({ format: 0 }, steps, 3)).toMatchObject({
      ok: false,
      fault: { rule: expect.stringMatching(/1, 2, 3/) },
    });
  });

  it("passes on what has no readable format, for the schema to report", () => {
    for (const file of [null, 7, "x", [], {}, { format: "1" }]) expect(migrated(file)).toEqual({ ok: true, file });
  });
});

describe("the nearest word", () => {
  it.each([
    ["emiterSpacingM", "emitterSpacingM"],
    ["emitterSpacingm", "emitterSpacingM"],
    ["offsetM", "offsetsM"],
    ["offestsM", "offsetsM"],
    ["colour", undefined],
    ["", undefined],
    ["x".repeat(5000), undefined],
  ])("to %s", (word, expected) => {
    expect(nearestWord(word, ["offsetsM", "emitterSpacingM", "emitterFlowLPerH"])).toBe(expected);
  });
});

describe("short texts", () => {
  it.each([
    [undefined, "nothing"],
    [null, "null"],
    [-1.5, "-1.5"],
    [true, "true"],
    ["a\nb", '"a\\nb"'],
    [[], "an empty list"],
    [[1, 2], "a list of 2"],
    [{ a: 1 }, "an object"],
    [10n, "a bigint"],
  ])("of %s", (value, text) => {
    expect(shortText(value)).toBe(text);
  });

  it("cut long text", () => {
    expect(shortText("x".repeat(500)).length).toBeLessThan(70);
  });

  it("write paths as in the file", () => {
    expect(pathText(["block", "lines", "offsetsM", 1])).toBe("block.lines.offsetsM[1]");
    expect(pathText([])).toBe("");
  });
});
