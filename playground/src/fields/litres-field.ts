import { css, html, LitElement, type TemplateResult } from "lit";
import { words } from "../text/words.js";
import { fieldStyles } from "./field-styles.js";
import { limits } from "./limits.js";
import "./number-field.js";

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
    return html`
      <label><input type="checkbox" .checked=${this.locked} @change=${(e: Event) => this.#tell("lock-changed", (e.target as HTMLInputElement).checked)}>${this.locked ? w.lock : w.unlocked}</label>
      ${
        this.locked
          ? html`<rl-number-field .label=${w.label} .value=${this.litresPerDay} .limits=${limits.litresPerDay} .decimals=${1} .quantity=${"water"} .unit=${w.unit()}
              @number-changed=${(e: CustomEvent<number>) => this.#tell("litres-changed", e.detail)}></rl-number-field>`
          : html`<span>(${w.free})</span>`
      }
    `;
  }

  #tell(name: string, detail: boolean | number): void {
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
  }
}

customElements.define("rl-litres-field", LitresField);
