import { simulate } from "rootledger";
import { compare } from "rootledger/compare";
import { cutCounts } from "rootledger/programme";
import { decidedValve, parseComparison, parseScenario } from "rootledger/scenario";
import { describe, expect, it, test } from "vitest";
import { dataText, demoFiles, demoJson, type Editable } from "../../support/demo-files.js";

const clock = { start: "06:00", everyDays: 1 };
const programmeFile = (programme: object): Editable => {
  const file = demoJson("scenario");
  file.programme = { name: "ruled", ...programme };
  return file;
};
const parsed = (programme: object) => parseScenario(programmeFile(programme), demoFiles);
const ruleOf = (rule: object) => {
  const read = parsed({ rule: { ...clock, ...rule } });
  return read.ok ? read.scenario.programme.rule : read.faults;
};
const months = (amount: number) => new Array<number>(12).fill(amount);

const faultCases: readonly (readonly [
  what: string,
  programme: object,
  code: string,
  path: string,
  received: string,
])[] = [
  ["neither runs nor rule", {}, "exactly-one-of", "programme", "an object"],
  [
    "runs and rule",
    { runs: [{ ...clock, minutes: 60 }], rule: { kind: "replace-use", ...clock } },
    "exactly-one-of",
    "programme",
    "an object",
  ],
  ["an unknown rule", { rule: { kind: "moon", ...clock } }, "not-one-of", "programme.rule.kind", '"moon"'],
  [
    "eleven months",
    { rule: { kind: "by-month", ...clock, unit: "mm", amounts: months(5).slice(1) } },
    "too-few",
    "programme.rule.amounts",
    "a list of 11",
  ],
  [
    "a trigger without an amount",
    { rule: { kind: "tension", ...clock, aboveKPa: 15, depthCm: 25, fromLineCm: 10 } },
    "exactly-one-of",
    "programme.rule",
    "an object",
  ],
  [
    "a refill with two amounts",
    { rule: { kind: "depletion", ...clock, aboveFraction: 0.3, mm: 5, minutes: 60 } },
    "exactly-one-of",
    "programme.rule",
    "an object",
  ],
  [
    "a sensor below the soil",
    { rule: { kind: "tension", ...clock, aboveKPa: 15, depthCm: 120, fromLineCm: 10, mm: 5 } },
    "sensor-outside",
    "programme.rule.depthCm",
    "120",
  ],
  [
    "a sensor beyond mid-alley",
    { rule: { kind: "tension", ...clock, aboveKPa: 15, depthCm: 25, fromLineCm: 251, mm: 5 } },
    "sensor-outside",
    "programme.rule.fromLineCm",
    "251",
  ],
  [
    "ages that do not rise",
    {
      rule: {
        kind: "by-age",
        ...clock,
        unit: "litresPerTree",
        ageYearsAtStart: 2,
        amounts: [
          { fromYears: 1, amount: 8 },
          { fromYears: 1, amount: 16 },
        ],
      },
    },
    "not-rising",
    "programme.rule.amounts[1].fromYears",
    "1",
  ],
  [
    "trees younger than the first age",
    {
      rule: {
        kind: "by-age",
        ...clock,
        unit: "litresPerTree",
        ageYearsAtStart: 0.5,
        amounts: [{ fromYears: 1, amount: 8 }],
      },
    },
    "age-not-covered",
    "programme.rule.amounts[0].fromYears",
    "1",
  ],
  [
    "pulses without a gap",
    { rule: { kind: "replace-use", ...clock, pulses: 3 } },
    "gap-missing",
    "programme.rule.gapMinutes",
    "nothing",
  ],
  [
    "a start outside the tariff",
    { rule: { kind: "replace-use", ...clock }, limits: { allowedFrom: "22:00", allowedTo: "06:00" } },
    "start-not-allowed",
    "programme.rule.start",
    '"06:00"',
  ],
  [
    "half a tariff",
    { runs: [{ ...clock, minutes: 60 }], limits: { allowedFrom: "22:00" } },
    "goes-with",
    "programme.limits.allowedTo",
    "nothing",
  ],
  [
    "an empty tariff",
    { runs: [{ ...clock, minutes: 60 }], limits: { allowedFrom: "06:00", allowedTo: "06:00" } },
    "same-moment",
    "programme.limits.allowedTo",
    '"06:00"',
  ],
  [
    "pulses longer than runs",
    { runs: [{ ...clock, minutes: 60 }], limits: { shortestPulseMinutes: 60, longestRunMinutes: 60 } },
    "not-below",
    "programme.limits.shortestPulseMinutes",
    "60",
  ],
];

