import fc from "fast-check";
import { column, createSimulation, measure, type Result, type SimulateOptions, simulate } from "rootledger";
import { openHours, type PumpLimits, type RuleKind } from "rootledger/programme";
import { decidedValve, engineOf, type Scenario, treesOf } from "rootledger/scenario";
import { describe, expect, test } from "vitest";
import { ruled } from "../../support/rule.js";
import { calendar, scenarioWith, type Variation } from "../../support/scenario.js";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const options = { valve: decidedValve };
const run = (scenario: Scenario) => simulate(scenario, options);

const plain = (variation: Variation): Scenario => scenarioWith({ days: 12, texture: "loam", ...variation });

const kinds: fc.Arbitrary<RuleKind> = fc.oneof(
  fc.record({ kind: fc.constant("replace-use" as const), factor: number(0.5, 1.5) }),
  fc.record({
    kind: fc.constant("depletion" as const),
    aboveFraction: number(0, 0.4),
    amount: fc.record({ litresPerTree: number(20, 400) }),
  }),
  fc.record({
    kind: fc.constant("tension" as const),
    aboveKPa: number(5, 20),
    depthCm: number(5, 50),
    fromLineCm: number(0, 40),
    amount: fc.record({ minutes: number(20, 900) }),
  }),
  fc.record({
    kind: fc.constant("by-month" as const),
    amounts: fc.array(fc.record({ litresPerTree: number(0, 300) }), { minLength: 12, maxLength: 12 }),
    per: fc.constant("day" as const),
  }),
);

const clockH = fc.integer({ min: 0, max: 24 * 60 - 1 }).map((minute) => minute / 60);

const clocks = fc.record({
  startH: clockH,
  everyDays: fc.integer({ min: 1, max: 3 }),
  pulses: fc.integer({ min: 1, max: 5 }),
  gapMinutes: number(5, 150),
});

const limits: fc.Arbitrary<PumpLimits> = fc.record(
  {
    pumpHoursPerDay: number(1, 12),
    sectors: fc.integer({ min: 1, max: 4 }),
    allowed: fc.record({ fromH: clockH, toH: clockH }),
    shortestPulseMinutes: number(5, 60),
    longestRunMinutes: number(60, 400),
    allocationM3PerHa: number(20, 400),
    skipFromRainMm: number(1, 10),
  },
  { requiredKeys: [] },
);

