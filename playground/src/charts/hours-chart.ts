import { css, html, LitElement, nothing, svg, type TemplateResult } from "lit";
import { whole } from "../text/number-format.js";
import { words } from "../text/words.js";
import type { ArmSeason } from "./arm-picture.js";
import { SizeController } from "./size-controller.js";
import { statePatternStyles, statePatterns } from "./state-patterns.js";

/** Root-hours as one bar: thirsty from the left, airless from the right, fine between them. */
export class HoursChart extends LitElement {
  static override properties = { season: { attribute: false }, outlined: { type: Boolean, reflect: true } };
  declare season: Pick<ArmSeason, "programme" | "thirstyH" | "fineH" | "airlessH"> | undefined;
  /** Set apart by its frame: the answer of the other engine. */
  declare outlined: boolean;

  static override styles = [
    statePatternStyles,
    css`
      :host { display: block; }
      svg { display: block; font-family: inherit; overflow: visible; }
      text { font-size: var(--size-small); fill: var(--ink); }
      .thirsty-text { fill: var(--thirsty); font-weight: 650; }
      .airless-text { fill: var(--airless); font-weight: 650; }
      .fine { fill: var(--fine); }
      .frame { fill: none; stroke: var(--ink); stroke-width: 1; }
      :host([outlined]) .frame { stroke-width: 2.5; stroke-dasharray: 5 3; }
    `,
  ];

  #size = new SizeController(this);

  override render(): TemplateResult | typeof nothing {
    const { width, em } = this.#size;
    const { season } = this;
    if (!season || width === 0) return nothing;
    const { thirstyH, fineH, airlessH } = season;
    const total = thirstyH + fineH + airlessH;
    const thirsty = (width * thirstyH) / total;
    const airless = (width * airlessH) / total;
    const fine = width - thirsty - airless;
    const top = em * 1.35;
    const height = em * 1.5;
    const label = words.hours.summary(season.programme, thirstyH, fineH, airlessH);
    return html`
      <svg width=${width} height=${top + height + em * 0.3} role="img" aria-label=${label}>
        <defs>${statePatterns(em)}</defs>
        <text class="thirsty-text" x="0" y=${em}>${whole(thirstyH)} ${words.hours.thirsty}</text>
        <text class="airless-text" x=${width} y=${em} text-anchor="end">${whole(airlessH)} ${words.hours.airless}</text>
        <rect fill="url(#thirsty)" x="0" y=${top} width=${thirsty} height=${height}></rect>
        <rect class="fine" x=${thirsty} y=${top} width=${fine} height=${height}></rect>
        <rect fill="url(#airless)" x=${width - airless} y=${top} width=${airless} height=${height}></rect>
        ${fine > em * 6 ? svg`<text x=${thirsty + fine / 2} y=${top + em * 1.02} text-anchor="middle">${whole(fineH)} ${words.hours.fine}</text>` : nothing}
        <rect class="frame" x="0.5" y=${top} width=${width - 1} height=${height}></rect>
      </svg>
    `;
  }
}

customElements.define("rl-hours-chart", HoursChart);
