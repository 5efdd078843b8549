import { simulate } from "rootledger";
import { dryRulesApart, sensorTraces, sheet, startWindow } from "rootledger/advise";
import { defaultPriors, ensemble, memberRun, oneThread } from "rootledger/chance";
import { everyPart, parseScenario, type Scenario } from "rootledger/scenario";
import { describe, expect, test } from "vitest";
import { demoFiles, demoJson, type Editable } from "../../support/demo-files.js";

const parsed = (edit: (file: Editable) => void): Scenario => {
  const file = demoJson("scenario");
  file.season.days = 6;
  file.start = { kind: "same-state", tensionKPa: 10 };
  edit(file);
  const found = parseScenario(file, demoFiles);
  if (!found.ok) throw new Error(JSON.stringify(found.faults));
  return found.scenario;
};

/** Scenarios that `simulate` cannot run without a part that is passed in. */
const scenarios: readonly (readonly [string, Scenario])[] = [
  [
    "a rule",
    parsed((file) => {
      const rule = {
        kind: "tension",
        start: "06:00",
        everyDays: 1,
        aboveKPa: 8,
        depthCm: 20,
        fromLineCm: 10,
        litresPerTree: 100,
      };
      file.programme = { name: "by tension", rule };
    }),
  ],
  [
    "limits",
    parsed((file) => {
      file.programme.limits = { longestRunMinutes: 120 };
    }),
  ],
  [
    "salt",
    parsed((file) => {
      file.block.salt = { waterEcDsPerM: 0.7 };
    }),
  ],
  [
    "litter roots",
    parsed((file) => {
      file.block.tree.roots = { litter: { thicknessCm: 5, share: 0.2 } };
    }),
  ],
];

describe.each(scenarios)("a scenario with %s", (_, scenario) => {
  const draws = () => {
    const { unknowns } = defaultPriors({ block: scenario.block, soils: [scenario.soil] });
    const priors = { unknowns: unknowns.filter(({ id }) => id === "kcb"), correlations: [] };
    return { source: { kind: "priors", priors, seed: 1 }, members: 2 } as const;
  };

  test("runs with every part and not without", () => {
    expect(simulate(scenario, everyPart(scenario)).status.kind).toBe("finished");
    expect(() => simulate(scenario)).toThrow(RangeError);
  });

  test("runs in an ensemble", async () => {
    const { soil, programme, ...common } = scenario;
    const comparison = { ...common, remark: "", soils: [soil], programmes: [programme] };
    const plan = { comparison, trees: ["mean"], draws: draws().source, weatherYears: [] } as const;
    const result = await ensemble(plan, { members: 2, executor: oneThread(memberRun(plan)) });
    expect(result).toMatchObject({ status: "finished", finished: 2, failed: 0 });
  });

  test("has readings, a sheet, a window for the next start and two rules side by side", () => {
    const places = [{ depthCm: 20, fromLineCm: 10 }];
    expect(sensorTraces(scenario, { places, fromHour: 0, hours: 24 })[0]?.tensionKPa).toHaveLength(24);
    expect(sheet(scenario, { day: 0, draws: draws() }).openings.length).toBeGreaterThan(0);
    expect(startWindow(scenario).hours).toBe(144);
    expect(dryRulesApart(scenario, { depletionFraction: 0.5 }).hours).toBe(144);
  });
});
