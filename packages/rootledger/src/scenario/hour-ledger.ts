import { openHours } from "../programme/valve-events.js";
import { cm3PerL, mmPerCm } from "../units.js";
import { rainRate, sunShareOf } from "./demand.js";
import type { Progress } from "./simulation.js";
import { storageCm3 } from "./tree-run.js";

/** Sums since the start, by tree: `book[tree * ledgerSize + place]`, cm3; the last counts the engine's sub-steps. */
export const ledgerSize = 10;
export const ledgerPlaces = {
  emitter: 0,
  rain: 1,
  transpiration: 2,
  evaporation: 3,
  runoff: 4,
  bottom: 5,
  subSteps: 6,
  heldByCanopy: 7,
  heldByLayer: 8,
  own: 9,
} as const;

/**
 * Books one simulated hour of one tree into the ledger, the hour table and the day table. Returns false if a state is not
 * a finite number, so that a fault ends the run instead of spreading.
 */
export function bookHour(now: Progress, t: number): boolean {
  const { prepared, demand, hour } = now;
  const { state, fluxes } = now.trees[t];
  const { cells } = prepared.grid;
  const { share } = prepared.roots;
  const { rootHours, parts } = now;
  const count = now.trees.length;
  const day = (hour / 24) | 0;
  const allAt = (t * parts.names.length + parts.ofDay[day]) * 3 * cells;
  const thirstyAt = allAt + cells;
  const airlessAt = thirstyAt + cells;
  let thirsty = 0;
  let airless = 0;
  let thirstySeverity = 0;
  let airlessSeverity = 0;
  let rootTheta = 0;
  for (let c = 0; c < cells; c++) {
    const thirstyRoots = share[c] * fluxes.thirstyH[c];
    const airlessRoots = share[c] * fluxes.airlessH[c];
    thirsty += thirstyRoots;
    airless += airlessRoots;
    rootHours[allAt + c] += share[c];
    rootHours[thirstyAt + c] += thirstyRoots;
    rootHours[airlessAt + c] += airlessRoots;
    thirstySeverity += share[c] * fluxes.thirstySeverityH[c];
    airlessSeverity += share[c] * fluxes.airlessSeverityH[c];
    rootTheta += share[c] * state.theta[c];
    now.thirstyH[t * cells + c] += fluxes.thirstyH[c];
    now.airlessH[t * cells + c] += fluxes.airlessH[c];
  }
  const clock = hour - day * 24;
  const { rainShares } = demand;
  const fellCm3 =
    rainShares === undefined ? fluxes.rainCm3 : rainRate(demand, day, clock, clock + 1) * prepared.groundCm2;
  const heldByCanopyCm3 = rainShares === undefined ? 0 : fellCm3 * rainShares.canopy[day];
  const heldByLayerCm3 = rainShares === undefined ? 0 : fellCm3 * rainShares.layer[day];
  const runoffCm3 = rainShares === undefined ? fluxes.runoffCm3 : fluxes.runoffCm3 + fellCm3 * rainShares.runoff[day];
  const rainMm = (fellCm3 / prepared.groundCm2) * mmPerCm;
  const sun = sunShareOf(demand, day, clock, clock + 1);
  const wantedL = (demand.hourlyCm3?.[hour] ?? demand.transpirationCm3[day] * sun) / cm3PerL;
  const transpiredL = fluxes.transpirationCm3 / cm3PerL;
  const belowRootsL = fluxes.downwardCm3[prepared.rootedLayers - 1] / cm3PerL;
  const rootZoneWaterMm = rootTheta * prepared.rootedDepthCm * mmPerCm;

  const h = now.hours.at;
  const row = hour * count + t;
  h.rootZoneWater[row] = rootZoneWaterMm;
  h.valveOpen[row] = openHours(now.valve.valveH, hour, hour + 1);
  h.rain[row] = rainMm;
  h.wanted[row] = wantedL;
  h.transpired[row] = transpiredL;
  h.belowRoots[row] = belowRootsL;
  h.thirstyShare[row] = thirsty;
  h.airlessShare[row] = airless;

  const storedCm3 = storageCm3(state.theta, prepared.grid);
  const broughtIn = fluxes.emitterCm3 + fellCm3 - heldByCanopyCm3 - heldByLayerCm3 + fluxes.ownCm3;
  const tookOut = fluxes.transpirationCm3 + fluxes.evaporationCm3 + runoffCm3 + fluxes.bottomCm3;
  const residualCm3 = now.storedCm3[t] + broughtIn - tookOut - storedCm3;
  now.storedCm3[t] = storedCm3;

  const d = now.days.at;
  const dayRow = day * count + t;
  d.et0[dayRow] = demand.et0Mm[day];
  d.rain[dayRow] = demand.rainMm[day];
  d.applied[dayRow] += fluxes.emitterCm3 / cm3PerL;
  d.wanted[dayRow] += wantedL;
  d.transpired[dayRow] += transpiredL;
  d.evaporated[dayRow] += fluxes.evaporationCm3 / cm3PerL;
  d.belowRoots[dayRow] += belowRootsL;
  d.bottom[dayRow] += fluxes.bottomCm3 / cm3PerL;
  d.runoff[dayRow] += runoffCm3 / cm3PerL;
  d.heldByCanopy[dayRow] += heldByCanopyCm3 / cm3PerL;
  d.heldByLayer[dayRow] += heldByLayerCm3 / cm3PerL;
  d.thirsty[dayRow] += thirsty;
  d.airless[dayRow] += airless;
  d.fine[dayRow] += 1 - thirsty - airless;
  d.thirstySeverity[dayRow] += thirstySeverity;
  d.airlessSeverity[dayRow] += airlessSeverity;
  d.rootZoneWater[dayRow] = rootZoneWaterMm;
  d.storage[dayRow] = storedCm3 / cm3PerL;
  d.residual[dayRow] += residualCm3 / cm3PerL;

  const book = now.ledger;
  const at = t * ledgerSize;
  book[at + ledgerPlaces.emitter] += fluxes.emitterCm3;
  book[at + ledgerPlaces.rain] += fellCm3;
  book[at + ledgerPlaces.heldByCanopy] += heldByCanopyCm3;
  book[at + ledgerPlaces.heldByLayer] += heldByLayerCm3;
  book[at + ledgerPlaces.transpiration] += fluxes.transpirationCm3;
  book[at + ledgerPlaces.evaporation] += fluxes.evaporationCm3;
  book[at + ledgerPlaces.runoff] += runoffCm3;
  book[at + ledgerPlaces.bottom] += fluxes.bottomCm3;
  book[at + ledgerPlaces.own] += fluxes.ownCm3;
  book[at + ledgerPlaces.subSteps] += fluxes.subSteps;

  const { fromHour, hours } = now.cellWindow;
  if (t === now.meanTree && hour >= fromHour && hour < fromHour + hours) {
    now.cellTheta.set(state.theta, (hour - fromHour) * cells);
  }
  // Whatever is no number, in a cell or a flux, leaves no number here.
  return Number.isFinite(residualCm3);
}
