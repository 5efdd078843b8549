import type { Verified } from "./sourced.js";

/** Range of the greatest effective rooting depth of a crop (the smaller figure to plan irrigation by) and its p at 5 mm/day. */
export interface FaoRootRow {
  readonly depthMinM: number;
  readonly depthMaxM: number;
  readonly depletionFraction: number;
  readonly verified: Verified;
}

/** Where the root depths come from. */
export const faoRootSource =
  "Allen, Pereira, Raes & Smith (1998), FAO Irrigation and Drainage Paper 56, ch. 8, table 22";

const row = (depthMinM: number, depthMaxM: number, depletionFraction: number, verified: Verified): FaoRootRow => ({
  depthMinM,
  depthMaxM,
  depletionFraction,
  verified,
});

/** Its p of 0.70 for avocado means tensions of hundreds of kPa in fine soil, where that crop draws little; see the presets. */
export const faoRootTable: Readonly<Record<string, FaoRootRow>> = {
  avocado: row(0.5, 1, 0.7, "seen"),
  "citrus 70 % canopy": row(1.2, 1.5, 0.5, "seen"),
  "citrus 50 % canopy": row(1.1, 1.5, 0.5, "seen"),
  "citrus 20 % canopy": row(0.8, 1.1, 0.5, "memory"),
  "berries (bushes)": row(0.6, 1.2, 0.5, "seen"),
  strawberries: row(0.2, 0.3, 0.2, "seen"),
  "apples, cherries, pears": row(1, 2, 0.5, "memory"),
  "apricots, peaches, stone fruit": row(1, 2, 0.5, "memory"),
  almonds: row(1, 2, 0.4, "memory"),
  kiwi: row(0.7, 1.3, 0.35, "memory"),
  olives: row(1.2, 1.7, 0.65, "memory"),
  pistachios: row(1, 1.5, 0.4, "memory"),
  "walnut orchard": row(1.7, 2.4, 0.5, "memory"),
  "grapes, table or raisin": row(1, 2, 0.35, "seen"),
  "grapes, wine": row(1, 2, 0.45, "seen"),
  banana: row(0.5, 0.9, 0.35, "seen"),
  coffee: row(0.9, 1.5, 0.4, "seen"),
  cacao: row(0.7, 1, 0.3, "memory"),
  "date palms": row(1.5, 2.5, 0.5, "memory"),
  tomato: row(0.7, 1.5, 0.4, "memory"),
  "cucumber, fresh market": row(0.7, 1.2, 0.5, "memory"),
  "beans, dry": row(0.6, 0.9, 0.45, "memory"),
  "maize, grain": row(1, 1.7, 0.55, "seen"),
  "maize, sweet": row(0.8, 1.2, 0.5, "seen"),
  "onion, dry": row(0.3, 0.6, 0.3, "seen"),
};
