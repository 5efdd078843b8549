import { createSimulation, simulate } from "rootledger";
import { startWindow } from "rootledger/advise";
import { column } from "rootledger/water";
import { describe, expect, it } from "vitest";
import { calendar, scenarioWith } from "../../support/scenario.js";

/** One long run on the first morning, then eight days of forecast. */
const after = (texture: "sand" | "clay loam" | "clay", et0Mm = 6) => {
  const scenario = scenarioWith({
    texture,
    days: 10,
    et0Mm,
    programme: calendar("weekly", 30, 1, 900),
    roots: { lateral: { kind: "along-lines", halfWidthCm: 40 } },
  });
  const simulation = createSimulation(scenario);
  while (simulation.hour() < 36) simulation.step();
  return { scenario, snapshot: simulation.snapshot() };
};

describe("when to start again", () => {
  it("waits for air on clay, not on sand; thirst comes later than air", () => {
    const sand = after("sand");
    const clay = after("clay loam");
    const onSand = startWindow(sand.scenario, { from: sand.snapshot });
    const onClay = startWindow(clay.scenario, { from: clay.snapshot });
    expect(onSand.airBackH).toBe(0);
    expect(onClay.airBackH).toBeGreaterThan(0);
    expect(onClay.safe).toEqual({ fromH: onClay.airBackH, toH: onClay.thirstH ?? onClay.hours });
    expect(onClay.hours).toBe(10 * 24 - 36);
    expect(onSand.thirstH ?? onSand.hours).toBeLessThan(onClay.thirstH ?? onClay.hours);
  });

  it("is what a run without watering shows, hour by hour", () => {
    const { scenario, snapshot } = after("clay");
    const found = startWindow(scenario, { from: snapshot });
    // The programme has no run left after the first morning, so going on with it is the same.
    const whole = simulate(scenario);
    expect(found.airlessShare).toEqual(column(whole.hours, "airlessShare").values.slice(36));
    expect(found.thirstyShare).toEqual(column(whole.hours, "thirstyShare").values.slice(36));
    const airBackH = found.airBackH ?? Number.POSITIVE_INFINITY;
    expect(found.airlessShare.slice(airBackH).every((share) => share < 0.25)).toBe(true);
    if (airBackH > 0) expect(found.airlessShare[airBackH - 1]).toBeGreaterThanOrEqual(0.25);
  });

  it("brings thirst sooner in hotter weather", () => {
    const [cool, hot] = [3, 8].map((et0Mm) => {
      const { scenario, snapshot } = after("sand", et0Mm);
      return startWindow(scenario, { from: snapshot }).thirstH ?? Number.POSITIVE_INFINITY;
    });
    expect(hot!).toBeLessThan(cool!);
  });

  it("starts from the scenario's own start when no state is given, and refuses nonsense", () => {
    const scenario = scenarioWith({ texture: "loam", days: 3, start: { tensionKPa: 1, kind: "settled" } });
    expect(startWindow(scenario).hours).toBe(72);
    expect(startWindow(scenario).airBackH).toBeGreaterThan(0);
    expect(() => startWindow(scenario, { rootShare: 0 })).toThrow(/rootShare/);
    expect(() => startWindow(scenario, { tree: "under-fed" })).toThrow(/among mean/);
  });
});
