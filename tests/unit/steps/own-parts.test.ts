import { createSimulation, measure, simulate } from "rootledger";
import { type EnsemblePlan, layoutOf, memberRun } from "rootledger/chance";
import { defaultSoilCurve } from "rootledger/ground";
import { type Comparison, type Scenario, seasonSolutes } from "rootledger/scenario";
import {
  type OwnProcesses,
  ownCurve,
  ownProcesses,
  type ProcessFault,
  runWatched,
  stepModel,
  withOwnHours,
} from "rootledger/steps";
import { describe, expect, test } from "vitest";
import { scenarioWith } from "../../support/scenario.js";

const hours = (days: number, value: (hour: number) => number): Float64Array =>
  Float64Array.from({ length: days * 24 }, (_, hour) => value(hour));

/** Half sine from 6 to 18 h; its 24 hourly sums add up to `mmPerDay`. */
const day = (mmPerDay: number) => (hour: number) => {
  const clock = hour % 24;
  const angle = (h: number) => (Math.PI * (Math.min(18, Math.max(6, h)) - 6)) / 12;
  return (mmPerDay / 2) * (Math.cos(angle(clock)) - Math.cos(angle(clock + 1)));
};

describe("own records by hour", () => {
  const scenario = scenarioWith({ days: 5, start: { tensionKPa: 8, kind: "same-state" } });

  test("transpiration wanted is the array, hour by hour, and the books close", () => {
    const transpirationMm = hours(5, day(4.8));
    const result = simulate(withOwnHours(scenario, { transpirationMm }));
    const wanted = result.hours.columns.find(({ name }) => name === "wanted")?.values;
    // 1 mm on 24 m2 is 24 L.
    transpirationMm.forEach((mm, hour) => {
      expect(wanted?.[hour]).toBeCloseTo(mm * 24, 9);
    });
    expect(result.days.columns.find(({ name }) => name === "wanted")?.values[2]).toBeCloseTo(4.8 * 24, 9);
    expect(Math.abs(result.ledger.residualFraction[0] ?? Number.NaN)).toBeLessThan(1e-9);
  });

  test("rain falls in its own hours", () => {
    const rainMm = hours(5, (hour) => (hour === 30 ? 12 : hour === 31 ? 0.5 : 0));
    const result = simulate(withOwnHours(scenario, { rainMm }));
    const rain = result.hours.columns.find(({ name }) => name === "rain")?.values;
    rainMm.forEach((mm, hour) => {
      expect(rain?.[hour]).toBeCloseTo(mm, 9);
    });
    expect(result.days.columns.find(({ name }) => name === "rain")?.values[1]).toBeCloseTo(12.5, 9);
    expect(Math.abs(result.ledger.residualFraction[0] ?? Number.NaN)).toBeLessThan(1e-9);
  });

  test("a snapshot of such a run restarts bit-equal", () => {
    const own = withOwnHours(scenario, {
      transpirationMm: hours(5, day(6)),
      rainMm: hours(5, (h) => (h % 40 === 3 ? 2 : 0)),
    });
    const first = createSimulation(own);
    for (let hour = 0; hour < 37; hour++) first.step();
    const second = createSimulation(own);
    second.restore(JSON.parse(JSON.stringify(first.snapshot())));
    while (second.status().kind === "running") second.step();
    expect(second.result().ledger).toEqual(simulate(own).ledger);
  });

  test.each([
    [{ transpirationMm: new Float64Array(100) }, /requires 120 values of transpirationMm/],
    [
      { transpirationMm: hours(5, (h) => (h === 7 ? -0.1 : 0.1)) },
      /transpirationMm of 0 mm or more: got -0.1 at hour 7/,
    ],
    [{ rainMm: hours(5, (h) => (h === 9 ? Number.NaN : 0)) }, /rainMm of 0 mm or more: got NaN at hour 9/],
    [{ rainMm: hours(5, (h) => (h === 9 ? Number.POSITIVE_INFINITY : 0)) }, /got Infinity at hour 9/],
    [{}, /requires transpirationMm or rainMm/],
  ])("refuses what is not such a record: %#", (records, rule) => {
    expect(() => withOwnHours(scenario, records)).toThrow(rule);
  });
});

