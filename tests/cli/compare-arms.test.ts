import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { main } from "@rootledger/cli";
import { afterAll, describe, expect, test } from "vitest";
import { folderStore } from "../../packages/cli/src/folder-store.js";
import { dataText, demoJson } from "../support/demo-files.js";
import { memoryIo } from "../support/memory-io.js";

const folder = mkdtempSync(join(tmpdir(), "arms-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
writeFileSync(join(folder, "weather.csv"), dataText("demo/weather.csv"));
const file = join(folder, "comparison.json");
const season = { startDate: "2025-12-01", days: 3 };
writeFileSync(
  file,
  JSON.stringify({ ...demoJson("comparison"), season, start: { kind: "same-state", tensionKPa: 10 } }),
);

async function answer(...argv: string[]) {
  const { io, written } = memoryIo();
  return { code: await main(argv, { ...io, store: folderStore }), ...written };
}

describe("rootledger compare --arms", () => {
  test("shows the same differences under other conditions, and why an arm is missing", async () => {
    const { code, stdout, stderr } = await answer("compare", file, "--arms", "wet-spell,tight,daily-single,over-fed");
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    for (const said of ["with 5 days of 20 mm", "tight soil", "already one of the programmes", "lines stay full"]) {
      expect(stdout.replace(/\s+/g, " ")).toContain(said);
    }
    expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
    const plain = await answer("compare", file);
    expect(plain.stdout).toContain("--arms all");
  });

  test("keeps answers in a folder and finds them there", async () => {
    const kept = join(folder, "kept");
    const argv = ["compare", file, "--arms", "night-start,crumbly", "--keep", kept, "--json"];
    const first = JSON.parse((await answer(...argv)).stdout).beside;
    expect(first.map(({ kept: found }: { kept: boolean }) => found)).toEqual([false, false]);
    expect(readdirSync(kept)).toHaveLength(2);
    const again = JSON.parse((await answer(...argv)).stdout).beside;
    expect(again).toEqual(first.map((arm: object) => ({ ...arm, kept: true })));
    const csv = await answer("compare", file, "--arms", "night-start", "--csv");
    expect(csv.stdout.split("\n")[0]).toContain("arm,engine,days,soil,from,to");
  });

  test.each([
    [["compare", file, "--arms", "windy"], /--arms must be all, or some of .*windy/],
    [["compare", file, "--keep", folder], /--keep goes with --arms only/],
  ])("%j is refused with exit code 1", async (argv, said) => {
    const { code, stdout, stderr } = await answer(...argv);
    expect({ code, stdout }).toEqual({ code: 1, stdout: "" });
    expect(stderr).toMatch(said);
  });
});
