import { css, html, LitElement, type TemplateResult } from "lit";
import { fieldStyles } from "./field-styles.js";

export interface Choice {
  readonly value: string;
  readonly text: string;
}

/** One word to choose, with its label in front of it. */
export class ChoiceField extends LitElement {
  static override properties = {
    label: { type: String },
    value: { type: String },
    choices: { attribute: false },
    hiddenLabel: { type: Boolean },
  };
  declare label: string;
  declare value: string;
  declare choices: readonly Choice[];
  /** The label is for the ear only, because the words around it say it. */
  declare hiddenLabel: boolean;

  static override styles = [
    fieldStyles,
    css`
      :host { display: inline-block; max-width: 100%; }
      .ear { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
      select { max-width: 100%; }
    `,
  ];

  constructor() {
    super();
    this.label = "";
    this.value = "";
    this.choices = [];
    this.hiddenLabel = false;
  }

  override render(): TemplateResult {
    return html`<label><span class=${this.hiddenLabel ? "ear" : ""}>${this.label} </span><select @change=${this.#change}>
      ${this.choices.map((choice) => html`<option value=${choice.value} ?selected=${choice.value === this.value}>${choice.text}</option>`)}
    </select></label>`;
  }

  #change(event: Event): void {
    const detail = (event.target as HTMLSelectElement).value;
    this.dispatchEvent(new CustomEvent("choice-changed", { detail, bubbles: true, composed: true }));
  }
}

customElements.define("rl-choice-field", ChoiceField);
