import { main, publishedFiles } from "@rootledger/cli";
import { describe, expect, it } from "vitest";
import { memoryIo } from "../support/memory-io.js";

async function run(argv: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const { io, written } = memoryIo(files);
  return { code: await main(argv, io), ...written };
}

/** A folder in memory whose first file holds the given checks and whose others are empty. */
const folderWith = (checks: unknown): Record<string, string> => ({
  ...Object.fromEntries(publishedFiles.map((name) => [`/checks/${name}`, "[]"])),
  [`/checks/${publishedFiles[0]}`]: JSON.stringify(checks),
  "/checks/not-applicable.json": "[]",
});

const check = {
  id: "fao56-ex14-wind",
  topic: "wind",
  title: "wind",
  source: "Allen et al. 1998, FAO-56, ch. 3 Example 14",
  inputs: { uz_m_s: 3.2, z_m: 10 },
  expected: { factor: 0.75, u2_m_s: 2.4 },
  tolerance: { factor: 0.005, u2_m_s: 0.05 },
  verified: "seen",
};

describe("truth", () => {
  it("prints every check with ours, theirs, tolerance and class, and the counts", async () => {
    const { code, stdout, stderr } = await run(["truth"]);
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
    expect(stdout).toMatch(/\n {2}agrees fao56-ex27-kcmid: /);
    expect(stdout).toMatch(/kc_mid: printed \[1\.07 1\.3\], ours \[1\.06\d+ 1\.29\d+\], \+-0\.005/);
    expect(stdout).toMatch(/\+-0\.04 \(fitted: wider than print\)/);
    expect(stdout).toMatch(/fao56-ex47-combined .*\n? *.*does not/);
    expect(stdout).toMatch(/\nall +\d{3} +0\n/);
    expect(stdout).not.toMatch(/DIFFERS|NaN|undefined/);
  });

  it("gives the same as JSON; the counts of the classes add up", async () => {
    const { checks, counts, notApplicable } = JSON.parse((await run(["truth", "--json"])).stdout);
    expect(Object.keys(checks[0])).toEqual(
      expect.arrayContaining(["id", "topic", "source", "printed", "ours", "tolerance", "verified", "pass"]),
    );
    const total = (name: string): number => counts[name].passed + counts[name].failed;
    expect(total("seen") + total("memory") + total("derived")).toBe(total("all"));
    expect(total("all")).toBe(checks.length);
    expect(checks.every(({ pass }: { pass: boolean }) => pass)).toBe(true);
    expect(notApplicable.every(({ reason }: { reason: string }) => reason.length > 0)).toBe(true);
  });

  it("exits 1 and says so where a check differs", async () => {
    const wrong = { ...check, expected: { factor: 0.8, u2_m_s: 2.4 } };
    const { code, stdout } = await run(["truth", "/checks"], folderWith([check, { ...wrong, id: "b" }, wrong]));
    expect(code).toBe(1);
    expect(stdout).toMatch(/agrees fao56-ex14-wind/);
    expect(stdout).toMatch(/DIFFERS b: wind\n.*\n.*\n.*\n {6}miss: no function of the library is tied to this check/);
    expect(stdout).toMatch(/miss: factor: ours 0\.747\d+, printed 0\.8/);
    expect(stdout).toMatch(/\nall +1 +2\n/);
  });

  it("names a folder or a file that cannot be read, or holds no checks", async () => {
    const nowhere = await run(["truth", "/nowhere"]);
    expect(nowhere.code).toBe(1);
    expect(nowhere.stderr).toMatch(
      /^\/nowhere\/weather\.json: received no such file; must be a file that can be read$/m,
    );
    const odd = await run(["truth", "/checks"], folderWith([{ ...check, verified: "sure" }]));
    expect(odd.code).toBe(1);
    expect(odd.stderr).toMatch(/\/checks\/weather\.json: received something else; must be a list of published checks/);
  });
});
