import { seasonCalendar, shortestUsefulPulse } from "rootledger/programme";
import { expect, test } from "vitest";

test("a run over midnight starts on one day and has minutes on both", () => {
  expect(seasonCalendar(Float64Array.of(22, 26, 30, 31), "2025-12-31", 2)).toEqual([
    { date: "2025-12-31", minutes: 120, starts: 1, firstStartH: 22 },
    { date: "2026-01-01", minutes: 180, starts: 1, firstStartH: 6 },
  ]);
});

test("the shortest useful pulse: fill, injection or air, by hand", () => {
  const day = { gapMinutes: 60, mostFillFraction: 0.1, dayMinutes: 240, availableMinutes: 600, airBackMinutes: 120 };
  // (600 - 240) / 120 = 3 pauses, so 4 pulses of 60 min.
  expect(shortestUsefulPulse({ fillMinutes: 3, ...day })).toMatchObject({ minutes: 60, by: "air" });
  // Lines that run empty within the pause: 9 min of filling is a tenth of 90.
  expect(shortestUsefulPulse({ fillMinutes: 9, drainMinutes: 60, ...day })).toMatchObject({ minutes: 90, by: "fill" });
  expect(shortestUsefulPulse({ fillMinutes: 3, injectionMinutes: 100, ...day })).toMatchObject({ by: "injection" });
});
