import type { Result } from "rootledger";
import type { EnsemblePlan, EnsembleResult, MemberOutcome, UnknownsRanking } from "rootledger/chance";
import type { ComparisonResult } from "rootledger/compare";

/** From the page to the worker. A newer request ends the work on an older one. */
export interface CompareRequest {
  readonly id: number;
  readonly kind: "compare";
  /** A comparison file; its weather file is one of those the worker carries. */
  readonly file: object;
  /** The tree that is looked at; the soil's pictures always show the mean one. */
  readonly tree: "mean" | "under-fed" | "over-fed";
  /** Texts of files that the worker does not carry, by the name that the file uses. */
  readonly files: Readonly<Record<string, string>>;
  /** The days in view on the same calendar, shown while the season is computed. */
  readonly preview: { readonly file: object; readonly firstDay: number };
}

/** Asks for the days of a file by both engines, every run from the soil given for it. */
export interface CheckRequest {
  readonly id: number;
  readonly kind: "check";
  readonly file: object;
  /** Water of every cell of each run at the beginning, in the comparison's order. */
  readonly starts: readonly Float64Array[];
  readonly files: Readonly<Record<string, string>>;
}

/** Scenario files to run one by one, each for one tree; the mean one's soil is always kept. */
export interface SweepRequest {
  readonly id: number;
  readonly kind: "sweep";
  readonly runs: readonly {
    readonly file: object;
    readonly tree: "mean" | "under-fed" | "over-fed";
    /** Rain of single days in place of the record's, mm by date. */
    readonly rainMm?: Readonly<Record<string, number>>;
  }[];
  readonly files: Readonly<Record<string, string>>;
}

export interface SweepAnswer {
  readonly id: number;
  readonly index: number;
  readonly all: number;
  readonly result: Result;
  readonly ground: Ground;
}

/** Asks for draws of what is unknown about a file: paired differences with their bands, the same draws for every programme. */
export interface DrawsRequest {
  readonly id: number;
  readonly kind: "draws";
  readonly file: object;
  readonly files: Readonly<Record<string, string>>;
  readonly tree: CompareRequest["tree"];
  readonly members: number;
  /** Workers that run members beside the one that sums them up. */
  readonly helpers: number;
}

/** Asks which unknown moves the differences of a file most. */
export interface RankRequest extends Omit<DrawsRequest, "kind"> {
  readonly kind: "rank";
}

export interface RankAnswer {
  readonly id: number;
  readonly ranking: UnknownsRanking;
  readonly tookMs: number;
}

/** From the worker that sums up to one that helps: the plan once, then members. */
export type HelperRequest =
  | { readonly id: number; readonly kind: "plan"; readonly plan: EnsemblePlan }
  | { readonly id: number; readonly kind: "members"; readonly members: readonly number[] };

/** What the pictures need to know beside the result. */
export interface Ground {
  readonly airLimitFraction: number;
  readonly rootDepthCm: number;
}

export interface Answer {
  readonly id: number;
  readonly result: ComparisonResult;
  readonly ground: Ground;
  /** First day of the result, counted from the season's start. */
  readonly firstDay: number;
  readonly tookMs: number;
}

/** How far the slow engine has come: its finished runs, and what they say where both of a pair are there. */
export interface CheckAnswer {
  readonly id: number;
  readonly fast: ComparisonResult;
  /** Runs of the slow engine so far, a failed one included. */
  readonly physics: readonly Result[];
  readonly differences: ComparisonResult["differences"];
  readonly tookMs: number;
  readonly complete: boolean;
}

/** What the draws say so far. */
export interface DrawsAnswer {
  readonly id: number;
  readonly result: EnsembleResult;
  readonly tookMs: number;
  readonly complete: boolean;
}

export interface FaultLine {
  readonly code: string;
  readonly path: string;
  readonly received: string;
  readonly rule: string;
  /** What the rule speaks of, for other languages. */
  readonly terms?: Readonly<Record<string, string | number>>;
}

/** From the worker to the page. */
export type WorkerMessage =
  | { readonly id: number; readonly kind: "progress"; readonly done: number; readonly all: number }
  | ({ readonly kind: "preview" } & Answer)
  | ({ readonly kind: "season" } & Answer)
  | ({ readonly kind: "check" } & CheckAnswer)
  | ({ readonly kind: "swept" } & SweepAnswer)
  | ({ readonly kind: "draws" } & DrawsAnswer)
  | ({ readonly kind: "ranked" } & RankAnswer)
  | { readonly id: number; readonly kind: "outcome"; readonly outcome: MemberOutcome }
  | {
      readonly id: number;
      readonly kind: "faults";
      readonly faults: readonly FaultLine[];
      /** Of a sweep: which run could not be read. */
      readonly index?: number;
    }
  | { readonly id: number; readonly kind: "failed"; readonly message: string };
