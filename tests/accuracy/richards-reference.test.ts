import { describe, expect, it } from "vitest";
import { cases } from "./run.js";

// The reference is this project's own fine-grid study in another language, not an outside truth; the published solutions
// are in tests/published. `npm run accuracy` runs all of these, here only the quick ones.
describe("Richards against the fine-grid reference study", () => {
  for (const { name, quick, checks } of cases) {
    if (!quick || !name.startsWith("richards")) continue;
    it(name, { timeout: 300_000 }, () => {
      expect(checks().filter((check) => !check.pass)).toEqual([]);
    });
  }
});
