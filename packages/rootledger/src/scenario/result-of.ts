import { cm3PerL, mmPerCm, tensionFromHead } from "../units.js";
import { version } from "../version.js";
import { thetaAtHead } from "../water/ground.js";
import type { Ledger, Result, Section, Window } from "../water/result.js";
import type { Prepared } from "./ground-of.js";
import { ledgerPlaces, ledgerSize } from "./hour-ledger.js";
import { measuresOf } from "./measures.js";
import type { Progress } from "./simulation.js";

/** Gathers what a run has booked so far. */
export function resultOf(now: Progress, running: boolean): Result {
  const { scenario, prepared } = now;
  const section = sectionOf(prepared);
  const window = windowOf(prepared, section);
  const ledger = ledgerOf(now);
  const cells = prepared.grid.cells;
  return {
    version,
    scenarioName: scenario.name,
    soilName: scenario.soil.name,
    programmeName: scenario.programme.name,
    engine: now.engineName,
    status: running ? { kind: "stopped", hour: now.hour, by: "still running" } : now.status,
    startDate: scenario.season.startDate,
    trees: now.treeNames,
    section,
    window,
    settling: now.settling,
    subSteps: subStepsOf(now),
    valveH: now.valve.valveH,
    ...(now.valve.decided && { watering: now.valve.decided.book() }),
    days: now.days.table,
    hours: now.hours.table,
    ...(now.cellWindow.hours > 0 ? { cells: { ...now.cellWindow, theta: now.cellTheta } } : {}),
    airlessH: byCell(now.airlessH, cells, now.trees.length),
    thirstyH: byCell(now.thirstyH, cells, now.trees.length),
    rootHours: {
      parts: now.parts.names,
      partOfDay: now.parts.ofDay,
      values: byCell(now.rootHours, cells * 3 * now.parts.names.length, now.trees.length),
    },
    measures: now.solutes ? [...measuresOf(now, window), ...now.solutes.measures(now.hour)] : measuresOf(now, window),
    ledger,
    ...(now.solutes ? { solutes: now.solutes.result(now.trees.map(({ state }) => state.theta)) } : {}),
    notes: notesOf(now),
  };
}

function subStepsOf(now: Progress): number {
  let sum = 0;
  for (let t = 0; t < now.trees.length; t++) sum += now.ledger[t * ledgerSize + ledgerPlaces.subSteps];
  return sum;
}

/** From `[tree * cells + cell]` to `[cell * trees + tree]`. */
function byCell(byTree: Float64Array, cells: number, trees: number): Float64Array {
  const out = new Float64Array(cells * trees);
  for (let t = 0; t < trees; t++) for (let c = 0; c < cells; c++) out[c * trees + t] = byTree[t * cells + c];
  return out;
}

function sectionOf(prepared: Prepared): Section {
  const { grid, ground, rootsByDay: roots, limits } = prepared;
  return {
    geometry: grid.geometry,
    geometryReason: prepared.geometryReason,
    layerEdgesCm: grid.layerEdgesCm,
    laneEdgesCm: grid.laneEdgesCm,
    layers: grid.layers,
    lanes: grid.lanes,
    lineAtCm: prepared.lineAtCm,
    volumeCm3: grid.volumeCm3,
    rootShare: roots.days[roots.days.length - 1],
    rootsReason: roots.reason,
    wetByLane: roots.wetByLane,
    thetaSaturated: ground.thetaSaturated,
    thetaResidual: ground.thetaResidual,
    thetaAtAirReturn: thetaAtHead(ground, limits.airReturnHeadCm),
    thetaAtPullLimit: thetaAtHead(ground, limits.pullLimitHeadCm),
  };
}

function windowOf(prepared: Prepared, section: Section): Window {
  const { limits, grid, rootsByDay } = prepared;
  let air = 0;
  let pull = 0;
  let lendCm3 = 0;
  for (let c = 0; c < grid.cells; c++) {
    air += section.rootShare[c] * section.thetaAtAirReturn[c];
    pull += section.rootShare[c] * section.thetaAtPullLimit[c];
    if (section.rootShare[c] > 0)
      lendCm3 +=
        rootsByDay.rootedByLane[c % grid.lanes] *
        grid.volumeCm3[c] *
        (section.thetaAtAirReturn[c] - section.thetaAtPullLimit[c]);
  }
  const mm = prepared.rootedDepthCm * mmPerCm;
  return {
    airReturnKPa: tensionFromHead(limits.airReturnHeadCm),
    pullLimitKPa: tensionFromHead(limits.pullLimitHeadCm),
    airLimitFraction: limits.airLimit,
    waterAtAirReturnMm: air * mm,
    waterAtPullLimitMm: pull * mm,
    litresPerTree: lendCm3 / cm3PerL,
  };
}

function ledgerOf(now: Progress): Ledger {
  const count = now.trees.length;
  const take = (place: number): Float64Array => {
    const out = new Float64Array(count);
    for (let t = 0; t < count; t++) out[t] = now.ledger[t * ledgerSize + place];
    return out;
  };
  const emitterCm3 = take(ledgerPlaces.emitter);
  const rainCm3 = take(ledgerPlaces.rain);
  const heldByCanopyCm3 = take(ledgerPlaces.heldByCanopy);
  const heldByLayerCm3 = take(ledgerPlaces.heldByLayer);
  const transpirationCm3 = take(ledgerPlaces.transpiration);
  const evaporationCm3 = take(ledgerPlaces.evaporation);
  const runoffCm3 = take(ledgerPlaces.runoff);
  const bottomCm3 = take(ledgerPlaces.bottom);
  const ownCm3 = take(ledgerPlaces.own);
  const residualCm3 = new Float64Array(count);
  const residualFraction = new Float64Array(count);
  for (let t = 0; t < count; t++) {
    const had = now.startCm3[t] + emitterCm3[t] + rainCm3[t] + ownCm3[t];
    const held = heldByCanopyCm3[t] + heldByLayerCm3[t];
    const left = held + transpirationCm3[t] + evaporationCm3[t] + runoffCm3[t] + bottomCm3[t];
    residualCm3[t] = had - left - now.storedCm3[t];
    residualFraction[t] = residualCm3[t] / had;
  }
  return {
    startCm3: now.startCm3.slice(),
    emitterCm3,
    rainCm3,
    heldByCanopyCm3,
    heldByLayerCm3,
    transpirationCm3,
    evaporationCm3,
    runoffCm3,
    bottomCm3,
    ownCm3,
    endCm3: now.storedCm3.slice(),
    residualCm3,
    residualFraction,
  };
}

function notesOf(now: Progress): string[] {
  const notes: string[] = now.solutes ? [...now.solutes.notes()] : [];
  const { settling, scenario } = now;
  const { valveH } = now.valve;
  if (settling.kind === "settled" && !(settling.changeFraction < 0.01)) {
    notes.push(
      `not settled after ${settling.cycles} cycles: storage still changes by ${(settling.changeFraction * 100).toPrecision(2)} % of the water applied per cycle`,
    );
  }
  if (now.prepared.cracks && now.engineName !== "bucket") {
    notes.push(`cracks are left out: the ${now.engineName} engine has none`);
  }
  const endH = scenario.season.days * 24;
  if (valveH.length > 0 && valveH[valveH.length - 1] > endH) notes.push("the last run is cut at the end of the season");
  return notes;
}
