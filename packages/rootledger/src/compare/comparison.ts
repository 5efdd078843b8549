import type { Block, Programme, Season, SiteWeather, Soil, Start } from "../scenario/scenario.js";
import type { DefaultUsed, Result, TreeName } from "../water/result.js";

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
}

export interface Badge {
  readonly id: "same-water" | "same-weather" | "same-start" | "settled" | "one-question";
  /** True only if it was checked and holds. */
  readonly holds: boolean;
  /** What differs, as a number with its unit, where it does not hold; what was checked, where it does. */
  readonly detail: string;
}

export type Question = "interval" | "pulses" | "gap" | "emitter-flow" | "amount" | "start-time";

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
  readonly floorReason: string;
  readonly verdict: "rises" | "falls" | "no clear difference";
}

export interface Arm {
  readonly soil: string;
  readonly programme: string;
  readonly result: Result;
}

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
