import { main } from "@rootledger/cli";
import { describe, expect, test } from "vitest";
import { dataPath } from "../support/demo-files.js";
import { memoryIo } from "../support/memory-io.js";

const demo = dataPath("demo/scenario.json");
const few = ["--days", "3", "--from-day", "1", "--members", "0"];
const fewer = ["--days", "1", "--from-day", "1", "--members", "1"];

async function run(...argv: string[]) {
  let clock = 0;
  const { io, written } = memoryIo({}, () => (clock += 100));
  return { code: await main(["advise", ...argv], io), ...written };
}

describe("rootledger advise", () => {
  test("prints the trade-offs, a reason for each, what was tried and the cautions; says on stderr how far it is", async () => {
    const { code, stdout, stderr } = await run(demo, ...few);
    expect(code).toBe(0);
    expect(stdout).toMatch(/^Same water: each gives 133 L per tree and day\. 3 days from 2025-12-02/m);
    expect(stdout).toMatch(/every d +from +pulses +min each +gap min +stop +thirsty +airless +below L +starts/);
    expect(stdout).toMatch(/^ {2}1: \S.+/m);
    expect(stdout).toMatch(/\d+ programmes tried/);
    expect(stdout).toMatch(/the spade decides/);
    expect(stdout).toMatch(/backflow/);
    expect(stdout).toMatch(/--check 7/);
    expect(stderr).toMatch(/still computing: \d+ runs done of \d+ known so far/);
    for (const line of stdout.split("\n")) expect(line.length).toBeLessThanOrEqual(112);
  });

  test("as JSON and CSV at full precision, the words in Spanish", async () => {
    const { stdout: json } = await run(demo, ...fewer, "--json");
    const advice = JSON.parse(json);
    expect(advice.horizon.days).toBe(1);
    expect(advice.draws.source.seed).toBe("1");
    expect(advice.set.length).toBeGreaterThan(0);
    const { stdout: csv } = await run(demo, ...fewer, "--csv");
    const lines = csv.trim().split("\n");
    expect(lines[0]).toMatch(/^programme,isToday,everyDays/);
    const others = advice.set.filter(({ isToday }: { isToday: boolean }) => !isToday).length;
    expect(lines).toHaveLength(1 + 4 * (1 + others));
    const { stdout: spanish } = await run(demo, ...fewer, "--members", "0", "--language", "es");
    expect(spanish).toMatch(/manda la pala/);
  });

  test("--check says whether the ranking holds by the slow engine", async () => {
    const { code, stdout } = await run(demo, "--days", "1", "--from-day", "1", "--members", "0", "--check", "1");
    expect(code).toBe(0);
    expect(stdout).toMatch(/By the slow engine/);
    expect(stdout).toMatch(/ranking (holds|does not hold)/i);
  });

  test("refuses faulty files, options and days with a reason and exit code 1", async () => {
    expect(await run(demo, "--days", "0")).toMatchObject({ code: 1, stderr: expect.stringMatching(/--days must be/) });
    expect(await run(demo, "--water", "less")).toMatchObject({ code: 1 });
    expect(await run(demo, "--language", "fr")).toMatchObject({ code: 1 });
    expect(await run(demo, "--days", "400")).toMatchObject({
      code: 1,
      stderr: expect.stringMatching(/up to \d+ days/),
    });
    const { code, stderr } = await run(dataPath("demo/plan.json"));
    expect(code).toBe(1);
    expect(stderr).toMatch(/^soil: received nothing; is required/m);
  });
});
