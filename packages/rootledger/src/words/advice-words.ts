import type { AdviceAnswer, AdviceCaution } from "../advise/advice.js";
import type { AdviceCause } from "../advise/advice-cause.js";

/** Every text of advice. `$name` stands for a term. */
export interface AdviceWords {
  readonly answer: Readonly<Record<AdviceAnswer, string>>;
  /** `gap-never-covers`: the air is not back before the next pulse at all. `run-within-day`: a run within what the tree draws on its day. `start-hour-fewer`: less is drawn in the run than today. */
  readonly cause: Readonly<
    Record<AdviceCause["code"] | "gap-never-covers" | "one-run-never" | "run-within-day" | "start-hour-fewer", string>
  >;
  readonly caution: Readonly<Record<AdviceCaution, string>>;
  readonly day: string;
  readonly days: string;
}
