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

  test("takes draws from a table, one row a member, and reports the row that fails with its draw", async () => {
    const table = inFolder("draws.csv", "kcb,root-depth\n0.9,50\n1.1,500\n1,60\n");
    const { code, stdout } = await answer("ensemble", comparison, "--draws", table, "--json");
    expect(code).toBe(0);
    const result = JSON.parse(stdout);
    expect(result).toMatchObject({ members: 3, finished: 2, failed: 1 });
    expect(result.failures[0].draw).toEqual({ kcb: 1.1, "root-depth": 500 });
    const text = await answer("ensemble", comparison, "--draws", table);
    expect(text.stdout.replace(/\s+/g, " ")).toMatch(/draw 1: .*kcb 1.1, root-depth 500/);
    const beside = await answer("compare", comparison, "--draws", table);
    expect(beside.stdout.replace(/\s+/g, " ")).toContain("2 of 3 draws finished, own draws");
    const spoiled = inFolder("spoiled.csv", "kcb,depth\n0.9,50\n1,x\n");
    const refused = await answer("ensemble", comparison, "--draws", spoiled);
    expect(refused).toMatchObject({ code: 1, stdout: "" });
    expect(refused.stderr).toMatch(/line 1.*depth/);
    expect(refused.stderr).toMatch(/line 3, depth.*x/);
  });

  test("draws the other years of a record", async () => {
    const [head, ...days] = dataText("demo/weather.csv").trim().split("\n");
    const year = (number: number): string[] =>
      days
        .filter((line) => line.startsWith("2025-12-0"))
        .map((line) => line.replace("2025", String(number)).replace(/,[^,]*$/, `,${number % 10}`));
    for (const number of [2023, 2024]) inFolder(`record-${number}.csv`, [head, ...year(number)].join("\n"));
    const one = join(folder, "record-2023.csv");
    const { stdout } = await answer("ensemble", comparison, "--members", "2", "--record", one, "--json");
    const { unknowns } = JSON.parse(stdout).draws.priors;
    expect(unknowns.at(-1)).toMatchObject({ id: "weather-year", spread: { values: [0, 1] } });
    const table = inFolder("years.csv", "weather-year\n0\n1\n");
    const own = await answer("ensemble", comparison, "--draws", table, "--record", one, "--json");
    const applied = JSON.parse(own.stdout).bands.filter(
      (band: { measureId: string }) => band.measureId === "evaporation",
    );
    expect(applied.some(({ low, high }: { low: number; high: number }) => high > low)).toBe(true);
    const none = inFolder("own-year.csv", [head, ...year(2025)].join("\n"));
    const refused = await answer("ensemble", comparison, "--record", none);
    expect(refused.stderr).toMatch(/the season in another year/);
  });

  test("ranks the unknowns and says what to measure, as text, JSON and CSV", async () => {
    const argv = ["ensemble", comparison, "--rank", "screen", "--members", "13"];
    const { code, stdout, stderr } = await answer(...argv);
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    for (const said of ["13 of 13 draws finished", "Morris screening", "What to measure", "an infiltration ring"]) {
      expect(stdout.replace(/\s+/g, " ")).toContain(said);
    }
    expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
    const ranking = JSON.parse((await answer(...argv, "--json")).stdout);
    expect(ranking.overall).toHaveLength(12);
    const csv = await answer(...argv, "--csv");
    expect(csv.stdout.split("\n")).toHaveLength(1 + 12 * ranking.answers.length + 1);
    const shares = await answer("ensemble", scenario, "--rank", "shares", "--members", "14");
    expect(shares.stdout.replace(/\s+/g, " ")).toContain("Sobol indices");
  });

  test.each([
    [["ensemble", comparison, "--rank", "best"], /--rank must be screen or shares: got best/],
    [["ensemble", comparison, "--draws", "x.csv", "--seed", "1"], /takes neither --rank nor --seed/],
    [["ensemble", comparison, "--draws", join(folder, "absent.csv")], /absent\.csv/],
    [["ensemble", comparison, "--record", join(folder, "absent.csv")], /absent\.csv/],
    [["compare", comparison, "--rank", "screen"], /--rank is no option of compare/],
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

  const built = fileURLToPath(new URL("../../packages/cli/dist/main.js", import.meta.url));

  test("gives the same answer in this thread and with 1, 2 and 4 worker threads", async () => {
    const argv = ["ensemble", comparison, "--members", "9", "--json"];
    const { stdout } = await answer(...argv);
    for (const workers of ["1", "2", "4"]) {
      const printed = execFileSync(process.execPath, [built, ...argv, "--workers", workers], { encoding: "utf8" });
      expect(printed === stdout).toBe(true);
    }
  });
});
