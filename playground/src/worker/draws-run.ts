import {
  type CancelSignal,
  createTally,
  defaultPriors,
  type EnsemblePlan,
  ensembleResult,
  layoutOf,
  type MemberRun,
  memberRun,
  type OpenPort,
  outcomeOf,
  rankUnknowns,
  workerPool,
} from "rootledger/chance";
import type { Comparison } from "rootledger/compare";
import type { DrawsRequest, HelperRequest, RankRequest, WorkerMessage } from "./protocol.js";

/** Members after which what was found so far is shown. */
const shownEvery = 10;
const seed = 1;

type DrawnAnswer = Extract<WorkerMessage, { kind: "draws" | "ranked" }>;

/** Where a helper comes from, and what the work needs to know of the outside. */
export interface DrawsSetting {
  readonly openHelper: () => Worker;
  readonly outdated: () => boolean;
  readonly now: () => number;
  readonly give: (answer: DrawnAnswer) => void;
  readonly progress: (done: number, all: number) => void;
}

const planOf = (comparison: Comparison, tree: DrawsRequest["tree"]): EnsemblePlan => ({
  comparison,
  trees: [tree],
  draws: { kind: "priors", priors: defaultPriors(comparison), seed },
  weatherYears: [],
});

const cancelledOnce = (outdated: () => boolean): CancelSignal => ({
  get aborted(): boolean {
    return outdated();
  },
});

/** Draws what is unknown about a comparison and runs it member by member in helpers; this worker only sums up and listens. */
export async function drawUnknowns(
  { id, tree, members, helpers }: DrawsRequest,
  comparison: Comparison,
  { openHelper, outdated, now, give, progress }: DrawsSetting,
): Promise<void> {
  const began = now();
  const plan = planOf(comparison, tree);
  const tally = createTally(layoutOf(plan));
  let done = 0;
  const tell = (complete: boolean): void => {
    const result = ensembleResult(plan, tally.plain(), members);
    give({ id, kind: "draws", result, complete, tookMs: now() - began });
  };
  await workerPool(
    helpers,
    helperPort(id, plan, openHelper),
  )({
    from: 0,
    to: members,
    cancel: cancelledOnce(outdated),
    deliver: (outcome) => {
      tally.add(outcome);
      done++;
      progress(done, members);
      if (done % shownEvery === 0 && done < members) tell(false);
    },
  });
  if (!outdated()) tell(true);
}

/** Moves every unknown of a comparison over its range, one at a time, and says which moves the differences most. */
export async function rankUnknownsOf(
  { id, tree, members, helpers }: RankRequest,
  comparison: Comparison,
  { openHelper, outdated, now, give, progress }: DrawsSetting,
): Promise<void> {
  const began = now();
  const plan = planOf(comparison, tree);
  const ranking = await rankUnknowns(plan, {
    method: "screen",
    members,
    executorOf: (of) => workerPool(helpers, helperPort(id, of, openHelper)),
    onProgress: progress,
    cancel: cancelledOnce(outdated),
  });
  if (!outdated()) give({ id, kind: "ranked", ranking, tookMs: now() - began });
}

/** A helper is another worker of the same script that knows the plan; what it throws ends it, and another takes its place. */
function helperPort(id: number, plan: EnsemblePlan, openHelper: () => Worker): OpenPort {
  return ({ outcome, ended }) => {
    const worker = openHelper();
    const send = (request: HelperRequest): void => worker.postMessage(request);
    worker.onmessage = ({ data }: MessageEvent<WorkerMessage>) => {
      if (data.kind === "outcome" && data.id === id) outcome(data.outcome);
    };
    worker.onerror = (event) => {
      worker.terminate();
      ended(event.message);
    };
    send({ id, kind: "plan", plan });
    return { send: (members) => send({ id, kind: "members", members }), close: () => worker.terminate() };
  };
}

/** The helper's side: a plan once, then members, each answered by its outcome. */
export function memberHelper(post: (message: WorkerMessage) => void): (request: HelperRequest) => void {
  let run: MemberRun | undefined;
  return (request) => {
    if (request.kind === "plan") {
      run = memberRun(request.plan);
      return;
    }
    for (const member of request.members) {
      if (run !== undefined) post({ id: request.id, kind: "outcome", outcome: outcomeOf(run, member) });
    }
  };
}
