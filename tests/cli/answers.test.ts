import { main } from "@rootledger/cli";
import { version } from "rootledger";
import { beforeAll, describe, expect, it } from "vitest";
import { dataPath, dataText, demoJson } from "../support/demo-files.js";
import { memoryIo } from "../support/memory-io.js";

async function run(...argv: string[]) {
  const { io, written } = memoryIo();
  return { code: await main(argv, io), ...written };
}

const widest = (text: string): number => Math.max(...text.split("\n").map((line) => line.length));

describe("compare data/demo/comparison.json", () => {
  let text = "";
  beforeAll(async () => {
    const answer = await run("compare", dataPath("demo/comparison.json"));
    expect({ code: answer.code, stderr: answer.stderr }).toEqual({ code: 0, stderr: "" });
    text = answer.stdout;
  });

  it("fits in 100 columns", () => {
    expect(widest(text)).toBeLessThanOrEqual(100);
  });

  it("says what it is, that the place is invented, and what each programme does", () => {
    expect(text).toMatch(/^One long run a week/);
    expect(text).toMatch(/Invented: valley, block and weather do not exist/);
    expect(text).toMatch(/A {2}one long run a week: 12 openings of \d+ h/);
    expect(text).toMatch(/B {2}one run a day: 84 openings of \d h/);
    expect(text).toMatch(/C {2}the daily run in four pulses: 336 openings of/);
    expect(text).toMatch(/What changes from A to B: the interval between runs\./);
    expect(text).toMatch(/What changes from A to C: .* together, so their\s+effects cannot be told apart/);
    expect(text).toMatch(/What changes from B to C: the number of pulses\./);
  });

  it("shows the badges that hold", () => {
    for (const badge of ["same water", "same weather", "settled", "one question at a time"]) {
      expect(text).toMatch(new RegExp(`Holds: ${badge} \\(`));
    }
  });

  it.each(["CLAY", "SAND"])("has a table of measures on %s, the under-fed tree beside the average one", (soil) => {
    const table = text.slice(text.indexOf(`\n${soil} `)).split("\n\n")[0] ?? "";
    expect(table).toMatch(/average tree +under-fed tree\n +A +B +C +A +B +C\n/);
    for (const row of [
      "Water applied, L per tree",
      "Water applied, mm",
      "Transpiration wanted",
      "Transpiration got",
      "Thirsty, root-hours",
      "Fine, root-hours",
      "Airless, root-hours",
      "Thirst severity",
      "Airless severity",
      "Longest thirsty",
      "Longest airless",
      "Below roots, mm",
      "Below roots, %",
      "Evaporation",
      "Run-off",
      "Lowest water",
      "Pump starts",
    ]) {
      expect(table, row).toMatch(new RegExp(`\n${row}.*( +-?[\\d.]+){6}(\n|$)`));
    }
  });

  it("adds up: thirsty, fine and airless root-hours make the season's hours", () => {
    const numbers = (row: string): number[] =>
      (new RegExp(`\n${row}, root-hours +(.*)\n`).exec(text)?.[1] ?? "").split(/ +/).map(Number);
    const [thirsty, fine, airless] = ["Thirsty", "Fine", "Airless"].map(numbers);
    thirsty?.forEach((hours, i) => {
      const sum = hours + (fine?.[i] ?? 0) + (airless?.[i] ?? 0);
      expect(Math.abs(sum - 84 * 24), "three figures rounded to the hour").toBeLessThanOrEqual(1.5);
    });
  });

  it("tells clear differences with their floor and the others as no clear difference", () => {
    expect(text).toMatch(/ {4}Below roots falls from \d+ to \d+ mm \(-\d+, floor \d+\)/);
    expect(text).toMatch(/ {4}No clear difference: .*floor/);
  });

  it("ends with cautions, defaults with their sources and the version", () => {
    expect(text).toMatch(/Cautions: these are answers of a model/);
    expect(text).toMatch(/block\.tree\.limits\.pullLimitKPa 20 \(Newett/);
    expect(text.trimEnd()).toMatch(new RegExp(`rootledger ${version.replaceAll(".", "\\.")}, bucket`));
  });
});

describe("other answers", () => {
  it("compare --json holds arms, badges, differences and defaults at full precision", async () => {
    const { code, stdout } = await run("compare", dataPath("demo/comparison.json"), "--json");
    expect(code).toBe(0);
    const answer = JSON.parse(stdout);
    expect(answer.arms).toHaveLength(6);
    expect(answer.version).toBe(version);
    expect(answer.badges.length).toBeGreaterThan(3);
    expect(answer.differences.length).toBeGreaterThan(100);
    expect(answer.defaultsUsed.length).toBeGreaterThan(5);
    expect(answer.arms[0].result.days.columns[0].values).toHaveLength(84 * 2);
  });

  it("compare --csv has every measure of every arm", async () => {
    const { stdout } = await run("compare", dataPath("demo/comparison.json"), "--csv");
    const lines = stdout.trimEnd().split("\n");
    expect(lines[0]).toBe("soil,programme,tree,measure,unit,value");
    expect((lines.length - 1) % 12).toBe(0);
    expect(lines).toContainEqual(expect.stringMatching(/^sand,one run a day,mean,pump-starts,count,84$/));
  });

  it("simulate prints one programme, and --csv its days", async () => {
    const file = dataPath("demo/scenario.json");
    const table = await run("simulate", file);
    expect(table.code).toBe(0);
    expect(widest(table.stdout)).toBeLessThanOrEqual(100);
    expect(table.stdout).toMatch(/one run a day on clay: 84 openings/);
    expect(table.stdout).toMatch(/average tree +under-fed tree\nWater applied, L per tree( +\d+){2}\n/);
    const csv = (await run("simulate", file, "--csv")).stdout.trimEnd().split("\n");
    expect(csv[0]).toMatch(/^date,tree,et0_mm,rain_mm,applied_L,/);
    expect(csv).toHaveLength(1 + 84 * 2);
    expect(csv[1]).toMatch(/^2025-12-01,mean,\d/);
    expect(csv[csv.length - 1]).toMatch(/^2026-02-22,under-fed,\d/);
    const json = JSON.parse((await run("simulate", file, "--json")).stdout);
    expect(json.status).toEqual({ kind: "finished" });
    expect(json.defaultsUsed.length).toBeGreaterThan(5);
  });

  it.each([
    ["demo/scenario.json", "a valid scenario file"],
    ["demo/comparison.json", "a valid comparison file"],
    ["station/comparison.json", "a valid comparison file"],
  ])("validate-scenario %s: %s", async (name, answer) => {
    const { code, stdout, stderr } = await run("validate-scenario", dataPath(name));
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    expect(stdout.startsWith(`${dataPath(name)}: ${answer}\nDefaults used\n`)).toBe(true);
    expect(widest(stdout)).toBeLessThanOrEqual(100);
  });

  it("--engine asks the slow engine, and refuses what is none", async () => {
    const file = demoJson("scenario");
    file.season.days = 1;
    file.programme.runs[0].firstDay = 0;
    file.start = { kind: "same-state" };
    const { io, written } = memoryIo({
      "/b/s.json": JSON.stringify(file),
      "/b/weather.csv": dataText("demo/weather.csv"),
    });
    const code = await main(["simulate", "/b/s.json", "--json", "--engine", "richards"], io);
    expect({ code, stderr: written.stderr }).toEqual({ code: 0, stderr: "" });
    const answer = JSON.parse(written.stdout);
    expect(answer.engine).toBe("richards");
    expect(answer.status.kind).toBe("finished");
    const refused = await run("simulate", dataPath("demo/scenario.json"), "--engine", "magic");
    expect(refused).toEqual({
      code: 1,
      stdout: "",
      stderr: "--engine must be bucket or richards; see rootledger --help\n",
    });
    const ignored = await run("need", dataPath("demo/need.json"), "--engine", "richards");
    expect([ignored.code, ignored.stderr]).toEqual([1, "--engine is no option of need; see rootledger --help\n"]);
  });

  it("--help and --version", async () => {
    for (const argv of [["--help"], ["-h"], ["compare", "--help"]]) {
      const { code, stdout } = await run(...argv);
      expect(code).toBe(0);
      for (const word of ["compare", "simulate", "validate-scenario", "--json", "--csv", "Exit code"])
        expect(stdout).toContain(word);
    }
    expect(await run("--version")).toEqual({ code: 0, stdout: `${version}\n`, stderr: "" });
  });

  it("four programmes still fit in 100 columns", async () => {
    const file = demoJson("comparison");
    file.season.days = 4;
    file.start = { kind: "same-state" };
    file.soils.length = 1;
    file.programmes.push({
      name: "twice a day",
      runs: [
        { start: "05:00", everyDays: 1, minutes: 90 },
        { start: "15:00", everyDays: 1, minutes: 90 },
      ],
    });
    const { io, written } = memoryIo({
      "/b/c.json": JSON.stringify(file),
      "/b/weather.csv": dataText("demo/weather.csv"),
    });
    expect(await main(["compare", "/b/c.json"], io)).toBe(0);
    expect(widest(written.stdout)).toBeLessThanOrEqual(100);
    expect(written.stdout).toMatch(/\n +A +B +C +D +A +B +C +D\n/);
    expect(written.stdout).toMatch(/DOES NOT HOLD: same water/);
    expect(written.stdout).toMatch(/DOES NOT HOLD: one question at a time/);
  });

  it("a long job says that it is still computing, on stderr only", async () => {
    let nowMs = 0;
    const file = demoJson("scenario");
    file.season.days = 6;
    file.start = { kind: "same-state" };
    const files = { "/b/s.json": JSON.stringify(file), "/b/weather.csv": dataText("demo/weather.csv") };
    const { io, written } = memoryIo(files, () => (nowMs += 900));
    expect(await main(["simulate", "/b/s.json", "--csv"], io)).toBe(0);
    expect(
      written.stderr.split("\n").filter((line) => /^still computing: day \d of 6$/.test(line)).length,
    ).toBeGreaterThan(0);
    expect(written.stdout).not.toContain("still computing");
  });
});
