import { css, html, LitElement, type TemplateResult } from "lit";
import { numberIn, numberText } from "../text/number-entry.js";
import { shownIn } from "../text/quantity.js";
import type { Quantity } from "../text/units-shown.js";
import { words } from "../text/words.js";
import { fieldStyles } from "./field-styles.js";

/** A number to type, with decimal point or comma, held and told in the model's unit and shown in the one chosen. */
export class NumberField extends LitElement {
  static override properties = {
    label: { type: String },
    unit: { type: String },
    value: { type: Number },
    limits: { attribute: false },
    quantity: { type: String },
    decimals: { type: Number },
    step: { type: Number },
    named: { type: Boolean },
  };
  declare label: string;
  /** Stands behind the number; what is chosen per quantity belongs to the caller's words. */
  declare unit: string;
  declare value: number;
  /** Both ends included, in the model's unit. */
  declare limits: readonly [number, number];
  declare quantity: Quantity | undefined;
  declare decimals: number;
  /** What an arrow key adds, in the unit shown. */
  declare step: number;
  /** The label is written in front, not only said. */
  declare named: boolean;

  static override styles = [
    fieldStyles,
    css`
      :host { display: inline-block; white-space: nowrap; }
      input { width: 3.6em; text-align: right; }
      label { display: flex; justify-content: space-between; gap: 0.4em; align-items: baseline; white-space: normal; }
    `,
  ];

  constructor() {
    super();
    this.label = "";
    this.unit = "";
    this.value = 0;
    this.limits = [0, 1];
    this.decimals = 2;
    this.step = 1;
    this.named = false;
  }

  override render(): TemplateResult {
    const field = html`<input type="text" inputmode="decimal" autocomplete="off" .value=${this.#text} aria-label=${this.label}
      @change=${(e: Event) => this.#read(e.target as HTMLInputElement)} @keydown=${this.#arrow}>`;
    return this.named
      ? html`<label>${this.label} <span class="nowrap">${field}${this.unit === "" ? "" : html` ${this.unit}`}</span></label>`
      : html`${field}${this.unit === "" ? "" : html` ${this.unit}`}`;
  }

  get #text(): string {
    return numberText(this.#shown(this.value), this.decimals);
  }

  #shown(value: number): number {
    return this.quantity === undefined ? value : shownIn(this.quantity, value);
  }

  #read(input: HTMLInputElement): void {
    const [least, most] = this.limits.map((end) => this.#shown(end)) as [number, number];
    const typed = numberIn(input.value);
    const fits = typed !== undefined && typed >= least && typed <= most;
    input.setCustomValidity(
      fits ? "" : words.number(numberText(least, this.decimals), numberText(most, this.decimals)),
    );
    if (!input.reportValidity() || typed === undefined) return;
    if (numberText(typed, 6) === this.#text) return;
    const detail = typed / this.#shown(1);
    this.dispatchEvent(new CustomEvent("number-changed", { detail, bubbles: true, composed: true }));
  }

  #arrow(event: KeyboardEvent): void {
    const turn = { ArrowUp: 1, ArrowDown: -1 }[event.key];
    if (turn === undefined) return;
    event.preventDefault();
    const input = event.target as HTMLInputElement;
    const [least, most] = this.limits.map((end) => this.#shown(end)) as [number, number];
    const next = (numberIn(input.value) ?? this.#shown(this.value)) + turn * this.step;
    input.value = numberText(Math.min(most, Math.max(least, next)), this.decimals);
    this.#read(input);
  }
}

customElements.define("rl-number-field", NumberField);
