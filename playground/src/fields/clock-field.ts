import { css, html, LitElement, type TemplateResult } from "lit";
import { clock } from "../text/number-format.js";
import { fieldStyles } from "./field-styles.js";

const halfHours = Array.from({ length: 48 }, (_, i) => clock(i / 2));

/** A time of day to choose, or none. */
export class ClockField extends LitElement {
  static override properties = { label: { type: String }, value: { type: String }, none: { type: String } };
  declare label: string;
  /** HH:MM, empty for none. */
  declare value: string;
  /** What stands for no time. */
  declare none: string;

  static override styles = [fieldStyles, css`:host { display: inline-block; }`];

  override render(): TemplateResult {
    const times = this.value === "" || halfHours.includes(this.value) ? halfHours : [...halfHours, this.value].sort();
    return html`<label>${this.label} <select @change=${this.#tell}>
      <option value="" ?selected=${this.value === ""}>${this.none}</option>
      ${times.map((time) => html`<option value=${time} ?selected=${time === this.value}>${time}</option>`)}
    </select></label>`;
  }

  #tell(event: Event): void {
    const detail = (event.target as HTMLSelectElement).value;
    this.dispatchEvent(new CustomEvent("clock-changed", { detail, bubbles: true, composed: true }));
  }
}

customElements.define("rl-clock-field", ClockField);
