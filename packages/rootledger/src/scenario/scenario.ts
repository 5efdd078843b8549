import type { Material } from "../ground/material.js";
import type { LineDrain } from "../programme/emitter-schedule.js";
import type { Programme } from "../programme/programme.js";
import type { LitterRoots } from "../tree/litter-roots.js";
import type { RootPoint } from "../tree/root-points.js";

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

/** The days that are simulated. */
export interface Season {
  /** ISO date of the first day. */
  readonly startDate: string;
  readonly days: number;
}

/** Trees of one kind under one valve: spacing, tree, lines, ground cover. */
export interface Block {
  readonly treeSpacingM: number;
  readonly rowSpacingM: number;
  readonly tree: Tree;
  readonly lines: Lines;
  /** Left out: bare ground, `soil-limited` evaporation, all rain meets the soil. */
  readonly surface?: Surface;
  /** Left out: salt is not reckoned. */
  readonly salt?: Salt;
  /** Left out: nitrogen is reckoned only where the programme brings some. */
  readonly nitrogen?: SoilNitrogen;
}

/** Salt of the water and of the ground, and what it does to the tree. Rain brings none. */
export interface Salt {
  /** EC of the irrigation water. */
  readonly waterEcDsPerM: number;
  /** EC of the saturation extract of the whole profile at the start. */
  readonly startEceDsPerM: number;
  /** How salt holds uptake back, cell by cell. */
  readonly response:
    | { readonly kind: "threshold-slope"; readonly thresholdDsPerM: number; readonly slopePerDsPerM: number }
    | { readonly kind: "osmotic-head" }
    | { readonly kind: "none" };
}

/** Nitrate nitrogen that is there without the programme, and what the tree can take. */
export interface SoilNitrogen {
  /** Nitrate nitrogen of the irrigation water itself. */
  readonly waterMgPerL: number;
  /** Nitrate nitrogen in the rooted depth at the start, even over ground and depth. */
  readonly startKgPerHa: number;
  /** Left out: the tree takes all that comes with the water it draws. */
  readonly mostUptakeGPerTreeDay?: number;
}

/** What stands between the weather and the soil. */
export interface Surface {
  readonly evaporation: "soil-limited" | "two-stage";
  /** Depth that two-stage evaporation dries. */
  readonly evaporableDepthCm: number;
  /** Rain that a closed canopy holds, mm of the ground it covers; 0: none. */
  readonly canopyStorageMm: number;
  readonly layer?: SurfaceLayer;
  /** Run-off of a day's rain by curve number, antecedent condition included; the rest falls evenly over the day. */
  readonly curveNumber?: number;
  /** What all this makes of the season's rain; made by `rainHeld`, and anew where the rain is changed. */
  readonly rain?: RainHeld;
}

/** By day of the season, shares of the day's rain that do not reach the soil, on ground all under canopy and on ground in the open. */
export interface RainHeld {
  readonly byCanopy: Float64Array;
  readonly byLayerUnderCanopy: Float64Array;
  readonly byLayerInOpen: Float64Array;
  /** Run-off by curve number, alike on all ground. */
  readonly runoff: Float64Array;
}

/** Litter, mulch or gravel, by day of the season. Water from the lines under it is not held back. */
export interface SurfaceLayer {
  readonly where: "under-canopy" | "all-ground";
  /** What is left of the evaporation of bare soil. */
  readonly evaporationFactor: Float64Array;
  /** Rain that it holds, mm of the ground it lies on. */
  readonly storageMm: Float64Array;
}

/** One tree of the block: size, demand, roots and limits. */
export interface Tree {
  readonly name: string;
  readonly canopyDiameterM: number;
  /** Basal crop coefficient by date; linear between the dates, the first and last hold beyond them. Empty beside `days`. */
  readonly kcb: readonly { readonly date: string; readonly kcb: number }[];
  /** What the parser worked out from crop, stages, climate and modifiers; it comes before `kcb`. */
  readonly days?: TreeDays;
  readonly roots: Roots;
  readonly limits: Limits;
  readonly ball?: NurseryBall;
}

/** The tree by day of the season. */
export interface TreeDays {
  /** Transpiration over ET0 on the whole ground of the tree. */
  readonly kcb: Float64Array;
  /** Upper limit of transpiration and evaporation over ET0; 0 where a single coefficient holds both. */
  readonly kcMax: Float64Array;
  /** Canopy that grows; left out, `canopyDiameterM` holds all season. */
  readonly canopyDiameterM?: Float64Array;
  /** Name of the crop's stage on each day, where the coefficient goes by stages. */
  readonly stages?: readonly string[];
}

