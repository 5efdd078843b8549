import fc from "fast-check";
import { column, measure, type Result, simulate } from "rootledger";
import { type AdviceChoice, adviceCase, advise, limitBroken, neighboursOf, programmeOf } from "rootledger/advise";
import { floorOf } from "rootledger/compare";
import { openHours, type Programme, valveEvents } from "rootledger/programme";
import { everyPart, type Scenario } from "rootledger/scenario";
import { describe, expect, test } from "vitest";
import { adviceBlocks, adviceLimits } from "../../support/advice-blocks.js";

const [fromDay, days] = [7, 14];

/** The four measures of a programme over the days that count, from a plain season. */
function four(result: Result): number[] {
  const sum = (name: string): number => {
    const { values } = column(result.days, name);
    return values.slice(fromDay).reduce((total, value) => total + value, 0);
  };
  const opened = result.valveH.filter((hour, e) => e % 2 === 0 && hour >= fromDay * 24).length;
  return [sum("thirsty"), sum("airless"), sum("belowRoots"), opened];
}

const season = (scenario: Scenario, programme: Programme): Result => {
  const asked = { ...scenario, programme };
  return simulate(asked, everyPart(asked));
};

/** Smallest meaningful differences between a programme and one a step away. */
function floorsOf(result: Result, { soil }: Scenario, a: AdviceChoice, b: AdviceChoice): number[] {
  const timing = (["lines", "waterFraction", "everyDays", "startH"] as const).some((key) => a[key] !== b[key]);
  const size = (id: string): number => floorOf(id, result, soil, [timing ? "interval" : "pulses"], 0).size;
  const applied = measure(result, "applied").values[0]!;
  const counted = column(result.days, "applied")
    .values.slice(fromDay)
    .reduce((total, value) => total + value, 0);
  const ofHours = days / (fromDay + days);
  return [size("thirsty") * ofHours, size("airless") * ofHours, (size("below-roots") * counted) / applied, 0];
}

describe("advice", () => {
  test("no programme one step away beats a member on all four measures, and none is as good on all and better on one", async () => {
    await fc.assert(
      fc.asyncProperty(adviceBlocks, async (scenario) => {
        const ready = adviceCase({ scenario, days });
        const { set, status } = await advise({ scenario, days });
        expect(status).toBe("finished");
        expect(set.length).toBeGreaterThan(0);
        const known = new Map<string, number[]>();
        for (const { choice, programme, isToday } of set) {
          const own = season(scenario, programme);
          const mine = four(own);
          for (const neighbour of neighboursOf(choice, ready.ladders, ready.today)) {
            const other = programmeOf(neighbour, ready.todayLPerDay);
            if (limitBroken(other, 0, ready) !== undefined) continue;
            const theirs = known.get(other.name) ?? four(season(scenario, other));
            known.set(other.name, theirs);
            const floors = floorsOf(own, scenario, choice, neighbour);
            expect(theirs.every((value, m) => value < mine[m]! - floors[m]!)).toBe(false);
            const better = theirs.every((value, m) => value <= mine[m]!) && theirs.some((value, m) => value < mine[m]!);
            if (!isToday) expect(better).toBe(false);
          }
        }
      }),
      { numRuns: 3 },
    );
  });

  test("never breaks a limit and brings today's water", async () => {
    await fc.assert(
      fc.asyncProperty(adviceBlocks, adviceLimits, async (scenario, limits) => {
        const question = { scenario, days, limits, mostCandidates: 25 };
        let litres: number;
        try {
          litres = adviceCase(question).todayLPerDay * days;
        } catch (error) {
          expect(String(error)).toMatch(/water in the days/);
          return;
        }
        const { set } = await advise(question);
        for (const { programme, isToday, water } of set) {
          expect(Math.abs(water.valveL - litres)).toBeLessThanOrEqual(0.01 * litres);
          expect(water.same).toBe(true);
          if (isToday) continue;
          const flow = 10 * scenario.block.lines.offsetsM.length * scenario.block.lines.emitterFlowLPerH;
          const valveH = valveEvents(programme, fromDay + days, flow);
          const { watering } = season(scenario, { ...programme, limits });
          expect((watering?.cuts ?? []).filter(({ minutes }) => minutes > 1e-6)).toEqual([]);
          const { pumpHoursPerDay = 24, sectors = 1, allowed, shortestPulseMinutes = 0 } = limits;
          for (let day = 0; day < fromDay + days; day++)
            expect(openHours(valveH, day * 24, day * 24 + 24)).toBeLessThanOrEqual(pumpHoursPerDay / sectors + 1e-6);
          for (let e = 0; e < valveH.length; e += 2) {
            const lengthH = valveH[e + 1]! - valveH[e]!;
            expect(lengthH * 60).toBeGreaterThanOrEqual(shortestPulseMinutes - 1e-6);
            if (allowed === undefined || allowed.fromH === allowed.toH) continue;
            const sinceH = (valveH[e]! - allowed.fromH + 48) % 24;
            expect(sinceH + lengthH).toBeLessThanOrEqual(((allowed.toH - allowed.fromH + 24) % 24) + 1e-6);
          }
          const run = programme.runs[0]!;
          const minutes = "litresPerTree" in run.amount ? (run.amount.litresPerTree / flow) * 60 : Number.NaN;
          expect(minutes).toBeLessThanOrEqual((limits.longestRunMinutes ?? Number.POSITIVE_INFINITY) + 1e-6);
        }
      }),
      { numRuns: 12 },
    );
  });
});
