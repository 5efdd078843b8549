import type { Badge, Difference } from "../compare/comparison.js";
import { pairedVerdict } from "../compare/index.js";
import { version } from "../version.js";
import type { TreeName } from "../water/result.js";
import { type DrawSource, drawMaker, drawRecord } from "./draw.js";
import { type EnsembleLayout, type EnsemblePlan, layoutOf } from "./ensemble-plan.js";
import type { CancelSignal, Executor } from "./executor.js";
import { type Band, createSketch } from "./sketch.js";
import { createTally, type MemberFailure, type PlainTally } from "./tally.js";

/** Share of the draws left out at each end of a band: 90 % lie inside. */
const tail = 0.05;

/** How an ensemble is run. */
export interface EnsembleOptions {
  readonly members: number;
  /** `oneThread(memberRun(plan))`, or workers. */
  readonly executor: Executor;
  /** Number of the first member; a later part of the same ensemble begins where the one before ended. Default 0. */
  readonly firstMember?: number;
  /** Called after each member. */
  readonly onProgress?: (done: number, all: number) => void;
  readonly cancel?: CancelSignal;
  /** `report`, the default: a failed member is listed with its draw and the others go on. `raise`: the first one ends the ensemble with an error. */
  readonly onFailure?: "report" | "raise";
}

/** How one measure of one arm is spread over the draws. */
export interface MeasureBand extends Band {
  readonly soil: string;
  readonly programme: string;
  readonly tree: TreeName;
  readonly measureId: string;
  readonly unit: string;
}

/** One measure of two programmes over the same draws: the second minus the first, draw by draw. */
export interface PairedDifference
  extends Band,
    Pick<
      Difference,
      "measureId" | "unit" | "soil" | "tree" | "from" | "to" | "floor" | "floorBasis" | "floorReason" | "verdict"
    > {
  /** Shares of the draws whose own difference is beyond their own floor. */
  readonly risesShare: number;
  readonly fallsShare: number;
}

/** All that an ensemble says; plain data. */
export interface EnsembleResult {
  readonly version: string;
  readonly name: string;
  readonly status: "finished" | "stopped";
  /** Members asked for; those with numbers; those without. */
  readonly members: number;
  readonly finished: number;
  readonly failed: number;
  /** The first hundred by number, each with its draw. */
  readonly failures: readonly {
    readonly member: number;
    readonly reason: string;
    readonly draw: Readonly<Record<string, number>>;
  }[];
  readonly draws: DrawSource;
  readonly bands: readonly MeasureBand[];
  readonly differences: readonly PairedDifference[];
  /** A badge holds if it held in every member that finished. */
  readonly badges: readonly { readonly id: Badge["id"]; readonly holds: boolean; readonly heldIn: number }[];
}

/**
 * Runs members and sums them up, in memory that does not grow with their number.
 *
 * @throws RangeError as `layoutOf`, if members or firstMember is not a whole number, or, with `raise`, for the first member that fails,
 * naming its number, draw and reason.
 * @example await tallyEnsemble(plan, { members: 200, executor: oneThread(memberRun(plan)) })
 */
export async function tallyEnsemble(
  plan: EnsemblePlan,
  {
    members,
    executor,
    firstMember = 0,
    onProgress,
    cancel = { aborted: false },
    onFailure = "report",
  }: EnsembleOptions,
): Promise<PlainTally> {
  if (!(Number.isInteger(members) && members > 0)) {
    throw new RangeError(`an ensemble requires a whole number of members above 0: got ${members}`);
  }
  if (!(Number.isInteger(firstMember) && firstMember >= 0)) {
    throw new RangeError(`an ensemble requires a whole firstMember from 0: got ${firstMember}`);
  }
  const tally = createTally(layoutOf(plan));
  let done = 0;
  let raised: MemberFailure | undefined;
  await executor({
    from: firstMember,
    to: firstMember + members,
    cancel: {
      get aborted() {
        return cancel.aborted || raised !== undefined;
      },
    },
    deliver: (outcome) => {
      if (onFailure === "raise" && "failure" in outcome) {
        raised ??= { member: outcome.member, reason: outcome.failure };
        return;
      }
      tally.add(outcome);
      onProgress?.(++done, members);
    },
  });
  if (raised !== undefined) throw memberError(plan, raised);
  return tally.plain();
}

/** What a tally is of: enough to say what it says where the plan itself is far away. Plain data. */
export interface TalliedPlan {
  /** The comparison's. */
  readonly name: string;
  readonly draws: DrawSource;
  readonly layout: EnsembleLayout;
}

/**
 * What a tally says: bands of every measure, paired differences with their verdicts, badges, failures with their draws.
 *
 * @param members how many were asked for; with fewer in the tally the status is `stopped`
 * @example ensembleResult(plan, tally, 200).differences[0].verdict
 */
export const ensembleResult = (plan: EnsemblePlan, tally: PlainTally, members: number): EnsembleResult =>
  talliedResult({ name: plan.comparison.name, draws: plan.draws, layout: layoutOf(plan) }, tally, members);

/**
 * `ensembleResult` without the plan, for tallies of parts that were run elsewhere and merged.
 *
 * @example talliedResult({ name: "block", draws: plan.draws, layout: layoutOf(plan) }, tally, 200).finished // 200
 */
export function talliedResult(of: TalliedPlan, tally: PlainTally, members: number): EnsembleResult {
  const { name, draws, layout } = of;
  const drawOf = drawMaker(draws);
  return {
    version,
    name,
    status: tally.finished + tally.failed < members ? "stopped" : "finished",
    members,
    finished: tally.finished,
    failed: tally.failed,
    failures: tally.failures.map(({ member, reason }) => ({ member, reason, draw: drawRecord(drawOf(member)) })),
    draws,
    bands: bandsOf(layout, tally),
    differences: layout.differences.map((labels, i): PairedDifference => {
      const { difference, floor: floors, rises, falls } = tally.pairs[i];
      const band = createSketch(difference).band(tail);
      const floor = createSketch(floors).band(tail).median;
      return {
        ...labels,
        ...band,
        floor,
        risesShare: rises / tally.finished,
        fallsShare: falls / tally.finished,
        verdict: pairedVerdict({ ...band, floor }),
      };
    }),
    badges: layout.badges.map((id, b) => ({
      id,
      holds: tally.finished > 0 && tally.badges[b] === tally.finished,
      heldIn: tally.badges[b],
    })),
  };
}

/**
 * Runs programmes over many draws of what is unknown, the same draw for every programme, and says what holds in spite of it.
 *
 * @throws RangeError as `tallyEnsemble`.
 * @example (await ensemble(plan, { members: 200, executor: oneThread(memberRun(plan)) })).differences[0].verdict
 */
export async function ensemble(plan: EnsemblePlan, options: EnsembleOptions): Promise<EnsembleResult> {
  return ensembleResult(plan, await tallyEnsemble(plan, options), options.members);
}

function memberError(plan: EnsemblePlan, { member, reason }: MemberFailure): RangeError {
  const draw = JSON.stringify(drawRecord(drawMaker(plan.draws)(member)));
  return new RangeError(`an ensemble requires members that finish: member ${member} with ${draw} did not: ${reason}`);
}

function bandsOf({ arms, measures, trees }: EnsembleLayout, { values }: PlainTally): MeasureBand[] {
  let at = 0;
  return arms.flatMap(({ soil, programme }) =>
    measures.flatMap(({ id, unit }) =>
      trees.map((tree): MeasureBand => {
        const band = createSketch(values[at++]).band(tail);
        return { soil, programme, tree, measureId: id, unit, ...band };
      }),
    ),
  );
}
