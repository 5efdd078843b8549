import { simulate } from "rootledger";
import { floorOf } from "rootledger/compare";
import { classSet } from "rootledger/ground";
import { expect, it } from "vitest";
import { engineErrors } from "../../../packages/rootledger/src/compare/engine-errors.js";
import { scenarioWith, type Variation } from "../../support/scenario.js";

type Horizon = NonNullable<Variation["horizons"]>[number];

const airlessFloor = (horizon: Horizon, questions: readonly ("pulses" | "interval")[]) => {
  const scenario = scenarioWith({ horizons: [horizon], days: 2 });
  return floorOf("airless", simulate(scenario), scenario.soil, questions, 0);
};

it.each<[string, Horizon]>([
  ["another set", { toCm: 100, texture: "clay", classSet: classSet("carsel-parrish-1988", "clay")! }],
  ["stones", { toCm: 100, texture: "clay", stonesFraction: 0.2 }],
  ["particles", { toCm: 100, particles: { sandFraction: 0.3, clayFraction: 0.4, organicMatterFraction: 0.02 } }],
  [
    "measured limits",
    { toCm: 100, texture: "loam", limits: { fieldCapacity: 0.28, fieldCapacityTensionKPa: 10, wiltingPoint: 0.12 } },
  ],
])("a soil that the fast engine was not tried on (%s) gets the largest error of any group", (_, horizon) => {
  for (const kind of ["pulses", "interval"] as const) {
    const largest = Math.max(...Object.values(engineErrors).map((group) => group[kind].airlessTime));
    const { size, basis } = airlessFloor(horizon, [kind]);
    expect(size).toBeCloseTo(48 * largest, 9);
    expect(basis).toBe("engine-any");
  }
});

it("a default class gets its own group's", () => {
  const { size, basis } = airlessFloor({ toCm: 100, texture: "clay", structure: "ordinary" }, ["pulses"]);
  expect(size).toBeCloseTo(48 * engineErrors.fine.pulses.airlessTime, 9);
  expect(basis).toBe("engine-fine");
});
