import fc from "fast-check";
import { createSimulation, type Result, simulate } from "rootledger";
import { type Injection, openHours, type Programme, type RuleKind } from "rootledger/programme";
import { everyPart, parseScenario, type Scenario, treesOf } from "rootledger/scenario";
import { column } from "rootledger/water";
import { describe, expect, test } from "vitest";
import { demoFiles, demoJson } from "../../support/demo-files.js";
import { ruled } from "../../support/rule.js";
import { calendar, scenarioWith } from "../../support/scenario.js";

const days = 9;
const soil = { waterMgPerL: 2, startKgPerHa: 30 };
const times = { afterMinutes: 20, injectMinutes: 40 };
const amounts = fc.constantFrom(
  { mgPerL: 60 },
  { gPerTreePerRun: 1.5 },
  { kgPerHaByMonth: Array.from({ length: 12 }, (_, month) => 5 + month) },
);
const kinds: fc.Arbitrary<RuleKind> = fc.oneof(
  fc.constant({ kind: "replace-use", factor: 1 } as const),
  fc.constant({ kind: "depletion", aboveFraction: 0.05 } as const),
  fc.record({
    kind: fc.constant("tension" as const),
    aboveKPa: fc.integer({ min: 6, max: 14 }),
    depthCm: fc.constant(20),
    fromLineCm: fc.constant(10),
    amount: fc.record({ minutes: fc.integer({ min: 10, max: 400 }) }),
  }),
);
const clocks = fc.record({
  startH: fc.constantFrom(6, 13.5, 22),
  pulses: fc.integer({ min: 1, max: 3 }),
  gapMinutes: fc.integer({ min: 5, max: 90 }),
});

const injected = (programme: Programme, throughWater: Injection): Programme => ({
  ...programme,
  nitrogen: { throughWater },
});

const run = (scenario: Scenario): Result =>
  simulate(scenario, { ...everyPart(scenario), trees: treesOf(scenario.block) });

/** Runs as they were opened: pulses less than half a day apart belong together. */
function runsOf(valveH: Float64Array): number[][] {
  const runs: number[][] = [];
  for (let e = 0; e < valveH.length; e += 2) {
    const last = runs.at(-1);
    if (last && valveH[e]! - last.at(-1)! < 4) last.push(valveH[e]!, valveH[e + 1]!);
    else runs.push([valveH[e]!, valveH[e + 1]!]);
  }
  return runs;
}

