import { column, createSimulation, type Result } from "rootledger";
import { rainHeld, type Scenario } from "rootledger/scenario";
import type { WaterEngine } from "rootledger/water";
import { describe, expect, it } from "vitest";
import { calendar, scenarioWith } from "../../support/scenario.js";

// An engine that moves no water by any law but reports figures that can be summed by hand: what the books say of them is known exactly.

const days = 3;
const hours = days * 24;
const groundM2 = 24;
const rainMm = [4, 0, 9];
/** Of cell c in hour h, h: roots of even cells suffer thirst, of every third odd cell lack of air. */
const thirstyOf = (c: number, h: number): number => (c % 2 === 0 ? 0.25 + 0.01 * (h % 24) : 0);
const airlessOf = (c: number, h: number): number => (c % 2 === 1 && c % 3 === 0 ? 0.5 + 0.005 * (h % 24) : 0);
const cm3 = {
  transpiration: (h: number): number => 1000 + h,
  evaporation: (h: number): number => 300 + 2 * h,
  runoff: (h: number): number => 50 + 3 * h,
  bottom: (h: number): number => 20 + 5 * h,
  own: (h: number): number => 7 + 0.5 * h,
  down: (layer: number, h: number): number => 100 * (layer + 1) + 7 * h,
};
/** Theta that the last cell gains for each cm3 of emitters: trees that are given different amounts hold different amounts. */
const extraTheta = 1e-9;
const thetaChange = (c: number): number => 1e-4 * (1 + (c % 3));

const scripted = (): WaterEngine => ({
  name: "bucket",
  advance(state, forcing, untilH, fluxes) {
    const h = Math.floor(state.timeH + 1e-9);
    const dtH = untilH - state.timeH;
    for (let c = 0; c < state.theta.length; c++) {
      fluxes.thirstyH[c]! += thirstyOf(c, h) * dtH;
      fluxes.airlessH[c]! += airlessOf(c, h) * dtH;
      fluxes.thirstySeverityH[c]! += 0.4 * thirstyOf(c, h) * dtH;
      fluxes.airlessSeverityH[c]! += 0.7 * airlessOf(c, h) * dtH;
      // A tree that is given more stores more of it in its last cell, which no root reaches.
      state.theta[c]! +=
        thetaChange(c) * dtH + (c === state.theta.length - 1 ? extraTheta * forcing.emitterCm3PerH * dtH : 0);
    }
    for (let i = 0; i < fluxes.downwardCm3.length; i++) fluxes.downwardCm3[i]! += cm3.down(i, h) * dtH;
    fluxes.emitterCm3 += forcing.emitterCm3PerH * dtH;
    fluxes.rainCm3 += forcing.rainCm3PerH.reduce((sum, rate) => sum + rate, 0) * dtH;
    fluxes.transpirationCm3 += cm3.transpiration(h) * dtH;
    fluxes.evaporationCm3 += cm3.evaporation(h) * dtH;
    fluxes.runoffCm3 += cm3.runoff(h) * dtH;
    fluxes.bottomCm3 += cm3.bottom(h) * dtH;
    fluxes.ownCm3 += cm3.own(h) * dtH;
    fluxes.subSteps += 1;
    state.timeH = untilH;
  },
});

function run(scenario: Scenario, trees: Result["trees"] = ["under-fed", "mean"]): Result {
  const simulation = createSimulation(scenario, {
    engine: scripted,
    trees,
    cells: { fromHour: 30, hours: 5 },
    partOfDay: ["first", "second", "first"],
  });
  while (simulation.status().kind === "running") simulation.step();
  return simulation.result();
}

const plain = scenarioWith({ days, rainMm, programme: calendar("daily", 1, 1, 110) });
const range = (from: number, to: number): number[] => Array.from({ length: to - from }, (_, i) => from + i);
const sumOver = (which: readonly number[], of: (h: number) => number): number =>
  which.reduce((sum, h) => sum + of(h), 0);
const hoursOf = (day: number): number[] => range(24 * day, 24 * day + 24);

/** A run and what its checks read from it. */
function booked() {
  const result = run(plain);
  const { section, ledger, trees } = result;
  const cells = section.layers * section.lanes;
  const mean = trees.indexOf("mean");
  const at = (table: "days" | "hours", name: string, row: number): number =>
    column(result[table], name).values[row * trees.length + mean]!;
  const byRoots = (of: (c: number) => number): number =>
    range(0, cells).reduce((sum, c) => sum + section.rootShare[c]! * of(c), 0);
  return { result, section, ledger, trees, cells, mean, at, byRoots };
}

