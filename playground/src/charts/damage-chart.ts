import { scaleLog } from "d3";
import { css, html, LitElement, nothing, svg, type TemplateResult } from "lit";
import { classWords } from "../text/class-words.js";
import { SizeController } from "./size-controller.js";
import { statePatternStyles, statePatterns } from "./state-patterns.js";

/** Between which hours without air published sources begin and cease to expect harm, and how long the roots went without. */
export interface DamageData {
  readonly fromH: number;
  readonly toH: number;
  readonly spells: readonly { readonly name: string; readonly hours: number }[];
}

const ticksH = [1, 3, 6, 12, 24, 48, 96, 168, 336];
const shortestH = 0.8;

/** Hours without air against the band in which sources differ; a band, never a clock. */
export class DamageChart extends LitElement {
  static override properties = { data: { attribute: false } };
  declare data: DamageData | undefined;

  static override styles = [
    statePatternStyles,
    css`
      :host { display: block; }
      svg { display: block; font-family: inherit; overflow: visible; }
      text { font-size: var(--size-small); fill: var(--ink-quiet); }
      .strong { fill: var(--ink); font-weight: 650; }
      .rule { stroke: var(--rule-strong); }
      .edge { stroke: var(--airless); stroke-width: 2; }
      .spell { stroke: var(--ink); stroke-width: 2; }
      .dot { fill: var(--ink); }
      .halo { paint-order: stroke; stroke: var(--paper); stroke-width: 0.4em; stroke-linejoin: round; }
    `,
  ];

  #size = new SizeController(this);

  override render(): TemplateResult | typeof nothing {
    const { width, em } = this.#size;
    const { data } = this;
    if (!data || width === 0) return nothing;
    const w = classWords();
    const { fromH, toH, spells } = data;
    const x = scaleLog([shortestH, 400], [em * 0.6, width - em * 0.6]);
    const top = em * 2.6;
    const band = em * 2.2;
    const row = (i: number): number => top + band + em * (1.5 + i * 1.7);
    const base = row(spells.length - 1) + em;
    const summary = w.damageSummary(
      fromH,
      toH,
      spells.map(({ name, hours }) => `${name}: ${w.span(hours)}`),
    );
    return html`<svg width=${width} height=${base + em * 1.6} role="img" aria-label=${summary}>
      <defs>${statePatterns(em)}</defs>
      <text class="strong" x="0" y=${em * 0.8}>${w.damage}</text>
      <rect fill="url(#airless)" opacity="0.85" x=${x(fromH)} width=${x(toH) - x(fromH)} y=${top} height=${band}></rect>
      ${[fromH, toH].map((h) => svg`<line class="edge" x1=${x(h)} x2=${x(h)} y1=${top - em * 0.3} y2=${top + band + em * 0.3}></line>`)}
      <text class="strong halo" x=${x(fromH)} y=${top - em * 0.55} text-anchor="middle">${w.span(fromH)}</text>
      <text class="strong halo" x=${Math.min(x(toH), width - em * 2)} y=${top - em * 0.55} text-anchor="middle">${w.span(toH)}</text>
      ${spells.map(({ name, hours }, i) => {
        const at = x(Math.max(shortestH, hours));
        const late = at > width * 0.55;
        return svg`<line class="spell" x1=${x(shortestH)} x2=${at} y1=${row(i)} y2=${row(i)}></line><circle class="dot" cx=${at} cy=${row(i)} r=${em * 0.34}></circle>
          <text class="strong halo" x=${at + (late ? -em : em) * 0.6} y=${row(i) - (late ? em * 0.45 : -em * 0.3)} text-anchor=${late ? "end" : "start"}>${`${name}: ${w.span(hours)}`}</text>`;
      })}
      <line class="rule" x1=${x(shortestH)} x2=${width} y1=${base} y2=${base}></line>
      ${ticksH.filter((h) => width > em * 34 || [1, 6, 24, 168].includes(h)).map((h) => svg`<line class="rule" x1=${x(h)} x2=${x(h)} y1=${base} y2=${base + em * 0.3}></line><text x=${x(h)} y=${base + em * 1.3} text-anchor="middle">${w.span(h)}</text>`)}
    </svg>`;
  }
}

customElements.define("rl-damage-chart", DamageChart);
