import { oxygenInAirFraction, oxygenInAirGPerM3, q10Factor } from "./oxygen-air.js";
import type { DiffusivityLaw } from "./oxygen-diffusivity.js";
import { type OxygenCells, oxygenModel } from "./oxygen-transient.js";
import type { Result, Section } from "./result.js";

/** How oxygen is followed through a run. */
export interface OxygenOptions {
  /** Oxygen that soil and roots use at 20 C and full supply, g/m2 of ground and day; default 2. */
  readonly demandGPerM2Day?: number;
  /** Share of it that the roots use, where they are; default 0.5. The rest falls off with depth to 1/e in 15 cm. */
  readonly rootShareOfDemand?: number;
  /** Default 20. */
  readonly temperatureC?: number;
  /** Default 2. */
  readonly q10?: number;
  /** Default "millington-quirk"; "moldrup" lets five times as much through in wet soil. */
  readonly law?: DiffusivityLaw;
  /** Oxygen in the soil air below which a root lacks it, m3/m3 of air; default 0.10. */
  readonly limitFraction?: number;
}

/**
 * What `oxygenOfRun` takes where nothing is said. Use: 1-2 g/m2/d under avocado in a clay of Israel (conference abstract), 2-10 in warm
 * rooted soil (from memory); harm below 10 % oxygen from the same abstract. Halves, depth and temperature: our choice.
 */
export const oxygenDefaults = {
  demandGPerM2Day: 2,
  rootShareOfDemand: 0.5,
  temperatureC: 20,
  q10: 2,
  law: "millington-quirk",
  limitFraction: 0.1,
} as const;

const referenceC = 20;
const decayCm = 15;
/** Use falls to half at this share of the atmosphere's oxygen. Our choice, near the zero-order use of Cook (1995). */
const halfUseShare = 0.01;

/** The oxygen view of a run, beside its rule of air-filled porosity and tension. */
export interface OxygenOfRun {
  readonly hours: number;
  /** Oxygen in the air of each cell at the end of each hour, m3/m3 of air: `fraction[hour * cells + cell]`. */
  readonly fraction: Float64Array;
  /** Share of the roots below the limit, by hour. */
  readonly lackingShare: Float64Array;
  /** Hours each cell was below the limit. */
  readonly lackingH: Float64Array;
  /** Root-hours below the limit. */
  readonly lackingRootH: number;
  /** Grams per tree: stored at start and end, in through the surface, with air, with water, used. */
  readonly balance: {
    readonly startG: number;
    readonly endG: number;
    readonly diffusedG: number;
    readonly withAirG: number;
    readonly withWaterG: number;
    readonly usedG: number;
    readonly residualG: number;
  };
}

/**
 * Oxygen of the mean tree's ground over the hours for which the run kept its cells (`cells` of the options of `simulate`), started
 * from the atmosphere's. A second view: it knows duration, depth and supply from the side, and rests on figures for use and
 * diffusivity that are seldom known.
 *
 * @throws RangeError if the run kept no cells, or a figure is out of range.
 * @example oxygenOfRun(simulate(scenario, { cells: { fromHour: 0, hours: 336 } })).lackingRootH
 */
