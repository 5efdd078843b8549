import { injectionSchedule, type Run } from "rootledger/programme";
import { describe, expect, it } from "vitest";

const place = { startDate: "2025-12-22", days: 20, treeFlowLPerH: 32, groundM2: 24 };
const daily: Run = { startH: 6, everyDays: 1, firstDay: 0, pulses: 1, gapMinutes: 0, amount: { minutes: 120 } };
const times = { afterMinutes: 25, injectMinutes: 45 };

describe("injectionSchedule", () => {
  it("counts open minutes of a run, across its pauses", () => {
    const split = { ...daily, pulses: 4, gapMinutes: 60 };
    const { eventsH, mgPerL } = injectionSchedule([split], { ...times, amount: { mgPerL: 50 } }, { ...place, days: 1 });
    const minutes = Array.from(eventsH, (h) => Math.round((h - 6) * 60));
    expect(minutes).toEqual([25, 30, 90, 120, 180, 190]);
    expect(Array.from(mgPerL)).toEqual([50, 50, 50]);
  });

  it("gives each run the grams asked for", () => {
    const { eventsH, mgPerL } = injectionSchedule([daily], { ...times, amount: { gPerTreePerRun: 1.2 } }, place);
    let grams = 0;
    for (let i = 0; i < mgPerL.length; i++) grams += ((eventsH[2 * i + 1] - eventsH[2 * i]) * 32 * mgPerL[i]) / 1000;
    expect(grams).toBeCloseTo(20 * 1.2, 10);
  });

  it("shares the kilograms of a month among its runs, by the part of the month in the season", () => {
    const kgPerHaByMonth = [20, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 31];
    const { eventsH, mgPerL } = injectionSchedule([daily], { ...times, amount: { kgPerHaByMonth } }, place);
    let grams = 0;
    for (let i = 0; i < mgPerL.length; i++) grams += ((eventsH[2 * i + 1] - eventsH[2 * i]) * 32 * mgPerL[i]) / 1000;
    // 10 of 31 days of December, 10 of 31 of January; 1 kg/ha is 2.4 g on 24 m2.
    expect(grams).toBeCloseTo((10 + (20 * 10) / 31) * 2.4, 10);
  });

  it("says what month amount found no run", () => {
    const kgPerHaByMonth = [31, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0];
    const once = { ...daily, everyDays: 100 };
    const { notGivenKgPerHa } = injectionSchedule([once], { ...times, amount: { kgPerHaByMonth } }, place);
    expect(notGivenKgPerHa).toHaveLength(1);
    expect(notGivenKgPerHa[0].month).toBe(1);
    expect(notGivenKgPerHa[0].kgPerHa).toBeCloseTo(10, 10);
  });

  it("refuses what cannot be", () => {
    const injection = { ...times, amount: { kgPerHaByMonth: [1] } };
    expect(() => injectionSchedule([daily], injection, place)).toThrow(/twelve months/);
    const flowless = { ...place, treeFlowLPerH: 0 };
    expect(() => injectionSchedule([daily], { ...times, amount: { mgPerL: 1 } }, flowless)).toThrow(RangeError);
  });
});
