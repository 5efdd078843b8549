import { type BottomEdge, bottomLaw } from "./bottom.js";
import { headTables } from "./boundary.js";
import { faceFlows, flowsAndStep } from "./bucket-fluxes.js";
import { fillFromBelow, fillTop, limitedFlows, limitFlows } from "./bucket-limits.js";
import { type EmitterLines, offerWater, spread, surfaceWork } from "./cascade.js";
import type { FaceSums, Forcing, WaterEngine, WaterFluxes, WaterState } from "./engine.js";
import { type EvaporationProcess, soilLimitedEvaporation } from "./evaporation.js";
import { facesOf } from "./faces.js";
import { cellValues, type Ground, lookUpInto } from "./ground.js";
import { moveOverfill, moveThroughCracks } from "./overfill.js";
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
  /** Default what `evaporationOn` makes, else `soilLimitedEvaporation(ground)`. */
  readonly evaporation?: EvaporationProcess;
  /** Makes the evaporation process for the cells of an engine, which may be finer than these. */
  readonly evaporationOn?: (ground: Ground) => EvaporationProcess;
  /** Default free drainage (unit gradient). */
  readonly bottom?: BottomEdge;
  /** Cracks: this share of what enters a lane from the surface goes straight to the layer that holds `toDepthCm`. Default none. */
  readonly bypass?: { readonly fraction: number; readonly toDepthCm: number };
  /** Largest change of theta in one sub-step, m3/m3; default 0.01. Smaller is slower and closer to the exact answer. */
  readonly thetaChangePerStep?: number;
}

const longestStepH = 1;
const shortestStepH = 1 / 2000;

/**
 * The fast engine: layered buckets with gravity and matric flow between neighbours, explicit adaptive sub-steps, limits
 * that move what does not fit and never clip. One sub-step: stress and uptake, evaporation, surface intake and face flows
 * from the same state, step length, limits, update, sums.
 *
 * @example bucketEngine(setup).advance(state, forcing, 1, fluxes)
 */
