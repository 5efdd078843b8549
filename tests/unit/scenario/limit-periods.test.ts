import { column, measure, simulate } from "rootledger";
import { parseScenario } from "rootledger/scenario";
import { describe, expect, it } from "vitest";
import { demoFiles, demoJson } from "../../support/demo-files.js";
import { calendar, scenarioWith } from "../../support/scenario.js";

const dry = scenarioWith({ texture: "loam", days: 12, programme: calendar("weekly", 12, 1, 100) });
const withLimits = (extra: object): typeof dry => ({
  ...dry,
  block: { ...dry.block, tree: { ...dry.block.tree, limits: { ...dry.block.tree.limits, ...extra } } },
});
const thirsty = (scenario: typeof dry): number => measure(simulate(scenario), "thirsty").values[0]!;

describe("limits that change with the season", () => {
  it("hold in their period only, also over New Year", () => {
    const strict = { name: "flowering", from: "12-02", to: "12-03", limits: { pullLimitKPa: 10 } };
    const plain = column(simulate(dry).days, "thirsty").values;
    const changed = column(simulate(withLimits({ periods: [strict] })).days, "thirsty").values;
    expect(changed[0]).toBe(plain[0]);
    for (let day = 1; day < 3; day++) expect(changed[day]!, `day ${day}`).toBeGreaterThan(plain[day]!);
    const elsewhere = { ...strict, from: "12-20", to: "11-30" };
    expect(thirsty(withLimits({ periods: [elsewhere] }))).toBe(thirsty(dry));
  });

  it("let a tree of low demand wait longer before it is thirsty, and change nothing at 5 mm a day", () => {
    const slack = withLimits({ pullLimitLowDemandKPa: 40 });
    // Kcb 0.8 x 6 mm = 4.8 mm: almost the limit for high demand (Feddes et al. 1978).
    expect(thirsty(slack)).toBeLessThan(thirsty(dry));
    const hot = { ...slack, weather: { ...slack.weather, et0Mm: slack.weather.et0Mm.map(() => 7) } };
    const hotPlain = { ...hot, block: dry.block };
    expect(thirsty(hot)).toBe(thirsty(hotPlain));
  });

  it("refuse a run in which draws and periods contradict one another", () => {
    const late = { name: "late", from: "01-01", to: "12-31", limits: { zeroUptakeKPa: 15 } };
    expect(() => simulate(withLimits({ periods: [late] }))).toThrow(/zero uptake ever drier.* in late/);
    expect(() => simulate(withLimits({ pullLimitLowDemandKPa: 200 }))).toThrow(/below zeroUptakeKPa: got 200/);
  });

  it.each([
    [{ periods: [{ name: "a", from: "13-01", to: "01-05" }] }, "not-a-month-day", "block.tree.limits.periods[0].from"],
    [
      {
        periods: [
          { name: "a", from: "12-01", to: "01-05" },
          { name: "b", from: "01-04", to: "02-01" },
        ],
      },
      "periods-overlap",
      "block.tree.limits.periods[1]",
    ],
    [
      { periods: [{ name: "a", from: "12-01", to: "01-05", pullLimitKPa: 3 }] },
      "not-drier",
      "block.tree.limits.periods[0].pullLimitKPa",
    ],
    [
      { pullLimitLowDemandKPa: 30, periods: [{ name: "a", from: "12-01", to: "01-05", pullLimitKPa: 35 }] },
      "not-drier",
      "block.tree.limits.pullLimitLowDemandKPa",
    ],
    [{ pullLimitLowDemandKPa: 10 }, "not-drier", "block.tree.limits.pullLimitLowDemandKPa"],
    [{ pullLimitLowDemandKPa: 200 }, "not-below", "block.tree.limits.pullLimitLowDemandKPa"],
  ])("refuse %o", (limits, code, path) => {
    const file = demoJson("scenario");
    file.block.tree.limits = limits;
    const parsed = parseScenario(file, demoFiles);
    expect(parsed.ok ? [] : parsed.faults.map((f) => [f.code, f.path])).toEqual([[code, path]]);
  });
});
