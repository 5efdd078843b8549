import type { CheckAnswer, CheckRequest, FaultLine, WorkerMessage } from "./protocol.js";

/** What the check is doing, for the page to show. */
export type CheckState =
  | { readonly kind: "idle" }
  | { readonly kind: "running"; readonly done: number; readonly all: number; readonly sinceMs: number }
  | { readonly kind: "stopped" }
  | { readonly kind: "ready" }
  | { readonly kind: "failed"; readonly faults: readonly FaultLine[]; readonly message: string };

/** What a check was asked for, to tell later whether it still speaks of what is on the page. */
export interface CheckSubject {
  /** Equal for two requests about the same programmes, soils and start. */
  readonly key: string;
  readonly firstDay: number;
  readonly days: number;
}

/** The page's side of the slow engine: one worker of its own, so that the fast one stays quick; the newest request wins. */
export class PhysicsCheck extends EventTarget {
  state: CheckState = { kind: "idle" };
  answer: CheckAnswer | undefined;
  subject: CheckSubject | undefined;
  #id = 0;
  #worker: Worker | undefined;
  readonly #start: () => Worker;

  constructor(start: () => Worker) {
    super();
    this.#start = start;
  }

  ask(request: Pick<CheckRequest, "file" | "starts" | "files">, subject: CheckSubject): void {
    this.#end();
    this.#id += 1;
    this.answer = undefined;
    this.subject = subject;
    this.state = { kind: "running", done: 0, all: request.starts.length, sinceMs: performance.now() };
    const worker = this.#start();
    worker.onmessage = (event: MessageEvent<WorkerMessage>) => this.#receive(event.data);
    worker.onerror = (event) => {
      this.#end();
      this.#become({ kind: "failed", faults: [], message: event.message });
    };
    this.#worker = worker;
    worker.postMessage({ id: this.#id, kind: "check", ...request } satisfies CheckRequest);
    this.#become(this.state);
  }

  /** Ends the work at once; runs that were finished stay. */
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
    } else if (message.kind === "check") {
      this.answer = message;
      if (message.complete) this.#end();
      this.#become(message.complete ? { kind: "ready" } : this.state);
    } else if (message.kind === "faults" || message.kind === "failed") {
      this.#end();
      const faults = message.kind === "faults" ? message.faults : [];
      this.#become({ kind: "failed", faults, message: message.kind === "failed" ? message.message : "" });
    }
  }

  #become(state: CheckState): void {
    this.state = state;
    this.dispatchEvent(new Event("check-changed"));
  }
}
