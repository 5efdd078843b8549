import { type TextureClass, textureClasses, textureClassOf } from "rootledger/ground";
import { describe, expect, test } from "vitest";
import { expectWithin } from "./near.js";
import { soilChecks } from "./soil-data.js";

describe("USDA texture classes", () => {
  test.each(soilChecks("texture"))("%s", (_, { inputs, expected }) => {
    const { sandPercent, clayPercent } = inputs;
    expect(textureClassOf({ sandFraction: sandPercent / 100, clayFraction: clayPercent / 100 })).toBe(expected.class);
  });

  test.each(soilChecks("texture-area"))("%s", (_, { expected, tolerance }) => {
    const counts = new Map<TextureClass, number>(textureClasses.map((name) => [name, 0]));
    let points = 0;
    for (let sand = 0; sand <= 1000; sand++) {
      for (let clay = 0; clay <= 1000 - sand; clay++) {
        const name = textureClassOf({ sandFraction: sand / 1000, clayFraction: clay / 1000 });
        counts.set(name, (counts.get(name) ?? Number.NaN) + 1);
        points++;
      }
    }
    // Every point of the 0.1 % grid has exactly one class: 501 501 points, all counted.
    expect(points).toBe(501501);
    expect([...counts.values()].reduce((sum, count) => sum + count, 0)).toBe(points);
    for (const [name, percent] of Object.entries(expected)) {
      const ours = (100 * (counts.get(name as TextureClass) ?? Number.NaN)) / points;
      expectWithin(ours, percent as number, tolerance, name);
    }
  });
});
