import { css, html, LitElement, type TemplateResult } from "lit";
import type { ComparisonResult } from "rootledger/compare";
import { words } from "../text/words.js";

/** What the comparison holds equal, only as far as the result says so; what differs is named with its size. */
export class BadgeLine extends LitElement {
  static override properties = { badges: { attribute: false } };
  declare badges: ComparisonResult["badges"];

  static override styles = css`
    :host { display: block; }
    ul { display: flex; flex-wrap: wrap; gap: 0.4rem 1.4rem; margin: 0; padding: 0; list-style: none; }
    li { display: flex; align-items: baseline; gap: 0.45em; }
    svg { width: 0.8em; height: 0.8em; overflow: visible; flex: none; }
    .holds circle { fill: var(--ink); stroke: var(--ink); }
    circle { fill: none; stroke: var(--ink); stroke-width: 2; }
    path { stroke: var(--paper); stroke-width: 2; fill: none; }
    b { font-weight: 650; }
    @media (max-width: 700px) { ul { font-size: var(--size-small); gap: 0.2rem 1rem; } }
    span { color: var(--ink-quiet); font-size: var(--size-small); }
  `;

  constructor() {
    super();
    this.badges = [];
  }

  override render(): TemplateResult {
    return html`<ul aria-label=${words.badgesLabel}>
      ${this.badges.map((badge) => {
        const { id, holds } = badge;
        const [yes, no] = words.badges[id];
        const detail = words.badgeDetail(badge);
        return html`<li class=${holds ? "holds" : "differs"} title=${detail}>
          <svg viewBox="0 0 12 12" aria-hidden="true"><circle cx="6" cy="6" r="6"></circle><path d=${holds ? "M3 6.2l2.2 2.2L9 4" : ""}></path></svg>
          <b>${holds ? yes : no}</b>${holds ? "" : html`<span>${detail}</span>`}
        </li>`;
      })}
    </ul>`;
  }
}

customElements.define("rl-badge-line", BadgeLine);
