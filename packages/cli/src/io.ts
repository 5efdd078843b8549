import type { EnsemblePlan, Executor } from "rootledger/chance";
import type { ArmStore } from "rootledger/compare";
import type { AdviceWorkers } from "./advice-workers.js";
import type { Disk } from "./shards/disk.js";

/** What a command may do to the outside; injected so that tests can run commands in process. */
export interface Io {
  readonly stdout: (text: string) => void;
  readonly stderr: (text: string) => void;
  readonly readFile: (path: string) => Promise<string>;
  readonly readBytes: (path: string) => Promise<Uint8Array>;
  /** Milliseconds of a clock that never goes back; only for progress lines. */
  readonly nowMs: () => number;
  /** Worker threads for an ensemble; without them it runs in the calling thread. */
  readonly workers?: (plan: EnsemblePlan, workers: number) => Executor;
  /** The same for advice. */
  readonly adviceWorkers?: (workers: number) => AdviceWorkers;
  /** A folder that keeps answers from one time to the next; without it nothing is kept. */
  readonly store?: (folder: string) => ArmStore;
  /** Where shards of an ensemble are written and read. */
  readonly disk?: Disk;
}

/** Exit codes. */
export const exit = { done: 0, faults: 1, internal: 2 } as const;
