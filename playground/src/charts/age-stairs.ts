import { css, html, LitElement, nothing, svg, type TemplateResult } from "lit";
import { amount } from "../text/number-format.js";
import { waterText } from "../text/quantity.js";
import { yearsWords } from "../text/years-words.js";
import { SizeController } from "./size-controller.js";

/** One age of the tree. */
export interface AgeStep {
  readonly ageYears: number;
  readonly litres: number;
  readonly open: number;
  readonly all: number;
}

/** Litres a day by age as a staircase, with the open emitters of each step written under it. */
export class AgeStairs extends LitElement {
  static override properties = { steps: { attribute: false }, nowYears: { type: Number } };
  declare steps: readonly AgeStep[] | undefined;
  declare nowYears: number;

  static override styles = css`
    :host { display: block; max-width: 52rem; }
    svg { display: block; font-family: inherit; overflow: visible; }
    text { font-size: var(--size-small); fill: var(--ink-quiet); text-anchor: middle; }
    .strong { fill: var(--ink); font-weight: 650; }
    .step { fill: var(--below); }
    .now { fill: none; stroke: var(--ink); stroke-width: 2; }
    .ground { stroke: var(--ink); }
  `;

  #size = new SizeController(this);

  override render(): TemplateResult | typeof nothing {
    const { width, em } = this.#size;
    const { steps } = this;
    if (!steps || steps.length === 0 || width === 0) return nothing;
    const w = yearsWords();
    const most = Math.max(...steps.map(({ litres }) => litres));
    const tall = em * 7;
    const top = em * 1.5;
    const slot = width / steps.length;
    const label = w.summary(steps.map(({ ageYears, litres, open }) => w.part(ageYears, litres, open)));
    const nearest = steps.reduce(
      (best, { ageYears }, i) =>
        Math.abs(ageYears - this.nowYears) < Math.abs(steps[best]!.ageYears - this.nowYears) ? i : best,
      0,
    );
    return html`<svg width=${width} height=${top + tall + em * 2.8} role="img" aria-label=${label}>
      ${steps.map(({ ageYears, litres, open, all }, i) => {
        const h = (litres / most) * tall;
        const x = slot * i;
        const narrow = slot < em * 4;
        return svg`<rect class="step" x=${x + 1} width=${slot - 2} y=${top + tall - h} height=${h}></rect>
          ${i === nearest ? svg`<rect class="now" x=${x + 1} width=${slot - 2} y=${top + tall - h} height=${h}></rect>` : nothing}
          <text class="strong" x=${x + slot / 2} y=${top + tall - h - em * 0.35}>${narrow ? amount(litres, 2) : waterText(litres, 2)}</text>
          <text x=${x + slot / 2} y=${top + tall + em * 1.1}>${amount(ageYears)}${i === 0 && !narrow ? ` ${w.years}` : ""}</text>
          <text x=${x + slot / 2} y=${top + tall + em * 2.3}>${w.open(open, all)}</text>`;
      })}
      <line class="ground" x1="0" x2=${width} y1=${top + tall} y2=${top + tall}></line>
    </svg>`;
  }
}

customElements.define("rl-age-stairs", AgeStairs);
