import { main } from "@rootledger/cli";
import { describe, expect, it } from "vitest";
import { dataPath } from "../support/demo-files.js";
import { memoryIo } from "../support/memory-io.js";

const file = "/files/need.json";
const need = {
  format: 1,
  name: "Block of the card",
  treeSpacingM: 6,
  rowSpacingM: 6,
  canopyDiameterM: 5,
  cover: { rule: "whole-ground" },
  reference: { kind: "et0" },
  periods: [
    { name: "January", days: 31, referenceMmPerDay: 7.5, coefficient: 0.7 },
    { name: "July", days: 31, referenceMmPerDay: 1.4, coefficient: 0.5 },
  ],
  efficiencyFraction: 0.85,
  practice: [
    { name: "the card, January", litresPerTreePerDay: 228, period: "January", rootedShare: 0.9 },
    { name: "the card, July", litresPerTreePerDay: 31, period: "July" },
  ],
};

async function run(argv: readonly string[], input: unknown = need) {
  const { io, written } = memoryIo({ [file]: typeof input === "string" ? input : JSON.stringify(input) });
  return { code: await main(argv, io), ...written };
}

describe("need FILE", () => {
  it("shows litres per tree and per hectare, mean and hot day, net and gross, within 100 columns", async () => {
    const { code, stdout, stderr } = await run(["need", file]);
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
    expect(stdout).toMatch(/Ground that counts per tree 36\.0 m2 \(whole-ground\), spacing 36\.0 m2, canopy 19\.6 m2/);
    // 7.5 x 0.7 x 36 = 189 L net, 222 gross at 85 %; a hot day 1.3 times as much.
    expect(stdout).toMatch(/\nJanuary +7\.50 +0\.70 +189 +222 +246 +289\n/);
    // 5.25 mm = 52.5 m3/ha and day, 1628 m3/ha in 31 days.
    expect(stdout).toMatch(/\nJanuary +31 +5\.25 +52\.5 +61\.8 +1628 +1915\n/);
    expect(stdout).toMatch(/\nthe card, January +228 +189 +1\.2 +39\.0 +22\.8 +16\.2\n/);
    expect(stdout).toMatch(/\nthe card, July +31\.0 +25\.2 +1\.2 +5\.80\n/);
    expect(stdout).toMatch(/hotDayRatio 1\.3 \(our choice/);
    expect(stdout).not.toMatch(/NaN|undefined/);
  });

  it("gives the whole answer as JSON and the spans as CSV", async () => {
    const json = JSON.parse((await run(["need", file, "--json"])).stdout);
    expect(json.need.periods[0].meanDay.netLPerTree).toBeCloseTo(189, 9);
    expect(json.practice[0].ratio).toBeCloseTo(228 / 189, 9);
    const csv = (await run(["need", file, "--csv"])).stdout.trim().split("\n");
    expect(csv).toHaveLength(3);
    expect(new Set(csv.map((line) => line.split(",").length)).size).toBe(1);
  });

  it("prints every fault with its path and exits 1", async () => {
    const bad = { ...need, efficiencyFraction: 85, periods: [{ ...need.periods[0], days: "31" }], treeSpacing: 6 };
    const { code, stdout, stderr } = await run(["need", file], bad);
    expect({ code, stdout }).toEqual({ code: 1, stdout: "" });
    expect(stderr).toMatch(/^periods\[0\]\.days: received "31"; must be a number$/m);
    expect(stderr).toMatch(/^efficiencyFraction: received 85; must be at most 1$/m);
    expect(stderr).toMatch(/^treeSpacing: received 6; is not a known key here; did you mean treeSpacingM\?$/m);
    expect((await run(["need", file], "{")).code).toBe(1);
  });
});

it("answers the demo file: the invented practice of young trees is above their need, and where it goes is shown", async () => {
  const { code, stdout, stderr } = await run(["need", dataPath("demo/need.json")]);
  expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
  expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
  expect(stdout).toMatch(/\nfirst year +10\.0 +3\.\d+ +3\.\d +6\.\d+ +7\.00 +0\.00\n/);
  expect(stdout).toMatch(/\nall +182 /);
});

describe("need by options", () => {
  it("answers from canopy and pan without a spacing", async () => {
    // Western Australia agriculture department, citrus, Wokalup in January: 9 mm x 0.7 x 9 m2, printed 57 L (seen).
    const canopy = String(2 * Math.sqrt(9 / Math.PI));
    const argv = ["need", "--pan-mm-per-day", "9", "--crop-factor", "0.7", "--canopy-m", canopy, "--json"];
    const { code, stdout } = await run(argv);
    expect(code).toBe(0);
    const { need: answer, question } = JSON.parse(stdout);
    expect(question.cover.rule).toBe("canopy-ground");
    expect(Math.abs(answer.periods[0].meanDay.netLPerTree - 57)).toBeLessThan(0.5);
    expect(answer.netM3PerHa).toBeUndefined();
  });

  it("compares what is given now", async () => {
    const { stdout } = await run([
      ...["need", "--et0-mm-per-day", "6", "--kc", "0.8", "--canopy-m", "2", "--given-l-per-day", "30"],
      ...["--efficiency", "1", "--hot-day-mm-per-day", "9"],
    ]);
    expect(stdout).toMatch(/\ngiven now +30\.0 +15\.1 +2\.0 +14\.9\n/);
  });

  it.each([
    [["need"], /a file or options, one of the two/],
    [["need", file, "--kc", "0.8"], /a file or options, one of the two/],
    [["need", file, "b.json"], /at most one file/],
    [["simulate", file, "--kc", "0.8"], /--kc is no option of simulate/],
    [["need", "--kc", "0.8", "--canopy-m", "3"], /periods\[0\]\.referenceMmPerDay: received nothing; is required/],
    [["need", "--kc", "wet", "--et0-mm-per-day", "5"], /periods\[0\]\.coefficient: received "wet"; must be a number/],
    [["need", "--kc", "0.8", "--et0-mm-per-day", "5"], /treeSpacingM: received nothing; is required/],
    [["need", "--cover", "half", "--et0-mm-per-day", "5", "--kc", "1"], /cover\.rule: received "half"/],
  ])("%j exits 1", async (argv, message) => {
    const { code, stdout, stderr } = await run(argv);
    expect({ code, stdout }).toEqual({ code: 1, stdout: "" });
    expect(stderr).toMatch(message);
  });
});
