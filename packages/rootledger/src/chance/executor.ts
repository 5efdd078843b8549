import type { MemberRun } from "./member-run.js";

/** What became of one member. */
export type MemberOutcome =
  | { readonly member: number; readonly values: Float64Array }
  | { readonly member: number; readonly failure: string };

/** Raised by the caller to stop; an `AbortSignal` is one. */
export interface CancelSignal {
  readonly aborted: boolean;
}

/** Members from `from` to below `to`, each to be delivered once, in any order. */
export interface Work {
  readonly from: number;
  readonly to: number;
  /** Takes the outcome of one member. */
  readonly deliver: (outcome: MemberOutcome) => void;
  readonly cancel: CancelSignal;
}

/** Runs members where the caller wants them run. Ends when all are delivered or the work was cancelled. */
export type Executor = (work: Work) => Promise<void>;

/** Runs one member and catches whatever it throws, so that a member that fails takes nothing else with it. @example outcomeOf((i) => Float64Array.of(2 * i), 3) // { member: 3, values: [6] } */
export function outcomeOf(run: MemberRun, member: number): MemberOutcome {
  try {
    return { member, values: run(member) };
  } catch (error) {
    return { member, failure: error instanceof Error ? error.message : String(error) };
  }
}

/**
 * One member after the other in the calling thread.
 *
 * @param pause awaited after each member, for a thread that has a screen or a cancel button to look after
 * @example oneThread(memberRun(plan))
 */
export function oneThread(run: MemberRun, pause?: () => Promise<void>): Executor {
  return async ({ from, to, deliver, cancel }) => {
    for (let member = from; member < to && !cancel.aborted; member++) {
      deliver(outcomeOf(run, member));
      if (pause) await pause();
    }
  };
}
