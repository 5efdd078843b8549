import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { main, nodeDisk } from "@rootledger/cli";
import Ajv2020 from "ajv/dist/2020.js";
import { csvParseRows } from "d3";
import { afterAll, describe, expect, test } from "vitest";
import { dataPath, dataText, demoJson } from "../support/demo-files.js";
import { memoryIo } from "../support/memory-io.js";

const folder = mkdtempSync(join(tmpdir(), "schemas-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const inFolder = (name: string, content: object): string => {
  writeFileSync(join(folder, name), JSON.stringify(content));
  return join(folder, name);
};
writeFileSync(join(folder, "weather.csv"), dataText("demo/weather.csv"));
const short = { season: { startDate: "2025-12-01", days: 3 }, start: { kind: "same-state", tensionKPa: 10 } };
const demo = demoJson("comparison");
const programmes = demo.programmes.slice(1, 3);
const comparison = inFolder("comparison.json", { ...demo, ...short, soils: demo.soils.slice(1, 2), programmes });
/** Two programmes of a demo over four days. */
const briefly = (name: string): string => {
  const file = JSON.parse(dataText(`demo/${name}`));
  const season = { startDate: file.season.startDate, days: 4 };
  const programmes = file.programmes.slice(0, 2);
  for (const { nitrogen } of programmes) if (nitrogen?.byHand) nitrogen.byHand = nitrogen.byHand.slice(0, 1);
  return inFolder(name, { ...file, season, start: short.start, programmes });
};
const scenario = inFolder("scenario.json", { ...demoJson("scenario"), ...short });
writeFileSync(join(folder, "draws.csv"), "kcb,root-depth\n0.9,50\n1.1,500\n");

async function answer(...argv: string[]): Promise<string> {
  const { io, written } = memoryIo();
  const code = await main(argv, { ...io, disk: nodeDisk });
  expect({ code, stderr: written.stderr }).toEqual({ code: 0, stderr: "" });
  return written.stdout;
}

// An independent reader of JSON Schema (draft 2020-12).
const validatorOf = async (name: string) =>
  new Ajv2020({ strict: false, allErrors: true, formats: { date: /^\d{4}-\d{2}-\d{2}$/ } }).compile(
    JSON.parse(await answer("schema", name)),
  );

describe("JSON Schema", () => {
  test.each([
    ["scenario", "demo/scenario.json"],
    ["scenario", "demo/young-trees.json"],
    ["scenario", "demo/nitrogen.json"],
    ["comparison", "demo/comparison.json"],
    ["comparison", "demo/leaching.json"],
    ["comparison", "demo/rules.json"],
    ["comparison", "station/comparison.json"],
    ["need", "demo/need.json"],
    ["plan", "demo/plan.json"],
  ])("of a %s takes %s and refuses it with a field of another kind or name", async (name, file) => {
    const validate = await validatorOf(name);
    const content = JSON.parse(dataText(file));
    const kind = "soils" in content || "programmes" in content ? "comparison" : name;
    const right = kind === name ? validate : await validatorOf(kind);
    expect(right(content) ? [] : right.errors).toEqual([]);
    expect(right({ ...content, name: 3 })).toBe(false);
    expect(right({ ...content, nmae: "x" })).toBe(false);
  });

  test.each([
    ["simulate-result", ["simulate", scenario]],
    ["compare-result", ["compare", briefly("nitrogen.json")]],
    ["compare-result", ["compare", briefly("leaching.json")]],
    ["compare-result", ["compare", comparison]],
    ["compare-result", ["compare", comparison, "--members", "2", "--arms", "tight"]],
    ["compare-result", ["compare", briefly("rules.json")]],
    ["ensemble-result", ["ensemble", comparison, "--members", "2"]],
    ["ensemble-result", ["ensemble", comparison, "--draws", join(folder, "draws.csv")]],
  ])("%s holds what %j prints, each field of it and no other", async (name, argv) => {
    const validate = await validatorOf(name);
    const content = JSON.parse(await answer(...argv, "--json"));
    expect(validate(content) ? [] : validate.errors?.slice(0, 5)).toEqual([]);
    const { version: _, ...lacking } = content;
    expect(validate(lacking)).toBe(false);
    expect(validate({ ...content, other: 1 })).toBe(false);
  });

  test("a name that is none is refused with those that are", async () => {
    const { io, written } = memoryIo();
    expect(await main(["schema", "soil"], io)).toBe(1);
    expect(written.stderr).toMatch(/a schema is one of scenario, comparison, need.*: got soil/);
  });
});

interface Field {
  readonly name: string;
  readonly type: string;
  readonly unit?: string;
  readonly description: string;
}

/** What a cell of each type may be: Frictionless Standards, table schema v1, types and formats. */
const cellOf: Readonly<Record<string, RegExp>> = {
  string: /^.*$/s,
  integer: /^[+-]?\d+$/,
  number: /^([+-]?\d+(\.\d+)?([eE][+-]?\d+)?|NaN|-?INF)$/,
  date: /^\d{4}-\d{2}-\d{2}$/,
};

function expectDescribed(csv: string, described: string): void {
  const { profile, resources } = JSON.parse(described);
  expect(profile).toBe("tabular-data-package");
  const [{ schema }] = resources;
  const fields: Field[] = schema.fields;
  const [header, ...rows] = csvParseRows(csv);
  expect(fields.map(({ name }) => name)).toEqual(header);
  expect(rows.length).toBeGreaterThan(0);
  for (const { name, type, unit, description } of fields) {
    expect({ name, said: description.length > 3 && description !== name }).toEqual({ name, said: true });
    if (type === "number")
      expect({ name, unit: unit ?? /line's unit|screen:/.test(description) }).not.toMatchObject({ unit: false });
  }
  for (const row of rows) {
    for (const [c, cell] of row.entries()) {
      const { name, type } = fields[c] ?? { name: "", type: "" };
      if (!schema.missingValues.includes(cell))
        expect({ name, cell }).toEqual({ name, cell: expect.stringMatching(cellOf[type] ?? /^$/) });
    }
  }
}

describe("the description of a table has its header, and its cells are of the types that it says", () => {
  test.each([
    [["simulate", scenario]],
    [["compare", comparison]],
    [["compare", comparison, "--arms", "tight"]],
    [["compare", comparison, "--members", "2"]],
    [["ensemble", comparison, "--members", "2"]],
    [["ensemble", scenario, "--members", "2"]],
    [["ensemble", comparison, "--rank", "screen", "--members", "13"]],
    [["need", dataPath("demo/need.json")]],
    [["need", dataPath("demo/need-young.json")]],
    [["plan", dataPath("demo/plan.json")]],
    [["advise", scenario, "--members", "1", "--from-day", "1", "--days", "2"]],
    [["weather", dataPath("demo/weather.csv")]],
    [["weather", dataPath("weather/malaga-2011.csv")]],
    [["weather", dataPath("messy/s07_tensiometer_sheet_totals_row_duplicate_headers.csv")]],
    [["weather", dataPath("messy/s16_year_doy_leap.txt")]],
  ])("%j", async (argv) => {
    expectDescribed(await answer(...argv, "--csv"), await answer(...argv, "--schema"));
  });

  test("so has that of the members of merged shards, failed ones among them", async () => {
    const own = ["ensemble", comparison, "--draws", join(folder, "draws.csv")];
    await answer(...own, "--out", join(folder, "shards"));
    await answer("merge", join(folder, "shards"), "--out", join(folder, "merged"));
    const read = (name: string): string => readFileSync(join(folder, "merged", name), "utf8");
    expectDescribed(read("members.csv"), read("datapackage.json"));
    expect(JSON.parse(read("datapackage.json")).resources[0].path).toBe("members.csv");
  });
});
