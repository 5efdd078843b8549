import type { Verified } from "./sourced.js";

/** Tolerance of a crop to salt: nothing is lost up to the threshold, then in proportion to ECe. ECe is that of the saturation extract. */
export interface SaltRow {
  /** ECe up to which nothing is lost, dS/m; two figures where the source prints a range. Absent where it prints a rating only. */
  readonly thresholdDsPerM?: readonly number[];
  /** Loss per dS/m beyond the threshold, fraction of the crop's full growth or harvest. */
  readonly slopePerDsPerM?: readonly number[];
  /** T tolerant, MT moderately tolerant, MS moderately sensitive, S sensitive. */
  readonly rating: "T" | "MT" | "MS" | "S";
  readonly verified: Verified;
}

/** Where the thresholds come from. */
export const faoSaltSource =
  "Allen, Pereira, Raes & Smith (1998), FAO Irrigation and Drainage Paper 56, ch. 8, table 23";

const numbers = (value: number | readonly number[]): readonly number[] => (typeof value === "number" ? [value] : value);

const row = (
  threshold: number | readonly number[],
  slope: number | readonly number[],
  rating: SaltRow["rating"],
  verified: Verified,
): SaltRow => ({ thresholdDsPerM: numbers(threshold), slopePerDsPerM: numbers(slope), rating, verified });

const rated = (rating: SaltRow["rating"]): SaltRow => ({ rating, verified: "seen" });

/** Rows of FAO-56 table 23. It prints no number for avocado, apples, olives and banana. */
export const faoSaltTable: Readonly<Record<string, SaltRow>> = {
  tomato: row([0.9, 2.5], 0.09, "MS", "seen"),
  strawberries: row([1, 1.5], [0.11, 0.33], "S", "seen"),
  maize: row(1.7, 0.12, "MS", "seen"),
  beans: row(1, 0.19, "S", "seen"),
  orange: row(1.7, 0.16, "S", "seen"),
  grapes: row(1.5, 0.096, "MS", "seen"),
  almonds: row(1.5, 0.19, "S", "seen"),
  "date palms": row(4, 0.036, "T", "seen"),
  barley: row(8, 0.05, "T", "seen"),
  avocado: rated("S"),
  apples: rated("S"),
  olives: rated("MT"),
  banana: rated("MS"),
};

/** Where thresholds and slopes come from. */
export const maasHoffmanSource =
  "Maas & Hoffman (1977), J. Irrigation and Drainage Division ASCE 103(IR2):115-134, as in Ayers & Westcot (1985), FAO Irrigation and Drainage Paper 29 Rev. 1, table 4";

/** Rows of FAO-29 table 4 with the slopes of Maas & Hoffman. The slope of avocado is that of the table's own levels, 1.3 to 6.0. */
export const maasHoffmanTable: Readonly<Record<string, SaltRow>> = {
  avocado: row(1.3, 0.21, "S", "memory"),
  orange: row(1.7, 0.16, "S", "memory"),
  grapefruit: row(1.8, 0.16, "S", "memory"),
  peach: row(1.7, 0.21, "S", "memory"),
  apricot: row(1.6, 0.24, "S", "memory"),
  almond: row(1.5, 0.19, "S", "memory"),
  plum: row(1.5, 0.18, "S", "memory"),
  blackberry: row(1.5, 0.22, "S", "memory"),
  grape: row(1.5, 0.096, "MS", "memory"),
  strawberry: row(1, 0.33, "S", "memory"),
  bean: row(1, 0.19, "S", "memory"),
  tomato: row(2.5, 0.099, "MS", "memory"),
  "date palm": row(4, 0.036, "T", "memory"),
};
