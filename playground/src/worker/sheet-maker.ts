import type { SheetMessage, SheetRequest } from "./sheet-protocol.js";

/** The page's side of the sheet: one worker at a time, ended when a newer sheet is asked for. */
export class SheetMaker extends EventTarget {
  /** What came last; undefined while it is computed. */
  answer: SheetMessage | undefined;
  #worker: Worker | undefined;

  ask(request: SheetRequest): void {
    this.end();
    this.answer = undefined;
    const worker = new Worker(new URL("./sheet.worker.ts", import.meta.url), { type: "module" });
    worker.onmessage = (event: MessageEvent<SheetMessage>) => this.#become(event.data);
    worker.onerror = (event) => this.#become({ kind: "failed", message: event.message });
    this.#worker = worker;
    worker.postMessage(request);
  }

  end(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
  }

  #become(answer: SheetMessage): void {
    if (answer.kind !== "sheet" || answer.members === answer.all) this.end();
    this.answer = answer;
    this.dispatchEvent(new Event("sheet-changed"));
  }
}
