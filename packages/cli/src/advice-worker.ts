import { parentPort } from "node:worker_threads";
import { type AdviceBatch, type AdviceStarts, adviceRun, adviceStarts } from "rootledger/advise";
import { type MemberRun, outcomeOf } from "rootledger/chance";

/** Takes a batch, then members of it; the states that its programmes start from are kept for the next batch of the same case. */
let run: MemberRun | undefined;
let starts: AdviceStarts | undefined;
parentPort?.on("message", (message: AdviceBatch | readonly number[]) => {
  if ("points" in message) {
    starts ??= adviceStarts(message.ready);
    run = adviceRun(message, starts);
    return;
  }
  for (const member of message) if (run) parentPort?.postMessage(outcomeOf(run, member));
});
