import { headTables } from "./boundary.js";
import { type FaceFlows, faceFlows, faceFlowsInto } from "./bucket-fluxes.js";
import { limitedFlows, limitFlows, limitInflow, limitOutflow, limitVolumes } from "./bucket-limits.js";
import { type EmitterLines, offerWater, spread, surfaceWork } from "./cascade.js";
import type { Forcing, WaterEngine, WaterFluxes, WaterState } from "./engine.js";
import { type EvaporationProcess, soilLimitedEvaporation } from "./evaporation.js";
import { type CellValues, cellValues, type Ground, lookUpInto } from "./ground.js";
import { moveOverfill } from "./overfill.js";
import type { Stress, StressProcess } from "./stress.js";
import { type RootZone, type UptakeProcess, uptakeInto } from "./uptake.js";

/** All that stays the same while the water moves. Unnamed processes take their documented default. */
export interface WaterSetup {
  readonly ground: Ground;
  readonly lines: EmitterLines;
  readonly roots: RootZone;
  /** What lies behind the first lane edge: the mirror image of this half strip (or the axis of the rings), or open ground. */
  readonly innerEdge: "mirror" | "open";
  readonly stress: StressProcess;
  /** Default `uptakeInto`. */
  readonly uptake?: UptakeProcess;
  /** Default `soilLimitedEvaporation(ground)`. */
  readonly evaporation?: EvaporationProcess;
  /** Largest change of theta in one sub-step, m3/m3; default 0.01. Smaller is slower and closer to the exact answer. */
  readonly thetaChangePerStep?: number;
}

const longestStepH = 1;
const shortestStepH = 1 / 2000;
/** The bound on the fall of K applies to cells whose K is above this share of kSat. */
const wetShareOfKSat = 0.05;

/**
 * The fast engine: layered buckets with gravity and matric flow between neighbours, explicit adaptive sub-steps, limits
 * that move what does not fit and never clip. One sub-step: stress and uptake, evaporation, face flows and surface intake
 * from the same state, step length, limits, update, sums.
 *
 * @example bucketEngine(setup).advance(state, forcing, 1, fluxes)
 */
