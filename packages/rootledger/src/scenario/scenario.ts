import type { Material } from "../ground/material.js";
import type { Programme } from "../programme/programme.js";

export type { Structure as StructureWord } from "../ground/structure.js";
export type { Programme, Run } from "../programme/programme.js";

/**
 * A parsed scenario: one block, one soil, one programme, one season of weather. Field units, each named in its field.
 * Made by `parseScenario`, which checks every field and lists the defaults it used.
 */
export interface Scenario {
  readonly format: 1;
  readonly name: string;
  readonly season: Season;
  readonly block: Block;
  readonly soil: Soil;
  readonly weather: SiteWeather;
  readonly programme: Programme;
  readonly start: Start;
  /** Default `bucket`. */
  readonly engine?: EngineName;
}

/** `bucket`: the fast engine. `richards`: the referee, finer cells and implicit steps, a hundred times slower. */
export type EngineName = "bucket" | "richards";

export interface Season {
  /** ISO date of the first day. */
  readonly startDate: string;
  readonly days: number;
}

export interface Block {
  readonly treeSpacingM: number;
  readonly rowSpacingM: number;
  readonly tree: Tree;
  readonly lines: Lines;
}

export interface Tree {
  readonly name: string;
  readonly canopyDiameterM: number;
  /** Basal crop coefficient by date; linear between the dates, the first and last hold beyond them. */
  readonly kcb: readonly { readonly date: string; readonly kcb: number }[];
  readonly roots: Roots;
  readonly limits: Limits;
}

export interface Roots {
  readonly depthCm: number;
  /** Share of all roots in the top 20 cm. */
  readonly topShare: number;
  readonly lateral:
    | { readonly kind: "along-lines"; readonly halfWidthCm: number }
    | { readonly kind: "disc"; readonly radiusCm: number };
  readonly compensationOnset: number;
}

export interface Limits {
  readonly pullLimitKPa: number;
  readonly zeroUptakeKPa: number;
  readonly airLimitFraction: number;
  readonly airZeroFraction: number;
  readonly airReturnKPa: number;
}

export interface Lines {
  /** Distances of the driplines from the tree row; mirror pairs such as -0.4 and 0.4, or 0. */
  readonly offsetsM: readonly number[];
  readonly emitterSpacingM: number;
  readonly emitterFlowLPerH: number;
  /** Emitters of a tree that are plugged; the others are open. */
  readonly pluggedPerTree: number;
  /** Mean flow of the lowest quarter of emitters over the mean flow. */
  readonly lowQuarterUniformityFraction: number;
}

/** A horizon: how deep it reaches and what it is made of. */
export type Horizon = { readonly toCm: number } & Material;

export interface Soil {
  readonly name: string;
  /** From the surface down; the last one ends the profile. */
  readonly horizons: readonly Horizon[];
  /**
   * What lies below the last horizon: ground that drains freely, a water table at the profile's lower end, or a layer that
   * takes no more than a stated flow.
   */
  readonly bottom:
    | { readonly kind: "free-drainage" }
    | { readonly kind: "water-table" }
    | { readonly kind: "impeding"; readonly conductivityMmPerH: number };
  /** Sensitivity: share of the water entering the surface that cracks carry straight down. */
  readonly cracks?: { readonly fraction: number; readonly toDepthCm: number };
  /** Sensitivity: share of the pores that stay filled with air when the soil is wetted. */
  readonly trappedAirFraction?: number;
  /** Factor on the conductivity at saturation of every horizon; the dry branch stays. Drawn by an ensemble, no field of the file. */
  readonly kSatFactor?: number;
}

export interface SiteWeather {
  readonly name: string;
  readonly latitudeDeg: number;
  readonly elevationM: number;
  readonly windHeightM: number;
  readonly et0Method: "penman-monteith" | "hargreaves-samani" | "given";
  readonly rainIntensityMmPerH: number;
  /** First day of the columns below; the season lies inside them. */
  readonly startDate: string;
  readonly days: number;
  readonly et0Mm: Float64Array;
  readonly rainMm: Float64Array;
  readonly sunriseH: Float64Array;
  readonly sunsetH: Float64Array;
}

export interface Start {
  /** Tension of the whole profile at the start. */
  readonly tensionKPa: number;
  /**
   * `same-state`: the season starts from that tension at once. `settled`: the first days of the season are repeated under
   * the scenario's own programme until storage changes by less than 1 % of the water applied per cycle, and discarded.
   */
  readonly kind: "same-state" | "settled";
}

/** One block and season, two to four programmes, one or more soils. */
export interface Comparison {
  readonly format: 1;
  readonly name: string;
  /** Said beside every result, for instance that the place is invented. */
  readonly remark: string;
  readonly season: Season;
  readonly block: Block;
  readonly weather: SiteWeather;
  readonly soils: readonly Soil[];
  readonly programmes: readonly Programme[];
  readonly start: Start;
  /** Default `bucket`. */
  readonly engine?: EngineName;
}
