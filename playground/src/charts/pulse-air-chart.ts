import { scaleLinear } from "d3";
import { css, html, LitElement, nothing, svg, type TemplateResult } from "lit";
import { classWords } from "../text/class-words.js";
import { clock, percent } from "../text/number-format.js";
import { SizeController } from "./size-controller.js";
import { statePatternStyles, statePatterns } from "./state-patterns.js";

/** One day of pulses: roots without air by hour, and what each pulse found when it began. */
export interface PulseDay {
  /** Share of the roots without air in each hour of the day. */
  readonly airlessShare: Float64Array;
  /** Hours of the day at which a pulse opens and closes, and the share without air in the hour before. */
  readonly pulses: readonly { readonly opensH: number; readonly closesH: number; readonly before: number }[];
}

/** Air memory: the air that is missing hour by hour, with a dot for what every pulse inherits from the one before. */
export class PulseAirChart extends LitElement {
  static override properties = { day: { attribute: false } };
  declare day: PulseDay | undefined;

  static override styles = [
    statePatternStyles,
    css`
      :host { display: block; }
      svg { display: block; font-family: inherit; overflow: visible; }
      text { font-size: var(--size-small); fill: var(--ink-quiet); }
      .strong { fill: var(--ink); font-weight: 650; }
      .edge { fill: none; stroke: var(--airless); stroke-width: 1.6; }
      .rule { stroke: var(--rule); }
      .run { fill: var(--ink); }
      .dot { fill: var(--ink); stroke: var(--paper); stroke-width: 2; }
      .halo { paint-order: stroke; stroke: var(--paper); stroke-width: 0.35em; stroke-linejoin: round; }
    `,
  ];

  #size = new SizeController(this);

  override render(): TemplateResult | typeof nothing {
    const { width, em } = this.#size;
    const { day } = this;
    if (!day || width === 0) return nothing;
    const w = classWords();
    const left = em * 2.6;
    const top = em * 1.9;
    const base = top + em * 8;
    const x = scaleLinear([0, 24], [left, width - em * 0.6]);
    const y = scaleLinear([0, 1], [base, top]);
    const steps = Array.from(day.airlessShare.slice(0, 24));
    const path = steps.map((share, hour) => `V${y(share)}H${x(hour + 1)}`).join("");
    const said = day.pulses.map(({ before }) => percent(before)).join(", ");
    return html`<svg width=${width} height=${base + em * 3.1} role="img" aria-label=${w.memorySummary(said)}>
      <defs>${statePatterns(em)}</defs>
      <text class="strong" x="0" y=${em * 0.8}>${w.memory}</text>
      ${[0, 0.5, 1].map((v) => svg`<line class="rule" x1=${left} x2=${width} y1=${y(v)} y2=${y(v)}></line><text x=${left - em * 0.3} y=${y(v) + em * 0.28} text-anchor="end">${percent(v)}</text>`)}
      <path fill="url(#airless)" opacity="0.85" d=${`M${x(0)} ${base}${path}V${base}Z`}></path>
      <path class="edge" d=${`M${x(0)} ${base}${path}`}></path>
      ${day.pulses.map(({ opensH, closesH }) => svg`<rect class="run" x=${x(opensH)} width=${Math.max(2, x(closesH) - x(opensH))} y=${base + em * 0.35} height=${em * 0.7}></rect>`)}
      ${day.pulses.map(
        (
          { opensH, before },
          i,
        ) => svg`<circle class="dot" cx=${x(Math.floor(opensH))} cy=${y(before)} r=${em * 0.32}></circle>
          ${before > 0.005 && (day.pulses.length < 5 || i % 2 === 1) ? svg`<text class="halo strong" x=${x(Math.floor(opensH))} y=${y(before) - em * 0.6} text-anchor="middle">${percent(before)}</text>` : nothing}`,
      )}
      ${[0, 6, 12, 18, 24].map((hour) => svg`<text x=${x(hour)} y=${base + em * 2.1} text-anchor=${hour === 24 ? "end" : "middle"}>${hour === 24 ? "24:00" : clock(hour)}</text>`)}
      <text x=${left} y=${base + em * 3.1}>${w.memoryKey}</text>
    </svg>`;
  }
}

customElements.define("rl-pulse-air-chart", PulseAirChart);
