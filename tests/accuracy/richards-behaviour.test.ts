import { carselParrishCurve, tabulateSoil, vanGenuchtenCurve } from "rootledger/ground";
import {
  bucketEngine,
  copyState,
  emptyFluxes,
  fillGround,
  type Ground,
  type RefinedSetup,
  type RichardsSetup,
  refinedRichardsEngine,
  richardsEngine,
  stateAtHeads,
  stripGrid,
  thetaAtHead,
  twoLimits,
  type WaterState,
} from "rootledger/water";
import { describe, expect, it } from "vitest";
import { column } from "../published/richards-column.js";

const stress = twoLimits({
  pullLimitHeadCm: -204,
  zeroUptakeHeadCm: -1020,
  airLimit: 0.1,
  airZero: 0.02,
  airReturnHeadCm: -51,
});

/** Half a strip on the bucket's kind of cells, roots in its first metre. */
function strip(soil: "loam" | "sand" | "clay loam", lanes: readonly number[] = [0, 5, 15, 30, 60, 100], lineEdge = 0) {
  const grid = stripGrid({ layerEdgesCm: [0, 5, 15, 30, 60], laneEdgesCm: lanes, rowLengthCm: 100, sides: 2 });
  const ground = fillGround(grid, [tabulateSoil(carselParrishCurve(soil))], new Uint8Array(grid.cells));
  const share = Float64Array.from(grid.volumeCm3, (v) => v / grid.volumeCm3.reduce((a, b) => a + b, 0));
  const setup = {
    ground,
    lines: { edge: Int32Array.of(lineEdge), share: Float64Array.of(1) },
    roots: { share, compensationOnset: 0.5 },
    innerEdge: "mirror",
    stress,
  } as const satisfies RichardsSetup & RefinedSetup;
  return { grid, ground, setup };
}

const forcingOf = (lanes: number, emitter: number, rainPerLane = 0, evaporationPerLane = 0, demand = 0) => ({
  emitterCm3PerH: emitter,
  rainCm3PerH: new Float64Array(lanes).fill(rainPerLane),
  evaporationCm3PerH: new Float64Array(lanes).fill(evaporationPerLane),
  transpirationCm3PerH: demand,
});

const stored = (ground: Ground, theta: Float64Array): number =>
  theta.reduce((sum, t, c) => sum + t * ground.grid.volumeCm3[c], 0);

