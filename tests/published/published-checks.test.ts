import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { judge, parseChecks } from "@rootledger/cli";
import { describe, expect, test } from "vitest";

const text = (name: string): string =>
  readFileSync(fileURLToPath(new URL(`../../data/published/${name}`, import.meta.url)), "utf8");

/** How the printed figures of a check came to us. */
const said = { seen: "seen in print", memory: "from memory", derived: "derived, not printed" };

// Every check has its source and its tolerance in the data file; the same functions run behind `rootledger truth`.
describe.each(["crop.json", "need.json", "surface.json", "weather.json"])("data/published/%s", (file) => {
  const checks = parseChecks(text(file)) ?? [];

  test("is a list of checks", () => {
    expect(checks.length).toBeGreaterThan(0);
  });

  test.each(
    checks.map((check) => {
      const wider = check.toleranceWiderThanPrint.join(", ");
      const fitted = wider === "" ? "" : `; tolerance wider than print: ${wider}`;
      return [`${check.id}: ${check.title} (${check.source}; ${said[check.verified]}${fitted})`, check] as const;
    }),
  )("%s", (_, check) => {
    expect(judge(check).misses).toEqual([]);
  });
});
