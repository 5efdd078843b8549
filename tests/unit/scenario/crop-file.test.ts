import { column, simulate } from "rootledger";
import { parseNeed, parseScenario, type Scenario } from "rootledger/scenario";
import { waterNeed } from "rootledger/tree";
import { measuresByPart } from "rootledger/water";
import { describe, expect, it } from "vitest";
import { dataText, demoFiles, demoJson, type Editable } from "../../support/demo-files.js";

/** Wind 2 m/s and RHmin 45 % every day: FAO-56's standard climate, in which its tables stand as printed. */
const steadyWeather = (start: string, days: number, wind = 2, rhMin = 45, tMax = 30, solar = 22): string => {
  const first = Date.parse(start);
  const rows = Array.from({ length: days }, (_, d) => {
    const date = new Date(first + d * 86_400_000).toISOString().slice(0, 10);
    return `${date},14,${tMax},${rhMin},90,${wind},${solar},0`;
  });
  return `date,tMinC,tMaxC,rhMinPct,rhMaxPct,windMPerS,solarMJPerM2,rainMm\n${rows.join("\n")}\n`;
};

interface Ask {
  readonly tree?: Editable;
  readonly surface?: Editable;
  readonly startDate?: string;
  readonly days?: number;
  readonly latitudeDeg?: number;
  readonly csv?: string;
}

function parsed({ tree = {}, surface, startDate = "2025-12-01", days = 84, latitudeDeg = -33, csv }: Ask) {
  const file = demoJson("scenario");
  file.season = { startDate, days };
  file.weather.latitudeDeg = latitudeDeg;
  const { kcb: _, ...rest } = file.block.tree;
  file.block.tree = { ...rest, ...tree };
  if (surface !== undefined) file.block.surface = surface;
  return parseScenario(file, { "weather.csv": csv ?? steadyWeather(startDate, days) });
}

function scenarioOf(ask: Ask): {
  scenario: Scenario;
  used: readonly { path: string; value: string; source: string }[];
} {
  const read = parsed(ask);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return { scenario: read.scenario, used: read.defaultsUsed };
}

const kcbOf = (ask: Ask): Float64Array => scenarioOf(ask).scenario.block.tree.days?.kcb ?? new Float64Array();

const whole = { cover: { rule: "whole-ground" } };