describe("Richards engine", () => {
  it("closes its ledger under rain, drip, roots and evaporation", () => {
    const { grid, ground, setup } = strip("clay loam");
    const engine = richardsEngine(setup);
    const state: WaterState = { timeH: 0, theta: thetaAtHead(ground, -100) };
    const start = stored(ground, state.theta);
    const fluxes = emptyFluxes(grid);
    for (let hour = 1; hour <= 48; hour++) {
      const rain = hour > 20 && hour < 24 ? 8000 : 0;
      engine.advance(state, forcingOf(grid.lanes, hour % 24 < 6 ? 4000 : 0, rain, 100, 400), hour, fluxes);
    }
    const came = fluxes.emitterCm3 + fluxes.rainCm3;
    const went = fluxes.transpirationCm3 + fluxes.evaporationCm3 + fluxes.runoffCm3 + fluxes.bottomCm3;
    expect(fluxes.runoffCm3).toBeGreaterThan(0);
    expect(fluxes.evaporationCm3).toBeGreaterThan(0);
    expect(Math.abs(start + came - went - stored(ground, state.theta)) / (start + came)).toBeLessThan(1e-12);
    expect(fluxes.uptakeCm3.reduce((a, b) => a + b, 0)).toBeCloseTo(fluxes.transpirationCm3, 6);
  });

  it("goes on from a copied state bit for bit", () => {
    const { grid, ground, setup } = strip("loam");
    const forcing = forcingOf(grid.lanes, 3000, 0, 0, 300);
    const state: WaterState = { timeH: 0, theta: thetaAtHead(ground, -300) };
    const fluxes = emptyFluxes(grid);
    const engine = refinedRichardsEngine(setup);
    engine.advance(state, forcing, 2, fluxes);
    const copy = copyState(state);
    engine.advance(state, forcing, 5, fluxes);
    refinedRichardsEngine(setup).advance(copy, forcing, 5, emptyFluxes(grid));
    expect(copy.theta).toEqual(state.theta);
    expect(copy.fine).toEqual(state.fine);
  });

  it("on finer cells reports on the coarse ones what it did", () => {
    const { grid, ground, setup } = strip("loam");
    const engine = refinedRichardsEngine(setup);
    const state: WaterState = { timeH: 0, theta: thetaAtHead(ground, -300) };
    const start = stored(ground, state.theta);
    const fluxes = emptyFluxes(grid);
    for (let hour = 1; hour <= 24; hour++) {
      engine.advance(state, forcingOf(grid.lanes, hour < 5 ? 6000 : 0, 0, 20, 300), hour, fluxes);
    }
    const went = fluxes.transpirationCm3 + fluxes.evaporationCm3 + fluxes.runoffCm3 + fluxes.bottomCm3;
    expect(Math.abs(start + fluxes.emitterCm3 - went - stored(ground, state.theta)) / start).toBeLessThan(1e-12);
    const fine = state.fine;
    expect(fine && stored(engine.fineGround, fine.theta)).toBeCloseTo(stored(ground, state.theta), 4);
    expect(engine.fineGround.grid.cells).toBeGreaterThan(8 * grid.cells);
    expect(fluxes.downwardCm3[grid.layers - 1]).toBe(fluxes.bottomCm3);
    // Layer by layer: what a layer gained is what came through its upper face less its lower face and its sinks.
    let lower = 0;
    for (let j = 0; j < grid.lanes; j++) {
      const c = (grid.layers - 1) * grid.lanes + j;
      lower += (state.theta[c] - thetaAtHead(ground, -300)[c]) * grid.volumeCm3[c] + fluxes.uptakeCm3[c];
    }
    expect(fluxes.downwardCm3[grid.layers - 2] - fluxes.bottomCm3).toBeCloseTo(lower, 3);
    for (const hours of [fluxes.airlessH, fluxes.thirstyH, fluxes.pondedH]) {
      for (const h of hours) expect(h >= 0 && h <= 24 + 1e-9).toBe(true);
    }
    const bucket = { timeH: 0, theta: thetaAtHead(ground, -300) };
    const bucketFluxes = emptyFluxes(grid);
    bucketEngine(setup).advance(bucket, forcingOf(grid.lanes, 0), 24, bucketFluxes);
    expect(state.theta.length).toBe(bucket.theta.length);
  });

  it("lets a pond spread alike to both sides of a line", () => {
    const lanes = [0, 10, 20, 30, 40, 45, 50, 55, 60, 70, 80, 90, 100];
    const { grid, ground, setup } = strip("clay loam", lanes, 6);
    const engine = richardsEngine({ ...setup, options: { balanceTheta: 1e-10 } });
    const state: WaterState = { timeH: 0, theta: thetaAtHead(ground, -300) };
    const fluxes = emptyFluxes(grid);
    engine.advance(state, forcingOf(grid.lanes, 6000), 3, fluxes);
    expect(fluxes.pondedH[6]).toBeGreaterThan(1);
    for (let c = 0; c < grid.cells; c++) {
      const i = Math.floor(c / grid.lanes);
      const mirror = i * grid.lanes + grid.lanes - 1 - (c % grid.lanes);
      expect(Math.abs(state.theta[c] - state.theta[mirror])).toBeLessThan(1e-7);
    }
  });

  it("keeps a wetter start wetter everywhere", () => {
    for (const soil of ["sand", "loam", "clay loam"] as const) {
      const { grid, ground, setup } = strip(soil);
      const run = (head: number): Float64Array => {
        const state: WaterState = { timeH: 0, theta: thetaAtHead(ground, head) };
        richardsEngine(setup).advance(state, forcingOf(grid.lanes, 2500), 6, emptyFluxes(grid));
        return state.theta;
      };
      const dry = run(-500);
      const wet = run(-120);
      // Each run may be off by its time error, at most 0.01 a step; it is far smaller where both were wetted alike.
      for (let c = 0; c < dry.length; c++) expect(wet[c]).toBeGreaterThan(dry[c] - 1e-3);
    }
  });
});

