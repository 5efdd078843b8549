import { simulate } from "rootledger";
import {
  fitReadings,
  judgeReadings,
  pitAnswer,
  type Reading,
  sensorSites,
  sensorTraces,
  sensorTwin,
  type TwinDraws,
} from "rootledger/advise";
import { defaultPriors } from "rootledger/chance";
import { defaultSoilCurve } from "rootledger/ground";
import { kSatFromPondCmPerH, stripPondHalfWidthCm, woodingPondRadiusCm } from "rootledger/lines";
import { sensorCell } from "rootledger/programme";
import type { Scenario } from "rootledger/scenario";
import { describe, expect, test } from "vitest";
import { calendar, scenarioWith } from "../../support/scenario.js";

const scenario = scenarioWith({ texture: "clay loam", days: 8, programme: calendar("daily", 1, 1, 110) });
const places = [
  { depthCm: 20, fromLineCm: 10 },
  { depthCm: 50, fromLineCm: 10 },
];
const window = { places, fromHour: 72, hours: 96 };
const only = (s: Scenario, ids: readonly string[], members: number, seed = 1): TwinDraws => {
  const { unknowns } = defaultPriors({ block: s.block, soils: [s.soil] });
  return {
    source: {
      kind: "priors",
      priors: { unknowns: unknowns.filter(({ id }) => ids.includes(id)), correlations: [] },
      seed,
    },
    members,
  };
};

describe("the sensor twin", () => {
  test("reads the cell that the place lies in", () => {
    const { section, cells } = simulate(scenario, { cells: { fromHour: 72, hours: 96 } });
    const [shallow] = sensorTraces(scenario, window);
    const cell = sensorCell(section, section.lineAtCm[0]!, places[0]!);
    const count = section.layers * section.lanes;
    expect(section.layerEdgesCm[Math.floor(cell / section.lanes)]).toBeLessThanOrEqual(20);
    shallow!.theta.forEach((theta, h) => {
      expect(theta).toBe(cells!.theta[h * count + cell]);
    });
    const curve = defaultSoilCurve("clay loam");
    shallow!.tensionKPa.forEach((kPa, h) => {
      expect(curve.thetaAt(-10.2 * kPa)).toBeCloseTo(shallow!.theta[h]!, 4);
    });
  });

  test("refuses places outside the ground and hours outside the season", () => {
    expect(() => sensorTraces(scenario, { ...window, places: [{ depthCm: 120, fromLineCm: 0 }] })).toThrow(
      /a place down to 100 cm/,
    );
    expect(() => sensorTraces(scenario, { ...window, hours: 500 })).toThrow(/season/);
  });

  test("has a band that holds its middle, wider with more unknowns, the same for the same seed", () => {
    const few = sensorTwin(scenario, window, only(scenario, ["k-sat"], 6));
    const again = sensorTwin(scenario, window, only(scenario, ["k-sat"], 6));
    expect(again).toEqual(few);
    const many = sensorTwin(scenario, window, only(scenario, ["k-sat", "kcb", "root-depth", "structure"], 6));
    const width = ({ sensors }: typeof few) =>
      sensors[0]!.highKPa.reduce((sum, high, h) => sum + high - sensors[0]!.lowKPa[h]!, 0);
    expect(width(many)).toBeGreaterThan(width(few));
    for (const { lowKPa, medianKPa, highKPa } of few.sensors) {
      medianKPa.forEach((middle, h) => {
        expect(lowKPa[h]).toBeLessThanOrEqual(middle);
        expect(middle).toBeLessThanOrEqual(highKPa[h]!);
      });
    }
  });
});

