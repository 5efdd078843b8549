import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const bench = fileURLToPath(new URL("season.mjs", import.meta.url));

// Whether a budget is met depends on what else the machine does, so that is the bench's to say; here it only has to run.
test("the bench measures a short season on four soils under two programmes and says what it measured and where the time went", () => {
  const printed = execFileSync(process.execPath, [bench, "--json", "--repeats", "2", "--days", "5"], {
    encoding: "utf8",
  });
  const { machine, cases, timeGoesTo } = JSON.parse(printed);
  expect(machine.cpu.length).toBeGreaterThan(0);
  expect(cases).toHaveLength(8);
  expect(timeGoesTo.reduce((sum: number, { share }: { share: number }) => sum + share, 0)).toBeCloseTo(1, 9);
  for (const one of cases) {
    expect(one.name).toMatch(/^season, 5 d x 64 cells, daily in (four pulses|one run), /);
    expect(one.medianMs).toBeGreaterThan(0);
    expect(one.spreadMs).toBeGreaterThanOrEqual(0);
    expect(one.perSecond).toBeGreaterThan(1e5);
    expect(one.residualFraction).toBeLessThan(1e-9);
    expect(one.budgetMs).toBe(60);
    expect(typeof one.pass).toBe("boolean");
  }
});
