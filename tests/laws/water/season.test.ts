import fc from "fast-check";
import { column, createSimulation, measure, simulate } from "rootledger";
import { textureClasses } from "rootledger/ground";
import { engineOf } from "rootledger/scenario";
import { describe, expect, it } from "vitest";
import { calendar, scenarioWith, type Variation } from "../../support/scenario.js";

/** One line of ten emitters at 0.8 L/h, four of them plugged: the slowest layout below. */
const leastFlowLPerH = 4.8;

const texture = fc.constantFrom(...textureClasses);
const structure = fc.constantFrom("tight" as const, "ordinary" as const, "crumbly" as const);
const horizons = fc.oneof(
  fc.tuple(texture, structure).map(([t, s]) => [{ toCm: 100, texture: t, structure: s }]),
  fc.tuple(texture, texture, fc.integer({ min: 12, max: 70 })).map(([a, b, at]) => [
    { toCm: at, texture: a, structure: "ordinary" as const },
    { toCm: 110, texture: b, structure: "ordinary" as const },
  ]),
);
const programme = fc
  .record({
    every: fc.integer({ min: 1, max: 7 }),
    pulses: fc.integer({ min: 1, max: 6 }),
    litres: fc.integer({ min: 0, max: 400 }),
    startH: fc.integer({ min: 0, max: 23 }),
    gap: fc.integer({ min: 0, max: 120 }),
  })
  .filter(({ every, pulses, litres, gap }) => litres / leastFlowLPerH + (pulses * gap) / 60 < 24 * every)
  .map(({ every, pulses, litres, startH, gap }) => calendar("any", every, pulses, litres, startH, gap));
const variation: fc.Arbitrary<Variation> = fc.record({
  days: fc.integer({ min: 1, max: 12 }),
  horizons,
  programme,
  et0Mm: fc.double({ min: 0, max: 12, noNaN: true }),
  rainMm: fc.array(fc.constantFrom(0, 0, 0, 4, 25, 150), { minLength: 12, maxLength: 12 }),
  offsetsM: fc.constantFrom([0], [-0.5, 0.5], [-0.8, 0, 0.8], [-0.9, -0.3, 0.3, 0.9]),
  emitterFlowLPerH: fc.constantFrom(0.8, 1.6, 4),
  pluggedPerTree: fc.constantFrom(0, 0, 4),
  bottom: fc.constantFrom(
    { kind: "free-drainage" as const },
    { kind: "free-drainage" as const },
    { kind: "water-table" as const },
    { kind: "impeding" as const, conductivityMmPerH: 0.2 },
  ),
  start: fc.record({
    tensionKPa: fc.double({ min: 0.1, max: 300, noNaN: true }),
    kind: fc.constant("same-state" as const),
  }),
});

