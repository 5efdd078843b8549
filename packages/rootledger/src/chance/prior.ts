import type { Distribution } from "./distribution.js";

/** What is unknown about a block. Values are absolute in the unit of the prior unless the unit is `factor` or `step`. */
export type UnknownId =
  | "root-depth"
  | "root-top-share"
  | "root-width"
  | "compensation-onset"
  | "pull-limit"
  | "dry-limb"
  | "air-limit"
  | "air-return"
  | "k-sat"
  | "field-capacity"
  | "structure"
  | "kcb"
  | "uniformity"
  | "weather-year";

/** One unknown and how far it may be from what the scenario says. */
export interface Prior {
  readonly id: UnknownId;
  readonly unit: "cm" | "kPa" | "fraction" | "factor" | "step" | "index";
  readonly spread: Distribution;
  readonly source: string;
}

/** Two unknowns that go together; `r` is the correlation of the normals behind their ranks (Gaussian copula). */
export interface Correlation {
  readonly a: UnknownId;
  readonly b: UnknownId;
  readonly r: number;
}

/** All that is unknown and how it goes together. */
export interface Priors {
  readonly unknowns: readonly Prior[];
  readonly correlations: readonly Correlation[];
}
