import type { FaultLine, RankAnswer, RankRequest, WorkerMessage } from "./protocol.js";

/** What the ranking is doing, for the page to show. */
export type RankingState =
  | { readonly kind: "idle" }
  | { readonly kind: "running"; readonly done: number; readonly all: number }
  | { readonly kind: "ready" }
  | { readonly kind: "failed"; readonly faults: readonly FaultLine[]; readonly message: string };

/** Runs that a page asks for, rounded up to whole trajectories: about three steps of every unknown. Our choice, for a few minutes of a phone at most. */
const members = 36;
const mostHelpers = 4;

/** The page's side of the ranking of unknowns: one worker that leads and helpers of its own; the newest request wins. */
export class UnknownRanking extends EventTarget {
  state: RankingState = { kind: "idle" };
  answer: RankAnswer | undefined;
  /** The comparison that the answer is about. */
  key = "";
  #id = 0;
  #worker: Worker | undefined;
  readonly #start: () => Worker;

  constructor(start: () => Worker) {
    super();
    this.#start = start;
  }

  ask(request: Pick<RankRequest, "file" | "files" | "tree">, key: string): void {
    this.#end();
    this.#id += 1;
    this.answer = undefined;
    this.key = key;
    const worker = this.#start();
    worker.onmessage = (event: MessageEvent<WorkerMessage>) => this.#receive(event.data);
    worker.onerror = (event) => this.#fail([], event.message);
    this.#worker = worker;
    const helpers = Math.max(1, Math.min(mostHelpers, navigator.hardwareConcurrency - 1));
    worker.postMessage({ id: this.#id, kind: "rank", members, helpers, ...request } satisfies RankRequest);
    this.#become({ kind: "running", done: 0, all: members });
  }

  stop(): void {
    this.#end();
    this.#become({ kind: "idle" });
  }

  #end(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
  }

  #receive(message: WorkerMessage): void {
    if (message.id !== this.#id || this.state.kind !== "running") return;
    if (message.kind === "progress") this.#become({ kind: "running", done: message.done, all: message.all });
    else if (message.kind === "ranked") {
      this.answer = message;
      this.#end();
      this.#become({ kind: "ready" });
    } else if (message.kind === "faults") this.#fail(message.faults, "");
    else if (message.kind === "failed") this.#fail([], message.message);
  }

  #fail(faults: readonly FaultLine[], message: string): void {
    this.#end();
    this.#become({ kind: "failed", faults, message });
  }

  #become(state: RankingState): void {
    this.state = state;
    this.dispatchEvent(new Event("ranking-changed"));
  }
}
