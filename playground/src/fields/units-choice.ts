import { css, html, LitElement, type TemplateResult } from "lit";
import { chooseUnits, quantities, unitChoices, unitsChosen } from "../text/units-shown.js";
import { words } from "../text/words.js";
import "./choice-field.js";

/** Units per kind of number, folded away behind one word. */
export class UnitsChoice extends LitElement {
  static override styles = css`
    :host { display: inline-block; position: relative; }
    summary { cursor: pointer; list-style: none; border-bottom: 1.5px solid var(--ink); }
    summary::-webkit-details-marker { display: none; }
    summary:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
    div { position: absolute; z-index: 5; right: 0; top: 1.9em; display: grid; gap: 0.5rem; padding: 0.8rem 1rem; background: var(--paper-lift); border: 1.5px solid var(--ink); white-space: nowrap; justify-items: end; }
    @media (max-width: 700px) { div { right: auto; left: 0; } }
  `;

  override render(): TemplateResult {
    return html`<details @keydown=${this.#shut}>
      <summary>${words.units.label}</summary>
      <div>${quantities.map(
        (quantity) => html`<rl-choice-field .label=${words.units[quantity]} .value=${unitsChosen[quantity]}
          .choices=${Object.entries(unitChoices[quantity]).map(([value, { text }]) => ({ value, text }))}
          @choice-changed=${(e: CustomEvent<string>) => this.#choose({ ...unitsChosen, [quantity]: e.detail })}></rl-choice-field>`,
      )}</div>
    </details>`;
  }

  #choose(chosen: typeof unitsChosen): void {
    chooseUnits(chosen);
    this.dispatchEvent(new CustomEvent("units-changed", { bubbles: true, composed: true }));
  }

  #shut(event: KeyboardEvent): void {
    if (event.key !== "Escape") return;
    (event.currentTarget as HTMLDetailsElement).open = false;
    this.renderRoot.querySelector("summary")?.focus();
  }
}

customElements.define("rl-units-choice", UnitsChoice);
