import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { type ProgrammeScene, ruleNames } from "../state/scene.js";
import { toolsWords } from "../text/tools-words.js";
import "./choice-field.js";
import "./clock-field.js";
import { limits } from "./limits.js";
import "./number-field.js";

/** What a programme's sentence leaves out: the rule that decides, a second opening, lines of its own. */
export class ProgrammeMore extends LitElement {
  static override properties = { programme: { attribute: false }, blockLines: { type: Number } };
  declare programme: ProgrammeScene;
  declare blockLines: number;

  static override styles = css`
    :host { display: grid; gap: 0.45rem; justify-items: start; padding: 0.2rem 0 0.6rem; }
    p { margin: 0; }
    .small { font-size: var(--size-small); color: var(--ink-quiet); }
  `;

  override render(): TemplateResult {
    const { programme: p } = this;
    const w = toolsWords();
    const rules = ruleNames.map((value) => ({ value, text: w.rules[value] }));
    const lines = Array.from({ length: limits.ownLines[1] + 1 }, (_, count) => ({
      value: String(count),
      text: count === 0 ? w.blockLines(this.blockLines) : String(count),
    }));
    const number = (
      key: "triggerKPa" | "triggerDepthCm",
      label: string,
      quantity: "tension" | undefined,
      decimals: number,
    ) =>
      html`<rl-number-field named .label=${label} .value=${p[key]} .limits=${limits[key]} .decimals=${decimals} .quantity=${quantity} .step=${decimals === 0 ? 5 : 1}
        @number-changed=${(e: CustomEvent<number>) => this.#tell({ [key]: decimals === 0 ? Math.round(e.detail) : e.detail })}></rl-number-field>`;
    return html`
      <rl-choice-field .label=${`${w.rule}:`} .value=${p.rule} .choices=${rules} @choice-changed=${(e: CustomEvent<ProgrammeScene["rule"]>) => this.#tell({ rule: e.detail })}></rl-choice-field>
      ${
        p.rule === "depletion"
          ? html`<rl-number-field named .label=${w.depletion} .value=${p.triggerFraction * 100} .limits=${limits.triggerFraction.map((x) => x * 100)} .decimals=${0} .step=${5}
              @number-changed=${(e: CustomEvent<number>) => this.#tell({ triggerFraction: e.detail / 100 })}></rl-number-field>`
          : nothing
      }
      ${p.rule === "tension" ? html`${number("triggerKPa", w.tension(), "tension", 1)}${number("triggerDepthCm", w.depth, undefined, 0)}` : nothing}
      ${p.rule === "calendar" ? html`<rl-clock-field .label=${w.again} .value=${p.againTime} .none=${w.never} @clock-changed=${(e: CustomEvent<string>) => this.#tell({ againTime: e.detail })}></rl-clock-field>` : html`<p class="small">${w.ruleNote}</p>`}
      <rl-choice-field .label=${`${w.lines}:`} .value=${String(p.lines)} .choices=${lines} @choice-changed=${(e: CustomEvent<string>) => this.#tell({ lines: Number(e.detail) })}></rl-choice-field>
      ${p.lines !== 0 && p.lines !== this.blockLines ? html`<p class="small">${w.linesNote}</p>` : nothing}
    `;
  }

  #tell(detail: Partial<ProgrammeScene>): void {
    this.dispatchEvent(new CustomEvent("programme-changed", { detail, bubbles: true, composed: true }));
  }
}

customElements.define("rl-programme-more", ProgrammeMore);
