import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { main } from "@rootledger/cli";
import { afterAll, describe, expect, test } from "vitest";
import { dataText, demoJson } from "../support/demo-files.js";
import { memoryIo } from "../support/memory-io.js";

const folder = mkdtempSync(join(tmpdir(), "ensemble-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const inFolder = (name: string, text: string): string => {
  writeFileSync(join(folder, name), text);
  return join(folder, name);
};

inFolder("weather.csv", dataText("demo/weather.csv"));
const short = { season: { startDate: "2025-12-01", days: 4 }, start: { kind: "same-state", tensionKPa: 10 } };
const comparison = inFolder("comparison.json", JSON.stringify({ ...demoJson("comparison"), ...short }));
const scenario = inFolder("scenario.json", JSON.stringify({ ...demoJson("scenario"), ...short }));

async function answer(...argv: string[]) {
  const { io, written } = memoryIo();
  return { code: await main(argv, io), ...written };
}

describe("rootledger ensemble", () => {
  test("prints draws, badges, floors and verdicts of a comparison within the page", async () => {
    const { code, stdout, stderr } = await answer("ensemble", comparison, "--members", "3", "--seed", "a");
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    for (const said of [
      "3 of 3 draws finished, seed a",
      "DOES NOT HOLD: same water",
      "Holds: same weather",
      "no clear difference",
      "root-depth:",
    ]) {
      expect(stdout.replace(/\s+/g, " ")).toContain(said);
    }
    expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
  });

  test("gives bands for a scenario alone, as JSON and CSV", async () => {
    const { stdout } = await answer("ensemble", scenario, "--members", "2", "--json");
    const result = JSON.parse(stdout);
    expect(result).toMatchObject({ status: "finished", finished: 2, failed: 0, differences: [] });
    expect(result.draws.seed).toBe("1");
    const csv = await answer("ensemble", scenario, "--members", "2", "--csv");
    expect(csv.stdout.split("\n")).toHaveLength(1 + result.bands.length + 1);
  });

  test("stands below a comparison that asks for members", async () => {
    const plain = await answer("compare", comparison);
    const drawn = await answer("compare", comparison, "--members", "2");
    expect(drawn.code).toBe(0);
    expect(drawn.stdout.startsWith(plain.stdout)).toBe(true);
    expect(drawn.stdout.replace(/\s+/g, " ")).toContain("2 of 2 draws finished");
  });

  test.each([
    [["ensemble", comparison, "--members", "0"], /--members must be a whole number above 0: got 0/],
    [["ensemble", comparison, "--workers", "two"], /--workers must be/],
    [["compare", comparison, "--seed", "3"], /need --members/],
    [["simulate", scenario, "--members", "3"], /--members is no option of simulate/],
    [["ensemble", join(folder, "absent.json")], /absent\.json/],
  ])("%j is refused with exit code 1", async (argv, said) => {
    const { code, stdout, stderr } = await answer(...argv);
    expect({ code, stdout }).toEqual({ code: 1, stdout: "" });
    expect(stderr).toMatch(said);
  });

  test("gives the same answer in this thread and with 1, 2 and 4 worker threads", async () => {
    const argv = ["ensemble", comparison, "--members", "9", "--json"];
    const { stdout } = await answer(...argv);
    const built = fileURLToPath(new URL("../../packages/cli/dist/main.js", import.meta.url));
    for (const workers of ["1", "2", "4"]) {
      const printed = execFileSync(process.execPath, [built, ...argv, "--workers", workers], { encoding: "utf8" });
      expect(printed === stdout).toBe(true);
    }
  });
});
