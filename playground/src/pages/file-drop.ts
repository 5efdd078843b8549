import { html, LitElement, nothing, type PropertyDeclarations, type TemplateResult } from "lit";
import type { Understood } from "rootledger/weather";
import "../fields/file-field.js";
import { dataWords } from "../text/data-words.js";
import { refusedView, understoodView } from "./understood-view.js";

/** A file that was understood. */
export type ReadFile = Extract<Understood, { ok: true }>;

/** A file of measured rows: dropped or chosen, read on the device, shown as it was understood, and only then offered for use. */
export abstract class FileDrop extends LitElement {
  static override properties: PropertyDeclarations = {
    understood: { state: true },
    busy: { state: true },
    full: { type: Boolean },
  };
  declare understood: Understood | undefined;
  declare busy: boolean;
  /** What was to be kept finds no room on the device. */
  declare full: boolean;

  protected fileName = "";
  #bytes = new Uint8Array();
  #answers: Record<string, string> = {};

  constructor() {
    super();
    this.busy = false;
    this.full = false;
  }

  /** What can be done with a file that was understood. */
  protected abstract offer(read: ReadFile): TemplateResult;

  /** Called once a file was understood, before it is shown. */
  protected understoodNow(_read: ReadFile): void {}

  /** The place where files come in, and what became of the last one. */
  protected dropPlace(label: string, noRoom: string): TemplateResult {
    const w = dataWords();
    return html`<rl-file-field drop .label=${label} accept=".csv,.txt,.dat,.json,.tsv" @file-chosen=${(e: CustomEvent<File>) => void this.#take(e.detail)}></rl-file-field>
      <p class="small">${w.stays}</p>
      <div role="status">${this.busy ? html`<p>${w.reading}</p>` : nothing}${this.full ? html`<p class="failed">${noRoom}</p>` : nothing}</div>
      ${this.#outcome()}`;
  }

  #outcome(): TemplateResult | typeof nothing {
    const { understood } = this;
    if (!understood) return nothing;
    if (understood.ok) return html`${understoodView(understood)}${this.offer(understood)}`;
    return refusedView(understood, this.fileName, (key, value) => {
      this.#answers = { ...this.#answers, [key]: value };
      void this.#read();
    });
  }

  async #take(file: File): Promise<void> {
    this.#bytes = new Uint8Array(await file.arrayBuffer());
    this.fileName = file.name;
    this.#answers = {};
    await this.#read();
  }

  async #read(): Promise<void> {
    this.busy = true;
    const { understandStationFile } = await import("rootledger/weather");
    // So that the page says that it reads before it does.
    await new Promise((resolve) => setTimeout(resolve));
    this.understood = understandStationFile(this.#bytes, this.#answers);
    if (this.understood.ok) this.understoodNow(this.understood);
    this.busy = false;
  }
}
