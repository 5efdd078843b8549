import type { Verified } from "./sourced.js";

/** One value, or the two that the table prints: a range, or the ends of two ways of growing. */
export type Printed = number | readonly [number, number];

/** Single crop coefficients of a crop in the standard climate: RHmin 45 %, 2 m/s, well watered. */
export interface FaoKcRow {
  readonly kcInitial: Printed;
  readonly kcMiddle: Printed;
  readonly kcEnd: Printed;
  /** Greatest height of the crop, m. */
  readonly heightM: Printed;
  readonly verified: Verified;
}

/** Where the coefficients come from. */
export const faoKcSource = "Allen, Pereira, Raes & Smith (1998), FAO Irrigation and Drainage Paper 56, ch. 6, table 12";

const row = (
  kcInitial: Printed,
  kcMiddle: Printed,
  kcEnd: Printed,
  heightM: Printed,
  verified: Verified,
): FaoKcRow => ({ kcInitial, kcMiddle, kcEnd, heightM, verified });

/**
 * Orchard and berry crops, and the few others that the worked examples need. Kc of the initial stage is the group's value where
 * the table prints none for the crop (tomato, cucumber, beans, maize). Olives: a footnote gives other monthly values for Spain.
 * Maize, grain: 0.60 at high moisture, 0.35 dried on the field. Cucumber: example 45 quotes 0.4 for the initial stage.
 */
export const faoKcTable: Readonly<Record<string, FaoKcRow>> = {
  "avocado, no ground cover": row(0.6, 0.85, 0.75, 3, "seen"),
  "citrus, no ground cover, 70 % canopy": row(0.7, 0.65, 0.7, 4, "seen"),
  "citrus, no ground cover, 50 % canopy": row(0.65, 0.6, 0.65, 3, "seen"),
  "citrus, no ground cover, 20 % canopy": row(0.5, 0.45, 0.55, 2, "memory"),
  "citrus, active ground cover, 70 % canopy": row(0.75, 0.7, 0.75, 4, "seen"),
  "citrus, active ground cover, 50 % canopy": row(0.8, 0.8, 0.8, 3, "seen"),
  "citrus, active ground cover, 20 % canopy": row(0.85, 0.85, 0.85, 2, "memory"),
  "berries (bushes)": row(0.3, 1.05, 0.5, 1.5, "memory"),
  strawberries: row(0.4, 0.85, 0.75, 0.2, "seen"),
  "apples, cherries, pears: no ground cover, killing frost": row(0.45, 0.95, 0.7, 4, "seen"),
  "apples, cherries, pears: no ground cover, no frost": row(0.6, 0.95, 0.75, 4, "memory"),
  "apples, cherries, pears: active ground cover, killing frost": row(0.5, 1.2, 0.95, 4, "seen"),
  "apples, cherries, pears: active ground cover, no frost": row(0.8, 1.2, 0.85, 4, "seen"),
  "apricots, peaches, stone fruit: no ground cover, killing frost": row(0.45, 0.9, 0.65, 3, "memory"),
  "apricots, peaches, stone fruit: no ground cover, no frost": row(0.55, 0.9, 0.65, 3, "memory"),
  "apricots, peaches, stone fruit: active ground cover, killing frost": row(0.5, 1.15, 0.9, 3, "memory"),
  "apricots, peaches, stone fruit: active ground cover, no frost": row(0.8, 1.15, 0.85, 3, "memory"),
  "almonds, no ground cover": row(0.4, 0.9, 0.65, 5, "memory"),
  kiwi: row(0.4, 1.05, 1.05, 3, "memory"),
  "olives (40-60 % cover)": row(0.65, 0.7, 0.7, [3, 5], "seen"),
  "pistachios, no ground cover": row(0.4, 1.1, 0.45, [3, 5], "memory"),
  "walnut orchard": row(0.5, 1.1, 0.65, [4, 5], "memory"),
  "grapes, table or raisin": row(0.3, 0.85, 0.45, 2, "seen"),
  "grapes, wine": row(0.3, 0.7, 0.45, [1.5, 2], "memory"),
  "banana, 1st year": row(0.5, 1.1, 1, 3, "seen"),
  "banana, 2nd year": row(1, 1.2, 1.1, 4, "memory"),
  "coffee, bare ground": row(0.9, 0.95, 0.95, [2, 3], "seen"),
  "coffee, with weeds": row(1.05, 1.1, 1.1, [2, 3], "memory"),
  cacao: row(1, 1.05, 1.05, 3, "seen"),
  "date palms": row(0.9, 0.95, 0.95, 8, "memory"),
  tomato: row(0.6, 1.15, [0.7, 0.9], 0.6, "seen"),
  "cucumber, fresh market": row(0.6, 1, 0.75, 0.3, "seen"),
  "beans, dry": row(0.4, 1.15, 0.35, 0.4, "seen"),
  "maize, grain": row(0.3, 1.2, [0.6, 0.35], 2, "seen"),
  "maize, sweet": row(0.3, 1.15, 1.05, 1.5, "memory"),
};