test("ensembles run on own records and own processes: a drawn Kcb moves the records by its factor", async () => {
  const { soil, programme, ...common } = scenarioWith({ days: 3 });
  const mm = hours(3, day(5));
  const comparison: Comparison = { ...common, remark: "", soils: [soil], programmes: [programme] };
  const plan: EnsemblePlan = {
    comparison: withOwnHours(comparison, { transpirationMm: mm }),
    trees: ["mean"],
    draws: { kind: "own", ids: ["kcb"], values: Float64Array.of(1, 0.8) },
    weatherYears: [],
  };
  const uptake: NonNullable<OwnProcesses["uptake"]> = (out, v) => out.set(v.rootShare.map((s) => s * v.demandCm3PerH));
  const run = memberRun(plan, { engine: ownProcesses({ uptake }) });
  const at = layoutOf(plan).measures.findIndex(({ id }) => id === "transpiration");
  // All that is wanted is drawn: 5 mm a day on 24 m2, 360 L in three days.
  expect(run(0)[at]).toBeCloseTo(360, 3);
  expect(run(1)[at]).toBeCloseTo(288, 3);
  const years = {
    ...plan,
    draws: { ...plan.draws, ids: ["weather-year" as const] },
    weatherYears: [comparison.weather],
  };
  expect(() => memberRun(years)(0)).toThrow(/records by hour/);
});