export function bucketEngine(setup: WaterSetup): WaterEngine {
  const { ground, lines, roots, innerEdge, stress } = setup;
  const takeUp = setup.uptake ?? uptakeInto;
  const evaporate = setup.evaporation ?? (setup.evaporationOn ?? soilLimitedEvaporation)(ground);
  const thetaChange = setup.thetaChangePerStep ?? 0.01;
  const { layers, lanes, cells, laneAreaCm2, thicknessCm } = ground.grid;
  const faces = facesOf(ground.grid);
  const byHead = headTables(ground);
  const bottom = bottomLaw(setup.bottom ?? { kind: "free-drainage" }, ground);
  const { bypass } = setup;
  const crackLayer = bypass ? ground.grid.layerEdgesCm.findIndex((edge) => edge > bypass.toDepthCm) - 1 : -1;
  const values = cellValues(cells);
  const flows = faceFlows(cells);
  const limited = limitedFlows(cells);
  const surface = surfaceWork(lanes);
  /** Length of the step; in an array so that passing it on allocates nothing. */
  const stepH = new Float64Array(1);
  const room = new Float64Array(lanes);
  const sink = new Float64Array(cells);
  const kept = new Float64Array(cells);
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
    // Times as plain doubles: mixed with the boxed argument, each new time would be a new object.
    const endH = untilH * 1;
    let nowH = state.timeH * 1;
    while (endH - nowH > 1e-9) {
      lookUpInto(values, ground, theta);
      stress(factors, ground, theta, values);
      takeUp(rootSink, roots, factors, forcing);
      evaporate(evaporation, theta, forcing.evaporationCm3PerH);
      for (let c = 0; c < cells; c++) sink[c] = rootSink[c];
      for (let j = 0; j < lanes; j++) sink[j] += evaporation[j];
      offerSurface(forcing);
      flowsAndStep(flows, ground, faces, values, byHead, bottom, surface.intake, sink, thetaChange, stepH);
      const allowedH = stepH[0];
      let dtH = allowedH > longestStepH ? longestStepH : allowedH > shortestStepH ? allowedH : shortestStepH;
      const leftH = endH - nowH;
      if (dtH >= leftH * (1 - 1e-9)) dtH = leftH;

      stepH[0] = dtH;

      const held = limitFlows(limited, flows, ground, faces, theta, sink, kept, stepH);
      fillFromBelow(limited, ground, faces, theta, sink, room, stepH);
      if (exceedsRoom()) spreadAgain(forcing);
      fillTop(limited, ground, faces, theta, sink, surface.intake, stepH);
      if (bypass && crackLayer > 0) {
        moveThroughCracks(
          theta,
          ground,
          surface.intake,
          bypass.fraction,
          crackLayer,
          stepH,
          fluxes.downwardCm3,
          fluxes.faces,
        );
      }
      moveOverfill(theta, ground, fluxes.downwardCm3, surface.runoff, stepH, fluxes.faces);
      addUp(fluxes, forcing, held);
      nowH = dtH === leftH ? endH : nowH + dtH;
    }
    state.timeH = nowH;
  }

  /** Lets each lane take what its top cell draws at a surface head of zero. */
  function offerSurface(forcing: Forcing): void {
    const { capacity, intake } = surface;
    const perHalf = 2 / thicknessCm[0];
    for (let j = 0; j < lanes; j++) {
      const drawn = (potentialSaturated[j] - values.matricFluxCm2PerH[j]) * perHalf;
      capacity[j] = laneAreaCm2[j] * (ground.kSatCmPerH[j] + drawn);
      intake[j] = 0;
    }
    offerWater(surface, lines, forcing);
    spread(surface, innerEdge);
  }

  function exceedsRoom(): boolean {
    for (let j = 0; j < lanes; j++) if (surface.intake[j] > room[j]) return true;
    return false;
  }

  /** Spreads the water anew once it is known what room the top cells have left in this step. */
  function spreadAgain(forcing: Forcing): void {
    for (let j = 0; j < lanes; j++) {
      if (surface.capacity[j] > room[j]) surface.capacity[j] = room[j];
      surface.intake[j] = 0;
    }
    offerWater(surface, lines, forcing);
    spread(surface, innerEdge);
  }

  function addUp(fluxes: WaterFluxes, forcing: Forcing, held: boolean): void {
    const dtH = stepH[0];
    const { downwardCm3, uptakeCm3, airlessH, thirstyH, airlessSeverityH, thirstySeverityH, pondedH } = fluxes;
    const { state: cellState, air, thirst } = factors;
    const { down } = limited;
    const { intake, capacity } = surface;
    const { rainCm3PerH } = forcing;
    let transpired = 0;
    for (let c = 0; c < cells; c++) {
      const taken = held ? rootSink[c] * kept[c] * dtH : rootSink[c] * dtH;
      uptakeCm3[c] += taken;
      transpired += taken;
      const what = cellState[c];
      if (what === 2) {
        airlessH[c] += dtH;
        airlessSeverityH[c] += dtH * (1 - air[c]);
      } else if (what === 1) {
        thirstyH[c] += dtH;
        thirstySeverityH[c] += dtH * (1 - thirst[c]);
      }
    }
    let through = 0;
    for (let i = 0; i < layers; i++) {
      through = 0;
      for (let j = 0; j < lanes; j++) through += down[i * lanes + j];
      downwardCm3[i] += through * dtH;
    }
    let evaporated = 0;
    let rain = 0;
    for (let j = 0; j < lanes; j++) {
      rain += rainCm3PerH[j];
      evaporated += held ? evaporation[j] * kept[j] : evaporation[j];
      if (intake[j] > 0 && intake[j] >= capacity[j]) pondedH[j] += dtH;
    }
    fluxes.transpirationCm3 += transpired;
    fluxes.evaporationCm3 += evaporated * dtH;
    fluxes.emitterCm3 += forcing.emitterCm3PerH * dtH;
    fluxes.rainCm3 += rain * dtH;
    fluxes.runoffCm3 += surface.runoff[0] * dtH;
    fluxes.bottomCm3 += through * dtH;
    fluxes.subSteps += 1;
    if (fluxes.faces !== undefined) addFaces(fluxes.faces, held);
  }

  function addFaces(sums: FaceSums, held: boolean): void {
    const dtH = stepH[0];
    for (let c = 0; c < cells; c++) {
      sums.downCm3[c] += limited.down[c] * dtH;
      sums.sideCm3[c] += limited.side[c] * dtH;
    }
    for (let j = 0; j < lanes; j++) {
      sums.intakeCm3[j] += surface.intake[j] * dtH;
      sums.evaporationCm3[j] += (held ? evaporation[j] * kept[j] : evaporation[j]) * dtH;
    }
  }

  return { name: "bucket", advance };
}