describe("laws of the season run", { timeout: 400_000 }, () => {
  it("closes the ledger, keeps theta within its bounds and root-hours whole, on any scenario", () => {
    let worst = 0;
    fc.assert(
      fc.property(variation, (v) => {
        const days = v.days ?? 1;
        const result = simulate(scenarioWith(v), {
          cells: { fromHour: 0, hours: days * 24 },
          trees: ["under-fed", "mean"],
        });
        expect(result.status.kind).toBe("finished");
        result.ledger.residualFraction.forEach((fraction) => {
          worst = Math.max(worst, Math.abs(fraction));
          expect(Math.abs(fraction)).toBeLessThanOrEqual(1e-9);
        });
        const { thetaResidual, thetaSaturated } = result.section;
        const theta = result.cells?.theta ?? new Float64Array();
        const cells = thetaSaturated.length;
        expect(theta.length).toBe(days * 24 * cells);
        for (let k = 0; k < theta.length; k++) {
          const c = k % cells;
          if (!(theta[k] >= thetaResidual[c] && theta[k] <= thetaSaturated[c])) {
            expect.fail(`theta ${theta[k]} of cell ${c} is outside ${thetaResidual[c]} to ${thetaSaturated[c]}`);
          }
        }
        for (const table of [result.days, result.hours]) {
          for (const { name, values } of table.columns) {
            if (!values.every(Number.isFinite)) expect.fail(`column ${name} has a value that is not finite`);
          }
        }
        for (const { id, values } of result.measures) {
          if (!values.every(Number.isFinite)) expect.fail(`measure ${id} is not finite`);
        }
        result.trees.forEach((_, t) => {
          const sum = ["thirsty", "fine", "airless"].reduce((total, id) => total + measure(result, id).values[t], 0);
          expect(sum).toBeCloseTo(days * 24, 6);
          expect(measure(result, "transpiration-ratio").values[t]).toBeLessThanOrEqual(1 + 1e-9);
        });
      }),
      { numRuns: 120, seed: 20261125 },
    );
    console.log(
      `largest ledger residual over 120 random scenarios: ${worst.toExponential(1)} of start storage and inflow`,
    );
  });

  it("is bit-equal after a restart from a snapshot at any hour", () => {
    fc.assert(
      fc.property(variation, fc.double({ min: 0, max: 1, noNaN: true }), (v, part) => {
        const scenario = scenarioWith(v);
        const whole = simulate(scenario);
        const first = createSimulation(scenario);
        const stop = Math.floor(part * scenario.season.days * 24);
        for (let hour = 0; hour < stop; hour++) first.step();
        const snapshot = JSON.parse(JSON.stringify(first.snapshot()));
        const second = createSimulation(scenario);
        second.restore(snapshot);
        while (second.status().kind === "running") second.step();
        const resumed = second.result();
        whole.days.columns.forEach(({ name, values }) => {
          expect(column(resumed.days, name).values).toEqual(values);
        });
        expect(resumed.ledger).toEqual(whole.ledger);
      }),
      { numRuns: 25, seed: 7 },
    );
  });

  it("is bit-equal after a restart with the slow engine too", () => {
    const scenario = { ...scenarioWith({ days: 2, texture: "clay loam" }), engine: "richards" as const };
    const options = { engine: engineOf(scenario) };
    const whole = simulate(scenario, options);
    const first = createSimulation(scenario, options);
    for (let hour = 0; hour < 20; hour++) first.step();
    const snapshot = JSON.parse(JSON.stringify(first.snapshot()));
    const second = createSimulation(scenario, options);
    second.restore(snapshot);
    while (second.status().kind === "running") second.step();
    expect(second.result().ledger).toEqual(whole.ledger);
    expect(() => simulate(scenario)).toThrow(/requires options.engine/);
    expect(whole.engine).toBe("richards");
    expect(Math.abs(whole.ledger.residualFraction[0])).toBeLessThan(1e-6);
  });

  it("ends as failed, with what it has, when an engine finds no balance", () => {
    const result = simulate(scenarioWith({ days: 2 }), {
      engine: () => ({
        name: "richards",
        advance: (state, _forcing, untilH) => {
          if (untilH > 5) throw new RangeError("no balance at 5 h");
          state.timeH = untilH;
        },
      }),
    });
    expect(result.status).toEqual({ kind: "failed", hour: 5, message: "no balance at 5 h" });
    const settling = simulate(scenarioWith({ days: 8, start: { kind: "settled", tensionKPa: 10 } }), {
      engine: () => ({
        name: "richards",
        advance: () => {
          throw new RangeError("no balance");
        },
      }),
    });
    expect(settling.status).toEqual({ kind: "failed", hour: 0, message: "no balance" });
  });

  it("says that the slow engine leaves cracks out", () => {
    const scenario = scenarioWith({ days: 1 });
    const cracked = { ...scenario, soil: { ...scenario.soil, cracks: { fraction: 0.3, toDepthCm: 50 } } };
    expect(simulate(cracked).notes.join()).not.toMatch(/cracks/);
    const slow = { ...cracked, engine: "richards" } as const;
    expect(simulate(slow, { engine: engineOf(slow) }).notes.join()).toMatch(/cracks are left out/);
  });

  it("gives one answer for lines named from either side of the row", () => {
    const one = simulate(scenarioWith({ offsetsM: [-0.7, -0.2, 0.2, 0.7] }));
    const other = simulate(scenarioWith({ offsetsM: [0.7, 0.2, -0.2, -0.7] }));
    expect(other.ledger).toEqual(one.ledger);
    expect(other.days.columns.map((c) => c.values)).toEqual(one.days.columns.map((c) => c.values));
  });

  it("gives the soil nothing and takes nothing from it when nothing acts", () => {
    const still = simulate(scenarioWith({ et0Mm: 0, programme: { name: "none", runs: [] } }));
    expect(still.ledger.emitterCm3[0]).toBe(0);
    expect(still.ledger.transpirationCm3[0]).toBe(0);
    expect(still.ledger.evaporationCm3[0]).toBe(0);
  });

  it("splits a dose without changing the litres", () => {
    const litres = [1, 2, 3, 4, 8].map(
      (pulses) => simulate(scenarioWith({ programme: calendar("p", 1, pulses, 110, 1) })).ledger.emitterCm3[0],
    );
    for (const total of litres) expect(total / litres[0]).toBeCloseTo(1, 9);
  });

  it("never makes more thirst or less lack of air out of more water, without compensation", () => {
    for (const soil of ["sand", "loam", "clay loam", "clay"] as const) {
      let thirsty = Number.POSITIVE_INFINITY;
      let airless = -1;
      for (const litres of [40, 80, 120, 160, 240]) {
        const result = simulate(
          scenarioWith({ texture: soil, programme: calendar("p", 1, 1, litres), roots: { compensationOnset: 1 } }),
        );
        const nowThirsty = measure(result, "thirsty").values[0];
        const nowAirless = measure(result, "airless").values[0];
        expect(nowThirsty, `${soil} ${litres} L thirsty`).toBeLessThanOrEqual(thirsty + 1e-6);
        expect(nowAirless, `${soil} ${litres} L airless`).toBeGreaterThanOrEqual(airless - 1e-6);
        thirsty = nowThirsty;
        airless = nowAirless;
      }
    }
  });
});