describe("own processes", () => {
  const scenario = scenarioWith({ days: 6 });

  test("own uptake replaces the engine's, and its water is in the ledger", () => {
    const usual = simulate(scenario);
    const same = simulate(scenario, {
      engine: ownProcesses({
        uptake: (out, { demandCm3PerH, rootShare, thirst, air }) => {
          let supplied = 0;
          for (let c = 0; c < out.length; c++) supplied += (rootShare[c] ?? 0) * (thirst[c] ?? 0);
          const divisor = Math.max(supplied, 0.5);
          for (let c = 0; c < out.length; c++)
            out[c] = (demandCm3PerH / divisor) * (rootShare[c] ?? 0) * (thirst[c] ?? 0) * (air[c] ?? 0);
        },
      }),
    });
    // Jarvis (1989) written anew by the caller gives what the engine's own gives, up to rounding.
    expect(same.ledger.transpirationCm3[0]).toBeCloseTo(usual.ledger.transpirationCm3[0] ?? Number.NaN, 3);
    const half = simulate(scenario, {
      engine: ownProcesses({
        uptake: (out, v) => out.set(v.rootShare.map((share) => 0.5 * v.demandCm3PerH * share)),
      }),
    });
    expect(measure(half, "transpiration-ratio").values[0]).toBeCloseTo(0.5, 6);
    expect(Math.abs(half.ledger.residualFraction[0] ?? Number.NaN)).toBeLessThan(1e-9);
  });

  test("own evaporation and own stress are what is booked", () => {
    const result = simulate(scenario, {
      engine: ownProcesses({
        evaporation: (out) => out.fill(3),
        stress: ({ thirst, air, state }) => {
          thirst.fill(0.25);
          air.fill(1);
          state.fill(1);
        },
      }),
    });
    const lanes = result.section.lanes;
    expect(result.ledger.evaporationCm3[0]).toBeCloseTo(3 * lanes * 24 * 6, 4);
    expect(measure(result, "thirsty").values[0]).toBeCloseTo(24 * 6, 6);
    expect(Math.abs(result.ledger.residualFraction[0] ?? Number.NaN)).toBeLessThan(1e-9);
  });

  test("an own source and sink stand in the ledger, which closes", () => {
    const result = simulate(scenario, {
      engine: ownProcesses({
        source: (out, { hour, ground }) => {
          out[ground.grid.cells - 1] = 20;
          if (hour >= 48 && hour < 60) out[ground.grid.lanes] = -5;
        },
      }),
    });
    expect(result.status.kind).toBe("finished");
    expect(result.ledger.ownCm3[0]).toBeCloseTo(20 * 24 * 6 - 5 * 12, 6);
    expect(Math.abs(result.ledger.residualFraction[0] ?? Number.NaN)).toBeLessThan(1e-9);
    expect(simulate(scenario).ledger.ownCm3[0]).toBe(0);
  });

  test.each([
    ["uptake", "negative", (out: Float64Array) => (out[12] = -0.3), "uptake, cell 12, hour 0"],
    ["uptake", "not-finite", (out: Float64Array) => (out[3] = Number.NaN), "uptake, cell 3, hour 0"],
    ["uptake", "more-than-available", (out: Float64Array) => (out[20] = 1e7), "uptake, cell 20, hour 0"],
    ["uptake", "above-demand", (out: Float64Array) => out.fill(40), "uptake, all cells, hour 0"],
    ["evaporation", "negative", (out: Float64Array) => (out[2] = -1), "evaporation, cell 2, hour 0"],
    ["source", "more-than-fits", (out: Float64Array) => (out[5] = 1e7), "source, cell 5, hour 0"],
    ["source", "more-than-available", (out: Float64Array) => (out[5] = -1e7), "source, cell 5, hour 0"],
    ["source", "not-finite", (out: Float64Array) => (out[6] = Number.NaN), "source, cell 6, hour 0"],
  ])("%s that is %s ends the run, naming slot, cell, hour and value", (slot, code, spoil, path) => {
    const spoilt = (out: Float64Array): void => {
      out.fill(0);
      spoil(out);
    };
    const engine = ownProcesses({ [slot]: spoilt });
    const { status } = simulate(scenario, { engine });
    expect(status.kind).toBe("failed");
    expect(status.kind === "failed" && status.message).toContain(`(${path})`);
    const model = stepModel(scenario, { engine });
    let fault: ProcessFault | undefined;
    try {
      model.step(model.initial(), { transpirationMmPerH: 0.1 }, 1);
    } catch (error) {
      fault = (error as { fault?: ProcessFault }).fault;
    }
    expect(fault).toMatchObject({ code, path });
    expect(fault?.rule.length).toBeGreaterThan(5);
  });

  test("a scenario that names the slow engine is then run by buckets, and its result says so", () => {
    const slow: Scenario = {
      ...scenarioWith({ days: 1, start: { tensionKPa: 8, kind: "same-state" } }),
      engine: "richards",
    };
    expect(simulate(slow, { engine: ownProcesses({}) })).toMatchObject({
      engine: "bucket",
      status: { kind: "finished" },
    });
  });

  test("a stress factor beyond 1 is refused, and a source beside salt", () => {
    const engine = ownProcesses({ stress: ({ thirst }) => thirst.fill(1.2) });
    const { status } = simulate(scenario, { engine });
    expect(status.kind === "failed" && status.message).toMatch(
      /factors from 0 to 1: got 1.2 \(stress, cell 0, hour 0\)/,
    );
    const salty: Scenario = scenarioWith({
      days: 2,
      salt: { waterEcDsPerM: 1, startEceDsPerM: 1, response: { kind: "none" } },
    });
    const beside = simulate(salty, { engine: ownProcesses({ source: () => undefined }), solutes: seasonSolutes });
    expect(beside.status.kind === "failed" && beside.status.message).toMatch(/without salt and nitrogen/);
  });
});

