import fc from "fast-check";
import { simulate } from "rootledger";
import {
  gasDiffusivityRatio,
  type OxygenCells,
  oxygenDefaults,
  oxygenInAirCm2PerH,
  oxygenInAirGPerM3,
  oxygenModel,
  oxygenOfRun,
  steadyOxygenAt,
} from "rootledger/water";
import { describe, expect, it } from "vitest";
import { calendar, scenarioWith } from "../../support/scenario.js";

const porosity = 0.45;

/** `layers` of 1 cm by `lanes` of 10 cm, one cm of row. */
function cellsOf(layers: number, lanes: number, thicknessCm = 1): OxygenCells {
  return {
    layers,
    lanes,
    thicknessCm: new Float64Array(layers).fill(thicknessCm),
    laneAreaCm2: new Float64Array(lanes).fill(10),
    volumeCm3: new Float64Array(layers * lanes).fill(10 * thicknessCm),
    sideLengthCm: new Float64Array(lanes).fill(1),
    laneDistanceCm: new Float64Array(lanes).fill(10),
    porosity: new Float64Array(layers * lanes).fill(porosity),
  };
}

describe("transient oxygen", () => {
  // Cook (1995); Cook & Knight (2003), SSSAJ 67:20: steady oxygen under a demand that falls off with depth. The closed form has no
  // diffusion through water and use that does not slow down, so the column has almost dry half-use; 1 % is its cells' error.
  it.each([
    [0.12, 5],
    [0.2, 5],
    [0.15, 10],
  ])("comes to the published steady state in a column: air %s, demand %s g/m2/d", (airFilled, demandGPerM2Day) => {
    const layers = 150;
    const cells = cellsOf(layers, 1);
    const decayCm = 15;
    // Cook's S0 is the demand at the surface: the areal one over the decay depth.
    const atSurfaceGPerCm3H = demandGPerM2Day / 24 / 1e4 / decayCm;
    const demandGPerH = Float64Array.from(
      { length: layers },
      (_, i) => atSurfaceGPerCm3H * decayCm * (Math.exp(-i / decayCm) - Math.exp(-(i + 1) / decayCm)) * 10,
    );
    const theta = new Float64Array(layers).fill(porosity - airFilled);
    const setup = { cells, demandGPerH, temperatureC: 25, law: "millington-quirk", halfUseGPerM3: 0.01 } as const;
    const model = oxygenModel(setup, theta);
    for (let hour = 0; hour < 24 * 200; hour += 24) model.advance(theta, 24);
    const surface = oxygenInAirGPerM3(25);
    const soil = {
      diffusivity: oxygenInAirCm2PerH(25) * gasDiffusivityRatio("millington-quirk", airFilled, porosity),
      surface,
      demand: atSurfaceGPerCm3H * 1e6,
      decay: decayCm,
    };
    for (const depth of [0.5, 4.5, 9.5, 19.5, 39.5, 79.5]) {
      const ours = model.gPerM3[Math.floor(depth)]!;
      expect(Math.abs(ours - steadyOxygenAt(soil, depth)) / surface, `at ${depth} cm`).toBeLessThan(0.01);
    }
  });

  it("runs out in the soil that the steady state calls without oxygen", () => {
    const layers = 60;
    const demandGPerH = new Float64Array(layers).fill((10 / 24 / 1e4 / 60) * 10);
    const theta = new Float64Array(layers).fill(porosity - 0.04);
    const setup = { cells: cellsOf(layers, 1), demandGPerH, temperatureC: 25, halfUseGPerM3: 0.1 };
    const model = oxygenModel({ ...setup, law: "millington-quirk" }, theta);
    for (let hour = 0; hour < 240; hour++) model.advance(theta, 1);
    expect(model.gPerM3[59]).toBeLessThan(0.01 * model.atmosphereGPerM3);
    // Moldrup's law lets more through: oxygen is deeper.
    const other = oxygenModel({ ...setup, law: "moldrup" }, theta);
    for (let hour = 0; hour < 240; hour++) other.advance(theta, 1);
    for (let i = 0; i < layers; i++) expect(other.gPerM3[i]).toBeGreaterThanOrEqual(model.gPerM3[i]! - 1e-9);
  });

  it("comes from the side: a wet lane beside a drier one keeps more than alone", () => {
    const layers = 40;
    const wet = porosity - 0.04;
    const dry = porosity - 0.25;
    const run = (lanes: number, thetaOf: (lane: number) => number): number => {
      const cells = cellsOf(layers, lanes);
      const theta = Float64Array.from({ length: layers * lanes }, (_, c) => thetaOf(c % lanes));
      const demandGPerH = new Float64Array(layers * lanes).fill((5 / 24 / 1e4 / layers) * 10);
      const setup = { cells, demandGPerH, temperatureC: 20, law: "millington-quirk", halfUseGPerM3: 1 } as const;
      const model = oxygenModel(setup, theta);
      for (let hour = 0; hour < 100; hour++) model.advance(theta, 1);
      return model.gPerM3[20 * lanes]!;
    };
    expect(run(2, (lane) => (lane === 0 ? wet : dry))).toBeGreaterThan(3 * run(1, () => wet));
  });

  it("stores exactly what came in less what was used, whatever the water does", () => {
    const layers = 6;
    const lanes = 4;
    const count = layers * lanes;
    const anyTheta = fc.array(fc.double({ min: 0.05, max: porosity, noNaN: true }), {
      minLength: count,
      maxLength: count,
    });
    fc.assert(
      fc.property(fc.array(anyTheta, { minLength: 2, maxLength: 8 }), fc.constantFrom(0.25, 1, 24), (states, hours) => {
        const setup = {
          cells: cellsOf(layers, lanes, 10),
          demandGPerH: new Float64Array(count).fill(2e-4),
          temperatureC: 20,
          law: "millington-quirk",
          halfUseGPerM3: 3,
        } as const;
        const model = oxygenModel(setup, states[0]!);
        const start = model.storedG();
        for (const theta of states.slice(1)) {
          model.advance(theta, hours);
          for (const here of model.gPerM3) {
            expect(here).toBeGreaterThanOrEqual(0);
            expect(here).toBeLessThanOrEqual(model.atmosphereGPerM3 * (1 + 1e-9));
          }
        }
        const { diffusedG, withAirG, withWaterG, usedG } = model.sums;
        const residual = start + diffusedG + withAirG + withWaterG - usedG - model.storedG();
        expect(Math.abs(residual)).toBeLessThan(1e-9 * (start + Math.abs(diffusedG) + usedG));
      }),
      { numRuns: 60 },
    );
  });

  it("refuses water beyond the pores and steps of no length", () => {
    const setup = { cells: cellsOf(2, 1), demandGPerH: new Float64Array(2), temperatureC: 20, halfUseGPerM3: 1 };
    const model = oxygenModel({ ...setup, law: "moldrup" }, [0.3, 0.3]);
    expect(() => model.advance([0.3, 0.5], 1)).toThrow(/theta from 0 to the porosity 0.45: got 0.5 in cell 1/);
    expect(() => model.advance([0.3, 0.3], 0)).toThrow(/steps above 0/);
  });
});

