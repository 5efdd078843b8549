import { measure, simulate as run, type SimulateOptions } from "rootledger";
import { createSimulation as create, parseScenario, type Scenario, youngTree } from "rootledger/scenario";
import { rootsOnDay } from "rootledger/tree";
import { column, refinedRichardsEngine, rootHours } from "rootledger/water";
import { describe, expect, it } from "vitest";
import { demoFiles, demoJson, type Editable } from "../../support/demo-files.js";
import { calendar, scenarioWith } from "../../support/scenario.js";

const simulate = (scenario: Scenario, options: SimulateOptions = {}) => run(scenario, { youngTree, ...options });
const createSimulation = (scenario: Scenario) => create(scenario, { youngTree });

type Tree = Scenario["block"]["tree"];

const sum = (values: ArrayLike<number>) => Array.from(values).reduce((a, b) => a + b, 0);
const withTree = (scenario: Scenario, change: Partial<Tree>): Scenario => ({
  ...scenario,
  block: { ...scenario.block, tree: { ...scenario.block.tree, ...change } },
});

describe("roots in the litter layer", () => {
  it("draw from a litter horizon that drip wets", () => {
    // A loose organic medium: parameters made up for this test.
    const vanGenuchten = { thetaResidual: 0.05, thetaSaturated: 0.7, alphaPerCm: 0.2, n: 1.6, kSatCmPerH: 20 };
    const horizons = [
      { toCm: 5, vanGenuchten },
      { toCm: 100, texture: "loam" as const },
    ];
    const bare = scenarioWith({ days: 7, horizons, programme: calendar("daily", 1, 1, 110) });
    const roots = { ...bare.block.tree.roots, litter: { thicknessCm: 5, share: 0.3 } };
    const result = simulate(withTree(bare, { roots }));
    const [top] = rootHours(result, { depthsCm: [5] });
    expect(top!.thirsty + top!.fine + top!.airless).toBeCloseTo(0.3 * 168, 9);
    expect(Math.abs(result.ledger.residualFraction[0]!)).toBeLessThan(1e-9);
  });
});

describe("roots that grow", () => {
  const growth = [
    { date: "2025-12-01", depthCm: 20, radiusCm: 30 },
    { date: "2025-12-21", depthCm: 60, radiusCm: 130 },
  ];

  it("are linear between dates and constant beyond", () => {
    expect(rootsOnDay(growth, 0, 10)).toEqual({ depthCm: 20, radiusCm: 30 });
    expect(rootsOnDay([{ date: "2025-01-01", depthCm: 25 }], 99999, 10)).toEqual({ depthCm: 25, radiusCm: 10 });
    expect(() => rootsOnDay([growth[1]!, growth[0]!], 0, 10)).toThrow(/rising dates/);
    expect(() => rootsOnDay([], 0, 10)).toThrow(/at least one/);
  });

  it("reach new ground day by day, in both engines, with whole root-hours and closed books", () => {
    const roots = { depthCm: 60, lateral: { kind: "disc", radiusCm: 130 }, growth } as const;
    const scenario = scenarioWith({ days: 20, texture: "loam", roots, programme: calendar("daily", 1, 1, 40) });
    const result = simulate(scenario);
    expect(result.section.rootsReason).toMatch(/grow/);
    const rows = rootHours(result, { depthsCm: [20], distancesCm: [] });
    expect(sum(rows.map((row) => row.thirsty + row.fine + row.airless))).toBeCloseTo(480, 8);
    // Deep roots are few at first: less of their hours than of the last day's share.
    const deep = rows[1]!;
    const { layers, lanes, layerEdgesCm, rootShare } = result.section;
    let atEnd = 0;
    for (let i = 0; i < layers; i++) {
      if (layerEdgesCm[i]! >= 20) for (let j = 0; j < lanes; j++) atEnd += rootShare[i * lanes + j]!;
    }
    expect(deep.thirsty + deep.fine + deep.airless).toBeLessThan(0.9 * atEnd * 480);
    expect(Math.abs(result.ledger.residualFraction[0]!)).toBeLessThan(1e-9);

    const slow = simulate({ ...scenario, season: { ...scenario.season, days: 2 } }, { engine: refinedRichardsEngine });
    expect(slow.status.kind).toBe("finished");
  });

  it("are the same after a restart", () => {
    const roots = { depthCm: 60, lateral: { kind: "disc", radiusCm: 130 }, growth } as const;
    const scenario = scenarioWith({ days: 10, texture: "clay", roots });
    const through = createSimulation(scenario);
    while (through.hour() < 101) through.step();
    const again = createSimulation(scenario);
    again.restore(JSON.parse(JSON.stringify(through.snapshot())));
    for (const one of [through, again]) while (one.status().kind === "running") one.step();
    expect(again.result().measures).toEqual(through.result().measures);
    expect(again.result().rootHours).toEqual(through.result().rootHours);
  });
});

