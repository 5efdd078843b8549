import type { DefaultUsed, Result, TreeName } from "../water/result.js";

import type { FloorBasis } from "./floors.js";

export type { Comparison } from "../scenario/scenario.js";

/** Something that makes a comparison fair, and whether it holds. */
export interface Badge {
  readonly id: "same-water" | "same-weather" | "same-start" | "settled" | "one-question";
  /** True only if it was checked and holds. */
  readonly holds: boolean;
  /** What differs, as a number with its unit, where it does not hold; what was checked, where it does. */
  readonly detail: string;
  /** The numbers in `detail`, by name, for a text in another language. */
  readonly figures?: { readonly [name in "leastL" | "mostL" | "apartFraction" | "changeFraction"]?: number };
}

/** What a pair of programmes changes. */
export type Question =
  | "interval"
  | "pulses"
  | "gap"
  | "emitter-flow"
  | "lines"
  | "amount"
  | "start-time"
  | "nitrogen"
  | "rule"
  | "limits";

/** One measure of two programmes on one soil: the second minus the first. */
export interface Difference {
  readonly measureId: string;
  readonly unit: string;
  readonly soil: string;
  readonly tree: TreeName;
  readonly from: string;
  readonly to: string;
  readonly fromValue: number;
  readonly toValue: number;
  readonly difference: number;
  /** Below this size nothing is claimed: the model's own error on this measure or the smallest difference that matters. */
  readonly floor: number;
  readonly floorBasis: FloorBasis;
  readonly floorReason: string;
  readonly verdict: "rises" | "falls" | "no clear difference";
}

/** One programme on one soil with its result. */
export interface Arm {
  readonly soil: string;
  readonly programme: string;
  readonly result: Result;
}

/** All that a comparison says; plain data. */
export interface ComparisonResult {
  readonly version: string;
  readonly name: string;
  readonly remark: string;
  readonly arms: readonly Arm[];
  readonly badges: readonly Badge[];
  /** What each pair of neighbouring programmes changes; more than one means the comparison mixes questions. */
  readonly changes: readonly { readonly from: string; readonly to: string; readonly questions: readonly Question[] }[];
  readonly differences: readonly Difference[];
  readonly defaultsUsed: readonly DefaultUsed[];
}
