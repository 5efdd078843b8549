import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import type { LinkFault } from "../state/link.js";
import { words } from "../text/words.js";
import type { ModelState } from "../worker/model.js";

/** One line on what the model is doing; the faults when it could not; what a link held that could not be used. */
export class ModelStatus extends LitElement {
  static override properties = {
    state: { attribute: false },
    faults: { attribute: false },
    stale: { type: Boolean },
    previewDays: { type: Number },
    days: { type: Number },
    arms: { type: Number },
    canUndo: { type: Boolean },
  };
  declare state: ModelState;
  declare faults: readonly LinkFault[];
  declare stale: boolean;
  declare previewDays: number;
  declare days: number;
  declare arms: number;
  declare canUndo: boolean;

  static override styles = css`
    :host { display: block; }
    p { margin: 0; }
    .computing { color: var(--ink-quiet); animation: appear 0.2s 0.15s both; }
    progress { appearance: none; width: 8em; height: 0.5em; border: 1px solid var(--ink); background: none; vertical-align: 0.1em; margin-right: 0.5em; }
    progress::-webkit-progress-bar { background: none; }
    progress::-webkit-progress-value { background: var(--ink); }
    progress::-moz-progress-bar { background: var(--ink); }
    .failed { border-left: 4px solid var(--ink); padding: 0.3rem 0 0.3rem 0.9rem; display: grid; gap: 0.35rem; }
    .failed ul { margin: 0; padding-left: 1.1em; }
    button { font: inherit; color: var(--paper); background: var(--ink); border: 0; border-radius: 1.2em; padding: 0.35em 1em; cursor: pointer; margin-right: 0.6em; }
    button:focus-visible { outline: 3px solid var(--ink); outline-offset: 3px; }
    @keyframes appear { from { opacity: 0; } }
  `;

  override render(): TemplateResult {
    return html`<div role="status">${this.#model()}</div>${this.faults.length > 0 ? this.#linkFaults() : nothing}`;
  }

  #model(): TemplateResult | typeof nothing {
    const w = words.states;
    const { state } = this;
    if (state.kind === "ready") return nothing;
    if (state.kind === "computing") {
      const what =
        this.previewDays > 0
          ? w.preview(this.previewDays)
          : this.stale
            ? `${w.stale}. ${w.computing(this.days, this.arms)}`
            : w.computing(this.days, this.arms);
      return html`<p class="computing"><progress max=${state.all} .value=${state.done} aria-label=${w.computing(this.days, this.arms)}></progress>${what}</p>`;
    }
    return html`<div class="failed">
      <p><strong>${w.failed}</strong></p>
      ${state.faults.length > 0 ? html`<ul>${state.faults.map((f) => html`<li>${w.fault(f)}</li>`)}</ul>` : html`<p>${state.message}</p>`}
      <p>${this.stale ? w.kept : nothing}</p>
      <p>${this.canUndo ? html`<button type="button" @click=${() => this.#tell("undo")}>${w.undo}</button>` : nothing}${state.faults.length === 0 ? html`<button type="button" @click=${() => this.#tell("retry")}>${w.retry}</button>` : nothing}</p>
    </div>`;
  }

  #linkFaults(): TemplateResult {
    const w = words.states;
    return html`<div class="failed">
      <p><strong>${w.linkFaults}</strong></p>
      <ul>${this.faults.map((f) => html`<li>${w.linkFault(f.key, f.received, f.rule)}</li>`)}</ul>
      <p><button type="button" @click=${() => this.#tell("dismiss")}>${w.dismiss}</button></p>
    </div>`;
  }

  #tell(name: string): void {
    this.dispatchEvent(new Event(name));
  }
}

customElements.define("rl-model-status", ModelStatus);
