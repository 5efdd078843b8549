import type { CanopyPoint } from "./canopy-growth.js";
import type { KcStage } from "./kc-by-stage.js";
import type { Disputed, Sourced, Verified } from "./sourced.js";

/** Coefficients of the three anchor points of the season. */
export interface CropCoefficients {
  readonly initial: Disputed;
  readonly middle: Disputed;
  readonly end: Disputed;
}

/** Kc of each month from January, as a source printed them. */
export interface MonthlyKc {
  readonly hemisphere: "north" | "south";
  readonly kcFromJanuary: readonly number[];
  readonly source: string;
  readonly verified: Verified;
}

/** A crop as data: every number with its source, and what others say. A start, not a truth: measure what you can. */
export interface CropPreset {
  readonly name: string;
  readonly kc: CropCoefficients;
  readonly kcb: CropCoefficients;
  readonly otherKc: readonly MonthlyKc[];
  readonly heightM: Disputed;
  readonly rootDepthCm: Disputed;
  /** Share of all roots in the top 20 cm. */
  readonly topShare: Disputed;
  readonly depletionFraction: Disputed;
  readonly pullLimitKPa: Disputed;
  readonly zeroUptakeKPa: Disputed;
  readonly airLimitFraction: Disputed;
  readonly airReturnKPa: Disputed;
  /** Days of the year of phenological events in the northern hemisphere, MM-DD. */
  readonly phenologyNorth: Readonly<Record<string, string>>;
  readonly phenologySource: string;
  /** Events at which stress of either kind costs most. */
  readonly sensitive: readonly string[];
  /** Usual size of the canopy by age. */
  readonly canopy: readonly CanopyPoint[];
  readonly canopySource: string;
  /** What no published source was found for, and other things that a user must know. */
  readonly cautions: readonly string[];
}

/** A preset number. @example disputed(0.85, "FAO-56 table 12", "seen").value // 0.85 */
export const disputed = (
  value: number,
  source: string,
  verified: Verified,
  others: readonly Sourced[] = [],
): Disputed => ({ value, source, verified, others });

/** A figure of another source. @example sourced(0.64, "Grismer et al. 2000", "seen").value // 0.64 */
export const sourced = (value: number, source: string, verified: Verified): Sourced => ({ value, source, verified });

/** Events at which the four stages of a preset begin. */
export const stageEvents = { initial: "rest", development: "growth", middle: "full", late: "decline" } as const;

/**
 * The preset's four stages for `kcByStage`, named by its events, which return every year: constant, rising, constant, falling back
 * to the initial value. FAO-56 lets Kc drop at the end; an evergreen has no end, so the late stage runs down to the end value and
 * the new year starts at the initial one.
 *
 * @example presetStages(avocado, "kcb")[2].kcFrom // 0.8
 */
export function presetStages(preset: CropPreset, which: "kc" | "kcb"): readonly KcStage[] {
  const { initial, middle, end } = preset[which];
  const stage = (name: keyof typeof stageEvents, kcFrom: number, kcTo: number): KcStage => ({
    name,
    starts: { event: stageEvents[name] },
    kcFrom,
    kcTo,
  });
  return [
    stage("initial", initial.value, initial.value),
    stage("development", initial.value, middle.value),
    stage("middle", middle.value, middle.value),
    stage("late", middle.value, end.value),
  ];
}
