import { Worker } from "node:worker_threads";
import { type EnsemblePlan, type Executor, type MemberOutcome, workerPool } from "rootledger/chance";
import { tellWorkerEnded } from "./worker-ended.js";

/** An executor of worker threads, each of which is given the plan once. One that ends before its time is named on stderr. */
export function nodeWorkers(plan: EnsemblePlan, workers: number): Executor {
  return workerPool(workers, ({ outcome, ended }) => {
    const worker = new Worker(new URL("./ensemble-worker.js", import.meta.url), { workerData: plan });
    let reason = "it stopped";
    let closed = false;
    worker.on("message", (message: MemberOutcome) => outcome(message));
    worker.on("error", (error) => {
      reason = error instanceof Error ? error.message : String(error);
    });
    worker.on("exit", () => {
      if (!closed) tellWorkerEnded(reason);
      ended(reason);
    });
    const close = (): void => {
      closed = true;
      void worker.terminate();
    };
    return { send: (members) => worker.postMessage(members), close };
  });
}