describe("oxygen over a run", () => {
  const runOf = (texture: "sand" | "clay", everyDays: number, litres: number) =>
    simulate(scenarioWith({ texture, days: 14, programme: calendar("any", everyDays, 1, litres) }), {
      cells: { fromHour: 0, hours: 336 },
    });

  it("lacks in wet clay and not in sand, keeps its books and stays within the atmosphere's", () => {
    const clay = oxygenOfRun(runOf("clay", 1, 250));
    const sand = oxygenOfRun(runOf("sand", 1, 250));
    expect(sand.lackingRootH).toBe(0);
    expect(clay.lackingRootH).toBeGreaterThan(20);
    for (const { balance, fraction } of [clay, sand]) {
      expect(Math.abs(balance.residualG)).toBeLessThan(1e-9 * balance.usedG);
      for (const here of fraction) if (!(here >= 0 && here <= 0.2096)) throw new Error(`oxygen of ${here}`);
    }
  });

  it("lacks more where it is warmer, where more is used, and by the law that lets less through", () => {
    const result = runOf("clay", 1, 200);
    const lacking = (options: object) => oxygenOfRun(result, options).lackingRootH;
    const usual = lacking({});
    expect(lacking({ temperatureC: 30 })).toBeGreaterThan(usual);
    expect(lacking({ demandGPerM2Day: 2 * oxygenDefaults.demandGPerM2Day })).toBeGreaterThan(usual);
    expect(lacking({ law: "moldrup" })).toBeLessThan(usual);
  });

  it("refuses a run that kept no cells", () => {
    expect(() => oxygenOfRun(simulate(scenarioWith({ days: 1 })))).toThrow(/kept its cells/);
    expect(() => oxygenOfRun(runOf("clay", 1, 100), { limitFraction: 0.5 })).toThrow(/limitFraction/);
  });
});
