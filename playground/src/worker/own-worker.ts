import type { CheckRequest, DrawsRequest, FaultLine, RankRequest, WorkerMessage } from "./protocol.js";

/** What work with a worker of its own is doing, for the page to show. */
export type OwnWorkState =
  | { readonly kind: "idle" }
  | { readonly kind: "running"; readonly done: number; readonly all: number; readonly sinceMs: number }
  | { readonly kind: "stopped" }
  | { readonly kind: "ready" }
  | { readonly kind: "failed"; readonly faults: readonly FaultLine[]; readonly message: string };

type AnswerKind = "check" | "draws" | "ranked";
type AnswerOf<Kind extends AnswerKind> = Extract<WorkerMessage, { readonly kind: Kind }>;
type WithoutId<Request> = Omit<Request, "id">;

/** Workers that help the one that leads. */
const mostHelpers = 4;

/** How many workers may help here, one core being the page's. */
export const helpersHere = (): number => Math.max(1, Math.min(mostHelpers, navigator.hardwareConcurrency - 1));

/**
 * The page's side of long work: one worker of its own, so that the one that answers at once stays quick; the newest request wins, and what
 * was found before a stop stays. Each change is told as `work-changed`.
 */
export class OwnWorker<Kind extends AnswerKind, Subject> extends EventTarget {
  state: OwnWorkState = { kind: "idle" };
  answer: AnswerOf<Kind> | undefined;
  /** What the answer is about, to tell later whether it still speaks of what is on the page. */
  subject: Subject | undefined;
  #id = 0;
  #worker: Worker | undefined;
  readonly #start: () => Worker;
  readonly #kind: Kind;

  constructor(start: () => Worker, kind: Kind) {
    super();
    this.#start = start;
    this.#kind = kind;
  }

  /** Begins anew; `all` is how many runs there are. */
  ask(
    request: WithoutId<CheckRequest> | WithoutId<DrawsRequest> | WithoutId<RankRequest>,
    subject: Subject,
    all: number,
  ): void {
    this.#end();
    this.#id += 1;
    this.answer = undefined;
    this.subject = subject;
    const worker = this.#start();
    worker.onmessage = (event: MessageEvent<WorkerMessage>) => this.#receive(event.data);
    worker.onerror = (event) => this.#fail([], event.message);
    this.#worker = worker;
    worker.postMessage({ id: this.#id, ...request });
    this.#become({ kind: "running", done: 0, all, sinceMs: performance.now() });
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
    if (message.kind === "progress") this.#become({ ...this.state, done: message.done, all: message.all });
    else if (message.kind === "faults") this.#fail(message.faults, "");
    else if (message.kind === "failed") this.#fail([], message.message);
    else if (this.#isAnswer(message)) {
      this.answer = message;
      const whole = !("complete" in message) || message.complete;
      if (whole) this.#end();
      this.#become(whole ? { kind: "ready" } : this.state);
    }
  }

  #isAnswer(message: WorkerMessage): message is AnswerOf<Kind> {
    return message.kind === this.#kind;
  }

  #fail(faults: readonly FaultLine[], message: string): void {
    this.#end();
    this.#become({ kind: "failed", faults, message });
  }

  #become(state: OwnWorkState): void {
    this.state = state;
    this.dispatchEvent(new Event("work-changed"));
  }
}
