import fc from "fast-check";
import { createSimulation, measure, type Result, simulate } from "rootledger";
import type { Programme } from "rootledger/programme";
import { engineOf, type Scenario, seasonSolutes } from "rootledger/scenario";
import { column } from "rootledger/water";
import { describe, expect, it } from "vitest";
import { calendar, scenarioWith, type Variation } from "../../support/scenario.js";

const tolerance = { kind: "threshold-slope", thresholdDsPerM: 1.3, slopePerDsPerM: 0.21 } as const;
const salt = { waterEcDsPerM: 1.2, startEceDsPerM: 1.8, response: tolerance };
const unfelt = { ...salt, response: { kind: "none" } } as const;
const fed: Programme = {
  ...calendar("fed", 1, 2, 110),
  nitrogen: {
    throughWater: { afterMinutes: 25, injectMinutes: 45, amount: { mgPerL: 40 } },
    byHand: [{ date: "2025-12-03", gPerTree: 50, ground: "under-canopy" }],
  },
};
const rainMm = [0, 4, 0, 45, 0, 0, 12];

const run = (variation: Variation, engine: Scenario["engine"] = "bucket"): Result => {
  const scenario = { ...scenarioWith(variation), engine };
  return simulate(scenario, { engine: engineOf(scenario), solutes: seasonSolutes, trees: ["mean", "under-fed"] });
};

const worst = (values: Float64Array | undefined): number => Math.max(...Array.from(values ?? [Number.NaN], Math.abs));

describe("books of salt and nitrogen", () => {
  it("close to 1e-9 of all that was there and came in, for any water, soil, rain and doses", () => {
    const texture = fc.constantFrom("sand", "loam", "clay loam", "clay");
    const litres = fc.integer({ min: 5, max: 400 });
    const ec = fc.double({ min: 0, max: 6, noNaN: true });
    const rain = fc.array(fc.integer({ min: 0, max: 90 }), { minLength: 0, maxLength: 8 });
    const mgPerL = fc.integer({ min: 1, max: 300 });
    fc.assert(
      fc.property(
        texture,
        litres,
        ec,
        rain,
        mgPerL,
        fc.integer({ min: 1, max: 4 }),
        (t, l, waterEcDsPerM, r, n, pulses) => {
          const programme: Programme = {
            ...calendar("any", 2, pulses, l),
            nitrogen: {
              throughWater: { afterMinutes: 5, injectMinutes: 30, amount: { mgPerL: n } },
              byHand: [{ date: "2025-12-02", gPerTree: 30, ground: "all-ground" }],
            },
          };
          const nitrogen = { waterMgPerL: 3, startKgPerHa: 40 };
          const result = run({ days: 9, texture: t, rainMm: r, programme, salt: { ...salt, waterEcDsPerM }, nitrogen });
          expect(result.status.kind).toBe("finished");
          expect(worst(result.solutes?.salt?.residualFraction)).toBeLessThan(1e-9);
          expect(worst(result.solutes?.nitrogen?.residualFraction)).toBeLessThan(1e-9);
          for (const cells of [result.solutes?.cellEceDsPerM, result.solutes?.cellNitrateMgPerL]) {
            expect(Math.min(...(cells ?? [Number.NaN]))).toBeGreaterThanOrEqual(-1e-9);
          }
        },
      ),
      { numRuns: 6 },
    );
  });

  it("close on soil that floods, with cracks, over a water table, and on the slow engine", () => {
    const flood = {
      days: 6,
      texture: "clay",
      programme: { ...fed, ...calendar("flood", 2, 1, 900) },
      rainMm,
      salt,
    } as const;
    const wet = { days: 9, texture: "loam", bottom: { kind: "water-table" }, programme: fed, salt } as const;
    const dry = scenarioWith({ days: 6, texture: "clay", programme: fed, rainMm, salt });
    const cracked = { ...dry, soil: { ...dry.soil, cracks: { fraction: 0.3, toDepthCm: 50 } } };
    const throughCracks = simulate(cracked, { solutes: seasonSolutes });
    const results = [run(flood), run(wet), run({ days: 4, programme: fed, rainMm, salt }, "richards"), throughCracks];
    for (const { status, solutes } of results) {
      expect(status.kind).toBe("finished");
      expect(worst(solutes?.salt?.residualFraction)).toBeLessThan(1e-9);
      if (solutes?.nitrogen) expect(worst(solutes.nitrogen.residualFraction)).toBeLessThan(1e-9);
    }
    expect(results[0].ledger.runoffCm3[0]).toBeGreaterThan(0);
    expect(results[0].solutes?.salt?.runoffG[0]).toBeGreaterThan(0);
  });

  it("are those of the day table", () => {
    const { solutes } = run({ days: 9, programme: fed, rainMm, salt });
    const sum = (name: string): number =>
      column(solutes!.days, name).values.reduce((total, value, i) => (i % 2 === 0 ? total + value : total), 0);
    expect(sum("saltWithWater")).toBeCloseTo(solutes?.salt?.withWaterG[0] ?? Number.NaN, 8);
    const given = (solutes?.nitrogen?.withWaterG[0] ?? Number.NaN) + (solutes?.nitrogen?.byHandG[0] ?? Number.NaN);
    expect(sum("nitrogenGiven")).toBeCloseTo(given, 8);
    expect(sum("nitrogenTakenUp")).toBeCloseTo(solutes?.nitrogen?.takenUpG[0] ?? Number.NaN, 8);
  });
});