export function oxygenOfRun(result: Result, options: OxygenOptions = {}): OxygenOfRun {
  const { demandGPerM2Day, rootShareOfDemand, temperatureC, q10, law, limitFraction } = {
    ...oxygenDefaults,
    ...options,
  };
  requireShare("rootShareOfDemand", rootShareOfDemand);
  requireShare("limitFraction", limitFraction / oxygenInAirFraction);
  if (!(demandGPerM2Day > 0))
    throw new RangeError(`oxygenOfRun requires demandGPerM2Day above 0: got ${demandGPerM2Day}`);
  if (result.cells === undefined)
    throw new RangeError("oxygenOfRun requires a run that kept its cells: pass cells to simulate");
  const { section } = result;
  const { theta, hours } = result.cells;
  const cells = oxygenCells(section);
  const count = section.layers * section.lanes;
  const useGPerM2H = (demandGPerM2Day / 24) * q10Factor(q10, temperatureC, referenceC);
  const at = (hour: number): Float64Array => theta.subarray(hour * count, (hour + 1) * count);
  const setup = {
    cells,
    demandGPerH: demandByCell(section, cells, useGPerM2H, rootShareOfDemand),
    temperatureC,
    law,
  };
  const model = oxygenModel({ ...setup, halfUseGPerM3: oxygenInAirGPerM3(temperatureC) * halfUseShare }, at(0));
  const startG = model.storedG();
  const fraction = new Float64Array(hours * count);
  const lackingShare = new Float64Array(hours);
  const lackingH = new Float64Array(count);
  for (let hour = 0; hour < hours; hour++) {
    model.advance(at(hour), 1);
    for (let c = 0; c < count; c++) {
      const here = (model.gPerM3[c] / model.atmosphereGPerM3) * oxygenInAirFraction;
      fraction[hour * count + c] = here;
      if (here >= limitFraction) continue;
      lackingH[c] += 1;
      lackingShare[hour] += section.rootShare[c];
    }
  }
  const endG = model.storedG();
  const { diffusedG, withAirG, withWaterG, usedG } = model.sums;
  return {
    hours,
    fraction,
    lackingShare,
    lackingH,
    lackingRootH: lackingShare.reduce((sum, share) => sum + share, 0),
    balance: { startG, endG, ...model.sums, residualG: startG + diffusedG + withAirG + withWaterG - usedG - endG },
  };
}

/** Roots use their part where they are; the soil uses the rest under every square metre alike, falling off with depth. */
function demandByCell(section: Section, cells: OxygenCells, useGPerM2H: number, rootPart: number): Float64Array {
  const { layers, lanes, layerEdgesCm, rootShare } = section;
  const areaCm2 = cells.laneAreaCm2.reduce((sum, area) => sum + area, 0);
  const above = (cm: number): number => 1 - Math.exp(-cm / decayCm);
  const whole = above(layerEdgesCm[layers]);
  return Float64Array.from({ length: layers * lanes }, (_, c) => {
    const i = (c / lanes) | 0;
    const inLayer = (above(layerEdgesCm[i + 1]) - above(layerEdgesCm[i])) / whole;
    const soil = (1 - rootPart) * inLayer * cells.laneAreaCm2[c % lanes];
    return (useGPerM2H / 1e4) * (soil + rootPart * rootShare[c] * areaCm2);
  });
}

/** Faces from volumes and edges; the last ring of a ring section is ground behind a wall. */
function oxygenCells(section: Section): OxygenCells {
  const { layers, lanes, layerEdgesCm, laneEdgesCm, volumeCm3, geometry, thetaSaturated } = section;
  const thicknessCm = Float64Array.from({ length: layers }, (_, i) => layerEdgesCm[i + 1] - layerEdgesCm[i]);
  const laneAreaCm2 = Float64Array.from({ length: lanes }, (_, j) => volumeCm3[j] / thicknessCm[0]);
  const sideLengthCm = Float64Array.from({ length: lanes }, (_, j) => {
    const inner = laneEdgesCm[j];
    const outer = laneEdgesCm[j + 1];
    if (geometry === "strip") return laneAreaCm2[j] / (outer - inner);
    return j === lanes - 2 ? 0 : (2 * outer * laneAreaCm2[j]) / (outer * outer - inner * inner);
  });
  const laneDistanceCm = Float64Array.from({ length: lanes }, (_, j) =>
    j + 1 < lanes ? (laneEdgesCm[j + 2] - laneEdgesCm[j]) / 2 : 0,
  );
  return {
    layers,
    lanes,
    thicknessCm,
    laneAreaCm2,
    volumeCm3,
    sideLengthCm,
    laneDistanceCm,
    porosity: thetaSaturated,
  };
}

function requireShare(name: string, value: number): void {
  if (!(value >= 0 && value <= 1)) throw new RangeError(`oxygenOfRun requires ${name} in range: got ${value}`);
}