describe("the books of an hour, a day and a season", () => {
  it("add up what the engine reports", () => {
    const { ledger, trees, mean } = booked();
    for (const t of range(0, trees.length)) {
      expect(ledger.transpirationCm3[t]).toBeCloseTo(sumOver(range(0, hours), cm3.transpiration), 6);
      expect(ledger.evaporationCm3[t]).toBeCloseTo(sumOver(range(0, hours), cm3.evaporation), 6);
      expect(ledger.runoffCm3[t]).toBeCloseTo(sumOver(range(0, hours), cm3.runoff), 6);
      expect(ledger.bottomCm3[t]).toBeCloseTo(sumOver(range(0, hours), cm3.bottom), 6);
      expect(ledger.ownCm3[t]).toBeCloseTo(sumOver(range(0, hours), cm3.own), 6);
      expect(ledger.rainCm3[t]).toBeCloseTo(13 * groundM2 * 1000, 4);
      expect([ledger.heldByCanopyCm3[t], ledger.heldByLayerCm3[t]]).toEqual([0, 0]);
    }
    // Three runs of 110 L; the lowest quarter of emitters brings 0.85 of the mean.
    expect(ledger.emitterCm3[mean]).toBeCloseTo(330_000, 4);
    expect(ledger.emitterCm3[1 - mean]).toBeCloseTo(0.85 * 330_000, 4);
  });

  it("say what is stored, and what the books lack", () => {
    const { section, ledger, cells, mean, at } = booked();
    const last = cells - 1;
    const gainedIn = (fromH: number, toH: number, litres: number): number =>
      range(0, cells).reduce((sum, c) => sum + (toH - fromH) * thetaChange(c) * section.volumeCm3[c]!, 0) +
      litres * 1000 * extraTheta * section.volumeCm3[last]!;
    const gained = gainedIn(0, hours, 330);
    expect(ledger.endCm3[mean]! - ledger.startCm3[mean]!).toBeCloseTo(gained, 4);
    const out = ["transpirationCm3", "evaporationCm3", "runoffCm3", "bottomCm3"] as const;
    const left = out.reduce((sum, name) => sum + ledger[name][mean]!, 0);
    const came = ledger.emitterCm3[mean]! + ledger.rainCm3[mean]! + ledger.ownCm3[mean]!;
    expect(ledger.residualCm3[mean]).toBeCloseTo(came - left - gained, 4);
    const byDay = range(0, days).map((d) => at("days", "residual", d));
    expect(byDay.reduce((sum, l) => sum + l, 0) * 1000).toBeCloseTo(ledger.residualCm3[mean]!, 4);
    expect(at("days", "storage", 2) * 1000).toBeCloseTo(ledger.endCm3[mean]!, 4);
    expect((at("days", "storage", 1) - at("days", "storage", 0)) * 1000).toBeCloseTo(gainedIn(24, 48, 110), 4);
    const dayTwo = hoursOf(1);
    const taken = (["transpiration", "evaporation", "runoff", "bottom"] as const).reduce(
      (sum, name) => sum + sumOver(dayTwo, cm3[name]),
      0,
    );
    expect(byDay[1]! * 1000).toBeCloseTo(110_000 + sumOver(dayTwo, cm3.own) - taken - gainedIn(24, 48, 110), 3);
  });

  it("are kept by day", () => {
    const { at } = booked();
    for (const day of range(0, days)) {
      const litres = (of: (h: number) => number): number => sumOver(hoursOf(day), of) / 1000;
      expect(at("days", "et0", day)).toBe(6);
      expect(at("days", "rain", day)).toBe(rainMm[day]);
      expect(at("days", "applied", day)).toBeCloseTo(110, 6);
      expect(at("days", "transpired", day)).toBeCloseTo(litres(cm3.transpiration), 9);
      expect(at("days", "evaporated", day)).toBeCloseTo(litres(cm3.evaporation), 9);
      expect(at("days", "runoff", day)).toBeCloseTo(litres(cm3.runoff), 9);
      expect(at("days", "bottom", day)).toBeCloseTo(litres(cm3.bottom), 9);
      // Kcb 0.8 x ET0 6 mm on 24 m2.
      expect(at("days", "wanted", day)).toBeCloseTo(0.8 * 6 * groundM2, 6);
      expect(at("days", "heldByCanopy", day) + at("days", "heldByLayer", day)).toBe(0);
    }
  });

  it("are kept by hour", () => {
    const { section, at, byRoots } = booked();
    const rooted = section.layerEdgesCm.indexOf(60) - 1;
    expect(rooted).toBeGreaterThan(0);
    for (const h of [0, 7, 30, hours - 1]) {
      expect(at("hours", "transpired", h)).toBeCloseTo(cm3.transpiration(h) / 1000, 9);
      expect(at("hours", "belowRoots", h)).toBeCloseTo(cm3.down(rooted, h) / 1000, 9);
      expect(at("hours", "thirstyShare", h)).toBeCloseTo(
        byRoots((c) => thirstyOf(c, h)),
        9,
      );
      expect(at("hours", "airlessShare", h)).toBeCloseTo(
        byRoots((c) => airlessOf(c, h)),
        9,
      );
    }
    const day = hoursOf(0);
    // 110 L at 32 L/h from 06:00: three hours whole and 0.4375 of the fourth.
    expect(day.map((h) => at("hours", "valveOpen", h))).toEqual(
      day.map((h) => (h < 6 || h > 9 ? 0 : h < 9 ? 1 : expect.closeTo(0.4375, 9))),
    );
    expect(day.reduce((sum, h) => sum + at("hours", "rain", h), 0)).toBeCloseTo(4, 9);
    expect(day.reduce((sum, h) => sum + at("hours", "wanted", h), 0)).toBeCloseTo(0.8 * 6 * groundM2, 6);
    // The sun rises at 5 and sets at 19.
    expect(day.filter((h) => at("hours", "wanted", h) > 0)).toEqual(range(5, 19));
    const below = day.reduce((sum, h) => sum + at("hours", "belowRoots", h), 0);
    expect(at("days", "belowRoots", 0)).toBeCloseTo(below, 9);
  });

  it("weigh hours by roots, in three classes that add up to the day, with their severity", () => {
    const { at, byRoots } = booked();
    for (const day of range(0, days)) {
      const thirsty = byRoots((c) => sumOver(hoursOf(day), (h) => thirstyOf(c, h)));
      const airless = byRoots((c) => sumOver(hoursOf(day), (h) => airlessOf(c, h)));
      expect(thirsty).toBeGreaterThan(1);
      expect(airless).toBeGreaterThan(1);
      expect(at("days", "thirsty", day)).toBeCloseTo(thirsty, 9);
      expect(at("days", "airless", day)).toBeCloseTo(airless, 9);
      expect(at("days", "fine", day)).toBeCloseTo(24 - thirsty - airless, 9);
      expect(at("days", "thirstySeverity", day)).toBeCloseTo(0.4 * thirsty, 9);
      expect(at("days", "airlessSeverity", day)).toBeCloseTo(0.7 * airless, 9);
    }
  });

  it("keep root-hours by part of the season and cell", () => {
    const { result, section, trees, cells, mean } = booked();
    const { parts, values } = result.rootHours;
    expect(parts).toEqual(["first", "second"]);
    const of = (part: number, kind: number, c: number): number =>
      values[((part * 3 + kind) * cells + c) * trees.length + mean]!;
    parts.forEach((_, part) => {
      const which = part === 0 ? [...hoursOf(0), ...hoursOf(2)] : hoursOf(1);
      for (const c of range(0, cells)) {
        const share = section.rootShare[c]!;
        expect(of(part, 0, c)).toBeCloseTo(share * which.length, 9);
        expect(of(part, 1, c)).toBeCloseTo(share * sumOver(which, (h) => thirstyOf(c, h)), 9);
        expect(of(part, 2, c)).toBeCloseTo(share * sumOver(which, (h) => airlessOf(c, h)), 9);
      }
    });
    for (const c of range(0, cells)) {
      const all = range(0, hours);
      expect(result.thirstyH[c * trees.length + mean]).toBeCloseTo(
        sumOver(all, (h) => thirstyOf(c, h)),
        9,
      );
      expect(result.airlessH[c * trees.length + mean]).toBeCloseTo(
        sumOver(all, (h) => airlessOf(c, h)),
        9,
      );
    }
  });

  it("give root-zone water in mm over the rooted depth, and theta of the hours asked for", () => {
    const { result, cells, at, byRoots } = booked();
    const theta = result.cells!.theta;
    expect([result.cells!.fromHour, result.cells!.hours, theta.length]).toEqual([30, 5, 5 * cells]);
    for (const i of range(0, 5)) {
      const ofHour = theta.slice(i * cells, (i + 1) * cells);
      expect(at("hours", "rootZoneWater", 30 + i)).toBeCloseTo(byRoots((c) => ofHour[c]!) * 600, 6);
      if (i > 0) {
        for (const c of range(0, cells - 1))
          expect(ofHour[c]! - theta[(i - 1) * cells + c]!).toBeCloseTo(thetaChange(c), 12);
      }
    }
    // The other tree of the line had less water, and is not the one that is shown, in whichever order the two are booked.
    for (const trees of [["mean"], ["mean", "under-fed"]] as const)
      expect(theta).toEqual(run(plain, trees).cells!.theta);
    expect(at("days", "rootZoneWater", 1)).toBe(at("hours", "rootZoneWater", 47));
    // Two trees, at least one stretch of constant forcing an hour.
    expect(result.subSteps).toBeGreaterThanOrEqual(2 * hours);
  });
});