describe("salt and nitrogen are asked for", () => {
  it("a scenario without them has none, and the part that moves them changes nothing", () => {
    const scenario = scenarioWith({ days: 8, rainMm });
    const plain = simulate(scenario);
    expect(plain.solutes).toBeUndefined();
    expect(simulate(scenario, { solutes: seasonSolutes })).toEqual(plain);
  });

  it("salt that no root feels leaves the water as it is, bit for bit", () => {
    const plain = simulate(scenarioWith({ days: 8, rainMm }));
    const salty = simulate(scenarioWith({ days: 8, rainMm, salt: unfelt }), { solutes: seasonSolutes });
    expect(salty.hours).toEqual(plain.hours);
    expect(salty.ledger).toEqual(plain.ledger);
    expect(salty.measures.slice(0, plain.measures.length)).toEqual(plain.measures);
  });

  it("a scenario with salt cannot run without it", () => {
    expect(() => simulate(scenarioWith({ days: 2, salt }))).toThrow(/options.solutes/);
    expect(() => simulate(scenarioWith({ days: 2, programme: fed }))).toThrow(/options.solutes/);
  });

  it("a run put back to a snapshot goes on bit-equal", () => {
    const scenario = scenarioWith({ days: 6, programme: fed, rainMm, salt });
    const options = { solutes: seasonSolutes, trees: ["mean", "under-fed"] } as const;
    const whole = simulate(scenario, options);
    const first = createSimulation(scenario, options);
    while (first.hour() < 61) first.step();
    const snapshot = JSON.parse(JSON.stringify(first.snapshot()));
    const second = createSimulation(scenario, options);
    second.restore(snapshot);
    while (second.status().kind === "running") second.step();
    expect(second.result()).toEqual(whole);
    expect(() => createSimulation(scenario, { ...options, trees: ["mean"] }).restore(snapshot)).toThrow(RangeError);
  });
});

