import { Worker } from "node:worker_threads";
import type { AdviceBatch } from "rootledger/advise";
import { type Executor, type MemberOutcome, workerPool } from "rootledger/chance";
import { tellWorkerEnded } from "./worker-ended.js";

/** Worker threads that stay from batch to batch, so that they warm up once. */
export interface AdviceWorkers {
  readonly executorOf: (batch: AdviceBatch) => Executor;
  readonly close: () => void;
}

/** @param workers most of them at a time */
export function adviceWorkers(workers: number): AdviceWorkers {
  const idle: Worker[] = [];
  const all = new Set<Worker>();
  const opened = (): Worker => {
    const worker = new Worker(new URL("./advice-worker.js", import.meta.url));
    all.add(worker);
    return worker;
  };
  return {
    executorOf: (batch) =>
      workerPool(workers, ({ outcome, ended }) => {
        const worker = idle.pop() ?? opened();
        let reason = "it stopped";
        worker.removeAllListeners();
        worker.on("message", (message: MemberOutcome) => outcome(message));
        worker.on("error", (error) => {
          reason = error instanceof Error ? error.message : String(error);
        });
        worker.on("exit", () => {
          all.delete(worker);
          tellWorkerEnded(reason);
          ended(reason);
        });
        worker.postMessage(batch);
        return { send: (members) => worker.postMessage(members), close: () => idle.push(worker) };
      }),
    close: () => {
      for (const worker of all) {
        worker.removeAllListeners();
        void worker.terminate();
      }
    },
  };
}