/** Aged pine bark holds 0.21 m3/m3 at field capacity (Smith, Krewer & Ruter 2012); the curve about it is made up for this test. */
const bark = { vanGenuchten: { thetaResidual: 0.05, thetaSaturated: 0.7, alphaPerCm: 0.25, n: 1.9, kSatCmPerH: 30 } };

function young(emitterDistanceCm: number): Scenario {
  const base = scenarioWith({
    days: 14,
    texture: "clay loam",
    offsetsM: [0],
    pluggedPerTree: 8,
    emitterFlowLPerH: 2,
    programme: calendar("daily", 1, 1, 8),
    start: { tensionKPa: 8, kind: "same-state" },
    roots: { depthCm: 30, lateral: { kind: "disc", radiusCm: 15 }, compensationOnset: 1 },
  });
  return withTree(base, {
    canopyDiameterM: 0.6,
    kcb: [{ date: "2025-12-01", kcb: 0.04 }],
    ball: { diameterCm: 30, depthCm: 30, emitterDistanceCm, material: bark },
  });
}

describe("a tree just planted, in the medium of its nursery ball", () => {
  it("stands in rings round the trunk with the ball inside and emitters at their distance", () => {
    const { section } = simulate({ ...young(40), season: { startDate: "2025-12-01", days: 1 } });
    expect(section.geometry).toBe("ring");
    expect(section.geometryReason).toMatch(/nursery ball, 2 open emitters .* 40 cm/);
    expect([...section.laneEdgesCm]).toEqual(expect.arrayContaining([15, 40]));
    const { lanes, laneEdgesCm, layerEdgesCm, layers, thetaSaturated, rootShare, volumeCm3 } = section;
    let ballCm3 = 0;
    for (let c = 0; c < layers * lanes; c++) {
      const inside = laneEdgesCm[c % lanes]! < 15 && layerEdgesCm[(c / lanes) | 0]! < 30;
      expect(thetaSaturated[c] === 0.7, `cell ${c}`).toBe(inside);
      expect(rootShare[c]! > 0, `cell ${c}`).toBe(inside);
      if (inside) ballCm3 += volumeCm3[c]!;
    }
    expect(ballCm3).toBeCloseTo(Math.PI * 15 * 15 * 30, 6);
    expect(sum(section.volumeCm3)).toBeCloseTo(400 * 600 * 100, 3);
  });

  it("can have its ball dry while the field is wet: emitters beside the ball", () => {
    const result = simulate({ ...young(40) }, { cells: { fromHour: 0, hours: 336 } });
    const { layers, lanes, laneEdgesCm, layerEdgesCm, thetaAtPullLimit } = result.section;
    const at = (cm: number, depthCm: number): number =>
      (layerEdgesCm.findIndex((edge) => edge > depthCm) - 1) * lanes + laneEdgesCm.findIndex((edge) => edge > cm) - 1;
    const theta = result.cells!.theta.subarray(335 * layers * lanes);
    const state = (cell: number) => ({
      drier: theta[cell]! < thetaAtPullLimit[cell]!,
      thirstyH: result.thirstyH[cell]!,
    });
    // The ball is beyond the pull limit most of the time; the soil by the emitter never.
    expect(state(at(5, 5)).drier).toBe(true);
    expect(state(at(5, 5)).thirstyH).toBeGreaterThan(0.7 * 336);
    expect(state(at(38, 5))).toEqual({ drier: false, thirstyH: 0 });
    const thirsty = column(result.hours, "thirstyShare").values;
    expect(sum(thirsty.subarray(312)) / 24).toBeGreaterThan(0.8);
  });

  it("drinks with its emitters on the ball, on the same litres", () => {
    const [beside, on] = [40, 0].map((cm) => simulate(young(cm)));
    expect(measure(on!, "applied").values[0]).toBeCloseTo(measure(beside!, "applied").values[0]!, 9);
    expect(measure(on!, "thirsty").values[0]).toBeLessThan(0.5 * measure(beside!, "thirsty").values[0]!);
    expect(measure(on!, "transpiration-ratio").values[0]).toBeGreaterThan(
      1.5 * measure(beside!, "transpiration-ratio").values[0]!,
    );
    for (const result of [beside!, on!]) expect(Math.abs(result.ledger.residualFraction[0]!)).toBeLessThan(1e-9);
  });

  it("is refused by a run that was not given what it needs", () => {
    expect(() => run(young(40))).toThrow(/youngTree for a nursery ball/);
    const roots = { litter: { thicknessCm: 5, share: 0.2 } };
    expect(() => run(scenarioWith({ days: 1, roots }))).toThrow(/requires options.youngTree/);
  });

  it("refuses a strip, and emitters too near the ball's wall", () => {
    expect(() => simulate(young(40), { geometry: "strip" })).toThrow(/rings round a nursery ball/);
    expect(() => simulate(young(17))).toThrow(/4 cm/);
  });
});

