import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { words } from "../text/words.js";
import type { DrawsView } from "./draws-view.js";
import { longWorkStyles } from "./long-work-styles.js";

/** Starts and stops the draws of what is unknown, says how far they are, and in how many of them each badge held. */
export class DrawsControl extends LitElement {
  static override properties = { draws: { attribute: false }, seasonReady: { type: Boolean } };
  declare draws: DrawsView;
  declare seasonReady: boolean;

  static override styles = [
    longWorkStyles,
    css`
      :host { display: block; }
      section { display: flex; flex-wrap: wrap; align-items: center; gap: 0.3rem 1.1rem; padding: 0 0 0.9rem; }
      ul { display: flex; flex-wrap: wrap; gap: 0.2rem 1.2rem; margin: 0; padding: 0; list-style: none; font-size: var(--size-small); color: var(--ink-quiet); }
      @media print { button, progress { display: none; } }
    `,
  ];

  override render(): TemplateResult {
    const w = words.draws;
    const { state, answer, stale } = this.draws;
    const running = state.kind === "running";
    return html`<section aria-label=${w.heading}>
      ${running ? this.#running(state.done, state.all) : html`<button type="button" aria-disabled=${this.seasonReady ? "false" : "true"} @click=${() => this.seasonReady && this.#tell("draws-asked")}>${answer ? w.again : w.start}</button>`}
      <div role="status">
        ${state.kind === "stopped" ? html`<p class="small">${w.stopped}</p>` : nothing}
        ${state.kind === "failed" ? html`<p class="failed"><strong>${w.failed}.</strong> ${state.message}${state.faults.map((f) => words.states.fault(f))}</p>` : nothing}
        ${answer && !running && stale ? html`<p class="small">${w.stale}</p>` : nothing}
        ${state.kind === "ready" && answer && !stale ? html`<p class="small">${w.took(answer.result.finished, answer.result.failed, answer.tookMs / 1000)}</p>` : nothing}
      </div>
      <p class="small">${w.what}</p>
      ${answer && !stale ? this.#badges(answer.result) : nothing}
    </section>`;
  }

  #running(done: number, all: number): TemplateResult {
    const w = words.draws;
    return html`<p>${w.running(done, all)}</p>
      <progress max=${all} .value=${done} aria-label=${w.heading}></progress>
      <button type="button" @click=${() => this.#tell("draws-stopped")}>${w.cancel}</button>`;
  }

  #badges({ badges, finished }: NonNullable<DrawsView["answer"]>["result"]): TemplateResult {
    return html`<ul aria-label=${words.badgesLabel}>${badges.map(
      ({ id, holds, heldIn }) => html`<li>${words.draws.badge(words.badges[id][holds ? 0 : 1], heldIn, finished)}</li>`,
    )}</ul>`;
  }

  #tell(name: string): void {
    this.dispatchEvent(new Event(name, { bubbles: true, composed: true }));
  }
}

customElements.define("rl-draws-control", DrawsControl);