describe("a crop by preset", () => {
  it("has Kcb 0.80 in the middle of a southern season, as FAO-56 table 17 prints for avocado", () => {
    const kcb = kcbOf({ tree: { crop: { preset: "avocado" }, ...whole } });
    for (const value of kcb) expect(value).toBeCloseTo(0.8, 12);
  });

  it("has 0.50 there in the northern winter, and by label the same days can be asked for", () => {
    const csv = steadyWeather("2025-12-01", 84, 2, 45, 20, 8);
    const north = kcbOf({ tree: { crop: { preset: "avocado" }, ...whole }, latitudeDeg: 36, csv });
    expect(north[0]).toBeCloseTo(0.5, 12);
    const asked = { crop: { preset: "avocado", hemisphere: "north" }, ...whole };
    expect(kcbOf({ tree: asked })[0]).toBeCloseTo(0.5, 12);
  });

  it("goes on over New Year and over years", () => {
    const kcb = kcbOf({ tree: { crop: { preset: "avocado" }, ...whole }, startDate: "2023-06-01", days: 731 });
    expect(kcb[0]).toBeCloseTo(0.5, 12);
    expect(kcb[200]).toBeCloseTo(0.8, 12);
    // 2024 has a 29 February: the same day of the year is 366 days on.
    expect(kcb[366 + 30]).toBeCloseTo(kcb[30] ?? Number.NaN, 12);
  });

  it("moves the middle value by wind and RHmin as FAO-56 eq. 70 does", () => {
    const csv = steadyWeather("2025-12-01", 84, 4.6, 44);
    const kcb = kcbOf({ tree: { crop: { preset: "avocado" }, ...whole }, csv });
    // 0.80 + (0.04 (4.6 - 2) - 0.004 (44 - 45)) (3/3)^0.3, the climate of FAO-56 example 27
    expect(kcb[40]).toBeCloseTo(0.8 + 0.04 * 2.6 + 0.004, 10);
    const none = { crop: { preset: "avocado" }, climateAdjustment: "none", ...whole };
    expect(kcbOf({ tree: none, csv })[40]).toBeCloseTo(0.8, 12);
  });

  it("lists every choice with its source", () => {
    const { used } = scenarioOf({ tree: { crop: { preset: "citrus" } } });
    const paths = used.map(({ path }) => path);
    expect(paths).toContain("block.tree.crop.coefficient");
    expect(paths).toContain("block.tree.cover.rule");
    expect(paths).toContain("block.tree.climateAdjustment");
    expect(paths).toContain("block.tree.heightM");
    expect(used.find(({ path }) => path === "block.tree.roots.depthCm")).toMatchObject({ value: "40" });
    expect(used.find(({ path }) => path === "block.tree.limits.pullLimitKPa")?.source).toMatch(/citrus: Taylor/);
    expect(used.filter(({ path }) => path.includes("kcb")).map(({ value }) => value)).toEqual(["0.65", "0.6", "0.65"]);
    for (const { source } of used) expect(source.length).toBeGreaterThan(5);
  });

  it("holds all evaporation in a single Kc: 0.85 (table 12), and the soil loses none", () => {
    const { scenario } = scenarioOf({
      tree: { crop: { preset: "avocado", coefficient: "single" }, ...whole },
      days: 14,
    });
    expect(scenario.block.tree.days?.kcb[3]).toBeCloseTo(0.85, 12);
    const evaporated = column(simulate(scenario).days, "evaporated").values;
    expect(evaporated).toEqual(new Float64Array(14));
  });

  it.each(["keller-karmeli", "density", "canopy-ground", "freeman-garzoli", "relative-density"] as const)(
    "wants the litres that a need file with the rule %s answers",
    (rule) => {
      const tree = { crop: { preset: "avocado" }, heightM: 3, canopyDiameterM: 2.5, cover: { rule } };
      const { scenario } = scenarioOf({ tree, days: 20 });
      const days = simulate({ ...scenario, start: { kind: "same-state", tensionKPa: 10 } }).days;
      const need = parseNeed({
        format: 1,
        name: "same",
        treeSpacingM: 4,
        rowSpacingM: 6,
        canopyDiameterM: 2.5,
        heightM: 3,
        reference: { kind: "et0" },
        periods: [{ name: "day", days: 1, referenceMmPerDay: scenario.weather.et0Mm[7], coefficient: 0.8 }],
        cover: { rule },
      });
      if (!need.ok) throw new Error(JSON.stringify(need.faults));
      const wanted = column(days, "wanted").values[7];
      expect(wanted).toBeCloseTo(waterNeed(need.question).periods[0]?.meanDay.netLPerTree ?? Number.NaN, 8);
    },
  );
});

describe("own stages", () => {
  it("may start by date, by day of the season, by day of the year and by event", () => {
    const stages = [
      { name: "flush", starts: "day 0", from: 0.4 },
      { name: "set", starts: "fruitSet", from: 0.4, to: 0.9 },
      { name: "fill", starts: "2026-01-10", from: 0.9 },
      { name: "rest", starts: "02-01", from: 0.5 },
    ];
    const kcb = kcbOf({ tree: { crop: { stages, phenology: { fruitSet: "12-21" } } } });
    const at = (date: string): number => kcb[Math.round((Date.parse(date) - Date.parse("2025-12-01")) / 864e5)] ?? 0;
    expect(at("2025-12-20")).toBeCloseTo(0.4, 12);
    expect(at("2025-12-31")).toBeCloseTo(0.65, 12);
    expect(at("2026-01-20")).toBeCloseTo(0.9, 12);
    expect(at("2026-02-01")).toBeCloseTo(0.5, 12);
  });

  it("are parts of the root-hours ledger by themselves, in the order of the season", () => {
    const stages = [
      { name: "flush", starts: "day 0", from: 0.4 },
      { name: "set", starts: "12-21", from: 0.8 },
    ];
    const { scenario } = scenarioOf({ tree: { crop: { stages } }, days: 40 });
    const result = simulate(scenario);
    expect(measuresByPart(result).map(({ part, days }) => [part, days])).toEqual([
      ["flush", 20],
      ["set", 20],
    ]);
    const preset = scenarioOf({ tree: { crop: { preset: "avocado" } }, days: 200 }).scenario;
    const { parts } = simulate(preset).rootHours;
    expect(new Set(parts).size).toBe(parts.length);
    expect(parts.every((name) => !/^\d{4}-/.test(name))).toBe(true);
    expect(parts.length).toBeGreaterThan(1);
  });
});

