import { css, html, LitElement, nothing, svg, type TemplateResult } from "lit";
import { waterText } from "../text/quantity.js";
import { sectionWords } from "../text/section-words.js";
import { SizeController } from "./size-controller.js";
import { statePatternStyles, statePatterns } from "./state-patterns.js";

/** What one soil can lend between its two limits. */
export interface WindowTube {
  readonly name: string;
  readonly lendsL: number;
  readonly lendsText: string;
  /** How full the tube is, 0 at the pull limit, 1 at the air return; may lie outside. Undefined: drawn full. */
  readonly level: number | undefined;
}

/** A tube per soil: what lies between the two limits, to scale, and beside it the day's demand as a bottle of the same width. */
export class WindowBar extends LitElement {
  static override properties = { tubes: { attribute: false }, demandL: { type: Number } };
  declare tubes: readonly WindowTube[];
  /** Litres that the tree wants on the day. */
  declare demandL: number;

  static override styles = [
    statePatternStyles,
    css`
      :host { display: block; }
      svg { display: block; font-family: inherit; overflow: visible; }
      text { font-size: var(--size-small); fill: var(--ink); }
      .quiet { fill: var(--ink-quiet); }
      .strong { font-weight: 650; }
      .glass { fill: none; stroke: var(--ink); stroke-width: 1.6; }
      .water { fill: var(--below); }
      .bottle { fill: none; stroke: var(--ink); stroke-width: 1.8; }
      .air { stroke: var(--ink); stroke-width: 1.3; stroke-dasharray: 7 4; }
      .pull { stroke: var(--ink); stroke-width: 1.3; stroke-dasharray: 1.3 3.6; stroke-linecap: round; }
    `,
  ];

  #size = new SizeController(this);

  override render(): TemplateResult | typeof nothing {
    const { width, em } = this.#size;
    const { tubes, demandL } = this;
    if (width === 0 || tubes === undefined || tubes.length === 0) return nothing;
    const w = sectionWords();
    const stub = em * 1.6;
    const top = em * 1.2 + stub;
    const tall = em * 11;
    const most = Math.max(demandL, ...tubes.map((t) => t.lendsL));
    const px = (litres: number): number => (litres / most) * tall;
    const base = top + tall;
    const slot = width / (tubes.length + 1);
    const tube = Math.min(em * 3.4, slot * 0.5);
    const label = tubes.map((t) => w.tubeSummary(t.name, t.lendsText)).join(" ") + w.bottleSummary(waterText(demandL));
    const bottle = px(demandL);
    const bx = slot * (tubes.length + 0.5);
    const neck = Math.min(em * 1.1, tube * 0.4);
    return html`<svg width=${width} height=${base + stub + em * 4.1} role="img" aria-label=${label}>
      <defs>${statePatterns(em)}</defs>
      ${tubes.map((t, i) => {
        const x = slot * (i + 0.5) - tube / 2;
        const h = px(t.lendsL);
        const y = base - h;
        const level = t.level === undefined ? 1 : Math.min(1, Math.max(0, t.level));
        return svg`
          <rect fill="url(#airless)" opacity="0.9" x=${x} y=${y - stub} width=${tube} height=${stub}></rect>
          <rect fill="url(#thirsty)" opacity="0.9" x=${x} y=${base} width=${tube} height=${stub}></rect>
          <rect class="water" x=${x} y=${base - h * level} width=${tube} height=${h * level}></rect>
          <rect class="glass" x=${x} y=${y - stub} width=${tube} height=${h + 2 * stub} rx=${em * 0.5}></rect>
          <line class="air" x1=${x - em * 0.5} x2=${x + tube + em * 0.5} y1=${y} y2=${y}></line>
          <line class="pull" x1=${x - em * 0.5} x2=${x + tube + em * 0.5} y1=${base} y2=${base}></line>
          <text class="strong" x=${x + tube / 2} y=${base + stub + em * 1.2} text-anchor="middle">${t.name}</text>
          ${t.lendsText.split(", ").map((part, line) => svg`<text x=${x + tube / 2} y=${base + stub + em * (2.4 + line * 1.15)} text-anchor="middle">${part}</text>`)}`;
      })}
      <path class="bottle" d="M${bx - tube / 2} ${base}V${base - bottle + em * 0.4}q0 ${-em * 0.4} ${tube / 2 - neck} ${-em * 0.4}v${-em * 0.9}h${2 * neck}v${em * 0.9}q${tube / 2 - neck} 0 ${tube / 2 - neck} ${em * 0.4}V${base}Z"></path>
      <rect class="water" x=${bx - tube / 2 + 2.5} width=${tube - 5} y=${base - Math.max(0, bottle - em * 0.35)} height=${Math.max(0, bottle - em * 0.35 - 2)}></rect>
      <text class="strong" x=${bx} y=${base + stub + em * 1.2} text-anchor="middle">${w.bottle}</text>
      <text x=${bx} y=${base + stub + em * 2.4} text-anchor="middle">${waterText(demandL)}</text>
    </svg>`;
  }
}

customElements.define("rl-window-bar", WindowBar);