describe("what salt does", () => {
  const taken = (
    waterEcDsPerM: number,
    response: NonNullable<Variation["salt"]>["response"],
    engine?: Scenario["engine"],
  ) => {
    const days = engine === "richards" ? 3 : 25;
    // Enough water and no compensation: what salty roots leave now would else be drawn later.
    const programme = calendar("ample", 1, 1, 150);
    const roots = { compensationOnset: 1 };
    const result = run(
      { days, programme, roots, salt: { waterEcDsPerM, startEceDsPerM: 1.5 * waterEcDsPerM, response } },
      engine,
    );
    return measure(result, "transpiration").values[0];
  };

  it.each([tolerance, { kind: "osmotic-head" } as const])(
    "saltier water never lets the tree draw more: %o",
    (response) => {
      const drawn = [0, 1, 2, 4].map((ec) => taken(ec, response));
      for (let i = 1; i < drawn.length; i++) expect(drawn[i]).toBeLessThanOrEqual(drawn[i - 1] * (1 + 1e-12));
      expect(drawn[3]).toBeLessThan(0.8 * drawn[0]);
      expect(taken(0, response)).toBe(taken(0, { kind: "none" }));
    },
  );

  it("works on the slow engine's finer cells", () => {
    expect(taken(4, tolerance, "richards")).toBeLessThan(0.9 * taken(0, tolerance, "richards"));
  });

  it("under drip the salt moves to the surface between and beyond the lines (Ayers & Westcot 1985, FAO-29, sect. 2.4)", () => {
    const { section, solutes } = run({ days: 40, salt: unfelt, programme: calendar("daily", 1, 1, 160) });
    const { lanes, laneEdgesCm, lineAtCm, rootShare } = section;
    const atLine = laneEdgesCm.findIndex((edge) => Math.abs(edge - lineAtCm[0]) < 1e-6);
    const top = Array.from({ length: lanes }, (_, j) => solutes?.cellEceDsPerM?.[j * 2] ?? Number.NaN);
    const belowLine = Array.from(
      { length: 4 },
      (_, i) => solutes?.cellEceDsPerM?.[(i * lanes + atLine) * 2] ?? Number.NaN,
    );
    expect(Math.max(...belowLine)).toBeLessThan(1.5 * 1.2);
    const rooted = top.filter((_, j) => rootShare[j] > 0);
    expect(Math.max(...rooted)).toBeGreaterThan(4 * top[atLine]);
    expect(top[0]).toBeGreaterThan(4 * top[atLine]);
  });

  it("more water holds the root zone fresher and leaches a larger fraction", () => {
    const results = [110, 160, 240].map((litres) =>
      run({ days: 30, salt: unfelt, programme: calendar("daily", 1, 1, litres) }),
    );
    const [ece, leached] = ["root-zone-ece", "leaching-fraction"].map((id) =>
      results.map((r) => measure(r, id).values[0]),
    );
    expect(ece[1]).toBeLessThan(ece[0]);
    expect(ece[2]).toBeLessThan(ece[1]);
    expect(leached[1]).toBeGreaterThan(leached[0]);
    expect(leached[2]).toBeGreaterThan(leached[1]);
  });
});

describe("what becomes of nitrogen", () => {
  it("a tree that takes at most so much a day takes no more, and what it leaves stays or leaches", () => {
    const free = run({ days: 20, programme: fed, nitrogen: { waterMgPerL: 0, startKgPerHa: 60 } });
    const held = run({
      days: 20,
      programme: fed,
      nitrogen: { waterMgPerL: 0, startKgPerHa: 60, mostUptakeGPerTreeDay: 0.5 },
    });
    const days = column(held.solutes!.days, "nitrogenTakenUp").values;
    expect(Math.max(...days)).toBeLessThanOrEqual(0.5 + 1e-9);
    expect(measure(held, "nitrogen-taken-up").values[0]).toBeLessThan(measure(free, "nitrogen-taken-up").values[0]);
    expect(measure(held, "nitrogen-left").values[0]).toBeGreaterThan(measure(free, "nitrogen-left").values[0]);
  });

  it("says when a run leaves too little clean water after the injection, or a month's amount is not given", () => {
    const notesOf = (litres: number, kgPerHaByMonth: number[]): readonly string[] => {
      const throughWater = { afterMinutes: 25, injectMinutes: 45, amount: { kgPerHaByMonth } };
      const programme: Programme = { ...calendar("one", 40, 1, litres), nitrogen: { throughWater } };
      return run({ days: 33, programme }).notes;
    };
    const december = [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 10];
    expect(notesOf(64, december)).toEqual([]);
    expect(notesOf(48, december)).toEqual([expect.stringMatching(/^20\.0 min of clean water .* 30 are usual/)]);
    expect(notesOf(64, [31, ...december.slice(1)])).toEqual([
      expect.stringMatching(/^2\.00 kg\/ha .* month 1 not given/),
    ]);
  });

  it("a dose by hand lies on dry ground until water enters", () => {
    const programme: Programme = {
      ...calendar("none before day 5", 1, 1, 100),
      nitrogen: { byHand: [{ date: "2025-12-01", gPerTree: 80, ground: "all-ground" }] },
    };
    const late: Programme = { ...programme, runs: programme.runs.map((r) => ({ ...r, firstDay: 5 })) };
    const { solutes } = run({ days: 8, programme: late, rainMm: [0, 0, 0, 0, 0, 0, 6] });
    const lying = column(solutes!.days, "nitrogenOnGround").values.filter((_, i) => i % 2 === 0);
    expect(lying.slice(0, 5).every((g) => Math.abs(g - 80) < 1e-9)).toBe(true);
    expect(lying[5]).toBeLessThan(80);
    expect(lying[5]).toBeGreaterThan(10);
    expect(lying[6]).toBeLessThan(1e-6);
  });
});
