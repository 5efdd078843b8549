import fc from "fast-check";
import { measure, simulate } from "rootledger";
import { pluggedTree } from "rootledger/advise";
import { emitterSchedule, injectionSchedule, type LineDrain, openHours, type Programme } from "rootledger/programme";
import { everyPart } from "rootledger/scenario";
import { describe, expect, test } from "vitest";
import { calendar, scenarioWith } from "../../support/scenario.js";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const days = 3;
const mgPerL = 55;

/** Overlap of two stretches, h. */
const shared = (a: number, b: number, c: number, d: number): number => Math.max(0, Math.min(b, d) - Math.max(a, c));

describe("litres and grams of lines that fill and run empty, with emitters open and plugged", () => {
  test("what the valve gave is at the emitters, drained or still in the lines; grams follow the water; all to 1e-9", () => {
    const drains: fc.Arbitrary<LineDrain> = fc.record({
      contentLPerTree: number(0.2, 3),
      drainHours: number(0.3, 12),
      lowTreesFraction: number(0.05, 0.5),
    });
    const plans = fc.record({
      pulses: fc.integer({ min: 1, max: 5 }),
      gapMinutes: fc.integer({ min: 10, max: 150 }),
      litres: fc.integer({ min: 60, max: 160 }),
      startH: fc.integer({ min: 0, max: 6 }),
      plugged: fc.integer({ min: 0, max: 14 }),
    });
    fc.assert(
      fc.property(drains, plans, (drainOut, { pulses, gapMinutes, litres, startH, plugged }) => {
        const injection = { afterMinutes: 15, injectMinutes: 45, amount: { mgPerL } };
        const programme: Programme = {
          ...calendar("any", 1, pulses, litres, startH, gapMinutes),
          nitrogen: { throughWater: injection },
        };
        const mean = scenarioWith({ days, programme, nitrogen: { waterMgPerL: 0, startKgPerHa: 10 } });
        const lines = { ...mean.block.lines, drainOut };
        const scenario = pluggedTree({ ...mean, block: { ...mean.block, lines } }, plugged);
        const result = simulate(scenario, everyPart(scenario));
        const flow = (20 - plugged) * 1.6;
        const endH = days * 24;
        const { momentsH, flowing, drainingLPerH } = emitterSchedule(result.valveH, flow, drainOut);
        const place = { startDate: scenario.season.startDate, days, treeFlowLPerH: flow, groundM2: 24 };
        const { eventsH } = injectionSchedule(scenario.programme.runs, injection, place);
        let emittedL = 0;
        let grams = 0;
        let stillInL = 0;
        momentsH.forEach((toH, i) => {
          const fromH = i === 0 ? 0 : momentsH[i - 1]!;
          const lPerH = flowing[i]! * flow + drainingLPerH[i]!;
          emittedL += lPerH * shared(fromH, toH, 0, endH);
          stillInL += lPerH * shared(fromH, toH, endH, Number.POSITIVE_INFINITY);
          for (let e = 0; e < eventsH.length; e += 2)
            grams += (lPerH * mgPerL * shared(fromH, toH, eventsH[e]!, eventsH[e + 1]!)) / 1000;
        });
        const valveL = openHours(result.valveH, 0, endH) * flow;
        expect(Math.abs(valveL - emittedL - stillInL)).toBeLessThanOrEqual(1e-9 * valveL);
        expect(Math.abs(measure(result, "applied").values[0]! - emittedL)).toBeLessThanOrEqual(1e-9 * valveL);
        const { withWaterG, residualFraction } = result.solutes!.nitrogen!;
        expect(Math.abs(withWaterG[0]! - grams)).toBeLessThanOrEqual(1e-9 * (1 + grams));
        expect(Math.abs(residualFraction[0]!)).toBeLessThan(1e-9);
        expect(Math.abs(result.ledger.residualFraction[0]!)).toBeLessThan(1e-9);
      }),
      { numRuns: 8, endOnFailure: true },
    );
  });
});
