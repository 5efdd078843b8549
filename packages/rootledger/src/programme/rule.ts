import type { Asked, Morning } from "./morning.js";

/** Water of one run: how long the valve is open, or what it brings. */
export type Amount = { readonly minutes: number } | { readonly litresPerTree: number };

/** When a rule may water and how its runs are split. It decides at the whole hour at or before `startH`. */
export interface RuleClock {
  /** Clock time of the first opening, hours since midnight. */
  readonly startH: number;
  /** Days from one decision to the next. */
  readonly everyDays: number;
  /** Day of the season of the first decision. */
  readonly firstDay: number;
  readonly pulses: number;
  readonly gapMinutes: number;
}

/** How a rule finds what to give. */
export type RuleKind =
  /** An amount for each month, January first; `per` says for how long each of them is. */
  | { readonly kind: "by-month"; readonly amounts: readonly Amount[]; readonly per: "day" | "month" }
  /** An amount a day from each age on, ages rising. */
  | {
      readonly kind: "by-age";
      readonly ageYearsAtStart: number;
      readonly amounts: readonly { readonly fromYears: number; readonly amount: Amount }[];
    }
  /**
   * What left the ground of the mean tree through leaves and soil surface, less rain on its rooted ground, since the last run;
   * times the factor. What limits cut off stays owed.
   */
  | { readonly kind: "replace-use"; readonly factor: number }
  /** When the root zone has lost more than a share of its available water; without an amount, what it lacks of field capacity. */
  | { readonly kind: "depletion"; readonly aboveFraction: number; readonly amount?: Amount }
  /** When the sensor is drier than the trigger. */
  | {
      readonly kind: "tension";
      readonly aboveKPa: number;
      readonly depthCm: number;
      /** Distance from the line, or from the emitter, away from the tree row. */
      readonly fromLineCm: number;
      readonly amount: Amount;
    }
  /** The user's own function: the runs it asks for this morning. Must not keep anything but `memory`. */
  | {
      readonly kind: "own";
      /** What is asked for, from what the morning shows. */
      readonly decide: (morning: Morning) => readonly Asked[];
    };

/** A rule that decides once a day from the state of the mean tree and what happened since it last decided. */
export type WateringRule = RuleClock & RuleKind;

/** What the pump, the tariff and the water right allow. A run is cut to fit, and every cut is booked with its reason. */
export interface PumpLimits {
  /** Hours of one day, by the clock, in which the pump may run; all sectors share them. */
  readonly pumpHoursPerDay?: number;
  /** Sectors that take turns on the pump, this one counted; default 1. */
  readonly sectors?: number;
  /** Hours of the clock in which the valve may be open; from may lie after to, over midnight. */
  readonly allowed?: { readonly fromH: number; readonly toH: number };
  /** No opening is shorter; pulses that would be are made fewer and longer. */
  readonly shortestPulseMinutes?: number;
  /** All pulses of a run together. */
  readonly longestRunMinutes?: number;
  /** Water of the whole season. */
  readonly allocationM3PerHa?: number;
  /** No run where at least this much rain fell in the day before the decision. */
  readonly skipFromRainMm?: number;
}
