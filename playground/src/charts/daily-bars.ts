import { css, html, LitElement, nothing, svg, type TemplateResult } from "lit";
import { amount, dayLabel } from "../text/number-format.js";
import { shownIn } from "../text/quantity.js";
import { soilMoreWords } from "../text/soil-more-words.js";
import { SizeController } from "./size-controller.js";

/** Litres of one programme by day. */
export interface DailyLitres {
  readonly programme: string;
  readonly startDate: string;
  readonly firstDay: number;
  readonly wantedL: Float64Array;
  readonly givenL: Float64Array;
  readonly lostL: Float64Array;
}

/** Litres by day: given as bars, wanted as a line over them, what left below the roots falling from the ground line. */
export class DailyBars extends LitElement {
  static override properties = { litres: { attribute: false }, mostL: { type: Number }, mostLostL: { type: Number } };
  declare litres: DailyLitres | undefined;
  /** Litres that fill the height above and below the line, the same for every programme. */
  declare mostL: number;
  declare mostLostL: number;

  static override styles = css`
    :host { display: block; }
    svg { display: block; font-family: inherit; overflow: visible; }
    text { font-size: var(--size-small); fill: var(--ink-quiet); }
    .given { fill: var(--rule-strong); }
    .lost { fill: var(--below); }
    .wanted { fill: none; stroke: var(--ink); stroke-width: 1.8; }
    .ground { stroke: var(--ink); stroke-width: 1; }
    .rule { stroke: var(--rule); stroke-width: 1; }
  `;

  #size = new SizeController(this);

  override render(): TemplateResult | typeof nothing {
    const { width, em } = this.#size;
    const { litres } = this;
    if (!litres || width === 0) return nothing;
    const { wantedL, givenL, lostL, startDate, firstDay, programme } = litres;
    const days = wantedL.length;
    const left = em * 2.3;
    const tall = em * 5;
    const perL = tall / Math.max(1, this.mostL);
    const ground = em * 0.6 + tall;
    const deep = Math.max(em * 0.8, Math.min(em * 5, this.mostLostL * perL));
    const perLost = deep / Math.max(1, this.mostLostL);
    const step = (width - left) / days;
    const x = (day: number): number => left + day * step;
    const bar = Math.max(1, step * 0.7);
    const line = Array.from(
      wantedL,
      (l, d) => `${d === 0 ? "M" : "L"}${x(d).toFixed(1)} ${(ground - l * perL).toFixed(1)}H${x(d + 1).toFixed(1)}`,
    ).join("");
    const sum = (of: Float64Array): number => of.reduce((total, l) => total + l, 0);
    const label = soilMoreWords().dailySummary(programme, sum(wantedL), sum(givenL), sum(lostL));
    return html`<svg width=${width} height=${ground + deep + em * 1.3} role="img" aria-label=${label}>
      <line class="rule" x1=${left} x2=${width} y1=${ground - tall} y2=${ground - tall}></line>
      <text x=${left - em * 0.3} y=${ground - tall + em * 0.3} text-anchor="end">${amount(shownIn("water", this.mostL), 2)}</text>
      <text x=${left - em * 0.3} y=${ground + em * 0.25} text-anchor="end">0</text>
      ${Array.from(givenL, (l, d) => (l > 0 ? svg`<rect class="given" x=${x(d) + (step - bar) / 2} width=${bar} y=${ground - l * perL} height=${l * perL}></rect>` : nothing))}
      ${Array.from(lostL, (l, d) => (l > 0.05 ? svg`<rect class="lost" x=${x(d) + (step - bar) / 2} width=${bar} y=${ground} height=${l * perLost}></rect>` : nothing))}
      <path class="wanted" d=${line}></path>
      <line class="ground" x1=${left} x2=${width} y1=${ground} y2=${ground}></line>
      <text x=${left} y=${ground + deep + em * 1.1}>${dayLabel(startDate, firstDay)}</text>
      <text x=${width} y=${ground + deep + em * 1.1} text-anchor="end">${dayLabel(startDate, firstDay + days - 1)}</text>
    </svg>`;
  }
}

customElements.define("rl-daily-bars", DailyBars);