describe("Richards engine in a column", () => {
  const clayLoam = carselParrishCurve("clay loam");

  it("sheds the rain that a wet column cannot take; what enters tends to kSat", () => {
    const run = column({
      curve: clayLoam,
      depthCm: 50,
      cells: 50,
      startHeadCm: () => -50,
      top: { fluxCmPerH: 5 },
      bottom: { kind: "free-drainage" },
    });
    run.runTo(200);
    const before = run.infiltratedCm();
    run.runTo(210);
    expect((run.infiltratedCm() - before) / 10 / clayLoam.kSatCmPerH).toBeCloseTo(1, 3);
    expect(Math.abs(run.residualCm())).toBeLessThan(1e-9);
  });

  // Vogel, van Genuchten & Cislerova (2000), Adv. Water Resour. 24:133-144: in fine soils a capillary height of 2 cm raises
  // infiltration strongly over the raw curve, whose K falls steeply just below saturation.
  it("runs on every treatment of the curve near saturation, and they matter in clay", () => {
    const clay = { thetaResidual: 0.068, thetaSaturated: 0.38, alphaPerCm: 0.008, n: 1.09, kSatCmPerH: 0.2 };
    const entered = (["raw", "linear", "minimum-capillary-height"] as const).map((near) => {
      const run = column({
        curve: vanGenuchtenCurve("clay", clay, "Carsel & Parrish (1988)", near),
        depthCm: 50,
        cells: 100,
        startHeadCm: () => -1000,
        top: { fluxCmPerH: 5 },
        bottom: { kind: "free-drainage" },
      });
      run.runTo(12);
      expect(Math.abs(run.residualCm())).toBeLessThan(1e-9);
      return run.infiltratedCm();
    });
    expect(entered[1]).toBeGreaterThan(entered[0]);
    expect(entered[2]).toBeGreaterThan(1.2 * entered[0]);
  });

  it("comes to rest above a water table with heads equal to minus the height", () => {
    const run = column({
      curve: carselParrishCurve("loam"),
      depthCm: 60,
      cells: 60,
      startHeadCm: () => -100,
      top: { fluxCmPerH: 0 },
      bottom: { kind: "head", headCm: 0 },
      options: { longestStepH: 100 },
    });
    run.runTo(5000);
    for (const depth of [5, 30, 55]) expect(run.headAt(depth)).toBeCloseTo(depth - 60, 0);
  });

  it("keeps the head of the water that stands on a tight layer", () => {
    const grid = stripGrid({
      layerEdgesCm: Array.from({ length: 41 }, (_, i) => i),
      laneEdgesCm: [0, 1],
      rowLengthCm: 1,
      sides: 1,
    });
    const loam = carselParrishCurve("loam");
    const tight = { ...carselParrishCurve("silty clay"), name: "pan" };
    const slow = {
      ...tight,
      kSatCmPerH: tight.kSatCmPerH / 50,
      conductivityAt: (h: number) => tight.conductivityAt(h) / 50,
    };
    const material = Uint8Array.from({ length: 40 }, (_, i) => (i >= 30 ? 1 : 0));
    const ground = fillGround(grid, [tabulateSoil(loam), tabulateSoil(slow)], material);
    const engine = richardsEngine({
      ground,
      lines: { edge: Int32Array.of(0), share: Float64Array.of(1) },
      roots: { share: new Float64Array(40), compensationOnset: 1 },
      innerEdge: "mirror",
      stress,
    });
    const state = stateAtHeads(ground, new Float64Array(40).fill(-60));
    const fluxes = emptyFluxes(grid);
    engine.advance(state, forcingOf(1, 0, 0.3), 20, fluxes);
    engine.advance(state, forcingOf(1, 0, 0), 30, fluxes);
    const head = state.headCm ?? new Float64Array(40);
    expect(state.theta[29]).toBeCloseTo(loam.thetaSaturated, 4);
    expect(head[29]).toBeGreaterThan(3);
    // Standing water is hydrostatic: a centimetre of head per centimetre of depth, less the trickle into the pan.
    expect(head[29] - head[26]).toBeCloseTo(3, 1);
    expect(copyState(state).headCm).toEqual(head);
  });
});
