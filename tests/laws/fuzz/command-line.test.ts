import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { main, nodeDisk } from "@rootledger/cli";
import fc from "fast-check";
import { afterAll, describe, expect, test } from "vitest";
import { dataPath, dataText, oneDayComparison } from "../../support/demo-files.js";
import { memoryIo } from "../../support/memory-io.js";
import { damagedText } from "./mutated-json.js";

/** Runs of each kind; FUZZ_RUNS=10000 for a night. */
const runs = Number(process.env.FUZZ_RUNS ?? 60);
const folder = mkdtempSync(join(tmpdir(), "fuzz-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs a command on files in memory: done, or faults of the input on the error stream; never an internal error. */
async function expectAnswer(
  argv: readonly string[],
  files: Readonly<Record<string, string | Uint8Array>>,
): Promise<number> {
  const { io, written } = memoryIo(files);
  const code = await main(argv, { ...io, disk: nodeDisk });
  expect({ code, stderr: code === 0 ? "" : written.stderr }).not.toMatchObject({ code: 2 });
  if (code === 1) expect(written.stderr).toMatch(/received|must|needs|--answer/);
  else expect(written.stdout.length).toBeGreaterThan(0);
  return code;
}

describe("a file that was damaged is read or refused by the command line, exit code 0 or 1", () => {
  test.each([
    ["validate-scenario", "demo/scenario.json"],
    ["validate-scenario", "demo/comparison.json"],
    ["need", "demo/need.json"],
    ["plan", "demo/plan.json"],
    ["weather", "demo/weather.csv"],
    ["weather", "messy/s07_tensiometer_sheet_totals_row_duplicate_headers.csv"],
  ])("%s %s", async (command, name) => {
    const path = dataPath(name);
    const bytes = fc.oneof(
      damagedText(dataText(name)).map((text) => Buffer.from(text)),
      fc.uint8Array({ maxLength: 300 }).map((some) => Buffer.from(some)),
      fc.nat(3000).map((length) => readFileSync(path).subarray(0, length)),
    );
    await fc.assert(
      fc.asyncProperty(bytes, async (file) => {
        await expectAnswer([command, path], { [path]: file });
      }),
      { numRuns: runs },
    );
  });
});

test("files of shards that were damaged are refused, whichever and wherever", async () => {
  const comparison = oneDayComparison();
  writeFileSync(join(folder, "comparison.json"), JSON.stringify(comparison));
  writeFileSync(join(folder, "weather.csv"), dataText("demo/weather.csv"));
  const shards = join(folder, "shards");
  for (const shard of ["1/2", "2/2"]) {
    const argv = ["ensemble", join(folder, "comparison.json"), "--members", "4", "--shard", shard, "--out", shards];
    expect(await expectAnswer(argv, {})).toBe(0);
  }
  const names = readdirSync(shards);
  const whole = new Map(names.map((name) => [name, readFileSync(join(shards, name))]));
  expect(await expectAnswer(["merge", shards], {})).toBe(0);
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...names),
      fc.nat(),
      fc.integer({ min: 1, max: 255 }),
      fc.boolean(),
      async (name, at, by, cut) => {
        const before = whole.get(name) ?? Buffer.of();
        const after = Buffer.from(before);
        const place = at % before.length;
        after[place] = ((before[place] ?? 0) + by) % 256;
        writeFileSync(join(shards, name), cut ? before.subarray(0, place) : after);
        const { io, written } = memoryIo();
        const code = await main(["merge", shards], { ...io, disk: nodeDisk });
        writeFileSync(join(shards, name), before);
        expect({ code, stdout: written.stdout }).toEqual({ code: 1, stdout: "" });
        expect(written.stderr).toContain(shards);
      },
    ),
    { numRuns: 2 * runs },
  );
});
