import { parentPort, workerData } from "node:worker_threads";
import { type EnsemblePlan, memberRun, outcomeOf } from "rootledger/chance";

/** Runs the members it is sent, in order, and answers each: the other end of `nodeWorkers`. */
const run = memberRun(workerData as EnsemblePlan);
parentPort?.on("message", (members: readonly number[]) => {
  for (const member of members) parentPort?.postMessage(outcomeOf(run, member));
});
