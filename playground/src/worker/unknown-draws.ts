import type { DrawsAnswer, DrawsRequest, FaultLine, WorkerMessage } from "./protocol.js";

/** What the draws are doing, for the page to show. */
export type DrawsState =
  | { readonly kind: "idle" }
  | { readonly kind: "running"; readonly done: number; readonly all: number; readonly sinceMs: number }
  | { readonly kind: "stopped" }
  | { readonly kind: "ready" }
  | { readonly kind: "failed"; readonly faults: readonly FaultLine[]; readonly message: string };

/** Draws that a page asks for. Our choice: a band end rests on five of them. */
const members = 100;
const mostHelpers = 4;

/** The page's side of the draws: one worker that leads and helpers of its own; the newest request wins. */
export class UnknownDraws extends EventTarget {
  state: DrawsState = { kind: "idle" };
  answer: DrawsAnswer | undefined;
  /** What the answer is about, equal for two requests about the same comparison and tree. */
  key: string | undefined;
  #id = 0;
  #worker: Worker | undefined;
  readonly #start: () => Worker;

  constructor(start: () => Worker) {
    super();
    this.#start = start;
  }

  ask(request: Pick<DrawsRequest, "file" | "files" | "tree">, key: string): void {
    this.#end();
    this.#id += 1;
    this.answer = undefined;
    this.key = key;
    const worker = this.#start();
    worker.onmessage = (event: MessageEvent<WorkerMessage>) => this.#receive(event.data);
    worker.onerror = (event) => {
      this.#end();
      this.#become({ kind: "failed", faults: [], message: event.message });
    };
    this.#worker = worker;
    const helpers = Math.max(1, Math.min(mostHelpers, navigator.hardwareConcurrency - 1));
    worker.postMessage({ id: this.#id, kind: "draws", members, helpers, ...request } satisfies DrawsRequest);
    this.#become({ kind: "running", done: 0, all: members, sinceMs: performance.now() });
  }

  /** Ends the work at once; what was found so far stays. */
  stop(): void {
    if (this.state.kind !== "running") return;
    this.#end();
    this.#become({ kind: "stopped" });
  }

  #end(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
  }

  #receive(message: WorkerMessage): void {
    if (message.id !== this.#id || this.state.kind !== "running") return;
    if (message.kind === "progress") {
      this.#become({ ...this.state, done: message.done, all: message.all });
    } else if (message.kind === "draws") {
      this.answer = message;
      if (message.complete) this.#end();
      this.#become(message.complete ? { kind: "ready" } : this.state);
    } else if (message.kind === "faults" || message.kind === "failed") {
      this.#end();
      const faults = message.kind === "faults" ? message.faults : [];
      this.#become({ kind: "failed", faults, message: message.kind === "failed" ? message.message : "" });
    }
  }

  #become(state: DrawsState): void {
    this.state = state;
    this.dispatchEvent(new Event("draws-changed"));
  }
}