describe("readings", () => {
  const twin = { fromHour: 72, sensors: sensorTwin(scenario, window, only(scenario, ["k-sat", "kcb"], 10)).sensors };
  const at = (hour: number, depthCm: number, tensionKPa: number): Reading => ({
    hour,
    depthCm,
    fromLineCm: 10,
    tensionKPa,
  });

  test("speak for the drowned case or the dry one by the tree's two limits", () => {
    // Clay regained its oxygen above about 5 kPa (one clay under avocado); avocado draws little beyond 20 kPa.
    const wet = judgeReadings(scenario, [at(79, 20, 2), at(103, 20, 3), at(103, 50, 3)], twin);
    expect(wet.counts).toEqual({ thirsty: 0, fine: 0, airless: 3 });
    const dry = judgeReadings(scenario, [at(79, 20, 45), at(79, 50, 90), at(80, 20, 12)], twin);
    expect(dry.counts).toEqual({ thirsty: 2, fine: 1, airless: 0 });
    expect(dry.readings.map(({ outOfRange }) => outOfRange)).toEqual([false, true, false]);
  });

  test("agree with the twin they were taken from and not with another", () => {
    const own = twin.sensors[0]!.medianKPa;
    const verdict = judgeReadings(scenario, [at(80, 20, own[8]!), at(100, 20, own[28]!), at(100, 20, 79)], twin);
    expect([verdict.inside, verdict.outside]).toEqual([2, 1]);
    expect(judgeReadings(scenario, [at(80, 35, 5)], twin).readings[0]?.agrees).toBeUndefined();
    expect(() => judgeReadings(scenario, [at(80, 20, Number.NaN)], twin)).toThrow(RangeError);
  });

  test("find again the coefficient they were made with, within three of their own deviations", () => {
    const sand = scenarioWith({ texture: "sandy loam", days: 8, programme: calendar("daily", 1, 1, 70) });
    const draws = only(sand, ["kcb", "pull-limit"], 30, 4);
    for (const factor of [0.85, 1.15]) {
      const { tree } = sand.block;
      const truth = {
        ...sand,
        block: { ...sand.block, tree: { ...tree, kcb: tree.kcb.map((k) => ({ ...k, kcb: k.kcb * factor })) } },
      };
      const [trace] = sensorTraces(truth, { places: [places[0]!], fromHour: 0, hours: 190 });
      const readings = [60, 100, 148, 172, 186].map((hour) => at(hour, 20, trace!.tensionKPa[hour]!));
      const fit = fitReadings(sand, readings, draws, { spread: 0.1 });
      const kcb = fit.unknowns.find(({ id }) => id === "kcb")!;
      expect(kcb.after.deviation).toBeLessThan(kcb.before.deviation);
      expect(Math.abs(kcb.after.mean - factor)).toBeLessThan(3 * kcb.after.deviation);
      expect(fit.effectiveDraws).toBeGreaterThan(1);
      expect(fit.members).toBe(30);
    }
    expect(() => fitReadings(sand, [], draws)).toThrow(/readings/);
  });
});

test("sensors go where the water runs with the roots' mean and where it moves most", () => {
  const sites = sensorSites(simulate(scenario, { cells: { fromHour: 72, hours: 96 } }));
  expect(sites.representative.distanceTheta).toBeLessThanOrEqual(sites.liveliest.distanceTheta);
  expect(sites.liveliest.swingTheta).toBeGreaterThanOrEqual(sites.representative.swingTheta);
  expect(sites.belowRoots?.depthCm).toBeGreaterThan(60);
  expect(() => sensorSites(simulate(scenarioWith({ days: 1 })))).toThrow(/cells/);
});

describe("spade and tape", () => {
  test("a pond's size gives back the conductivity it was made with (Wooding 1968)", () => {
    const soil = { kSatCmPerH: 1.3, alphaPerCm: 0.04 };
    const diameterCm = 2 * woodingPondRadiusCm(2000, soil);
    expect(kSatFromPondCmPerH({ kind: "round", diameterCm, flowLPerH: 2 }, 0.04)).toBeCloseTo(1.3, 9);
    const widthCm = 2 * stripPondHalfWidthCm(40, soil);
    expect(kSatFromPondCmPerH({ kind: "strip", widthCm, flowLPerHPerM: 4 }, 0.04)).toBeCloseTo(1.3, 9);
  });

  test("names the structure whose own pond and drain were read", () => {
    const read = { depthCm: 20, hours: 20, tensionKPa: 5 };
    const { drainHours = 0 } = pitAnswer({ texture: "clay loam", drain: read }).guesses.at(-1)!;
    const answer = pitAnswer({ texture: "clay loam", drain: { ...read, hours: drainHours } });
    expect(answer.guesses[0]?.drainHours).toBe(drainHours);
    expect(answer.guesses[0]?.misfit).toBe(0);
    const small = pitAnswer({ texture: "clay loam", pond: { kind: "round", diameterCm: 12, flowLPerH: 1.6 } });
    const wide = pitAnswer({ texture: "clay loam", pond: { kind: "round", diameterCm: 90, flowLPerH: 1.6 } });
    expect(small.guesses[0]?.structure).toBe("crumbly");
    expect(wide.guesses[0]?.structure).toBe("tight");
    expect(wide.kSatCmPerH).toBeLessThan(small.kSatCmPerH!);
    expect(() => pitAnswer({ texture: "loam" })).toThrow(/neither/);
  });
});