describe("rain that leaves, litter and the ground's slope keep", () => {
  const surface = {
    ...{ evaporation: "soil-limited" as const, evaporableDepthCm: 10, canopyStorageMm: 1, curveNumber: 90 },
    layer: {
      ...{ where: "all-ground" as const, evaporationFactor: new Float64Array(days).fill(0.5) },
      storageMm: new Float64Array(days).fill(2),
    },
  };
  const rain = rainHeld(surface, plain.weather.rainMm)!;
  function kept() {
    const result = run({ ...plain, block: { ...plain.block, surface: { ...surface, rain } } });
    const value = (name: string, day: number): number => column(result.days, name).values[day * 2 + 1]!;
    return { result, value };
  }

  it("is booked as fallen, held and run off, and the rest reaches the soil", () => {
    const { result, value } = kept();
    expect(result.trees[1]).toBe("mean");
    for (const day of [0, 2]) {
      const fellL = rainMm[day]! * groundM2;
      const held = value("heldByCanopy", day) + value("heldByLayer", day);
      expect(value("rain", day)).toBe(rainMm[day]);
      // Leaves hold their share of what falls under the canopy.
      expect(value("heldByCanopy", day)).toBeGreaterThan(0);
      expect(value("heldByCanopy", day)).toBeLessThan(rain.byCanopy[day]! * fellL);
      // Both rains fill the litter's 2 mm on all 24 m2.
      expect(value("heldByLayer", day)).toBeCloseTo(48, 6);
      const offL = rain.runoff[day]! * fellL;
      expect(value("runoff", day)).toBeCloseTo(sumOver(hoursOf(day), cm3.runoff) / 1000 + offL, 6);
      expect(held + offL).toBeLessThan(fellL);
    }
    expect(rain.runoff[2]).toBeGreaterThan(0);
    expect(value("heldByCanopy", 1) + value("heldByLayer", 1)).toBe(0);
    // Where a curve number takes run-off from the day's rain, the rest falls evenly over the day.
    expect([...column(result.hours, "rain").values].map((mm) => mm * 24)).toEqual(
      range(0, hours * 2).map((row) => expect.closeTo(rainMm[Math.floor(row / 48)]!, 9)),
    );
  });

  it("falls by hour as on bare ground where there is no curve number", () => {
    const { curveNumber: _, ...leaves } = surface;
    const held = rainHeld(leaves, plain.weather.rainMm)!;
    const { hours: table } = run({ ...plain, block: { ...plain.block, surface: { ...leaves, rain: held } } });
    // On bare ground it is the engine's own sum that is booked: 4 mm at 5 mm/h from midnight, 9 mm in two hours.
    const bare = column(run(plain).hours, "rain").values;
    expect([bare[0], bare[96], bare[98]]).toEqual([4, 5, 4].map((mm) => expect.closeTo(mm, 9)));
    column(table, "rain").values.forEach((mm, row) => {
      expect(mm).toBeCloseTo(bare[row]!, 9);
    });
  });

  it("is the same in the books of the season as by day, and closes them but for what the engine invents", () => {
    const { result, value } = kept();
    const { ledger } = result;
    const season = (name: string): number => 1000 * [0, 1, 2].reduce((sum, day) => sum + value(name, day), 0);
    expect(ledger.heldByCanopyCm3[1]).toBeCloseTo(season("heldByCanopy"), 4);
    expect(ledger.heldByLayerCm3[1]).toBeCloseTo(season("heldByLayer"), 4);
    expect(ledger.runoffCm3[1]).toBeCloseTo(season("runoff"), 4);
    expect(ledger.rainCm3[1]).toBeCloseTo(13 * groundM2 * 1000, 4);
    expect(ledger.residualCm3[1]).toBeCloseTo(season("residual"), 4);
    const own = run(plain).ledger;
    // The same engine on the same weather with bare ground lacks what was held and run off more: all of it is accounted for.
    const lost = ledger.heldByCanopyCm3[1]! + ledger.heldByLayerCm3[1]! + ledger.runoffCm3[1]! - own.runoffCm3[1]!;
    expect(own.residualCm3[1]! - ledger.residualCm3[1]!).toBeCloseTo(lost, 4);
  });
});

it.each(["theta", "bottomCm3"] as const)("%s that is no number ends the run in its hour", (what) => {
  const spoiled = (): WaterEngine => {
    const engine = scripted();
    return {
      name: "bucket",
      advance(state, forcing, untilH, fluxes) {
        engine.advance(state, forcing, untilH, fluxes);
        if (untilH <= 5) return;
        if (what === "theta") state.theta[3] = Number.NaN;
        else fluxes.bottomCm3 = Number.NaN;
      },
    };
  };
  const simulation = createSimulation(plain, { engine: spoiled });
  while (simulation.status().kind === "running") simulation.step();
  expect(simulation.status()).toMatchObject({ kind: "failed", hour: 5 });
});
