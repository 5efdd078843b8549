import type { DrawSource } from "../chance/draw.js";
import type { Programme } from "../programme/programme.js";
import type { Lines } from "../scenario/scenario.js";
import type { TreeName } from "../water/result.js";
import type { AdviceCause, AdviceFacts } from "./advice-cause.js";
import type { AdviceChoice, AdviceLadders } from "./advice-choice.js";
import type { CandidateCut } from "./advice-limits.js";
import type { AdviceDifference, AdviceMeasureId } from "./advice-set.js";

/** One of the four measures of one programme over the days that count. */
export interface AdviceMeasure {
  readonly id: AdviceMeasureId;
  readonly unit: "root-h" | "L" | "count";
  /** Median, lowest and highest of the draws (5 and 95 % from twenty draws on). */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Against today's programme, draw by draw. */
  readonly difference: AdviceDifference;
}

/** A programme of the trade-off set, or today's. */
export interface AdviceMember {
  readonly choice: AdviceChoice;
  /** Without its limits and nitrogen; to be put in the scenario in place of today's. */
  readonly programme: Programme;
  readonly lines: Lines;
  readonly isToday: boolean;
  /** Decisions in which it differs from today's; empty for today's. */
  readonly changes: readonly (keyof AdviceChoice)[];
  readonly litresPerRun: number;
  readonly litresPerDay: number;
  readonly minutesPerPulse: number;
  /** Clock time of the last closing of a run; above 24 on the next day. */
  readonly lastStopH: number;
  readonly measures: readonly AdviceMeasure[];
  /** Litres at the valve in the days that count; `same` holds up to 1 %. */
  readonly water: { readonly valveL: number; readonly apartFraction: number; readonly same: boolean };
  readonly cause: AdviceCause;
  readonly facts: AdviceFacts;
  /** The same four measures for every tree that the lines tell apart, with the scenario as said. */
  readonly trees: readonly ({ readonly tree: TreeName } & Readonly<Record<AdviceMeasureId, number>>)[];
}

/**
 * `same-for-both`: no programme of the set, nor any tried where today's is alone in it, differs from today's in thirst, air or water
 * below the roots, pump starts at most. `keep-today`: none is clearly better in anything. `choice`: some are clearly better in one
 * thing and worse in another; which matters more is not for the model to say. `better`: some are clearly better somewhere and worse
 * nowhere.
 */
export type AdviceAnswer = "same-for-both" | "keep-today" | "choice" | "better";

/** What `advise` found. There is no score and no order of merit: members stand nearest to today's first. */
export interface Advice {
  readonly version: string;
  readonly name: string;
  readonly status: "finished" | "stopped" | "most-candidates";
  readonly answer: AdviceAnswer;
  readonly tree: TreeName;
  readonly water: "same" | "may-change";
  readonly horizon: {
    readonly fromDate: string;
    readonly days: number;
    /** Days run before them under the new programme, not counted. */
    readonly leadDays: number;
  };
  readonly draws: {
    /** Draws that count, the scenario as said among them; and those under which today's could not be run. */
    readonly counted: number;
    readonly failed: number;
    /** Left out: the scenario as said alone. */
    readonly source?: DrawSource;
  };
  readonly candidates: {
    readonly tried: number;
    readonly cut: readonly { readonly reason: CandidateCut; readonly candidates: number }[];
  };
  readonly ladders: AdviceLadders;
  readonly today: AdviceMember;
  /** Today's is among them unless another is clearly better somewhere, starts included, and clearly worse nowhere. */
  readonly set: readonly AdviceMember[];
  /** Things to know that no number says. */
  readonly cautions: readonly AdviceCaution[];
}

/** `nitrogen-left-out`: doses per run have to be set anew. `rain-skipped`: runs are skipped by rain. `today-cut`: limits cut today's runs. */
export type AdviceCaution = "nitrogen-left-out" | "rain-skipped" | "today-cut" | "spade-decides" | "no-yield";
