import { css, html, LitElement, type TemplateResult } from "lit";
import { words } from "../text/words.js";
import { fieldStyles } from "./field-styles.js";
import { limits } from "./limits.js";

/** The lock that holds litres equal, and the litres it holds. */
export class LitresField extends LitElement {
  static override properties = { locked: { type: Boolean }, litresPerDay: { type: Number } };
  declare locked: boolean;
  declare litresPerDay: number;

  static override styles = [
    fieldStyles,
    css`
      :host { display: inline-block; }
    `,
  ];

  constructor() {
    super();
    this.locked = true;
    this.litresPerDay = 0;
  }

  override render(): TemplateResult {
    const w = words.amount;
    const [min, max] = limits.litresPerDay;
    const shown = String(Number(this.litresPerDay.toFixed(1)));
    return html`
      <label><input type="checkbox" .checked=${this.locked} @change=${(e: Event) => this.#tell("lock-changed", (e.target as HTMLInputElement).checked)}>${this.locked ? w.lock : w.unlocked}</label>
      ${
        this.locked
          ? html`<span class="nowrap"><input type="number" inputmode="decimal" required min=${min} max=${max} step="any" .value=${shown} aria-label=${w.label}
              @change=${this.#litres}> ${w.unit}</span>`
          : html`<span>(${w.free})</span>`
      }
    `;
  }

  #litres(event: Event): void {
    const input = event.target as HTMLInputElement;
    if (input.reportValidity()) this.#tell("litres-changed", Number(input.value));
  }

  #tell(name: string, detail: boolean | number): void {
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
  }
}

customElements.define("rl-litres-field", LitresField);