describe("a canopy that grows", () => {
  const tree = { crop: { preset: "avocado" }, canopyDiameterM: 1.5, growth: { ageYears: 1 } };

  it("wants more and leaves less ground in the open year by year", () => {
    const { scenario } = scenarioOf({ tree, startDate: "2023-12-01", days: 800 });
    const { kcb, canopyDiameterM = new Float64Array() } = scenario.block.tree.days ?? { kcb: new Float64Array() };
    expect(canopyDiameterM[0]).toBeCloseTo(1.5, 12);
    // The preset's curve is 1.2 m at one year and 2 m at two; it is scaled to the 1.5 m that stand there.
    expect(canopyDiameterM[365]).toBeCloseTo((1.5 * 2) / 1.2, 2);
    expect(kcb[366 + 40]).toBeGreaterThan(1.3 * (kcb[40] ?? 0));
  });

  it("runs", () => {
    const { scenario } = scenarioOf({ tree, days: 60 });
    expect(simulate(scenario).status.kind).toBe("finished");
  });
});

describe("modifiers", () => {
  const base = { crop: { preset: "avocado" }, climateAdjustment: "none", ...whole };
  const ratio = (modifiers: Editable, ask: Ask = {}): Float64Array => {
    const plain = kcbOf({ ...ask, tree: base });
    return kcbOf({ ...ask, tree: { ...base, modifiers } }).map((kcb, d) => kcb / (plain[d] ?? Number.NaN));
  };

  it("are off unless asked for", () => {
    expect(new Set(ratio({}))).toEqual(new Set([1]));
  });

  it("take off for lost leaves what FAO-56 eq. 97 does, until they are back", () => {
    const loss = { date: "2025-12-11", leavesLeftFraction: 0.5, leafAreaIndex: 3, recoveredBy: "2025-12-31" };
    const factor = ratio({ leafLoss: loss });
    const left = (1 - Math.exp(-0.7 * 1.5)) / (1 - Math.exp(-0.7 * 3));
    expect(factor[9]).toBe(1);
    expect(factor[10]).toBeCloseTo(left, 10);
    expect(factor[20]).toBeCloseTo((1 + left) / 2, 10);
    expect(factor[30]).toBe(1);
  });

  it("add for flowers on the days in flower alone", () => {
    const factor = ratio({ flowering: { starts: "12-06", days: 10, increaseFraction: 0.1 } });
    expect(factor[4]).toBe(1);
    expect(factor[5]).toBeCloseTo(1.1, 10);
    expect(factor[14]).toBeCloseTo(1.1, 10);
    expect(factor[15]).toBe(1);
  });

  it("close stomata on hot days and not on mild ones", () => {
    for (const factor of ratio({ heat: {} })) expect(factor).toBeCloseTo(1, 12);
    const hot = ratio({ heat: {} }, { csv: steadyWeather("2025-12-01", 84, 2, 45, 40) });
    expect(hot[3]).toBeLessThan(0.95);
    expect(hot[3]).toBeGreaterThan(0.5);
  });
});