describe("programmes that decide", () => {
  test("never break a limit, and every minute asked for is given or booked as cut", () => {
    fc.assert(
      fc.property(kinds, clocks, limits, fc.array(number(0, 15), { maxLength: 12 }), (kind, clock, limit, rainMm) => {
        const scenario = plain({ days: 8, rainMm, programme: ruled(kind, clock, limit) });
        const result = run(scenario);
        const { valveH, watering } = result;
        expect(watering).toBeDefined();
        const { askedMinutes, givenMinutes, cuts, askedRuns, givenRuns } = watering!;
        const cutMinutes = cuts.reduce((sum, { minutes }) => sum + minutes, 0);
        expect(Math.abs(askedMinutes - givenMinutes - cutMinutes)).toBeLessThanOrEqual(1e-6);
        expect(openHours(valveH, 0, Number.POSITIVE_INFINITY) * 60).toBeCloseTo(givenMinutes, 6);
        expect(givenRuns).toBeLessThanOrEqual(askedRuns);
        const last = valveH.length > 0 ? valveH[valveH.length - 1]! : 0;
        for (let day = 0; day * 24 < last; day++) {
          const hours = openHours(valveH, day * 24, day * 24 + 24);
          if (limit.pumpHoursPerDay !== undefined)
            expect(hours).toBeLessThanOrEqual(limit.pumpHoursPerDay / (limit.sectors ?? 1) + 1e-9);
        }
        for (let e = 0; e < valveH.length; e += 2) {
          const onH = valveH[e]!;
          const offH = valveH[e + 1]!;
          expect(offH).toBeGreaterThan(onH);
          if (e > 0) expect(onH).toBeGreaterThanOrEqual(valveH[e - 1]!);
          if (limit.shortestPulseMinutes !== undefined)
            expect((offH - onH) * 60).toBeGreaterThanOrEqual(limit.shortestPulseMinutes - 1e-5);
          if (limit.allowed !== undefined && limit.allowed.fromH !== limit.allowed.toH) {
            const lengthH = (((limit.allowed.toH - limit.allowed.fromH) % 24) + 24) % 24 || 24;
            const sinceH = (((onH - limit.allowed.fromH + 1e-9) % 24) + 24) % 24;
            expect(sinceH + offH - onH).toBeLessThanOrEqual(lengthH + 1e-6);
          }
        }
        if (limit.allocationM3PerHa !== undefined) {
          const flowLPerH = 32;
          const litres = openHours(valveH, 0, Number.POSITIVE_INFINITY) * flowLPerH;
          expect(litres).toBeLessThanOrEqual(limit.allocationM3PerHa * 0.1 * 24 + 1e-6);
        }
        const litres = openHours(valveH, 0, 8 * 24) * 32;
        expect(Math.abs(measure(result, "applied").values[0]! - litres)).toBeLessThanOrEqual(1e-9 * (1 + litres));
        expect(Math.abs(result.ledger.residualFraction[0]!)).toBeLessThanOrEqual(1e-9);
      }),
      { numRuns: 60 },
    );
  });

  test("a calendar whose limits never bind gives the calendar's own season, bit for bit", () => {
    const programme = calendar("daily", 1, 3, 110, 5.25, 40);
    const without = simulate(plain({ programme, start: { kind: "settled", tensionKPa: 10 } }));
    const within = run(
      plain({
        programme: { ...programme, limits: { pumpHoursPerDay: 24 } },
        start: { kind: "settled", tensionKPa: 10 },
      }),
    );
    expect(within.valveH).toEqual(without.valveH);
    expect(within.days).toEqual(without.days);
    expect(within.settling).toEqual(without.settling);
    expect(within.watering?.cuts).toEqual([]);
  });

  test("giving back the use bounds the depletion: the ground loses what drains and one day's use, no more", () => {
    fc.assert(
      fc.property(number(2, 8), fc.constantFrom("sandy loam", "loam", "clay loam"), (et0Mm, texture) => {
        const result = run(plain({ days: 40, et0Mm, texture, programme: ruled({ kind: "replace-use", factor: 1 }) }));
        const day = (name: string) => column(result.days, name).values;
        const { startCm3 } = result.ledger;
        let drainedL = 0;
        for (let d = 0; d < 40; d++) {
          drainedL += day("bottom")[d]!;
          const lostL = startCm3[0]! / 1000 - day("storage")[d]!;
          const useL = (at: number): number => (at < 0 ? 0 : day("transpired")[at]! + day("evaporated")[at]!);
          expect(lostL - drainedL).toBeLessThanOrEqual(useL(d) + useL(d - 1) + 1e-6);
          expect(lostL - drainedL).toBeGreaterThanOrEqual(-1e-6);
        }
      }),
      { numRuns: 8 },
    );
  });

  test("a tension trigger opens only on mornings when its sensor is drier than the trigger, and then always", () => {
    const sensor = { aboveKPa: 14, depthCm: 25, fromLineCm: 12 };
    const seen: { readonly day: number; readonly kPa: number }[] = [];
    const watching = plain({
      days: 30,
      programme: ruled({
        kind: "own",
        decide: ({ day, tensionKPa }) => {
          const kPa = tensionKPa(sensor.depthCm, sensor.fromLineCm);
          seen.push({ day, kPa });
          return kPa > sensor.aboveKPa ? [{ startH: 6, minutes: 240, pulses: 1, gapMinutes: 0 }] : [];
        },
      }),
    });
    const own = run(watching);
    const trigger = run(
      plain({ days: 30, programme: ruled({ kind: "tension", ...sensor, amount: { minutes: 240 } }) }),
    );
    expect(trigger.valveH).toEqual(own.valveH);
    expect(seen).toHaveLength(30);
    const opened = new Set(
      Array.from(
        own.valveH.filter((_, i) => i % 2 === 0),
        (onH) => Math.floor(onH / 24),
      ),
    );
    expect(opened.size).toBeGreaterThan(2);
    expect(opened.size).toBeLessThan(29);
    for (const { day, kPa } of seen) expect(opened.has(day)).toBe(kPa > sensor.aboveKPa);
  });

  test("a restored run goes on bit for bit, whatever the rule, with lines that drain and every tree of the line", () => {
    fc.assert(
      fc.property(kinds, clocks, limits, fc.integer({ min: 1, max: 7 * 24 - 1 }), (kind, clock, limit, hour) => {
        const scenario = draining(plain({ days: 8, programme: ruled(kind, clock, limit) }));
        restartsAlike(scenario, hour, { ...options, trees: treesOf(scenario.block) });
      }),
      { numRuns: 20 },
    );
  });

  test("the slow engine too follows a rule and restarts bit for bit", () => {
    const sensor = { aboveKPa: 12, depthCm: 20, fromLineCm: 10, amount: { litresPerTree: 100 } };
    const slow: Scenario = {
      ...plain({ days: 4, programme: ruled({ kind: "tension", ...sensor }) }),
      engine: "richards",
    };
    const result = restartsAlike(slow, 53, { ...options, engine: engineOf(slow) });
    expect(result.status.kind).toBe("finished");
    expect(result.watering?.givenRuns).toBeGreaterThan(0);
  });

  test("a rule settles under itself and starts its season with an empty book", () => {
    const programme = ruled({ kind: "depletion", aboveFraction: 0.15 }, {}, { allocationM3PerHa: 100 });
    const result = run(plain({ days: 28, programme, start: { kind: "settled", tensionKPa: 10 } }));
    expect(result.settling.cycles).toBeGreaterThan(1);
    const { givenMinutes, cuts } = result.watering!;
    expect(givenMinutes).toBeLessThanOrEqual((100 * 0.1 * 24 * 60) / 32 + 1e-6);
    expect(cuts.some(({ reason }) => reason === "allocation")).toBe(true);
  });
});

const draining = (scenario: Scenario): Scenario => {
  const drainOut = { contentLPerTree: 1.2, drainHours: 4, lowTreesFraction: 0.1 };
  return { ...scenario, block: { ...scenario.block, lines: { ...scenario.block.lines, drainOut } } };
};

function restartsAlike(scenario: Scenario, hour: number, how: SimulateOptions): Result {
  const through = createSimulation(scenario, how);
  while (through.hour() < hour) through.step();
  const snapshot = JSON.parse(JSON.stringify(through.snapshot()));
  while (through.status().kind === "running") through.step();
  const again = createSimulation(scenario, how);
  again.restore(snapshot);
  while (again.status().kind === "running") again.step();
  expect(again.result()).toEqual(through.result());
  return again.result();
}