describe("rules in a file", () => {
  test.each(faultCases)("%s", (_, programme, code, path, received) => {
    const read = parsed(programme);
    const faults = read.ok ? [] : read.faults;
    expect(faults.map((f) => [f.code, f.path, f.received])).toEqual([[code, path, received]]);
  });

  it("takes amounts in every unit: 1 mm is 1 L on a square metre, 1 m3/ha a tenth of that", () => {
    const trigger = { kind: "tension", aboveKPa: 15, depthCm: 25, fromLineCm: 10 };
    expect(ruleOf({ ...trigger, mm: 5 })).toMatchObject({ amount: { litresPerTree: 120 } });
    expect(ruleOf({ ...trigger, m3PerHa: 50 })).toMatchObject({ amount: { litresPerTree: 120 } });
    expect(ruleOf({ ...trigger, minutes: 90 })).toMatchObject({ amount: { minutes: 90 } });
    const runs = parsed({ runs: [{ ...clock, m3PerHa: 50 }] });
    expect(runs.ok && runs.scenario.programme.runs[0]?.amount).toEqual({ litresPerTree: 120 });
  });

  it("spreads an amount of a month over its days", () => {
    const read = parsed({
      rule: { kind: "by-month", ...clock, unit: "m3PerHa", per: "month", amounts: months(310) },
    });
    if (!read.ok) throw new Error(read.faults[0]?.rule);
    const result = simulate(
      { ...read.scenario, season: { ...read.scenario.season, days: 31 } },
      { valve: decidedValve },
    );
    // December has 31 days: 10 m3/ha a day, 24 L per tree on 24 m2, 310 m3/ha in all.
    expect(result.watering?.givenMinutes).toBeCloseTo((31 * 24 * 60) / 32, 6);
  });

  it("moves to the next amount on the tree's birthday", () => {
    const read = parsed({
      rule: {
        kind: "by-age",
        ...clock,
        unit: "litresPerTree",
        ageYearsAtStart: 1.95,
        amounts: [
          { fromYears: 1, amount: 32 },
          { fromYears: 2, amount: 64 },
        ],
      },
    });
    if (!read.ok) throw new Error(read.faults[0]?.rule);
    const { valveH } = simulate(read.scenario, { valve: decidedValve });
    const lengths = Array.from({ length: valveH.length / 2 }, (_, i) => valveH[2 * i + 1]! - valveH[2 * i]!);
    // 0.05 years are 18.3 days: day 19 is the first of the second year.
    expect(lengths.findIndex((hours) => hours > 1.5)).toBe(19);
  });

  it("says what to pass in when a rule is run without its valve", () => {
    const read = parsed({ rule: { kind: "replace-use", ...clock } });
    if (!read.ok) throw new Error(read.faults[0]?.rule);
    expect(() => simulate(read.scenario)).toThrow(/decidedValve/);
    expect(() => simulate(read.scenario, { valve: decidedValve, trees: ["under-fed"] })).toThrow(/mean tree/);
  });

  it("runs the rules that come with the project", () => {
    const read = parseComparison(JSON.parse(dataText("demo/rules.json")), demoFiles);
    if (!read.ok) throw new Error(read.faults[0]?.rule);
    const short = { ...read.comparison, season: { ...read.comparison.season, days: 21 } };
    const { arms, changes } = compare(short, { trees: ["mean"] });
    expect(changes.every(({ questions }) => questions.join() === "rule")).toBe(true);
    for (const { result } of arms) {
      expect(result.status.kind).toBe("finished");
      expect(result.watering?.givenRuns).toBeGreaterThan(0);
      expect(cutCounts(result.watering?.cuts ?? []).every(({ minutes }) => minutes >= 0)).toBe(true);
    }
  });
});
