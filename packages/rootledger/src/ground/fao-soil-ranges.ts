import type { TextureClass } from "./texture.js";
import type { Verified } from "./verified.js";

/** Two ends of a published range. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

/** Typical soil water characteristics of one soil type; water contents m3/m3. */
export interface FaoSoilRow {
  readonly fieldCapacity: Range;
  readonly wiltingPoint: Range;
  /** Field capacity less wilting point. */
  readonly available: Range;
  /** Readily evaporable water (stage 1), mm. */
  readonly readilyEvaporableMm: Range;
  /** Total evaporable water of a surface layer 0.10 m deep, mm. */
  readonly totalEvaporableMm: Range;
  readonly verified: Verified;
}

const range = (low: number, high: number): Range => ({ low, high });

/** Where the ranges come from. */
export const faoSoilRangesSource =
  "Allen, Pereira, Raes & Smith (1998), FAO Irrigation and Drainage Paper 56, ch. 7, table 19";

/** The soils of the table; it has no sandy clay loam, clay loam or sandy clay. */
export type FaoSoil = Exclude<TextureClass, "sandy clay loam" | "clay loam" | "sandy clay">;

/** The table's nine soils under the class names used here (its "silt clay loam" is silty clay loam). */
export const faoSoilRanges: Readonly<Record<FaoSoil, FaoSoilRow>> = {
  sand: {
    fieldCapacity: range(0.07, 0.17),
    wiltingPoint: range(0.02, 0.07),
    available: range(0.05, 0.11),
    readilyEvaporableMm: range(2, 7),
    totalEvaporableMm: range(6, 12),
    verified: "seen",
  },
  "loamy sand": {
    fieldCapacity: range(0.11, 0.19),
    wiltingPoint: range(0.03, 0.1),
    available: range(0.06, 0.12),
    readilyEvaporableMm: range(4, 8),
    totalEvaporableMm: range(9, 14),
    verified: "seen",
  },
  "sandy loam": {
    fieldCapacity: range(0.18, 0.28),
    wiltingPoint: range(0.06, 0.16),
    available: range(0.11, 0.15),
    readilyEvaporableMm: range(6, 10),
    totalEvaporableMm: range(15, 20),
    verified: "memory",
  },
  loam: {
    fieldCapacity: range(0.2, 0.3),
    wiltingPoint: range(0.07, 0.17),
    available: range(0.13, 0.18),
    readilyEvaporableMm: range(8, 10),
    totalEvaporableMm: range(16, 22),
    verified: "seen",
  },
  "silt loam": {
    fieldCapacity: range(0.22, 0.36),
    wiltingPoint: range(0.09, 0.21),
    available: range(0.13, 0.19),
    readilyEvaporableMm: range(8, 11),
    totalEvaporableMm: range(18, 25),
    verified: "seen",
  },
  silt: {
    fieldCapacity: range(0.28, 0.36),
    wiltingPoint: range(0.12, 0.22),
    available: range(0.16, 0.2),
    readilyEvaporableMm: range(8, 11),
    totalEvaporableMm: range(22, 26),
    verified: "memory",
  },
  "silty clay loam": {
    fieldCapacity: range(0.3, 0.37),
    wiltingPoint: range(0.17, 0.24),
    available: range(0.13, 0.18),
    readilyEvaporableMm: range(8, 11),
    totalEvaporableMm: range(22, 27),
    verified: "seen",
  },
  "silty clay": {
    fieldCapacity: range(0.3, 0.42),
    wiltingPoint: range(0.17, 0.29),
    available: range(0.13, 0.19),
    readilyEvaporableMm: range(8, 12),
    totalEvaporableMm: range(22, 28),
    verified: "seen",
  },
  clay: {
    fieldCapacity: range(0.32, 0.4),
    wiltingPoint: range(0.2, 0.24),
    available: range(0.12, 0.2),
    readilyEvaporableMm: range(8, 12),
    totalEvaporableMm: range(22, 29),
    verified: "memory",
  },
};

/** Where the wetted fractions come from. */
export const faoWettedFractionSource =
  "Allen, Pereira, Raes & Smith (1998), FAO Irrigation and Drainage Paper 56, ch. 7, table 20 (seen)";

/** What wets the ground, as FAO-56 names it. */
export type FaoWettingEvent =
  | "precipitation"
  | "sprinkler"
  | "basin"
  | "border"
  | "furrow narrow bed"
  | "furrow wide bed"
  | "alternate furrows"
  | "trickle";

/** Share of the surface a wetting event wets. */
export const faoWettedFraction: Readonly<Record<FaoWettingEvent, Range>> = {
  precipitation: range(1, 1),
  sprinkler: range(1, 1),
  basin: range(1, 1),
  border: range(1, 1),
  "furrow narrow bed": range(0.6, 1),
  "furrow wide bed": range(0.4, 0.6),
  "alternate furrows": range(0.3, 0.5),
  trickle: range(0.3, 0.4),
};
