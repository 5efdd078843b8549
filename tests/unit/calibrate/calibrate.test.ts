import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { sensorTraces } from "rootledger/advise";
import { calibrate, dampedLeastSquares, type MoistureReading } from "rootledger/calibrate";
import { defaultPriors, editComparison, type Prior, type UnknownId } from "rootledger/chance";
import type { Scenario } from "rootledger/scenario";
import { expect, test } from "vitest";
import { chanceStream } from "../../../packages/rootledger/src/numeric/chance-stream.js";
import { calendar, scenarioWith } from "../../support/scenario.js";

const leastSquares = dampedLeastSquares(levenbergMarquardt);
const days = 40;
const scenario = scenarioWith({ days, texture: "clay loam", programme: calendar("every third day", 3, 1, 260) });
const priors = defaultPriors({ block: scenario.block, soils: [scenario.soil] }).unknowns;
const named = (...ids: UnknownId[]): Prior[] => priors.filter(({ id }) => ids.includes(id));
const places = [
  { depthCm: 15, fromLineCm: 10 },
  { depthCm: 50, fromLineCm: 10 },
];

const truth = { "k-sat": 0.6, kcb: 1.12 };

function trueScenario(): Scenario {
  const { soil, programme, ...common } = scenario;
  const draw = { member: 0, ids: ["k-sat", "kcb"] as const, values: Float64Array.of(truth["k-sat"], truth.kcb) };
  const edited = editComparison({ ...common, remark: "", soils: [soil], programmes: [programme] }, draw);
  const [own] = edited.soils;
  if (own === undefined) throw new Error("trueScenario requires a soil");
  return { ...scenario, block: edited.block, soil: own };
}

/** What probes would read of a known truth, twice a day, with noise of 0.01. */
const readings: readonly MoistureReading[] = (() => {
  const traces = sensorTraces(trueScenario(), { places, fromHour: 0, hours: days * 24 });
  const { normal } = chanceStream(5, 0, "probe");
  return traces.flatMap(({ place, theta }) =>
    Array.from({ length: days * 2 }, (_, k) => {
      const hour = 12 * k + 6;
      return { ...place, hour, theta: (theta[hour - 1] ?? 0) + 0.01 * normal() };
    }),
  );
})();

const found = calibrate(scenario, readings, named("k-sat", "kcb"), { leastSquares, blockDays: 5, noiseTheta: 0.01 });

test("finds the truth that the readings were made with, inside its intervals", () => {
  for (const { id, value, low, high, priorLow, priorHigh, atBound } of found.unknowns) {
    const is = id === "kcb" ? truth.kcb : truth["k-sat"];
    expect(low).toBeLessThan(is);
    expect(high).toBeGreaterThan(is);
    expect(value).toBeGreaterThan(low);
    expect(value).toBeLessThan(high);
    expect(high - low).toBeLessThan(0.5 * (priorHigh - priorLow));
    expect(atBound).toBe(false);
  }
});

test("scores blocks it has not seen, better than before the fit", () => {
  expect(found.train.all.count + (found.test?.all.count ?? 0)).toBe(readings.length);
  expect(found.test?.all.rmse).toBeLessThan(0.012);
  expect(found.test?.all.rmse).toBeLessThan(found.before.test?.all.rmse ?? 0);
  expect(found.test?.byPlace.map(({ depthCm }) => depthCm)).toEqual([15, 50]);
  expect(found.noise).toBeGreaterThan(0.007);
  expect(found.noise).toBeLessThan(0.013);
});

test("never looks at a test block", () => {
  const spoilt = readings.map((reading) =>
    Math.floor(Math.floor((reading.hour - 1) / 24) / 5) % 2 === 0 ? reading : { ...reading, theta: 0.11 },
  );
  const again = calibrate(scenario, spoilt, named("k-sat", "kcb"), { leastSquares, blockDays: 5, noiseTheta: 0.01 });
  expect(again.unknowns).toEqual(found.unknowns);
  expect(again.test?.all.rmse).toBeGreaterThan(0.05);
});

const one: MoistureReading = { hour: 30, depthCm: 20, fromLineCm: 10, theta: 0.3 };
test.each([
  [[], named("kcb"), /requires readings/],
  [[one], [], /requires an unknown/],
  [[one], named("structure"), /move continuously: got structure/],
  [[one], [...named("kcb"), ...named("kcb")], /each unknown once: got kcb/],
  [[one, { ...one, hour: 30.2 }], named("kcb"), /one reading an hour/],
  [[{ ...one, hour: 24 * days + 1 }], named("kcb"), /within the season/],
  [[{ ...one, theta: 30 }], named("kcb"), /theta between 0 and 1/],
  [[{ ...one, depthCm: 900 }], named("kcb"), /place down to/],
  [[{ ...one, hour: 6 * 24 }], named("kcb"), /in a train block/],
])("refuses what cannot be fitted: %#", (records, unknowns, rule) => {
  expect(() => calibrate(scenario, records, unknowns, { leastSquares, blockDays: 5 })).toThrow(rule);
});