/** Where the roots are and how they share the uptake. */
export interface Roots {
  readonly depthCm: number;
  /** Share of all roots in the top 20 cm. */
  readonly topShare: number;
  /** `wetted-lanes`: as far from the lines as drip keeps the soil wet; the factor on that is drawn by an ensemble, no field of the file. */
  readonly lateral:
    | { readonly kind: "wetted-lanes"; readonly widthFactor?: number }
    | { readonly kind: "along-lines"; readonly halfWidthCm: number }
    | { readonly kind: "disc"; readonly radiusCm: number };
  readonly compensationOnset: number;
  /** Roots in the leaf litter; a horizon of its own should give the litter's curve. */
  readonly litter?: LitterRoots;
  /** Roots that reach farther by date, at most to `depthCm`. */
  readonly growth?: readonly RootPoint[];
}

/** The medium that a young tree came in. Its ground is then rings round the trunk, with all open emitters evenly round it. */
export interface NurseryBall {
  readonly diameterCm: number;
  readonly depthCm: number;
  /** Of the open emitters from the trunk. */
  readonly emitterDistanceCm: number;
  readonly material: Material;
}

/** Where thirst and lack of air begin and end. */
export interface Limits {
  /** Where the tree transpires 5 mm a day or more; always, if the next one is left out. */
  readonly pullLimitKPa: number;
  /** Pull limit on days of 1 mm or less, linear between (Feddes et al. 1978). */
  readonly pullLimitLowDemandKPa?: number;
  readonly zeroUptakeKPa: number;
  readonly airLimitFraction: number;
  readonly airZeroFraction: number;
  readonly airReturnKPa: number;
  /** Weeks with limits of their own, such as flowering. */
  readonly periods?: readonly LimitPeriod[];
}

/** A part of every year with limits of its own. */
export interface LimitPeriod {
  readonly name: string;
  /** First and last day, MM-DD; from may lie after to, over New Year. */
  readonly from: string;
  readonly to: string;
  /** What differs from the tree's other limits. */
  readonly limits: Partial<
    Pick<Limits, "pullLimitKPa" | "zeroUptakeKPa" | "airLimitFraction" | "airZeroFraction" | "airReturnKPa">
  >;
}

/** Driplines of the block and their emitters. */
export interface Lines {
  /** Distances of the driplines from the tree row; mirror pairs such as -0.4 and 0.4, or 0. */
  readonly offsetsM: readonly number[];
  readonly emitterSpacingM: number;
  readonly emitterFlowLPerH: number;
  /** Emitters of a tree that are plugged; the others are open. */
  readonly pluggedPerTree: number;
  /** Mean flow of the lowest quarter of emitters over the mean flow. */
  readonly lowQuarterUniformityFraction: number;
  /** Lines that run empty after every closing; left out: they stay full. */
  readonly drainOut?: LineDrain;
}

/** A horizon: how deep it reaches and what it is made of. */
export type Horizon = { readonly toCm: number } & Material;

/** Horizons from the top down and what is below them. */
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
  /** REW: water that the surface loses at full rate, for two-stage evaporation. */
  readonly readilyEvaporableMm?: number;
  /** Sensitivity: share of the water entering the surface that cracks carry straight down. */
  readonly cracks?: { readonly fraction: number; readonly toDepthCm: number };
  /** Sensitivity: share of the pores that stay filled with air when the soil is wetted. */
  readonly trappedAirFraction?: number;
  /** Factor on the conductivity at saturation of every horizon; the dry branch stays. Drawn by an ensemble, no field of the file. */
  readonly kSatFactor?: number;
}

/** The weather of the season at its site, a value for each day. */
export interface SiteWeather {
  readonly name: string;
  readonly latitudeDeg: number;
  readonly elevationM: number;
  readonly windHeightM: number;
  readonly et0Method: "penman-monteith" | "asce-short" | "hargreaves-samani" | "pan" | "given";
  readonly rainIntensityMmPerH: number;
  /** First day of the columns below; the season lies inside them. */
  readonly startDate: string;
  readonly days: number;
  readonly et0Mm: Float64Array;
  readonly rainMm: Float64Array;
  readonly sunriseH: Float64Array;
  readonly sunsetH: Float64Array;
  /** Own records by hour, from the first hour of the columns above; made by `withOwnHours` of rootledger/steps, no field of the file. */
  readonly hourly?: HourlyRecords;
}

/** Mm of each hour over the whole ground of a tree. What is left out follows the days: Kcb x ET0 by the sun, rain from midnight. */
export interface HourlyRecords {
  /** Most that the tree would transpire. */
  readonly transpirationMm?: Float64Array;
  /** Rain above the canopy. */
  readonly rainMm?: Float64Array;
}

/** State of the soil on the first midnight. */
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
