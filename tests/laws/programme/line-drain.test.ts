import fc from "fast-check";
import { simulate } from "rootledger";
import { emitterSchedule, type LineDrain, openHours, type Programme, valveEvents } from "rootledger/programme";
import { parseScenario, treesOf } from "rootledger/scenario";
import { describe, expect, test } from "vitest";
import { demoFiles, demoJson } from "../../support/demo-files.js";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Litres per tree that leave the emitters and that drain, over every part of a schedule but the endless last. */
function litres(
  { momentsH, flowing, drainingLPerH }: ReturnType<typeof emitterSchedule>,
  flowLPerH: number,
): { readonly emitted: number; readonly drained: number } {
  let emitted = 0;
  let drained = 0;
  for (let i = 0; i < momentsH.length; i++) {
    const hours = momentsH[i]! - (i === 0 ? 0 : momentsH[i - 1]!);
    emitted += flowing[i]! * flowLPerH * hours;
    drained += drainingLPerH[i]! * hours;
  }
  return { emitted, drained };
}

const drains: fc.Arbitrary<LineDrain> = fc.record({
  contentLPerTree: number(0.1, 6),
  drainHours: number(0.1, 24),
  lowTreesFraction: number(0.01, 0.5),
});

describe("lines that drain", () => {
  test("valve litres = emitter litres + drained litres, once the lines are empty again", () => {
    const gapsAndRuns = fc.array(fc.tuple(number(0.05, 40), number(0.01, 6)), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(gapsAndRuns, drains, number(0.5, 80), (pairs, drain, flow) => {
        let at = 0;
        const valveH = Float64Array.from(
          pairs.flatMap(([gap, run]) => {
            const onH = at + gap;
            at = onH + run;
            return [onH, at];
          }),
        );
        const schedule = emitterSchedule(valveH, flow, drain);
        const valve = openHours(valveH, 0, at) * flow;
        const { emitted, drained } = litres(schedule, flow);
        expect(Math.abs(valve - emitted - drained)).toBeLessThanOrEqual(1e-9 * valve);
        for (let i = 1; i < schedule.momentsH.length; i++) {
          expect(schedule.momentsH[i]).toBeGreaterThan(schedule.momentsH[i - 1]!);
        }
      }),
    );
  });

  test("a run split into more pulses loses more of its litres to the low end, never fewer", () => {
    fc.assert(
      fc.property(drains, number(4, 60), number(60, 400), number(20, 400), (drain, flow, minutes, gapMinutes) => {
        const drainedWith = (pulses: number): number => {
          const programme: Programme = {
            name: "one day",
            runs: [{ startH: 1, everyDays: 1, firstDay: 0, pulses, gapMinutes, amount: { minutes } }],
          };
          return litres(emitterSchedule(valveEvents(programme, 1, flow), flow, drain), flow).drained;
        };
        for (const pulses of [1, 2, 4, 8]) {
          expect(drainedWith(2 * pulses)).toBeGreaterThanOrEqual(drainedWith(pulses) * (1 - 1e-9));
        }
      }),
    );
  });

  test("the three trees of a season: the mean one gets what the valve gives, the low end more, the high end less", () => {
    const file = demoJson("scenario");
    file.block.lines.drainOut = { innerDiameterMm: 14 };
    file.season.days = 28;
    file.start = { kind: "same-state", tensionKPa: 10 };
    const parsed = parseScenario(file, demoFiles);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    expect(parsed.defaultsUsed.map(({ path }) => path)).toContain("block.lines.drainOut.drainHours");
    const { scenario } = parsed;
    const trees = treesOf(scenario.block);
    expect(trees).toEqual(["mean", "under-fed", "over-fed"]);
    const { measures, ledger, valveH } = simulate(scenario, { trees });
    const applied = measures.find(({ id }) => id === "applied")?.values ?? [];
    const valve = measures.find(({ id }) => id === "applied-at-valve")?.values ?? [];
    const lastOffH = valveH[valveH.length - 1]!;
    const { contentLPerTree, drainHours, lowTreesFraction } = scenario.block.lines.drainOut!;
    const stillIn = contentLPerTree * Math.max(0, Math.min(1, 1 - (28 * 24 - lastOffH) / drainHours));
    expect(Math.abs(applied[0]! + stillIn - valve[0]!)).toBeLessThan(1e-6 * valve[0]!);
    expect(applied[1]).toBeLessThan(applied[0]!);
    const starts = valveH.length / 2;
    expect(applied[2]! - applied[0]!).toBeCloseTo((starts * contentLPerTree - stillIn) * (1 / lowTreesFraction - 1), 4);
    for (const share of ledger.residualFraction) expect(Math.abs(share)).toBeLessThan(1e-9);
  });

  test("lines that stay full have no over-fed tree", () => {
    const parsed = parseScenario(demoJson("scenario"), demoFiles);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    expect(treesOf(parsed.scenario.block)).toEqual(["mean", "under-fed"]);
    expect(() => simulate(parsed.scenario, { trees: ["over-fed"] })).toThrow(/drainOut/);
  });
});
