import type { Verified } from "./sourced.js";

/** Lengths of the four stages of a crop in one region. */
export interface FaoStageRow {
  readonly lengthsDays: readonly [number, number, number, number];
  /** As printed; a check on the four. */
  readonly totalDays: number;
  readonly verified: Verified;
}

/** Where the stage lengths come from. */
export const faoStageSource =
  "Allen, Pereira, Raes & Smith (1998), FAO Irrigation and Drainage Paper 56, ch. 6, table 11";

const row = (lengthsDays: readonly [number, number, number, number], totalDays: number, verified: Verified) => ({
  lengthsDays,
  totalDays,
  verified,
});

/** By crop and region. The table has no avocado, blueberry or strawberry. */
export const faoStageTable: Readonly<Record<string, FaoStageRow>> = {
  "citrus, Mediterranean": row([60, 90, 120, 95], 365, "seen"),
  "deciduous orchard, high latitudes": row([20, 70, 90, 30], 210, "seen"),
  "deciduous orchard, low latitudes": row([20, 70, 120, 60], 270, "memory"),
  "deciduous orchard, California": row([30, 50, 130, 30], 240, "memory"),
  "olives, Mediterranean": row([30, 90, 60, 90], 270, "seen"),
  "grapes, low latitudes": row([20, 40, 120, 60], 240, "memory"),
  "grapes, California": row([20, 50, 75, 60], 205, "seen"),
  "grapes, high latitudes": row([20, 50, 90, 20], 180, "memory"),
  "grapes, wine, mid latitudes": row([30, 60, 40, 80], 210, "memory"),
  "pistachios, Mediterranean": row([20, 60, 30, 40], 150, "memory"),
  "walnuts, Utah": row([20, 10, 130, 30], 190, "memory"),
  "banana 1st year, Mediterranean": row([120, 90, 120, 60], 390, "seen"),
  "banana 2nd year, Mediterranean": row([120, 60, 180, 5], 365, "memory"),
  "tomato, arid region, January": row([30, 40, 40, 25], 135, "memory"),
  "tomato, California Apr/May": row([35, 40, 50, 30], 155, "memory"),
  "tomato, Mediterranean Apr/May": row([30, 40, 45, 30], 145, "seen"),
  "maize grain, Spain/California Apr": row([30, 40, 50, 30], 150, "seen"),
  "maize grain, Idaho Apr": row([30, 40, 50, 50], 170, "seen"),
  "beans dry, continental May/June": row([20, 30, 40, 20], 110, "seen"),
  "beans dry, California/Pakistan June": row([15, 25, 35, 20], 95, "memory"),
  "beans dry, Idaho June": row([25, 25, 30, 20], 100, "memory"),
};