describe("an own curve", () => {
  const loam = defaultSoilCurve("loam");

  test("a function of the library's own loam gives what the loam gives", () => {
    const own = ownCurve({ thetaAt: (h) => loam.thetaAt(h), conductivity: (h) => loam.conductivityAt(h) });
    const usual = simulate(scenarioWith({ days: 8 }));
    const result = simulate(scenarioWith({ days: 8, horizons: [{ toCm: 100, ...own }] }));
    const share = (of: "transpirationCm3" | "bottomCm3") =>
      (result.ledger[of][0] ?? Number.NaN) / (usual.ledger[of][0] ?? Number.NaN);
    expect(share("transpirationCm3")).toBeCloseTo(1, 3);
    expect(share("bottomCm3")).toBeCloseTo(1, 2);
  });

  test("one per layer, with a level piece below an air-entry head", () => {
    // Brooks & Corey (1964): level to the air-entry head, then a power law.
    const thetaAt = (h: number): number => 0.03 + 0.4 * Math.min(1, (-h / 15 || 1) ** -0.6);
    const flat = (h: number): number => (h > -15 ? 0.43 : thetaAt(h));
    const own = ownCurve({ thetaAt: flat, conductivity: { kSatCmPerH: 3, halfHeadCm: 15, exponent: 3 } });
    const result = simulate(
      scenarioWith({
        days: 4,
        horizons: [
          { toCm: 40, ...own },
          { toCm: 100, texture: "clay loam" },
        ],
      }),
    );
    expect(result.status.kind).toBe("finished");
    expect(result.section.thetaSaturated[0]).toBeCloseTo(0.43, 9);
    expect(Math.abs(result.ledger.residualFraction[0] ?? Number.NaN)).toBeLessThan(1e-9);
  });

  const gardner = { kSatCmPerH: 2, halfHeadCm: 15, exponent: 2.5 };
  test.each([
    [{ thetaAt: (h: number) => 0.3 + 1e-6 * -h, conductivity: gardner }, /theta that never rises/],
    [{ thetaAt: () => 1.2, conductivity: gardner }, /theta between 0 and 1: got 1.2 at head 0 cm/],
    [{ thetaAt: (h: number) => (h < -100 ? 0.2 : 0.4), conductivity: gardner }, /without jumps/],
    [
      { thetaAt: (h: number) => 0.4 / (1 - h / 99), conductivity: (h: number) => Math.exp(0.1 * h) },
      /conductivity above 0/,
    ],
    [
      { thetaAt: (h: number) => 0.4 / (1 - h / 99), conductivity: (h: number) => 1 - h },
      /conductivity that never rises/,
    ],
  ])("is checked at the start: %#", (curve, rule) => {
    expect(() => ownCurve(curve)).toThrow(rule);
  });
});

describe("observers", () => {
  test("the first that says stop ends the run as stopped, with hour and name", () => {
    const scenario = scenarioWith({ days: 10, programme: { name: "none", runs: [] } });
    const seen: number[] = [];
    const dry = { name: "root mat at 20 % water", watch: () => "go on" as "go on" | "stop" };
    const result = runWatched(scenario, [
      { name: "looks on", watch: ({ hour }) => (seen.push(hour) > 0 ? "go on" : "stop") },
      { ...dry, watch: ({ trees }) => ((trees[0]?.state.theta[0] ?? 1) < 0.2 ? "stop" : "go on") },
    ]);
    expect(result.status).toMatchObject({ kind: "stopped", by: dry.name });
    const hour = result.status.kind === "stopped" ? result.status.hour : Number.NaN;
    expect(seen).toEqual(Array.from({ length: hour }, (_, i) => i + 1));
    expect(Math.abs(result.ledger.residualFraction[0] ?? Number.NaN)).toBeLessThan(1e-9);
  });

  test("a run that nobody stops is the run without observers", () => {
    const scenario = scenarioWith({ days: 3 });
    const watched = runWatched(scenario, [{ name: "looks on", watch: () => "go on" }]);
    expect(watched.status).toEqual({ kind: "finished" });
    expect(watched.ledger).toEqual(simulate(scenario).ledger);
  });
});

test.each([
  [{ rainMmPerH: -1 }, 1, /finite rainMmPerH of 0 or more: got -1/],
  [{ transpirationMmPerH: Number.NaN }, 1, /finite transpirationMmPerH of 0 or more: got NaN/],
  [{ rain: 3 } as object, 1, /rates named .*: got rain/],
  [{}, 0.01, /length from 1\/60 to 24 h: got 0.01/],
  [{}, 25, /length from 1\/60 to 24 h: got 25/],
])("a step refuses %j over %d h", (forcing, dtH, rule) => {
  const model = stepModel(scenarioWith());
  expect(() => model.step(model.initial(), forcing, dtH)).toThrow(rule);
});
