import { type BottomEdge, bottomLaw } from "./bottom.js";
import { headTables } from "./boundary.js";
import { faceFlows, flowsInto } from "./bucket-flows.js";
import { holdBack, writeFlows } from "./bucket-hold.js";
import { mostLeavingShare, solution, solveStep } from "./bucket-solve.js";
import { chooseStep } from "./bucket-step.js";
import { offerSurface, pondWork, settleSurface } from "./bucket-surface.js";
import { bucketValues, headsInto, riseTable } from "./bucket-values.js";
import type { EmitterLines } from "./cascade.js";
import type { FaceSums, Forcing, WaterEngine, WaterFluxes, WaterState } from "./engine.js";
import { type EvaporationProcess, soilLimitedEvaporation } from "./evaporation.js";
import { facesOf } from "./faces.js";
import type { Ground } from "./ground.js";
import { moveThroughCracks, raiseOverfill } from "./overfill.js";
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
  /** How much of a cell's change of theta in one sub-step may be in doubt (`chooseStep`), m3/m3; default 0.005. Smaller is slower and closer to the exact answer. */
  readonly thetaDoubtPerStep?: number;
}

const longestStepH = 1;
const shortestStepH = 1 / 2000;
/** How much longer the last step before an event may be, rather than leave a remainder; two last steps are of one length. */
const slack = 1.2;
/** How often a step in which a cell would give more than it holds is halved before its flows are held back. */
const mostHalvings = 6;

/**
 * The fast engine: layered buckets with gravity and matric flow between neighbours, adaptive sub-steps that are linear in
 * theta and solved down and out in turn. One sub-step: surface intake and face flows from the state at its start, step
 * length, solution, what does not fit moves up or along the surface, then stress, uptake and evaporation from the middle of
 * the step, sums. Nothing is clipped.
 *
 * @example bucketEngine(setup).advance(state, forcing, 1, fluxes)
 */