describe("faults of the crop", () => {
  const kcb = [{ date: "2025-12-01", kcb: 0.8 }];
  const stage = (starts: string): Editable => ({ name: "all", starts, from: 0.8 });

  it.each<[string, Ask, string, string]>([
    ["neither kcb nor crop", {}, "exactly-one-of", "block.tree"],
    ["both", { tree: { kcb, crop: { preset: "avocado" } } }, "exactly-one-of", "block.tree"],
    ["a crop of nothing", { tree: { crop: {} } }, "exactly-one-of", "block.tree.crop"],
    ["an unknown preset", { tree: { crop: { preset: "mango" } } }, "not-one-of", "block.tree.crop.preset"],
    [
      "an unknown event",
      { tree: { crop: { preset: "avocado", phenology: { blossom: "10-01" } } } },
      "not-one-of",
      "block.tree.crop.phenology.blossom",
    ],
    [
      "no day",
      { tree: { crop: { preset: "avocado", phenology: { bloom: "13-41" } } } },
      "not-a-day",
      "block.tree.crop.phenology.bloom",
    ],
    [
      "an event without a day",
      { tree: { crop: { stages: [stage("veraison")] } } },
      "no-day-of-event",
      "block.tree.crop.stages[0].starts",
    ],
    [
      "a late start",
      { tree: { crop: { stages: [stage("day 3")] } } },
      "no-stage-on-first-day",
      "block.tree.crop.stages",
    ],
    [
      "two on a day",
      { tree: { crop: { stages: [stage("day 0"), { ...stage("day 0"), name: "twin" }] } } },
      "stages-misplaced",
      "block.tree.crop.stages",
    ],
    [
      "climate on the file's own values",
      { tree: { kcb, climateAdjustment: "full" } },
      "only-beside",
      "block.tree.climateAdjustment",
    ],
    ["growth without a curve", { tree: { kcb, growth: { ageYears: 2 } } }, "missing", "block.tree.growth.canopy"],
    [
      "ages that fall",
      {
        tree: {
          kcb,
          growth: {
            ageYears: 2,
            canopy: [
              { ageYears: 3, diameterM: 2 },
              { ageYears: 1, diameterM: 1 },
            ],
          },
        },
      },
      "not-above",
      "block.tree.growth.canopy[1].ageYears",
    ],
    [
      "flowers without a day",
      { tree: { kcb, modifiers: { flowering: { days: 20, increaseFraction: 0.1 } } } },
      "missing",
      "block.tree.modifiers.flowering.starts",
    ],
    [
      "leaves back before they fell",
      {
        tree: {
          kcb,
          modifiers: { leafLoss: { date: "2026-01-01", leavesLeftFraction: 0.5, recoveredBy: "2025-12-20" } },
        },
      },
      "dates-not-rising",
      "block.tree.modifiers.leafLoss.recoveredBy",
    ],
    [
      "two ways to count evaporation",
      {
        tree: { crop: { preset: "avocado", coefficient: "single" } },
        surface: { evaporation: "two-stage" },
      },
      "not-beside",
      "block.surface.evaporation",
    ],
  ])("%s", (_, ask, code, path) => {
    const read = parsed(ask);
    expect(read.ok ? [] : read.faults.map((found) => [found.code, found.path])).toEqual([[code, path]]);
  });

  it("says that weather without temperatures cannot close stomata", () => {
    const file = demoJson("scenario");
    file.season.days = 3;
    file.weather.et0Method = "given";
    file.block.tree.modifiers = { heat: {} };
    const csv = "date,et0Mm,rainMm\n2025-12-01,6,0\n2025-12-02,6,0\n2025-12-03,6,0\n";
    const read = parseScenario(file, { "weather.csv": csv });
    expect(read.ok ? [] : read.faults.map(({ code }) => code)).toEqual(["weather-lacks"]);
  });
});

it("the demo of young trees runs: preset, stages, growth, leaves and litter that hold rain", () => {
  const read = parseScenario(JSON.parse(dataText("demo/young-trees.json")), demoFiles);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const { status, ledger, days } = simulate(read.scenario);
  expect(status.kind).toBe("finished");
  expect(Math.abs(ledger.residualFraction[0] ?? 1)).toBeLessThan(1e-9);
  expect(ledger.heldByCanopyCm3[0]).toBeGreaterThan(0);
  expect(ledger.heldByLayerCm3[0]).toBeGreaterThan(0);
  const wanted = column(days, "wanted").values;
  // A canopy of 2 m is 13 % of its ground: far below the 133 L of the mature block, above what a first-year tree wants.
  for (const litres of wanted) expect(litres).toBeLessThan(60);
  expect(Math.max(...wanted)).toBeGreaterThan(10);
});
