import { css, html, LitElement, nothing, svg, type TemplateResult } from "lit";
import type { UnknownsRanking } from "rootledger/chance";
import "../../charts/number-table.js";
import type { Scene } from "../../state/scene.js";
import { amount, percent, whole } from "../../text/number-format.js";
import { unsureWords } from "../../text/unsure-words.js";
import { words } from "../../text/words.js";
import { helpersHere, OwnWorker } from "../../worker/own-worker.js";
import { startWorker } from "../../worker/start-worker.js";
import { longWorkStyles } from "../long-work-styles.js";

/** Runs of a ranking, rounded up to whole trajectories: about three steps of every unknown. Our choice, for a few minutes of a phone at most. */
const members = 36;

/** Which unknown moves the answers most, and what to measure to know it. */
export class UnsureControl extends LitElement {
  static override properties = {
    scene: { attribute: false },
    compared: { attribute: false },
    files: { attribute: false },
    seasonReady: { type: Boolean },
  };
  declare scene: Scene;
  declare compared: () => object;
  declare files: Readonly<Record<string, string>>;
  declare seasonReady: boolean;

  static override styles = [
    longWorkStyles,
    css`
      :host { display: block; padding: 0.2rem 0 0.9rem; max-width: 52rem; }
      p { margin: 0.35rem 0; }
      ol { margin: 0.6rem 0; padding: 0; list-style: none; display: grid; gap: 0.45rem; }
      li { display: grid; grid-template-columns: minmax(9rem, 15rem) minmax(4rem, 1fr) 3.2em; gap: 0 0.8rem; align-items: center; }
      li .how { grid-column: 1 / -1; font-size: var(--size-small); color: var(--ink-quiet); }
      li b { font-weight: 650; }
      svg { display: block; width: 100%; height: 0.9rem; }
      .bar { fill: var(--ink); }
      .share { text-align: right; font-variant-numeric: tabular-nums; }
      @media (max-width: 500px) { li { grid-template-columns: minmax(0, 1fr) 3.2em; } li svg { grid-row: 2; grid-column: 1 / -1; } }
    `,
  ];

  readonly #ranking = new OwnWorker<"ranked", string>(startWorker, "ranked");

  constructor() {
    super();
    this.#ranking.addEventListener("work-changed", () => this.requestUpdate());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#ranking.stop();
  }

  override render(): TemplateResult | typeof nothing {
    if (!this.compared) return nothing;
    const w = unsureWords();
    const { state, answer, subject } = this.#ranking;
    const stale = answer !== undefined && subject !== this.#key();
    return html`<p class="small">${w.what}</p>
      ${
        state.kind === "running"
          ? html`<p>${w.running(state.done, state.all)}</p><progress max=${state.all} .value=${state.done} aria-label=${words.tools.unsure}></progress> <button type="button" @click=${() => this.#ranking.stop()}>${w.stop}</button>`
          : html`<button type="button" aria-disabled=${this.seasonReady ? "false" : "true"} @click=${() => this.#ask()}>${answer ? w.again : w.start}</button>`
      }
      <div role="status">
        ${state.kind === "failed" ? html`<p class="failed"><strong>${w.failed}.</strong> ${state.faults.map((f) => words.states.fault(f))} ${state.message}</p>` : nothing}
        ${stale ? html`<p class="small">${w.stale}</p>` : nothing}
        ${answer && !stale ? this.#ranked(answer.ranking) : nothing}
      </div>`;
  }

  #ranked(ranking: UnknownsRanking): TemplateResult {
    const w = unsureWords();
    const moved = ranking.overall.filter(({ weight }) => weight > 0.005);
    if (moved.length === 0) return html`<p><strong>${w.nothing}</strong></p>`;
    const most = moved[0]!.weight;
    const top = moved.slice(0, 3).map(({ id }) => w.unknowns[id].name);
    const table = () => ({
      caption: w.table,
      head: [w.unknown, w.share, w.measure],
      rows: ranking.overall.map(({ id, weight }) => [w.unknowns[id].name, percent(weight), w.unknowns[id].how]),
    });
    return html`<p><strong>${w.finding(top)}</strong></p>
      <ol>${moved.slice(0, 6).map(
        ({ id, weight }) => html`<li><b>${w.unknowns[id].name}</b>
          <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">${svg`<rect class="bar" width=${(100 * weight) / most} height="10"></rect>`}</svg>
          <span class="share">${percent(weight)}</span><span class="how">${w.unknowns[id].how}</span></li>`,
      )}</ol>
      <p class="small">${w.basis(whole(ranking.finished), amount(ranking.answers.filter((a) => a.range > a.floor).length), amount(ranking.answers.length))}</p>
      <rl-number-table .data=${table}></rl-number-table>`;
  }

  #key(): string {
    return `${this.scene.tree} ${JSON.stringify(this.compared())}`;
  }

  #ask(): void {
    if (!this.seasonReady) return;
    const { tree } = this.scene;
    const asked = { file: this.compared(), files: this.files, tree, members, helpers: helpersHere() };
    this.#ranking.ask({ kind: "rank", ...asked }, this.#key(), members);
  }
}

customElements.define("rl-unsure-control", UnsureControl);
