import fc from "fast-check";
import { measure, simulate } from "rootledger";
import { pluggedTree, underMicroSprinkler } from "rootledger/advise";
import { lineLife, treesWithPlugged } from "rootledger/lines";
import { everyPart, type Scenario } from "rootledger/scenario";
import { describe, expect, test } from "vitest";
import { ruled } from "../../support/rule.js";
import { calendar, scenarioWith } from "../../support/scenario.js";

const season = (scenario: Scenario) => simulate(scenario, everyPart(scenario));
const of = (result: ReturnType<typeof season>, id: string): number => measure(result, id).values[0]!;
const closed = (result: ReturnType<typeof season>): void => {
  expect(result.status.kind).toBe("finished");
  expect(Math.abs(result.ledger.residualFraction[0]!)).toBeLessThan(1e-9);
};

describe("a tree with plugged emitters", () => {
  const block = (litres: number) =>
    scenarioWith({ days: 42, texture: "sandy loam", programme: calendar("daily", 1, 1, litres) });

  test("gets the water of its open emitters in the hours of the others, to 1e-9, and the books close", () => {
    const whole = season(block(110));
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 18 }), (more) => {
        const tree = season(pluggedTree(block(110), more));
        closed(tree);
        // 20 emitters a tree: two lines, 4 m, 0.4 m apart.
        expect(Math.abs(of(tree, "applied") / of(whole, "applied") - (20 - more) / 20)).toBeLessThan(1e-9);
        expect(tree.valveH.length).toBe(whole.valveH.length);
        tree.valveH.forEach((hour, e) => {
          expect(hour).toBeCloseTo(whole.valveH[e]!, 9);
        });
      }),
      { numRuns: 4 },
    );
  });

  test("draws less than the mean tree through the season, the less the more are plugged: a single thirsty tree", () => {
    const got = [0, 5, 10, 15].map((more) => of(season(pluggedTree(block(110), more)), "transpiration"));
    for (let i = 1; i < got.length; i++) expect(got[i]).toBeLessThan(got[i - 1]!);
    expect(got[3]).toBeLessThan(0.6 * got[0]!);
  });

  test("how many such trees there are, and when the line is due, from two catch-can tests", () => {
    // Binomial tail (Abramowitz & Stegun 1964, 26.1.20): of trees with 4 open emitters, 5 % of emitters plugged, those that lost one or more.
    expect(treesWithPlugged({ openPerTree: 4, pluggedFraction: 0.05, atLeast: 1 })).toBeCloseTo(1 - 0.95 ** 4, 12);
    const { replaceAtYears } = lineLife([
      { ageYears: 2, lowQuarterUniformity: 0.9 },
      { ageYears: 5, lowQuarterUniformity: 0.84 },
    ]);
    expect(replaceAtYears).toBeCloseTo(7, 9);
  });

  test("is refused under a rule, and without an open emitter", () => {
    expect(() => pluggedTree(block(110), 20)).toThrow(/below the 20 open/);
    const programme = ruled({ kind: "replace-use", factor: 1 });
    expect(() => pluggedTree(scenarioWith({ days: 3, programme }), 1)).toThrow(/calendar/);
  });
});

describe("a micro-sprinkler on the same ground", () => {
  const sprinkler = { flowLPerH: 40, wettedRadiusM: 1.6, litterStorageMm: 3 };
  const drip = (everyDays: number, litresPerDay = 110) =>
    scenarioWith({
      ...{ days: 12, texture: "loam", programme: calendar("any", everyDays, 1, litresPerDay * everyDays) },
      roots: { lateral: { kind: "wetted-lanes" } },
    });

  test("its soil gets what the sprinkler gives less what the litter holds at every run, over the area of the disc", () => {
    for (const everyDays of [1, 3]) {
      const { scenario, wettedM2, heldLPerRun, runs, stripHalfWidthM, warnings, applicationMmPerH } =
        underMicroSprinkler(drip(everyDays), sprinkler);
      expect(wettedM2).toBeCloseTo(Math.PI * 1.6 ** 2, 12);
      expect(2 * stripHalfWidthM * 4).toBeCloseTo(wettedM2, 9);
      expect(heldLPerRun).toBeCloseTo(3 * wettedM2, 9);
      expect(applicationMmPerH).toBeCloseTo(40 / wettedM2, 12);
      expect(warnings).toEqual(["wets-trunk"]);
      const result = season(scenario);
      closed(result);
      const count = 12 / everyDays;
      const gross = of(season(drip(everyDays)), "applied");
      expect(Math.abs(of(result, "applied") + count * heldLPerRun - gross)).toBeLessThan(1e-9 * gross);
      expect(runs).toEqual([{ grossL: 110 * everyDays, reachingL: 110 * everyDays - heldLPerRun }]);
    }
  });

  test("wets more ground than two lines and asks for more water; fewer, larger runs lose less to the litter", () => {
    const wetOf = ({ section }: ReturnType<typeof season>): number =>
      section.wetByLane.reduce((sum, wet, j) => sum + wet * section.volumeCm3[j]!, 0);
    const daily = season(underMicroSprinkler(drip(1), sprinkler).scenario);
    expect(wetOf(daily)).toBeGreaterThan(wetOf(season(drip(1))));
    const third = season(underMicroSprinkler(drip(3), sprinkler).scenario);
    expect(of(third, "applied")).toBeGreaterThan(of(daily, "applied"));
    expect(of(daily, "applied")).toBeLessThan(of(season(drip(1)), "applied"));
  });

  test("spreads its water: no roots are as long without air as under the drip of the same litres on clay", () => {
    const clay = scenarioWith({ days: 6, texture: "clay", programme: calendar("daily", 1, 1, 130) });
    const even = season(underMicroSprinkler(clay, { ...sprinkler, litterStorageMm: 0 }).scenario);
    closed(even);
    expect(Math.max(...even.airlessH)).toBeLessThan(Math.max(...season(clay).airlessH));
  });

  test("litter may take a light run whole, and the late start of a night run falls on the next day", () => {
    const light = underMicroSprinkler(drip(1, 20), sprinkler);
    expect(light.warnings).toContain("litter-takes-run");
    expect(of(season(light.scenario), "applied")).toBe(0);
    const night = scenarioWith({ days: 4, programme: calendar("night", 1, 1, 110, 23.9) });
    const [run] = underMicroSprinkler(night, sprinkler).scenario.programme.runs;
    expect(run!.firstDay).toBe(1);
    expect(run!.startH).toBeLessThan(2);
    expect(underMicroSprinkler(drip(1), { ...sprinkler, wettedRadiusM: 3.2 }).warnings).toContain("beyond-row");
    const programme = ruled({ kind: "replace-use", factor: 1 });
    expect(() => underMicroSprinkler(scenarioWith({ days: 3, programme }), sprinkler)).toThrow(/calendar/);
  });
});
