import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const script = fileURLToPath(new URL("coverage.mjs", import.meta.url));

interface Coverage {
  readonly standardError: number;
  readonly mean: number;
  readonly failed: number;
  readonly answers: readonly {
    readonly name: string;
    readonly inside: number;
    readonly both: number;
    readonly heaped: boolean;
  }[];
}

// A small part of what the script does in full. One way, its own sampling error is added to the bound of 86 to 94 %; the mean of
// both ways, from which that error falls out, keeps the bound.
test("the 90 % band holds 86 to 94 % of the truths drawn from the priors, within three standard errors of so few", () => {
  const size = 200;
  const argv = [script, "--json", "--members", String(size), "--truths", String(size), "--days", "2"];
  const found: Coverage = JSON.parse(execFileSync(process.execPath, argv, { encoding: "utf8" }));
  expect(found.failed).toBe(0);
  expect(found.standardError).toBeCloseTo(Math.sqrt(0.09 * (2 / size)), 12);
  const asked = found.answers.filter(({ heaped }) => !heaped);
  expect(asked.length).toBeGreaterThan(15);
  const room = 3 * found.standardError;
  for (const { name, inside, both } of asked) {
    expect(both, name).toBeGreaterThan(0.86);
    expect(both, name).toBeLessThan(0.94);
    expect(inside, name).toBeGreaterThan(0.86 - room);
    expect(inside, name).toBeLessThan(0.94 + room);
  }
  expect(found.mean).toBeGreaterThan(0.86);
  expect(found.mean).toBeLessThan(0.94);
});
