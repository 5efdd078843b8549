import type { FaultLine, SweepAnswer, SweepRequest, WorkerMessage } from "./protocol.js";

/** The page's side of a sweep over scenarios: one worker, the newest request wins, answers gather in order. */
export class Sweep extends EventTarget {
  answers: readonly SweepAnswer[] = [];
  all = 0;
  faults: readonly FaultLine[] = [];
  message = "";
  #id = 0;
  #worker: Worker | undefined;
  readonly #start: () => Worker;

  constructor(start: () => Worker) {
    super();
    this.#start = start;
  }

  get done(): boolean {
    return this.all > 0 && this.answers.length === this.all;
  }

  ask(runs: SweepRequest["runs"], files: SweepRequest["files"] = {}): void {
    this.#id += 1;
    this.answers = [];
    this.all = runs.length;
    this.faults = [];
    this.message = "";
    this.#worker ??= this.#open();
    this.#worker.postMessage({ id: this.#id, kind: "sweep", runs, files } satisfies SweepRequest);
    this.#tell();
  }

  end(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
  }

  #open(): Worker {
    const worker = this.#start();
    worker.onmessage = (event: MessageEvent<WorkerMessage>) => this.#receive(event.data);
    worker.onerror = (event) => {
      this.end();
      this.message = event.message;
      this.#tell();
    };
    return worker;
  }

  #receive(message: WorkerMessage): void {
    if (message.id !== this.#id) return;
    if (message.kind === "swept") this.answers = [...this.answers, message];
    else if (message.kind === "faults") this.faults = message.faults;
    else if (message.kind === "failed") this.message = message.message;
    this.#tell();
  }

  #tell(): void {
    this.dispatchEvent(new Event("sweep-changed"));
  }
}
