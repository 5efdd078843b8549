import type { WateringBook } from "./watering-book.js";

/** Which tree of the line: the one fed by the lowest quarter of emitters, the average one, the one that receives the lines' drain-out. */
export type TreeName = "under-fed" | "mean" | "over-fed";

/** One quantity: `values[row * trees + tree]`. A state holds at the end of the row, a flux during it, a sum since the start. */
export interface Column {
  readonly name: string;
  readonly unit: string;
  readonly kind: "state" | "flux" | "sum";
  readonly values: Float64Array;
}

/** Rows of equal length in time (an hour or a day), one column per quantity. */
export interface Table {
  readonly rowLength: "hour" | "day";
  readonly rows: number;
  readonly trees: number;
  readonly columns: readonly Column[];
}

/** One number fixed before the run. `values` by tree. */
export interface Measure {
  readonly id: string;
  readonly unit: string;
  readonly values: Float64Array;
}

/** All that came in, went out and was stored, cm3 per tree, one entry per tree of the line. */
export interface Ledger {
  readonly startCm3: Float64Array;
  readonly emitterCm3: Float64Array;
  /** All rain that fell on the tree's ground. */
  readonly rainCm3: Float64Array;
  /** Rain that leaves, and litter or mulch, held and gave back to the air. */
  readonly heldByCanopyCm3: Float64Array;
  readonly heldByLayerCm3: Float64Array;
  readonly transpirationCm3: Float64Array;
  readonly evaporationCm3: Float64Array;
  readonly runoffCm3: Float64Array;
  readonly bottomCm3: Float64Array;
  /** Net water of an own source or sink (`ownProcesses` of rootledger/steps); 0 without one. */
  readonly ownCm3: Float64Array;
  readonly endCm3: Float64Array;
  /** start + in - out - end. */
  readonly residualCm3: Float64Array;
  /** Residual over (start + inflow). */
  readonly residualFraction: Float64Array;
}

/** How a run ended. */
export type RunStatus =
  | { readonly kind: "finished" }
  | { readonly kind: "stopped"; readonly hour: number; readonly by: string }
  | { readonly kind: "failed"; readonly hour: number; readonly message: string };

/** What a picture of the ground needs: edges, roots, limits. All by cell (layer x lanes + lane) unless the name says otherwise. */
export interface Section {
  readonly geometry: "strip" | "ring";
  readonly geometryReason: string;
  readonly layerEdgesCm: Float64Array;
  readonly laneEdgesCm: Float64Array;
  readonly layers: number;
  readonly lanes: number;
  /** Distance of each line from the tree row, cm, on the simulated side. */
  readonly lineAtCm: Float64Array;
  readonly volumeCm3: Float64Array;
  readonly rootShare: Float64Array;
  /** How far the roots spread sideways, and by what rule. */
  readonly rootsReason: string;
  /** Share of each lane's surface within the wetted reach of a line. */
  readonly wetByLane: Float64Array;
  readonly thetaSaturated: Float64Array;
  readonly thetaAtAirReturn: Float64Array;
  readonly thetaAtPullLimit: Float64Array;
  readonly thetaResidual: Float64Array;
}

/** Water the rooted soil can lend between the two limits, weighted by the roots. */
export interface Window {
  readonly airReturnKPa: number;
  readonly pullLimitKPa: number;
  /** Air-filled porosity below which roots may lack air, m3/m3. */
  readonly airLimitFraction: number;
  /** Root-zone water at each limit, mm over the rooted depth, weighted by root share. */
  readonly waterAtAirReturnMm: number;
  readonly waterAtPullLimitMm: number;
  /** Litres per tree between the limits in all rooted cells. */
  readonly litresPerTree: number;
}

/** Root-hours by part of the season, class and cell; `rootHours` of rootledger/water sums them by depth and distance. */
export interface RootHoursBook {
  /** Names of the parts: stages, limit periods or months. */
  readonly parts: readonly string[];
  /** Number of the part of each day. */
  readonly partOfDay: Uint16Array;
  /** `values[((part * 3 + kind) * cells + cell) * trees + tree]`, h; kind 0 all roots, 1 thirsty, 2 airless. */
  readonly values: Float64Array;
}

