import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { words } from "../text/words.js";
import type { CheckView } from "./check-view.js";
import { longWorkStyles } from "./long-work-styles.js";

/** Starts and stops the slow engine on the days shown, and says how far it is. */
export class CheckControl extends LitElement {
  static override properties = {
    check: { attribute: false },
    seasonReady: { type: Boolean },
    days: { type: String },
    arms: { attribute: false },
  };
  declare check: CheckView;
  declare seasonReady: boolean;
  /** The days as words. */
  declare days: string;
  /** Soil and letter of each run, in the order they are computed. */
  declare arms: readonly { readonly soil: string; readonly letter: string }[];

  static override styles = [
    longWorkStyles,
    css`
      :host { display: block; }
      section { display: flex; flex-wrap: wrap; align-items: center; gap: 0.3rem 1.1rem; padding: 0 0 0.9rem; }
      @media print { :host { display: none; } }
    `,
  ];

  override render(): TemplateResult {
    const w = words.check;
    const { state, answer, stale } = this.check;
    const running = state.kind === "running";
    const label = answer && !running ? w.again : w.start(this.days);
    return html`<section aria-label=${w.heading}>
      ${running ? this.#running(state.done, state.all, state.sinceMs) : html`<button type="button" aria-disabled=${this.seasonReady ? "false" : "true"} @click=${() => this.seasonReady && this.#tell("check-asked")}>${label}</button>`}
      <div role="status">
        ${!running && !this.seasonReady ? html`<p class="small">${w.waiting}</p>` : nothing}
        ${state.kind === "stopped" ? html`<p class="small">${w.stopped}</p>` : nothing}
        ${state.kind === "failed" ? html`<p class="failed"><strong>${w.failed}.</strong> ${state.message}${state.faults.map((f) => words.states.fault(f))}</p>` : nothing}
        ${answer && !running && stale ? html`<p class="small">${w.stale}</p>` : nothing}
        ${state.kind === "ready" && answer && !stale ? html`<p class="small">${w.took(answer.tookMs / 1000, answer.physics.length)}</p>` : nothing}
      </div>
      <p class="small">${w.what}</p>
    </section>`;
  }

  #running(done: number, all: number, sinceMs: number): TemplateResult {
    const w = words.check;
    const arm = this.arms[Math.min(all - 1, Math.floor(done))]!;
    const seconds = (performance.now() - sinceMs) / 1000;
    const left = done > 0.15 ? w.remaining((seconds * (all - done)) / done) : w.starting;
    return html`<p>${w.running(arm.soil, arm.letter, Math.min(all, Math.floor(done) + 1), all)}</p>
      <progress max=${all} .value=${done} aria-label=${w.heading}></progress>
      <p class="small">${left}</p>
      <button type="button" @click=${() => this.#tell("check-stopped")}>${w.cancel}</button>`;
  }

  #tell(name: string): void {
    this.dispatchEvent(new Event(name, { bubbles: true, composed: true }));
  }
}

customElements.define("rl-check-control", CheckControl);