describe("young roots in a file", () => {
  const parsed = (change: (file: Editable) => void) => {
    const file = demoJson("scenario");
    change(file);
    return parseScenario(file, demoFiles);
  };
  const ball = { diameterCm: 30, depthCm: 30, emitterDistanceCm: 0, vanGenuchten: bark.vanGenuchten };

  it("take depth and disc from the ball, listed as defaults", () => {
    const read = parsed((file) => {
      file.block.tree.ball = ball;
    });
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    const { tree } = read.scenario.block;
    expect(tree.roots).toMatchObject({ depthCm: 30, lateral: { kind: "disc", radiusCm: 15 } });
    expect(tree.ball).toEqual({ diameterCm: 30, depthCm: 30, emitterDistanceCm: 0, material: bark });
    const listed = read.defaultsUsed.map(({ path, value }) => `${path} ${value}`);
    expect(listed).toContain("block.tree.roots.depthCm 30");
    expect(listed).toContain("block.tree.roots.lateral.radiusCm 15");
  });

  it.each([
    [
      "emitterDistanceCm",
      { ball: { ...ball, emitterDistanceCm: 17 } },
      "too-near",
      /diameterCm \/ 2, 15 cm, or differ/,
    ],
    ["emitterDistanceCm", { ball: { ...ball, emitterDistanceCm: 210 } }, "not-below", /half the tree spacing, 196/],
    ["ball", { ball: { diameterCm: 30, depthCm: 30, emitterDistanceCm: 0 } }, "exactly-one-of", /texture/],
    ["litter.thicknessCm", { roots: { litter: { thicknessCm: 20, share: 0.1 }, depthCm: 20 } }, "not-below", /depthCm/],
    ["growth[0].depthCm", { roots: { growth: [{ date: "2025-12-01", depthCm: 80 }] } }, "above-maximum", /at most 60/],
    [
      "growth[1].date",
      {
        roots: {
          growth: [
            { date: "2025-12-02", depthCm: 20 },
            { date: "2025-12-01", depthCm: 30 },
          ],
        },
      },
      "dates-not-rising",
      /later than/,
    ],
    [
      "growth[0].radiusCm",
      { roots: { growth: [{ date: "2025-12-02", depthCm: 20, radiusCm: 50 }] } },
      "only-beside",
      /beside wetted-lanes: it goes with disc/,
    ],
  ])("reports %s", (path, tree, code, rule) => {
    const read = parsed((file) => {
      Object.assign(file.block.tree, tree);
    });
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.faults.map((fault) => fault.code)).toEqual([code]);
    expect(read.faults[0]!.path).toMatch(new RegExp(`^block\\.tree\\.(.*\\.)?${path.replace(/[[\].]/g, "\\$&")}$`));
    expect(read.faults[0]!.rule).toMatch(rule);
  });
});