/** A default that the file left to us. */
export interface DefaultUsed {
  readonly path: string;
  readonly value: string;
  readonly source: string;
}

/** All of one solute that came in, went out and was stored, g per tree, one entry per tree of the line. Nitrogen is nitrate nitrogen. */
export interface SoluteLedger {
  readonly startG: Float64Array;
  /** With the irrigation water, what was injected included. */
  readonly withWaterG: Float64Array;
  /** Laid on the ground by hand. */
  readonly byHandG: Float64Array;
  readonly takenUpG: Float64Array;
  /** Out of the profile downward; below 0 where more rose. */
  readonly bottomG: Float64Array;
  readonly runoffG: Float64Array;
  /** In the soil at the end, and lying on it. */
  readonly endG: Float64Array;
  readonly onGroundG: Float64Array;
  readonly residualG: Float64Array;
  /** Residual over (start + all that came in). */
  readonly residualFraction: Float64Array;
}

/** What was dissolved in the water of a run. */
export interface SolutesResult {
  readonly days: Table;
  readonly salt?: SoluteLedger;
  readonly nitrogen?: SoluteLedger;
  /** At the end, `values[cell * trees + tree]`: EC of the saturation extract; nitrate nitrogen in the soil water. */
  readonly cellEceDsPerM?: Float64Array;
  readonly cellNitrateMgPerL?: Float64Array;
}

/** All that a run says; plain data. */
export interface Result {
  readonly version: string;
  readonly scenarioName: string;
  readonly soilName: string;
  readonly programmeName: string;
  readonly engine: "bucket" | "richards" | "spill";
  readonly status: RunStatus;
  readonly startDate: string;
  readonly trees: readonly TreeName[];
  readonly section: Section;
  readonly window: Window;
  /** How the start was reached; `changeFraction` is the last cycle's storage change over the water applied in it. */
  readonly settling: {
    readonly kind: "same-state" | "settled";
    readonly cycles: number;
    readonly changeFraction: number;
  };
  /** Steps that the engine took, all trees together, without those of the settling; each one updates every cell. */
  readonly subSteps: number;
  /** Openings and closings of the valve, hours since the season's start: on, off, on, off ... */
  readonly valveH: Float64Array;
  /** Of a programme with a rule or limits: what it asked for and what was cut, each cut with its reason. */
  readonly watering?: WateringBook;
  readonly days: Table;
  readonly hours: Table;
  /** Theta of every cell at whole hours, `values[(hour - fromHour) * cells + cell]`, of the mean tree, if asked for. */
  readonly cells?: { readonly fromHour: number; readonly hours: number; readonly theta: Float64Array };
  /** Hours each cell was airless or thirsty, `values[cell * trees + tree]`; multiply by root share for root-hours. */
  readonly airlessH: Float64Array;
  readonly thirstyH: Float64Array;
  readonly rootHours: RootHoursBook;
  readonly measures: readonly Measure[];
  readonly ledger: Ledger;
  /** Only where the scenario has salt or nitrogen. */
  readonly solutes?: SolutesResult;
  readonly notes: readonly string[];
}

/** A column by name. @throws RangeError if the table has no such column. @example column(result.days, "rain").values */
export function column(table: Table, name: string): Column {
  const found = table.columns.find((c) => c.name === name);
  if (!found)
    throw new RangeError(`column requires one of ${table.columns.map((c) => c.name).join(", ")}: got ${name}`);
  return found;
}

/** A measure by id. @throws RangeError if there is no such measure. @example measure(result, "below-roots").values[0] */
export function measure(result: Result, id: string): Measure {
  const found = result.measures.find((m) => m.id === id);
  if (!found) throw new RangeError(`measure requires one of ${result.measures.map((m) => m.id).join(", ")}: got ${id}`);
  return found;
}
