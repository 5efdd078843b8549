import { defaultPriors, type EnsemblePlan, ensemble, memberRun, oneThread } from "rootledger/chance";
import { parseComparison } from "rootledger/scenario";
import { expect, test } from "vitest";
import { demoFiles, demoJson } from "../../support/demo-files.js";

// Common practice, no source: sand loses a week's water given at once below the roots.
test("on the demo's sand, weekly to daily is clear below roots; daily to four pulses is claimed only beyond the floor", async () => {
  const parsed = parseComparison(demoJson("comparison"), demoFiles);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  const [sand] = parsed.comparison.soils.filter(({ name }) => name === "sand");
  const comparison = { ...parsed.comparison, soils: [sand!] };
  const draws = { kind: "priors", priors: defaultPriors(comparison), seed: 1 } as const;
  const plan: EnsemblePlan = { comparison, trees: ["mean"], draws, weatherYears: [] };
  const { differences, failed } = await ensemble(plan, { members: 24, executor: oneThread(memberRun(plan)) });
  expect(failed).toBe(0);
  const below = (from: number, to: number) =>
    differences.find(
      (d) =>
        d.measureId === "below-roots" &&
        d.from === comparison.programmes[from]!.name &&
        d.to === comparison.programmes[to]!.name,
    )!;
  expect(below(0, 1).verdict).toBe("falls");
  expect(below(0, 1).fallsShare).toBe(1);
  const pulses = below(1, 2);
  const beyond = Math.abs(pulses.median) > pulses.floor && pulses.low * pulses.high > 0;
  expect(pulses.verdict !== "no clear difference").toBe(beyond);
});
