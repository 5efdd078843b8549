import fc from "fast-check";
import { createSimulation } from "rootledger";
import { engineOf } from "rootledger/scenario";
import { type StepForcing, type StepState, stepModel } from "rootledger/steps";
import { expect, test } from "vitest";
import { scenarioWith } from "../../support/scenario.js";

const forcing: fc.Arbitrary<StepForcing> = fc.record(
  {
    emitterLPerH: fc.constantFrom(0, 0, 32),
    rainMmPerH: fc.constantFrom(0, 0, 0, 3, 15),
    transpirationMmPerH: fc.double({ min: 0, max: 0.9, noNaN: true }),
    evaporationMmPerH: fc.double({ min: 0, max: 0.7, noNaN: true }),
  },
  { requiredKeys: [] },
);
const dtH = fc.oneof(fc.constantFrom(1 / 60, 5 / 60, 0.5, 1, 3, 24), fc.double({ min: 1 / 60, max: 24, noNaN: true }));
const texture = fc.constantFrom("sand" as const, "loam" as const, "clay loam" as const, "clay" as const);
const loop = fc.array(fc.tuple(forcing, dtH), { minLength: 1, maxLength: 30 });

test("any steps from a minute to a day: restarted from JSON after any of them, the run is bit-equal and the books close", () => {
  let worst = 0;
  fc.assert(
    fc.property(texture, loop, fc.nat(), (soil, steps, at) => {
      const model = stepModel(scenarioWith({ texture: soil }));
      const carry = (from: StepState, [f, h]: (typeof steps)[number]): StepState => model.step(from, f, h).state;
      const whole = steps.reduce(carry, model.initial());
      const cut = at % (steps.length + 1);
      const half = steps.slice(0, cut).reduce(carry, model.initial());
      const kept: StepState = JSON.parse(JSON.stringify(half));
      const afresh = stepModel(scenarioWith({ texture: soil }));
      const resumed = steps.slice(cut).reduce((s, [f, h]) => afresh.step(s, f, h).state, kept);
      expect(resumed).toEqual(whole);
      const { startCm3, emitterCm3, rainCm3, residualCm3 } = whole.book;
      worst = Math.max(worst, Math.abs(residualCm3) / (startCm3 + emitterCm3 + rainCm3));
      expect(Math.abs(residualCm3)).toBeLessThanOrEqual(1e-9 * (startCm3 + emitterCm3 + rainCm3));
    }),
    { numRuns: 60, seed: 20261125 },
  );
  console.log(`own loop: largest residual ${worst.toExponential(1)} of start storage and inflow`);
});

test("a step leaves the state it was given as it was", () => {
  const model = stepModel(scenarioWith());
  const from = model.initial();
  const before = JSON.stringify(from);
  const { state, fluxes } = model.step(from, { emitterLPerH: 32, transpirationMmPerH: 0.4 }, 1);
  expect(JSON.stringify(from)).toBe(before);
  expect(state.timeH).toBe(1);
  expect(fluxes.emitterCm3).toBeCloseTo(32_000, 6);
  expect(model.step(from, { emitterLPerH: 32, transpirationMmPerH: 0.4 }, 1).state).toEqual(state);
});

test("a state of the season run is where a loop of one's own may begin; a water content that no soil has is refused", () => {
  const scenario = scenarioWith({ days: 1 });
  const run = createSimulation(scenario);
  for (let hour = 0; hour < 9; hour++) run.step();
  const theta = run.trees()[0]?.state.theta ?? new Float64Array();
  const model = stepModel(scenario);
  expect(model.initial(theta).water.theta).toEqual(Array.from(theta));
  expect(() => model.initial(theta.slice(1))).toThrow(/requires theta of \d+ cells/);
  expect(() => model.initial(theta.map((value, c) => (c === 5 ? 0.9 : value)))).toThrow(/in cell 5: got 0\.9/);
  expect(() => model.initial(theta.map((value, c) => (c === 5 ? Number.NaN : value)))).toThrow(/in cell 5: got NaN/);
});

test("the slow engine steps too, bit-equal after JSON with its own finer cells", () => {
  const scenario = { ...scenarioWith({ texture: "clay loam" }), engine: "richards" as const };
  const model = stepModel(scenario, { engine: engineOf(scenario) });
  const first = model.step(model.initial(), { emitterLPerH: 32, transpirationMmPerH: 0.3 }, 0.25).state;
  const kept: StepState = JSON.parse(JSON.stringify(first));
  const dry: StepForcing = { transpirationMmPerH: 0.3 };
  expect(stepModel(scenario, { engine: engineOf(scenario) }).step(kept, dry, 0.5).state).toEqual(
    model.step(first, dry, 0.5).state,
  );
});
