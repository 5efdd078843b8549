import type { Answer, CompareRequest, FaultLine, WorkerMessage } from "./protocol.js";

/** What the model is doing, for the page to show. */
export type ModelState =
  | { readonly kind: "computing"; readonly done: number; readonly all: number }
  | { readonly kind: "ready" }
  | { readonly kind: "failed"; readonly faults: readonly FaultLine[]; readonly message: string };

/** The page's side of the worker: asks, keeps the newest answers, and survives the worker's end. */
export class Model extends EventTarget {
  state: ModelState = { kind: "computing", done: 0, all: 1 };
  /** The newest season, kept while a newer one is computed or fails. */
  season: Answer | undefined;
  preview: Answer | undefined;
  #id = 0;
  #worker: Worker | undefined;
  readonly #start: () => Worker;

  constructor(start: () => Worker) {
    super();
    this.#start = start;
  }

  /** True while the season shown is from before the newest request. */
  get stale(): boolean {
    return this.season !== undefined && this.season.id !== this.#id;
  }

  ask(request: Omit<CompareRequest, "id" | "kind">): void {
    this.#id += 1;
    this.state = { kind: "computing", done: 0, all: 1 };
    this.#worker ??= this.#open();
    this.#worker.postMessage({ id: this.#id, kind: "compare", ...request } satisfies CompareRequest);
    this.#tell();
  }

  #open(): Worker {
    const worker = this.#start();
    worker.onmessage = (event: MessageEvent<WorkerMessage>) => this.#receive(event.data);
    worker.onerror = (event) => {
      worker.terminate();
      this.#worker = undefined;
      this.state = { kind: "failed", faults: [], message: event.message };
      this.#tell();
    };
    return worker;
  }

  #receive(message: WorkerMessage): void {
    if (message.id !== this.#id) return;
    if (message.kind === "progress") this.state = { kind: "computing", done: message.done, all: message.all };
    else if (message.kind === "preview") this.preview = message;
    else if (message.kind === "season") {
      this.season = message;
      this.preview = undefined;
      this.state = { kind: "ready" };
    } else if (message.kind === "faults") this.state = { kind: "failed", faults: message.faults, message: "" };
    else if (message.kind === "failed") this.state = { kind: "failed", faults: [], message: message.message };
    this.#tell();
  }

  #tell(): void {
    this.dispatchEvent(new Event("model-changed"));
  }
}
