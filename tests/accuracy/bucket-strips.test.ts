import { describe, expect, it } from "vitest";
import { runStrip, stripCases } from "./strip-case.js";
import { checksOf, limitsOf } from "./strip-limits.js";

describe("bucket against fine-grid Richards on strips", () => {
  for (const reference of stripCases) {
    const limits = limitsOf(reference);
    if (!limits) continue;
    it(reference.id, () => {
      const ours = runStrip(reference);
      const missed = checksOf(reference, ours, limits).filter((check) => !check.pass);
      expect(missed).toEqual([]);
      expect(Math.abs(ours.residualFraction)).toBeLessThan(1e-9);
    });
  }

  it("reproduces what interval and pulsing change in drainage past 60 cm", () => {
    // Bounds in % of the water applied: reference study, limits for an 8 x 8 bucket.
    const bounds = { sand: [3, 0.6], sandy_loam: [3, 0.6], loam: [1, 0.3], clay_loam: [0.5, 0.4] } as const;
    for (const [soil, [interval, pulses]] of Object.entries(bounds)) {
      const ends = ["long_weekly", "daily_1", "daily_4"].map((schedule) => {
        const reference = stripCases.find((c) => c.id === `C_${soil}_f3.2_${schedule}`);
        if (!reference) throw new Error(`no reference case for ${soil} ${schedule}`);
        return { ours: runStrip(reference).drainage60L, theirs: reference.drainage60L };
      });
      const change = (from: number, to: number): number =>
        ((ends[to].ours - ends[from].ours - (ends[to].theirs - ends[from].theirs)) / 72) * 100;
      expect(Math.abs(change(0, 1)), `${soil} weekly to daily`).toBeLessThanOrEqual(interval);
      expect(Math.abs(change(1, 2)), `${soil} daily to four pulses`).toBeLessThanOrEqual(pulses);
    }
  });
});
