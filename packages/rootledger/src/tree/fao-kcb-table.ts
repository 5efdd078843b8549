import type { Printed } from "./fao-kc-table.js";
import type { Verified } from "./sourced.js";

/** Basal crop coefficients of a crop in the standard climate: RHmin 45 %, 2 m/s, well watered. */
export interface FaoKcbRow {
  readonly kcbInitial: Printed;
  readonly kcbMiddle: Printed;
  readonly kcbEnd: Printed;
  readonly verified: Verified;
}

/** Where the coefficients come from. */
export const faoKcbSource =
  "Allen, Pereira, Raes & Smith (1998), FAO Irrigation and Drainage Paper 56, ch. 7, table 17";

const row = (kcbInitial: Printed, kcbMiddle: Printed, kcbEnd: Printed, verified: Verified): FaoKcbRow => ({
  kcbInitial,
  kcbMiddle,
  kcbEnd,
  verified,
});

/** The crops of `faoKcTable`; cucumber as quoted by the paper's example 45. */
export const faoKcbTable: Readonly<Record<string, FaoKcbRow>> = {
  "avocado, no ground cover": row(0.5, 0.8, 0.7, "seen"),
  "citrus, no ground cover, 70 % canopy": row(0.65, 0.6, 0.65, "seen"),
  "citrus, no ground cover, 50 % canopy": row(0.6, 0.55, 0.6, "seen"),
  "citrus, no ground cover, 20 % canopy": row(0.45, 0.4, 0.5, "memory"),
  "citrus, active ground cover, 70 % canopy": row(0.75, 0.7, 0.75, "memory"),
  "citrus, active ground cover, 50 % canopy": row(0.75, 0.75, 0.75, "memory"),
  "citrus, active ground cover, 20 % canopy": row(0.8, 0.8, 0.85, "memory"),
  "berries (bushes)": row(0.2, 1, 0.4, "memory"),
  strawberries: row(0.3, 0.8, 0.7, "seen"),
  "apples, no ground cover, killing frost": row(0.35, 0.9, 0.65, "seen"),
  "apples, no ground cover, no frost": row(0.5, 0.9, 0.7, "memory"),
  "apples, active ground cover, killing frost": row(0.45, 1.15, 0.9, "memory"),
  "apples, active ground cover, no frost": row(0.75, 1.15, 0.8, "memory"),
  "apricots, peaches, stone fruit: no ground cover, killing frost": row(0.35, 0.85, 0.6, "memory"),
  "apricots, peaches, stone fruit: no ground cover, no frost": row(0.45, 0.85, 0.6, "memory"),
  "apricots, peaches, stone fruit: active ground cover, killing frost": row(0.45, 1.1, 0.85, "memory"),
  "apricots, peaches, stone fruit: active ground cover, no frost": row(0.75, 1.1, 0.8, "memory"),
  "almonds, no ground cover": row(0.2, 0.85, 0.6, "memory"),
  kiwi: row(0.2, 1, 1, "memory"),
  olives: row(0.55, 0.65, 0.65, "seen"),
  "pistachios, no ground cover": row(0.2, 1.05, 0.4, "memory"),
  "walnut orchard": row(0.4, 1.05, 0.6, "memory"),
  "grapes, table or raisin": row(0.15, 0.8, 0.4, "seen"),
  "grapes, wine": row(0.15, 0.65, 0.4, "memory"),
  "banana, 1st year": row(0.15, 1.05, 0.9, "seen"),
  "banana, 2nd year": row(0.6, 1.1, 1.05, "seen"),
  "coffee, bare ground": row(0.8, 0.9, 0.9, "memory"),
  "coffee, with weeds": row(1, 1.05, 1.05, "memory"),
  cacao: row(0.9, 1, 1, "memory"),
  "date palms": row(0.8, 0.85, 0.85, "memory"),
  tomato: row(0.15, 1.1, [0.6, 0.8], "seen"),
  "cucumber, fresh market": row(0.15, 0.95, 0.7, "seen"),
  "beans, dry": row(0.15, 1.1, 0.25, "seen"),
  "maize, grain": row(0.15, 1.15, [0.5, 0.15], "memory"),
  "maize, sweet": row(0.15, 1.1, 1, "memory"),
};