describe("nitrogen through a valve that is decided day by day", () => {
  test("its books close to 1e-9, whatever the rule, the dose and the limits, with lines that drain too", () => {
    fc.assert(
      fc.property(kinds, clocks, amounts, fc.boolean(), fc.boolean(), (kind, clock, amount, limited, drains) => {
        const limits = limited ? { longestRunMinutes: 150, skipFromRainMm: 5 } : undefined;
        const programme = injected(ruled(kind, clock, limits), { ...times, amount });
        const plain = scenarioWith({ days, texture: "sandy loam", rainMm: [0, 0, 9], programme, nitrogen: soil });
        const drainOut = { contentLPerTree: 1.2, drainHours: 4, lowTreesFraction: 0.1 };
        const lines = drains ? { ...plain.block.lines, drainOut } : plain.block.lines;
        const result = run({ ...plain, block: { ...plain.block, lines } });
        expect(result.status.kind).toBe("finished");
        const nitrogen = result.solutes!.nitrogen!;
        for (const share of nitrogen.residualFraction) expect(Math.abs(share)).toBeLessThan(1e-9);
        for (const share of result.ledger.residualFraction) expect(Math.abs(share)).toBeLessThan(1e-9);
      }),
      { numRuns: 12 },
    );
  });

  test("every run that is long enough brings its grams, to 1e-9; the others are counted in a note", () => {
    const gPerTreePerRun = 1.25;
    const rule = ruled({ kind: "replace-use", factor: 1 }, { pulses: 2, gapMinutes: 30 });
    const programme = injected(rule, { ...times, amount: { gPerTreePerRun } });
    const et0 = scenarioWith({ days, programme, nitrogen: { waterMgPerL: 0, startKgPerHa: 0 } });
    const weather = { ...et0.weather, et0Mm: Float64Array.from({ length: days }, (_, d) => (d % 3 === 2 ? 0.2 : 6)) };
    const result = run({ ...et0, weather });
    const runs = runsOf(result.valveH);
    const open = (hours: readonly number[]): number =>
      openHours(Float64Array.from(hours), 0, Number.POSITIVE_INFINITY) * 60;
    const long = runs.filter((hours) => open(hours) >= 60).length;
    const short = runs.filter((hours) => open(hours) <= 20).length;
    expect(long).toBeGreaterThan(3);
    expect(short).toBeGreaterThan(0);
    expect(long + short).toBe(runs.length);
    const given = result.solutes!.nitrogen!.withWaterG[0]!;
    expect(Math.abs(given - long * gPerTreePerRun)).toBeLessThan(1e-9 * given);
    expect(result.notes.join("\n")).toMatch(new RegExp(`${short} runs ended before the injection`));
  });

  test("kilograms of a month accrue by day, and what no run carried is said", () => {
    const kgPerHaByMonth = [31, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 62];
    const rule = ruled(
      { kind: "by-month", per: "day", amounts: Array(12).fill({ litresPerTree: 110 }) },
      { everyDays: 2 },
    );
    const programme = injected(rule, { ...times, amount: { kgPerHaByMonth } });
    const result = run(scenarioWith({ days: 10, programme, nitrogen: { waterMgPerL: 0, startKgPerHa: 0 } }));
    // 62 kg in the 31 days of December, 2 a day; runs on days 0, 2, 4, 6, 8 carry 9 days, the last day is owed. 1 kg/ha is 2.4 g on 24 m2.
    expect(result.solutes!.nitrogen!.withWaterG[0]).toBeCloseTo(9 * 2 * 2.4, 9);
    expect(result.notes.join("\n")).toMatch(/2\.00 kg\/ha of nitrogen not given/);
    const byDay = column(result.solutes!.days, "nitrogenGiven").values.filter((_, i) => i % 2 === 0);
    expect(Array.from(byDay, (g) => Math.round(g * 10) / 10)).toEqual([4.8, 0, 9.6, 0, 9.6, 0, 9.6, 0, 9.6, 0]);
  });

  test("a calendar whose limits never bind gives its own doses, and a run put back goes on bit for bit", () => {
    const fed = injected(calendar("fed", 1, 2, 110), { ...times, amount: { gPerTreePerRun: 1 } });
    const free = run(scenarioWith({ days, programme: fed, nitrogen: soil }));
    const scenario = scenarioWith({ days, programme: { ...fed, limits: { pumpHoursPerDay: 24 } }, nitrogen: soil });
    const bound = run(scenario);
    expect(bound.solutes!.days).toEqual(free.solutes!.days);
    const how = { ...everyPart(scenario), trees: treesOf(scenario.block) };
    const first = createSimulation(scenario, how);
    while (first.hour() < 55) first.step();
    const second = createSimulation(scenario, how);
    second.restore(JSON.parse(JSON.stringify(first.snapshot())));
    while (second.status().kind === "running") second.step();
    expect(second.result()).toEqual(bound);
  });

  test("a settled start leaves no dose of the settling in the season's books", () => {
    const programme = injected(ruled({ kind: "replace-use", factor: 1 }), { ...times, amount: { gPerTreePerRun: 1 } });
    const start = { kind: "settled", tensionKPa: 10 } as const;
    const result = run(scenarioWith({ days, programme, start, nitrogen: { waterMgPerL: 0, startKgPerHa: 0 } }));
    expect(result.settling.cycles).toBeGreaterThan(0);
    expect(result.solutes!.nitrogen!.withWaterG[0]).toBeCloseTo(runsOf(result.valveH).length, 9);
  });

  test("a file may have both a rule and nitrogen through the water", () => {
    const file = demoJson("scenario");
    file.season.days = 5;
    file.start = { kind: "same-state", tensionKPa: 10 };
    file.programme = {
      ...{ name: "fed by use", rule: { kind: "replace-use", start: "06:00", everyDays: 1 } },
      nitrogen: { throughWater: { gPerTreePerRun: 0.7 } },
    };
    const parsed = parseScenario(file, demoFiles);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    const { scenario } = parsed;
    const result = simulate(scenario, everyPart(scenario));
    expect(result.solutes!.nitrogen!.withWaterG[0]).toBeGreaterThan(2);
    expect(Math.abs(result.solutes!.nitrogen!.residualFraction[0]!)).toBeLessThan(1e-9);
  });
});
