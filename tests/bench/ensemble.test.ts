import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const bench = fileURLToPath(new URL("ensemble.mjs", import.meta.url));

// Speed is the bench's to say; memory does not depend on what else the machine does.
test("the bench runs an ensemble in workers, and 5,000 members need hardly more memory than 200", () => {
  const argv = [bench, "--json", "--members", "2", "--days", "2", "--workers", "1"];
  const { cases } = JSON.parse(execFileSync(process.execPath, argv, { encoding: "utf8" }));
  expect(cases[0]).toMatchObject({ finished: 2, failed: 0 });
  expect(cases[0].peakMb).toBeGreaterThan(10);
  expect(cases[1].few.members).toBe(200);
  expect(cases[1].many.members).toBe(5000);
  expect(cases[1].growth).toBeLessThan(1.25);
});
