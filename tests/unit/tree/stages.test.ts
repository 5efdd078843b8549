import {
  cropPresets,
  faoStageTable,
  isMonthDay,
  kcByStage,
  kcOnDay,
  otherHemisphere,
  phenologyOfOtherHemisphere,
  presetStages,
  stageByDay,
  stageStartsDays,
} from "rootledger/tree";
import { describe, expect, test } from "vitest";

const four = [
  { name: "initial", starts: { event: "rest" }, kcFrom: 0.6, kcTo: 0.6 },
  { name: "development", starts: { event: "growth" }, kcFrom: 0.6, kcTo: 0.85 },
  { name: "middle", starts: { event: "full" }, kcFrom: 0.85, kcTo: 0.85 },
  { name: "late", starts: { event: "decline" }, kcFrom: 0.85, kcTo: 0.75 },
];
const north = { rest: "12-01", growth: "03-01", full: "06-01", decline: "10-01" };
const south = phenologyOfOtherHemisphere(north);

describe("stages", () => {
  test("the south is the north six months later", () => {
    expect(south).toEqual({ rest: "06-01", growth: "09-01", full: "12-01", decline: "04-01" });
    const northern = kcByStage("2025-01-01", 181, four, north);
    const southern = kcByStage("2025-07-01", 181, four, south);
    // A stage may be a day or two longer half a year later: 0.25 over 92 days is 0.003 a day.
    northern.forEach((kc, day) => {
      expect(Math.abs(kc - southern[day]), `day ${day}`).toBeLessThan(0.01);
    });
  });

  test("a southern season runs over New Year without a step", () => {
    const kc = kcByStage("2025-10-01", 365, four, south);
    for (let day = 85; day < 100; day++) expect(Math.abs(kc[day] - kc[day - 1])).toBeLessThan(0.005);
    expect(kc[91 + 10]).toBe(0.85);
    expect(stageByDay("2025-12-31", 2, four, south)).toEqual(Int16Array.of(2, 2));
  });

  test("every year of thirty has its four stages, leap years too", () => {
    const stage = stageByDay("1996-01-01", 30 * 365 + 8, four, north);
    const starts = Array.from(stage).filter((now, day) => day > 0 && now !== stage[day - 1]).length;
    expect(starts).toBe(30 * 4);
  });

  test("dates, days of the season and days of the year may not fall together", () => {
    const clash = [
      { name: "a", starts: { day: 0 } },
      { name: "b", starts: { date: "2025-03-01" } },
    ];
    expect(() => stageByDay("2025-03-01", 10, clash)).toThrow(/different days: got a and b/);
  });

  test("an event without a day, a date that is none and a season before every stage are refused", () => {
    expect(() => stageByDay("2025-01-01", 10, four, {})).toThrow(/event rest, where initial starts/);
    expect(() => stageByDay("2025-01-01", 10, [{ name: "a", starts: { date: "2025-02-30" } }])).toThrow(/2025-02-30/);
    const later = [{ name: "a", starts: { day: 3 }, kcFrom: 0.5, kcTo: 0.5 }];
    expect(() => kcByStage("2025-01-01", 10, later)).toThrow(/holds on the first day, 2025-01-01/);
  });

  test("stages by day of the season give FAO-56's curve (eq. 66)", () => {
    const [, dev, mid, late] = stageStartsDays([25, 25, 30, 20]);
    const curve = { lengthsDays: [25, 25, 30, 20] as const, kcInitial: 0.15, kcMiddle: 1.19, kcEnd: 0.35 };
    const stages = [
      { name: "initial", starts: { day: 0 }, kcFrom: 0.15, kcTo: 0.15 },
      { name: "development", starts: { day: dev }, kcFrom: 0.15, kcTo: 1.19 },
      { name: "middle", starts: { day: mid }, kcFrom: 1.19, kcTo: 1.19 },
      { name: "late", starts: { day: late }, kcFrom: 1.19, kcTo: 0.35 },
      { name: "harvest", starts: { day: 100 }, kcFrom: 0.35, kcTo: 0.35 },
    ];
    kcByStage("1974-05-22", 100, stages).forEach((kc, day) => {
      expect(kc).toBeCloseTo(kcOnDay(curve, day), 12);
    });
  });

  test.each([
    ["08-31", "02-28"],
    ["12-31", "06-30"],
    ["01-01", "07-01"],
    ["06-30", "12-30"],
  ])("%s is %s in the other hemisphere", (here, there) => {
    expect(otherHemisphere(here)).toBe(there);
  });

  test("29 February is no day of every year", () => {
    expect(["02-28", "02-29", "13-01", "2-1", "00-10"].map(isMonthDay)).toEqual([true, false, false, false, false]);
    expect(() => otherHemisphere("02-29")).toThrow(RangeError);
  });
});

describe("presets", () => {
  test.each(Object.values(cropPresets))("$name: four stages give a Kc every day in both hemispheres", (preset) => {
    for (const phenology of [preset.phenologyNorth, phenologyOfOtherHemisphere(preset.phenologyNorth)]) {
      for (const which of ["kc", "kcb"] as const) {
        const kc = kcByStage("2024-01-01", 731, presetStages(preset, which), phenology);
        const { initial, middle, end } = preset[which];
        const low = Math.min(initial.value, middle.value, end.value);
        const high = Math.max(initial.value, middle.value, end.value);
        expect(kc.every((value) => value >= low - 1e-12 && value <= high + 1e-12)).toBe(true);
        expect(kc).toContain(middle.value);
      }
    }
  });

  test("citrus: the days of its stages are FAO-56's lengths from 1 January", () => {
    const row = faoStageTable["citrus, Mediterranean"];
    const starts = stageStartsDays(row.lengthsDays).slice(0, 4);
    const { rest, growth, full, decline } = cropPresets.citrus.phenologyNorth;
    const day = (monthDay: string): number =>
      (Date.parse(`2025-${monthDay}T00:00:00Z`) - Date.parse("2025-01-01T00:00:00Z")) / 86_400_000;
    expect([rest, growth, full, decline].map(day)).toEqual(starts);
  });
});
