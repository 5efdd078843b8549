import { css, html, LitElement, type TemplateResult } from "lit";
import { words } from "../text/words.js";

export interface TableData {
  readonly caption: string;
  readonly head: readonly string[];
  /** First cell of each row names it. */
  readonly rows: readonly (readonly string[])[];
}

/** The twin of a picture: its numbers, folded away until asked for and made only then. */
export class NumberTable extends LitElement {
  static override properties = { data: { attribute: false }, open: { state: true } };
  declare data: (() => TableData) | undefined;
  declare open: boolean;

  static override styles = css`
    :host { display: block; }
    details { font-size: var(--size-small); color: var(--ink-quiet); }
    summary { cursor: pointer; width: max-content; padding: 0.3em 0; text-decoration: underline; text-underline-offset: 0.2em; text-decoration-color: var(--rule-strong); list-style: none; }
    summary::-webkit-details-marker { display: none; }
    summary:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
    .scroll { overflow: auto; max-height: 24rem; }
    .scroll:focus-visible { outline: 3px solid var(--ink); }
    table { border-collapse: collapse; color: var(--ink); }
    caption { text-align: left; color: var(--ink-quiet); padding: 0.3em 0; }
    th, td { padding: 0.15em 0.9em 0.15em 0; text-align: right; border-bottom: 1px solid var(--rule); font-weight: 400; white-space: nowrap; }
    thead th { color: var(--ink-quiet); vertical-align: bottom; }
    th:first-child { text-align: left; }
    @media print { :host { display: none; } }
  `;

  constructor() {
    super();
    this.open = false;
  }

  override render(): TemplateResult {
    return html`<details @toggle=${(e: Event) => (this.open = (e.target as HTMLDetailsElement).open)}>
      <summary>${words.table}</summary>
      ${this.open && this.data ? this.#table(this.data()) : ""}
    </details>`;
  }

  #table(data: TableData): TemplateResult {
    return html`<div class="scroll" tabindex="0" role="group" aria-label=${data.caption}><table>
      <caption>${data.caption}</caption>
      <thead><tr>${data.head.map((cell) => html`<th scope="col">${cell}</th>`)}</tr></thead>
      <tbody>${data.rows.map(([name, ...cells]) => html`<tr><th scope="row">${name}</th>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>`)}</tbody>
    </table></div>`;
  }
}

customElements.define("rl-number-table", NumberTable);