export function bucketEngine(setup: WaterSetup): WaterEngine {
  const { ground, lines, roots, innerEdge, stress } = setup;
  const takeUp = setup.uptake ?? uptakeInto;
  const evaporate = setup.evaporation ?? (setup.evaporationOn ?? soilLimitedEvaporation)(ground);
  const { layers, lanes, cells, volumeCm3 } = ground.grid;
  const { thetaResidual, thetaSaturated } = ground;
  const table = riseTable(ground);
  const faces = facesOf(ground);
  const { perVolume } = faces;
  const byHead = ground.tables.length > 1 ? headTables(ground) : [];
  const bottom = bottomLaw(setup.bottom ?? { kind: "free-drainage" }, ground);
  const { bypass } = setup;
  const crackLayer = bypass ? ground.grid.layerEdgesCm.findIndex((edge) => edge > bypass.toDepthCm) - 1 : -1;
  const values = bucketValues(cells);
  const flows = faceFlows(cells);
  const solved = solution(layers, lanes);
  const pond = pondWork(ground, lines, innerEdge);
  const { surface } = pond;
  /** Length of the step and the doubt it may have (`chooseStep`); in an array so that passing them on allocates nothing. */
  const stepH = Float64Array.of(0, setup.thetaDoubtPerStep ?? 0.005);
  /** Water taken by roots and evaporation, and by evaporation alone, cm3/h. */
  const sink = new Float64Array(cells);
  const evaporation = new Float64Array(lanes);
  const middle = { theta: new Float64Array(cells), headCm: new Float64Array(cells) };
  const factors: Stress = {
    thirst: new Float64Array(cells),
    air: new Float64Array(cells),
    state: new Uint8Array(cells),
  };

  function advance(state: WaterState, forcing: Forcing, untilH: number, fluxes: WaterFluxes): void {
    const theta = state.theta;
    // Times as plain doubles: mixed with the boxed argument, each new time would be a new object.
    const endH = untilH * 1;
    let nowH = state.timeH * 1;
    headsInto(values.headCm, table, ground, theta);
    stress(factors, ground, theta, values);
    sinksAt(theta, forcing);
    while (endH - nowH > 1e-9) {
      const leftH = endH - nowH;
      stepH[0] = leftH > longestStepH ? longestStepH : leftH;
      flowsInto(flows, ground, faces, values, table, byHead, bottom, theta, sink);
      const wet = offerSurface(pond, ground, values, forcing);
      chooseStep(stepH, flows, pond, ground, perVolume, theta);
      let dtH = stepH[0] > shortestStepH ? stepH[0] : shortestStepH;
      if (dtH * slack >= leftH) dtH = leftH;
      else if (dtH * 2 > leftH) dtH = 0.5 * leftH;
      stepH[0] = dtH;
      const held = solveWithin(theta, forcing);
      dtH = stepH[0];
      const over = move(theta);
      if (over) raiseOverfill(theta, ground, fluxes);
      if (wet || over) {
        settleSurface(pond, ground, forcing, theta, perVolume, stepH, fluxes.faces);
        if (bypass && crackLayer > 0) throughCracks(theta, bypass.fraction, fluxes);
      }
      stress(factors, ground, middle.theta, middle);
      sinksAt(middle.theta, forcing);
      take(theta, fluxes);
      addUp(fluxes, forcing, held);
      nowH = dtH === leftH ? endH : nowH + dtH;
    }
    state.timeH = nowH;
  }

  function sinksAt(theta: Float64Array, forcing: Forcing): void {
    takeUp(sink, roots, factors, forcing);
    evaporate(evaporation, theta, forcing.evaporationCm3PerH);
    for (let j = 0; j < lanes; j++) sink[j] += evaporation[j];
  }

  /** Solves the step; halves it, and at last holds flows back, if a cell would give more than it holds. Returns whether it had to hold back. */
  function solveWithin(theta: Float64Array, forcing: Forcing): boolean {
    for (let halvings = 0; ; halvings++) {
      if (solveStep(solved, flows, ground, faces, pond, forcing, theta, sink, stepH)) return false;
      if (halvings === mostHalvings) {
        holdBack(solved, flows, ground, theta, surface.intake, stepH);
        for (let c = 0; c < cells; c++) solved.change[c] -= sink[c] * stepH[0] * perVolume[c];
        return true;
      }
      stepH[0] *= 0.5;
    }
  }

  /** Adds what the flows changed, without the sinks that they were solved with, and writes the middle of the step. */
  function move(theta: Float64Array): boolean {
    const dtH = stepH[0];
    const { change } = solved;
    const { headCm, headSlopeCm } = values;
    let over = false;
    for (let c = 0; c < cells; c++) {
      const half = 0.5 * change[c];
      const head = headCm[c] + half * headSlopeCm[c];
      middle.theta[c] = theta[c] + half;
      middle.headCm[c] = head < 0 ? head : 0;
      theta[c] += change[c] + sink[c] * dtH * perVolume[c];
      if (theta[c] > thetaSaturated[c]) over = true;
    }
    return over;
  }

  function throughCracks(theta: Float64Array, fraction: number, { downwardCm3, faces: sums }: WaterFluxes): void {
    moveThroughCracks(theta, ground, surface.intake, fraction, crackLayer, stepH, downwardCm3, sums);
  }

  /** Takes what roots and evaporation draw, as far as it is there, and counts the hours of each class. */
  function take(theta: Float64Array, fluxes: WaterFluxes): void {
    const { uptakeCm3, airlessH, thirstyH, airlessSeverityH, thirstySeverityH, faces: sums } = fluxes;
    const { state: cellState, air, thirst } = factors;
    const dtH = stepH[0];
    let transpired = 0;
    let evaporated = 0;
    for (let c = 0; c < cells; c++) {
      const asked = sink[c] * dtH;
      if (asked > 0) {
        const most = mostLeavingShare * (theta[c] - thetaResidual[c]) * volumeCm3[c];
        const keep = asked > most ? most / asked : 1;
        let taken = asked * keep;
        theta[c] -= taken * perVolume[c];
        if (c < lanes) {
          const dried = evaporation[c] * dtH * keep;
          taken -= dried;
          evaporated += dried;
          if (sums !== undefined) sums.evaporationCm3[c] += dried;
        }
        uptakeCm3[c] += taken;
        transpired += taken;
      }
      const what = cellState[c];
      if (what === 2) {
        airlessH[c] += dtH;
        airlessSeverityH[c] += dtH * (1 - air[c]);
      } else if (what === 1) {
        thirstyH[c] += dtH;
        thirstySeverityH[c] += dtH * (1 - thirst[c]);
      }
    }
    fluxes.transpirationCm3 += transpired;
    fluxes.evaporationCm3 += evaporated;
  }

  function addUp(fluxes: WaterFluxes, forcing: Forcing, held: boolean): void {
    const { intake, capacity } = surface;
    const { downCm3PerH } = solved;
    const dtH = stepH[0];
    let rain = 0;
    for (let j = 0; j < lanes; j++) {
      rain += forcing.rainCm3PerH[j];
      if (intake[j] > 0 && intake[j] >= capacity[j]) fluxes.pondedH[j] += dtH;
    }
    for (let i = 0; i < layers; i++) fluxes.downwardCm3[i] += downCm3PerH[i] * dtH;
    fluxes.bottomCm3 += downCm3PerH[layers - 1] * dtH;
    fluxes.emitterCm3 += forcing.emitterCm3PerH * dtH;
    fluxes.rainCm3 += rain * dtH;
    fluxes.runoffCm3 += surface.runoff[0] * dtH;
    fluxes.subSteps += 1;
    if (fluxes.faces !== undefined) addFaces(fluxes.faces, held);
  }

  function addFaces(sums: FaceSums, held: boolean): void {
    if (!held) writeFlows(solved, flows, ground);
    const dtH = stepH[0];
    for (let c = 0; c < cells; c++) {
      sums.downCm3[c] += solved.ratio[c] * dtH;
      sums.sideCm3[c] += solved.rest[c] * dtH;
    }
    for (let j = 0; j < lanes; j++) sums.intakeCm3[j] += surface.intake[j] * dtH;
  }

  return { name: "bucket", advance };
}