export function bucketEngine(setup: WaterSetup): WaterEngine {
  const { ground, lines, roots, innerEdge, stress } = setup;
  const takeUp = setup.uptake ?? uptakeInto;
  const evaporate = setup.evaporation ?? soilLimitedEvaporation(ground);
  const thetaChange = setup.thetaChangePerStep ?? 0.01;
  const { layers, lanes, cells, volumeCm3, laneAreaCm2, thicknessCm } = ground.grid;
  const byHead = headTables(ground);
  const values = cellValues(cells);
  const flows = faceFlows(cells);
  const limited = limitedFlows(cells);
  const surface = surfaceWork(lanes);
  const room = new Float64Array(lanes);
  const sink = new Float64Array(cells);
  const kept = new Float64Array(cells);
  const volumes = limitVolumes(ground.grid);
  const perVolume = volumeCm3.map((volume) => 1 / volume);
  const rootSink = new Float64Array(cells);
  const evaporation = new Float64Array(lanes);
  const factors: Stress = {
    thirst: new Float64Array(cells),
    air: new Float64Array(cells),
    state: new Uint8Array(cells),
  };
  const potentialSaturated = new Float64Array(lanes);
  for (let j = 0; j < lanes; j++) {
    const table = ground.tables[ground.material[j]];
    potentialSaturated[j] = table.matricFluxCm2PerH[table.intervals];
  }

  function advance(state: WaterState, forcing: Forcing, untilH: number, fluxes: WaterFluxes): void {
    const theta = state.theta;
    while (untilH - state.timeH > 1e-9) {
      lookUpInto(values, ground, theta);
      stress(factors, ground, theta, values);
      takeUp(rootSink, roots, factors, forcing.transpirationCm3PerH);
      evaporate(evaporation, theta, forcing.evaporationCm3PerH);
      for (let c = 0; c < cells; c++) sink[c] = rootSink[c];
      for (let j = 0; j < lanes; j++) sink[j] += evaporation[j];
      faceFlowsInto(flows, ground, values, byHead);
      for (let j = 0; j < lanes; j++) {
        surface.capacity[j] =
          laneAreaCm2[j] *
          (ground.kSatCmPerH[j] + (2 * (potentialSaturated[j] - values.matricFluxCm2PerH[j])) / thicknessCm[0]);
        surface.intake[j] = 0;
      }
      offerWater(surface, lines, forcing.emitterCm3PerH, forcing.rainCm3PerH);
      let runoff = spread(surface, innerEdge);
      const steadyStepH = stepLength(flows, values, surface.intake, sink);
      let dtH = steadyStepH > shortestStepH ? steadyStepH : shortestStepH;
      if (dtH > longestStepH) dtH = longestStepH;
      const leftH = untilH - state.timeH;
      if (dtH >= leftH * (1 - 1e-9)) dtH = leftH;

      limitFlows(limited, flows, ground, volumes, theta, dtH);
      const held = limitOutflow(limited, ground, theta, sink, dtH, kept);
      limitInflow(limited, ground, theta, sink, dtH, room);
      let tooMuch = false;
      for (let j = 0; j < lanes; j++) {
        if (surface.intake[j] > room[j]) tooMuch = true;
        if (surface.capacity[j] > room[j]) surface.capacity[j] = room[j];
      }
      if (tooMuch) {
        surface.intake.fill(0);
        offerWater(surface, lines, forcing.emitterCm3PerH, forcing.rainCm3PerH);
        runoff = spread(surface, innerEdge);
      }
      update(theta, dtH);
      runoff += moveOverfill(theta, ground, fluxes.downwardCm3) / dtH;
      addUp(fluxes, forcing, runoff, dtH, held);
      state.timeH = dtH === leftH ? untilH : state.timeH + dtH;
    }
  }

  /** Longest step that keeps theta changes small and, in wet cells that lose water, K from falling by more than itself. */
  function stepLength(raw: FaceFlows, now: CellValues, intake: Float64Array, sinkCm3PerH: Float64Array): number {
    const { gravityDown, matricDown, matricSide, headSide } = raw;
    const { conductivityCmPerH, conductivitySlopeCmPerH } = now;
    const { kSatCmPerH } = ground;
    let fastest = 1e-12;
    let step = longestStepH;
    for (let i = 0; i < layers; i++) {
      let fromInside = 0;
      for (let j = 0; j < lanes; j++) {
        const c = i * lanes + j;
        const toOutside = matricSide[c] + headSide[c];
        let net = fromInside - toOutside - gravityDown[c] - matricDown[c] - sinkCm3PerH[c];
        fromInside = toOutside;
        net += i > 0 ? gravityDown[c - lanes] + matricDown[c - lanes] : intake[j];
        const rate = net * perVolume[c];
        const pace = rate < 0 ? -rate : rate;
        if (pace > fastest) fastest = pace;
        if (rate < 0 && conductivityCmPerH[c] > wetShareOfKSat * kSatCmPerH[c]) {
          const fall = conductivityCmPerH[c] / (conductivitySlopeCmPerH[c] * pace);
          if (fall < step) step = fall;
        }
      }
    }
    const byTheta = thetaChange / fastest;
    return byTheta < step ? byTheta : step;
  }

  function update(theta: Float64Array, dtH: number): void {
    const { down, side } = limited;
    const { intake } = surface;
    for (let i = 0; i < layers; i++) {
      let fromInside = 0;
      for (let j = 0; j < lanes; j++) {
        const c = i * lanes + j;
        const fromAbove = i > 0 ? down[c - lanes] : intake[j];
        theta[c] += (fromAbove + fromInside - down[c] - side[c] - sink[c]) * dtH * perVolume[c];
        fromInside = side[c];
      }
    }
  }

  function addUp(fluxes: WaterFluxes, forcing: Forcing, runoff: number, dtH: number, held: boolean): void {
    const { downwardCm3, uptakeCm3, airlessH, thirstyH, airlessSeverityH, thirstySeverityH, pondedH } = fluxes;
    const { state: cellState, air: airFactor, thirst: thirstFactor } = factors;
    const { down } = limited;
    const { intake, capacity } = surface;
    const { rainCm3PerH } = forcing;
    let transpired = 0;
    let evaporated = 0;
    let rain = 0;
    for (let c = 0; c < cells; c++) {
      const taken = held ? rootSink[c] * kept[c] * dtH : rootSink[c] * dtH;
      uptakeCm3[c] += taken;
      transpired += taken;
      const what = cellState[c];
      if (what === 2) {
        airlessH[c] += dtH;
        airlessSeverityH[c] += dtH * (1 - airFactor[c]);
      } else if (what === 1) {
        thirstyH[c] += dtH;
        thirstySeverityH[c] += dtH * (1 - thirstFactor[c]);
      }
    }
    for (let i = 0; i < layers; i++) {
      let sum = 0;
      for (let j = 0; j < lanes; j++) sum += down[i * lanes + j];
      downwardCm3[i] += sum * dtH;
      if (i === layers - 1) fluxes.bottomCm3 += sum * dtH;
    }
    for (let j = 0; j < lanes; j++) {
      rain += rainCm3PerH[j];
      evaporated += held ? evaporation[j] * kept[j] : evaporation[j];
      if (intake[j] > 0 && intake[j] >= capacity[j]) pondedH[j] += dtH;
    }
    fluxes.transpirationCm3 += transpired;
    fluxes.evaporationCm3 += evaporated * dtH;
    fluxes.emitterCm3 += forcing.emitterCm3PerH * dtH;
    fluxes.rainCm3 += rain * dtH;
    fluxes.runoffCm3 += runoff * dtH;
    fluxes.subSteps += 1;
  }

  return { name: "bucket", advance };
}
