import type { WaterSetup } from "./bucket.js";
import { offerWater, spread, surfaceWork } from "./cascade.js";
import type { Forcing, WaterEngine, WaterFluxes, WaterState } from "./engine.js";
import { soilLimitedEvaporation } from "./evaporation.js";
import { cellValues, lookUpInto } from "./ground.js";
import type { Stress } from "./stress.js";
import { uptakeInto } from "./uptake.js";

export interface SpillSetup extends WaterSetup {
  /** Water content that each cell keeps; what is above it leaves at once, m3/m3 by cell. */
  readonly fieldCapacity: Float64Array;
  /**
   * Which comes first in a step. `drain-then-uptake`: water above field capacity leaves before the step's uptake (FAO-56
   * Example 38). `uptake-then-drain`: after it (FAO-56 eq. 88 as printed). On a day with surplus the two differ by up to
   * one day's uptake.
   */
  readonly order: "drain-then-uptake" | "uptake-then-drain";
}

/**
 * Bookkeeping without flow: every cell spills what is above field capacity into the one below at once, nothing moves
 * sideways or up. Exists so that FAO-56's root-zone balance can be reproduced exactly in one cell; it says nothing true
 * about the hours after a run. One step per call, whatever its length.
 *
 * @throws RangeError if `fieldCapacity` has another length than the grid has cells.
 * @example spillEngine(setup).advance(state, forcing, 24, fluxes)
 */
export function spillEngine(setup: SpillSetup): WaterEngine {
  const { ground, lines, roots, innerEdge, stress, fieldCapacity, order } = setup;
  const { layers, lanes, cells, volumeCm3 } = ground.grid;
  if (fieldCapacity.length !== cells) {
    throw new RangeError(`spillEngine requires one field capacity per cell: got ${fieldCapacity.length} for ${cells}`);
  }
  const takeUp = setup.uptake ?? uptakeInto;
  const evaporate = setup.evaporation ?? soilLimitedEvaporation(ground);
  const values = cellValues(cells);
  const surface = surfaceWork(lanes);
  const sink = new Float64Array(cells);
  const evaporation = new Float64Array(lanes);
  const factors: Stress = {
    thirst: new Float64Array(cells),
    air: new Float64Array(cells),
    state: new Uint8Array(cells),
  };

  function drain(theta: Float64Array, fluxes: WaterFluxes): void {
    for (let i = 0; i < layers; i++) {
      for (let j = 0; j < lanes; j++) {
        const c = i * lanes + j;
        const surplusCm3 = (theta[c] - fieldCapacity[c]) * volumeCm3[c];
        if (surplusCm3 <= 0) continue;
        theta[c] = fieldCapacity[c];
        fluxes.downwardCm3[i] += surplusCm3;
        if (fluxes.faces !== undefined) fluxes.faces.downCm3[c] += surplusCm3;
        if (i < layers - 1) theta[c + lanes] += surplusCm3 / volumeCm3[c + lanes];
        else fluxes.bottomCm3 += surplusCm3;
      }
    }
  }

  function take(theta: Float64Array, forcing: Forcing, dtH: number, fluxes: WaterFluxes): void {
    lookUpInto(values, ground, theta);
    stress(factors, ground, theta, values);
    takeUp(sink, roots, factors, forcing);
    evaporate(evaporation, theta, forcing.evaporationCm3PerH);
    for (let c = 0; c < cells; c++) {
      const evaporated = c < lanes ? evaporation[c] * dtH : 0;
      const there = (theta[c] - ground.thetaResidual[c]) * volumeCm3[c];
      const asked = sink[c] * dtH + evaporated;
      const keep = asked > there ? there / asked : 1;
      theta[c] -= (asked * keep) / volumeCm3[c];
      fluxes.uptakeCm3[c] += sink[c] * dtH * keep;
      fluxes.transpirationCm3 += sink[c] * dtH * keep;
      fluxes.evaporationCm3 += evaporated * keep;
      if (fluxes.faces !== undefined && c < lanes) fluxes.faces.evaporationCm3[c] += evaporated * keep;
      if (factors.state[c] === 1) {
        fluxes.thirstyH[c] += dtH;
        fluxes.thirstySeverityH[c] += dtH * (1 - factors.thirst[c]);
      } else if (factors.state[c] === 2) {
        fluxes.airlessH[c] += dtH;
        fluxes.airlessSeverityH[c] += dtH * (1 - factors.air[c]);
      }
    }
  }

  function advance(state: WaterState, forcing: Forcing, untilH: number, fluxes: WaterFluxes): void {
    const dtH = untilH - state.timeH;
    if (dtH <= 0) return;
    const { theta } = state;
    surface.capacity.fill(Number.POSITIVE_INFINITY);
    surface.intake.fill(0);
    offerWater(surface, lines, forcing);
    spread(surface, innerEdge);
    for (let j = 0; j < lanes; j++) {
      theta[j] += (surface.intake[j] * dtH) / volumeCm3[j];
      fluxes.rainCm3 += forcing.rainCm3PerH[j] * dtH;
      if (fluxes.faces !== undefined) fluxes.faces.intakeCm3[j] += surface.intake[j] * dtH;
    }
    fluxes.emitterCm3 += forcing.emitterCm3PerH * dtH;
    if (order === "drain-then-uptake") drain(theta, fluxes);
    take(theta, forcing, dtH, fluxes);
    if (order === "uptake-then-drain") drain(theta, fluxes);
    fluxes.subSteps += 1;
    state.timeH = untilH;
  }

  return { name: "spill", advance };
}
