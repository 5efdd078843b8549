import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { type ChangeKind, type EngineErrors, engineErrors, type SoilGroup } from "rootledger/compare";
import { amount, percent } from "../../text/number-format.js";
import { truthWords } from "../../text/truth-words.js";
import { pageStyles } from "../page-styles.js";
import { type TruthCheck, truthChecks } from "./truth-file.js";

const errorsShown = [
  "thirstyTime",
  "airlessTime",
  "drainage",
  "evaporation",
  "uptake",
] as const satisfies readonly (keyof EngineErrors)[];

/** What others have printed against what the library computes, and how far the fast engine is from the slow one. */
export class TruthPage extends LitElement {
  static override properties = {
    checks: { state: true },
    failed: { state: true },
    sought: { state: true },
  };
  declare checks: readonly TruthCheck[] | undefined;
  declare failed: boolean;
  declare sought: string;

  static override styles = [
    pageStyles,
    css`
      h1 { font-size: var(--size-large); line-height: 1.15; text-wrap: balance; margin: 1rem 0 0.4rem; }
      h2 { font-size: var(--size-large); line-height: 1.15; margin: 2rem 0 0.4rem; }
      p { max-width: 46rem; margin: 0.4rem 0; }
      label { display: block; margin: 0.9rem 0; }
      input { font: inherit; color: var(--ink); background: var(--paper-lift); border: 0; border-bottom: 1.5px solid var(--ink); padding: 0.2em 0.3em; width: min(24rem, 100%); }
      input:focus-visible, summary:focus-visible, .scroll:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
      details { border-top: 1px solid var(--rule); }
      summary { cursor: pointer; padding: 0.5rem 0; font-weight: 650; }
      summary span { font-weight: 400; color: var(--ink-quiet); }
      .scroll { overflow-x: auto; padding-bottom: 0.6rem; }
      table { border-collapse: collapse; font-size: var(--size-small); width: 100%; }
      caption { text-align: left; color: var(--ink-quiet); padding-bottom: 0.3em; }
      th, td { text-align: left; vertical-align: top; padding: 0.3em 1.2em 0.3em 0; border-bottom: 1px solid var(--rule); font-weight: 400; }
      thead th { color: var(--ink-quiet); }
      .n { text-align: right; white-space: nowrap; }
      .fails { font-weight: 650; }
      .source { color: var(--ink-quiet); }
      button { font: inherit; color: var(--paper); background: var(--ink); border: 0; border-radius: 1.2em; padding: 0.35em 1em; cursor: pointer; }
    `,
  ];

  constructor() {
    super();
    this.failed = false;
    this.sought = "";
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#fetch();
  }

  override render(): TemplateResult {
    const w = truthWords();
    const { checks } = this;
    if (this.failed) {
      return html`<h1>${w.heading}</h1><slot name="status"></slot><p>${w.missing}</p><button type="button" @click=${() => this.#fetch()}>${w.again}</button>${this.#engines()}`;
    }
    if (!checks) return html`<h1>${w.heading}</h1><p role="status">${w.fetching}</p>`;
    const wrong = checks.filter(({ pass }) => !pass).length;
    const by = (how: string): number => checks.filter(({ verified }) => verified === how).length;
    const found = this.#found(checks);
    const topics = [...new Set(found.map(({ topic }) => topic))];
    return html`
      <h1>${w.title(checks.length, wrong)}</h1>
      <slot name="status"></slot>
      <p>${w.verified(by("seen"), by("memory"), checks.length - by("seen") - by("memory"))}</p>
      <p class="small">${w.what}</p>
      <label>${w.search} <input type="search" .value=${this.sought} @input=${(e: Event) => (this.sought = (e.target as HTMLInputElement).value)}></label>
      <div role="status" class="small">${this.sought === "" ? nothing : w.found(found.length)}</div>
      ${topics.map((topic) =>
        this.#topic(
          topic,
          found.filter((check) => check.topic === topic),
        ),
      )}
      ${this.#engines()}
    `;
  }

  #found(checks: readonly TruthCheck[]): readonly TruthCheck[] {
    const sought = this.sought.trim().toLowerCase();
    return sought === ""
      ? checks
      : checks.filter(({ title, source, topic }) =>
          `${title} ${source} ${topic} ${truthWords().topics[topic] ?? ""}`.toLowerCase().includes(sought),
        );
  }

  #topic(topic: string, checks: readonly TruthCheck[]): TemplateResult {
    const w = truthWords();
    const agree = checks.filter(({ pass }) => pass).length;
    return html`<details ?open=${this.sought !== ""}><summary>${w.topics[topic] ?? html`<span lang="en">${topic}</span>`} <span>${w.agree(agree, checks.length)}</span></summary>
      <div class="scroll" tabindex="0" role="group" aria-label=${w.heading}><table>
        <thead><tr>${w.columns.map((name, i) => html`<th scope="col" class=${i > 1 && i < 5 ? "n" : ""}>${name}</th>`)}</tr></thead>
        <tbody>${checks.map((check) => this.#rows(check))}</tbody></table></div></details>`;
  }

  #rows(check: TruthCheck): TemplateResult[] {
    const w = truthWords();
    const keys = Object.keys(check.printed);
    return keys.map(
      (key, i) => html`<tr class=${check.pass ? "" : "fails"}>
        ${i === 0 ? html`<th scope="row" rowspan=${keys.length} lang="en">${check.title}</th>` : nothing}
        <td lang="en">${key}</td><td class="n">${shown(check.printed[key])}</td><td class="n">${shown(check.ours[key])}</td><td class="n">${shown(check.tolerance[key])}</td>
        ${i === 0 ? html`<td rowspan=${keys.length}><span class="source" lang="en">${check.source}</span>; ${w.how[check.verified] ?? check.verified}${check.pass ? "" : html`; <strong>${w.misses}</strong>`}</td>` : nothing}</tr>`,
    );
  }

  #engines(): TemplateResult {
    const w = truthWords();
    const kinds: readonly ChangeKind[] = ["interval", "pulses"];
    const groups: readonly SoilGroup[] = ["coarse", "medium", "fine", "tight", "layered"];
    return html`<section><h2>${w.engines}</h2><p>${w.enginesWhat}</p>
      <div class="scroll" tabindex="0" role="group" aria-label=${w.engines}><table><caption>${w.enginesCaption}</caption>
        <thead><tr><th scope="col">${w.soils}</th><th scope="col">${w.change}</th>${errorsShown.map((name) => html`<th scope="col" class="n">${w.errors[name]}</th>`)}</tr></thead>
        <tbody>${groups.flatMap((group) =>
          kinds.map(
            (kind) =>
              html`<tr><th scope="row">${w.groups[group]}</th><td>${w.kinds[kind]}</td>${errorsShown.map((name) => html`<td class="n">${percent(engineErrors[group][kind][name])}</td>`)}</tr>`,
          ),
        )}</tbody></table></div></section>`;
  }

  async #fetch(): Promise<void> {
    this.failed = false;
    try {
      this.checks = await truthChecks();
    } catch {
      this.failed = true;
    }
  }
}

/** A figure of a check, which may be a number, a list or a word. */
function shown(value: unknown): string {
  if (typeof value === "number") return amount(value, 5);
  if (Array.isArray(value)) return value.map(shown).join(", ");
  return value === undefined || value === null ? "" : typeof value === "object" ? JSON.stringify(value) : String(value);
}

customElements.define("rl-truth-page", TruthPage);
