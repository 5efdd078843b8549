import type { FaultLine, SweepAnswer, SweepRequest, WorkerMessage } from "./protocol.js";

/** Why a sweep has no more answers. */
export type SweepTrouble =
  | { readonly kind: "faults"; readonly faults: readonly FaultLine[]; readonly index: number }
  | { readonly kind: "failed"; readonly message: string }
  | { readonly kind: "crashed" };

/** The page's side of a sweep over scenarios: one worker, the newest request wins, answers gather in order and finished ones are kept. */
export class Sweep extends EventTarget {
  answers: readonly SweepAnswer[] = [];
  all = 0;
  trouble: SweepTrouble | undefined;
  #id = 0;
  #worker: Worker | undefined;
  #runs: SweepRequest["runs"] = [];
  #files: SweepRequest["files"] = {};
  #key: object = {};
  readonly #kept = new WeakMap<object, readonly SweepAnswer[]>();
  readonly #start: () => Worker;

  constructor(start: () => Worker) {
    super();
    this.#start = start;
  }

  get done(): boolean {
    return this.all > 0 && this.answers.length === this.all;
  }

  /** Runs for a subject; what was finished for it before is not run again. */
  ask(key: object, runs: SweepRequest["runs"], files: SweepRequest["files"] = {}): void {
    this.#id += 1;
    this.#key = key;
    this.#runs = runs;
    this.#files = files;
    this.answers = this.#kept.get(key) ?? [];
    this.all = runs.length;
    this.trouble = undefined;
    if (this.answers.length < this.all) {
      this.#worker ??= this.#open();
      this.#worker.postMessage({ id: this.#id, kind: "sweep", runs, files } satisfies SweepRequest);
    }
    this.#tell();
  }

  /** The same once more, for instance after the worker has died. */
  again(): void {
    this.ask(this.#key, this.#runs, this.#files);
  }

  end(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
  }

  #open(): Worker {
    const worker = this.#start();
    worker.onmessage = (event: MessageEvent<WorkerMessage>) => this.#receive(event.data);
    worker.onerror = (event) => {
      event.preventDefault();
      this.end();
      this.trouble = { kind: "crashed" };
      this.#tell();
    };
    return worker;
  }

  #receive(message: WorkerMessage): void {
    if (message.id !== this.#id) return;
    if (message.kind === "swept") {
      this.answers = [...this.answers, message];
      if (this.done) this.#kept.set(this.#key, this.answers);
    } else if (message.kind === "faults") {
      this.trouble = { kind: "faults", faults: message.faults, index: message.index ?? 0 };
    } else if (message.kind === "failed") this.trouble = { kind: "failed", message: message.message };
    this.#tell();
  }

  #tell(): void {
    this.dispatchEvent(new Event("sweep-changed"));
  }
}
