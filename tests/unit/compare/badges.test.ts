import { simulate } from "rootledger";
import { type Arm, type Comparison, gather, scenarioOf } from "rootledger/compare";
import { expect, test } from "vitest";
import { calendar, scenarioWith } from "../../support/scenario.js";

const { soil, programme: _, ...common } = scenarioWith({ days: 4, texture: "loam" });
const comparison: Comparison = {
  ...common,
  remark: "",
  soils: [soil],
  programmes: [calendar("daily", 1, 1, 200), calendar("two pulses", 1, 2, 200)],
};

/** Both programmes, the second run as if the comparison were another one, gathered as if it were not. */
function heldWith(other: Partial<Comparison>, start: Comparison["start"] = comparison.start): Record<string, boolean> {
  const asked = { ...comparison, start };
  const arms = asked.programmes.map((programme, i): Arm => {
    const result = simulate(scenarioOf(i === 0 ? asked : { ...asked, ...other }, soil, programme));
    return { soil: soil.name, programme: programme.name, result };
  });
  return Object.fromEntries(gather(asked, arms, []).badges.map(({ id, holds }) => [id, holds]));
}

test("badges are worked out from the runs, whatever the comparison claims", () => {
  expect(heldWith({})).toEqual({ "same-water": true, "same-weather": true, "same-start": true, "one-question": true });
  const { weather } = comparison;
  const rain = { weather: { ...weather, rainMm: Float64Array.of(0, 0, 0.1, 0) } };
  expect(heldWith(rain)["same-weather"]).toBe(false);
  const et0 = { weather: { ...weather, et0Mm: Float64Array.of(6, 6, 6.01, 6) } };
  expect(heldWith(et0)["same-weather"]).toBe(false);
  const wetter = { start: { kind: "same-state", tensionKPa: 9 } } as const;
  expect(heldWith(wetter)["same-start"]).toBe(false);
});

// Four days: a run every third day comes on days 0 and 3, so two of 400 L are the water of four of 200 L, though 400 / 3 is not 200.
test("litres that are the same over the season are not called another amount, and others are", () => {
  const every3 = (litres: number): readonly string[] => {
    const programmes = [calendar("daily", 1, 1, 200), calendar("every third day", 3, 1, litres)];
    const arms = programmes.map(
      (programme): Arm => ({
        soil: soil.name,
        programme: programme.name,
        result: simulate(scenarioOf({ ...comparison, programmes }, soil, programme)),
      }),
    );
    return gather({ ...comparison, programmes }, arms, []).changes[0]!.questions;
  };
  expect(every3(400)).toEqual(["interval"]);
  expect(every3(500)).toEqual(["amount", "interval"]);
});

test("a run that was not settled breaks the badge of a comparison that asks for it", () => {
  const settled = { kind: "settled", tensionKPa: 10 } as const;
  expect(heldWith({}, settled).settled).toBe(true);
  expect(heldWith({ start: { kind: "same-state", tensionKPa: 10 } }, settled).settled).toBe(false);
});
