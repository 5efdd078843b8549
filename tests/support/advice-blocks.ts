import fc from "fast-check";
import type { PumpLimits } from "rootledger/programme";
import type { Scenario } from "rootledger/scenario";
import { calendar, scenarioWith } from "./scenario.js";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Random blocks of 21 days with a calendar of one run: 7 days to run in, 14 that count. */
export const adviceBlocks: fc.Arbitrary<Scenario> = fc
  .record({
    texture: fc.constantFrom(
      "sand" as const,
      "sandy loam" as const,
      "loam" as const,
      "clay loam" as const,
      "clay" as const,
    ),
    et0Mm: number(2, 8),
    rainMm: fc.array(fc.oneof(fc.constant(0), number(0, 12)), { minLength: 21, maxLength: 21 }),
    emitterFlowLPerH: number(0.9, 3),
    offsetsM: fc.constantFrom([0], [-0.5, 0.5], [-0.8, 0, 0.8]),
    everyDays: fc.constantFrom(1, 2, 7),
    pulses: fc.constantFrom(1, 2, 4),
    litresPerDay: number(30, 160),
    startH: fc.constantFrom(0, 6, 13, 20),
    drains: fc.boolean(),
  })
  .map(({ everyDays, pulses, litresPerDay, startH, drains, ...variation }) => {
    const programme = calendar("today", everyDays, pulses, litresPerDay * everyDays, startH, 60);
    const scenario = scenarioWith({ days: 21, ...variation, programme });
    if (!drains) return scenario;
    const drainOut = { contentLPerTree: 0.8, drainHours: 3, lowTreesFraction: 0.2 };
    return { ...scenario, block: { ...scenario.block, lines: { ...scenario.block.lines, drainOut } } };
  });

/** Limits of pump, clock and pulse. */
export const adviceLimits: fc.Arbitrary<PumpLimits> = fc.record(
  {
    pumpHoursPerDay: number(4, 20),
    sectors: fc.integer({ min: 1, max: 2 }),
    allowed: fc.record({ fromH: fc.integer({ min: 0, max: 23 }), toH: fc.integer({ min: 0, max: 23 }) }),
    shortestPulseMinutes: number(10, 90),
    longestRunMinutes: number(120, 900),
  },
  { requiredKeys: [] },
);
