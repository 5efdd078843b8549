import { css, html, LitElement, nothing, svg, type TemplateResult } from "lit";
import { classWords } from "../text/class-words.js";
import { amount } from "../text/number-format.js";
import { waterText } from "../text/quantity.js";
import { SizeController } from "./size-controller.js";

/** What fell out below the roots in a run: water to scale, nitrogen as dots in it. */
export interface Leak {
  readonly litres: number;
  /** Litres that fill the height, the same in every picture of the lesson. */
  readonly mostLitres: number;
  /** Undefined where nitrogen is not reckoned. */
  readonly nitrogenG: number | undefined;
}

/** Grams of nitrogen that one dot stands for. */
const gramsPerDot = 0.5;
const golden = 0.618034;

/** Water hanging out of the root zone, with the nitrogen that goes with it. */
export class LeakChart extends LitElement {
  static override properties = { leak: { attribute: false } };
  declare leak: Leak | undefined;

  static override styles = css`
    :host { display: block; }
    svg { display: block; font-family: inherit; overflow: visible; }
    text { font-size: var(--size-small); fill: var(--ink); }
    .large { font-size: var(--size-body); font-weight: 650; }
    .root { stroke: var(--ink); stroke-width: 1.4; stroke-dasharray: 6 4; }
    .water { fill: var(--below); }
    .dot { fill: var(--paper); stroke: var(--ink); stroke-width: 1.2; }
  `;

  #size = new SizeController(this);

  override render(): TemplateResult | typeof nothing {
    const { width, em } = this.#size;
    const { leak } = this;
    if (!leak || width === 0) return nothing;
    const w = classWords();
    const top = em * 1.5;
    const tall = em * 9;
    const long = leak.mostLitres > 0 ? Math.max(0, (leak.litres / leak.mostLitres) * tall) : 0;
    const wide = Math.min(width * 0.42, em * 9);
    const round = Math.min(wide / 2, long);
    const grams = leak.nitrogenG ?? 0;
    const dots = Math.round(grams / gramsPerDot);
    const side = wide + em * 1.2;
    return html`<svg width=${width} height=${top + tall + em * 0.5} role="img" aria-label=${w.leakSummary(waterText(leak.litres), leak.nitrogenG === undefined ? undefined : amount(grams))}>
      <text x="0" y=${em * 0.8}>${w.leakEdge}</text>
      <line class="root" x1="0" x2=${width} y1=${top} y2=${top}></line>
      <path class="water" d=${`M0 ${top}V${top + long - round}A${wide / 2} ${round} 0 0 0 ${wide} ${top + long - round}V${top}Z`}></path>
      ${Array.from({ length: dots }, (_, i) => {
        const down = (i + 0.5) / dots;
        const across = ((i + 1) * golden) % 1;
        const half = halfWidth(down * long, long, round, wide);
        return svg`<circle class="dot" cx=${wide / 2 + (across - 0.5) * 2 * Math.max(0, half - em * 0.35)} cy=${top + Math.max(em * 0.3, down * (long - em * 0.3))} r=${em * 0.24}></circle>`;
      })}
      <text class="large" x=${side} y=${top + em * 1.6}>${waterText(leak.litres)}</text>
      ${
        leak.nitrogenG === undefined
          ? nothing
          : svg`<text class="large" x=${side} y=${top + em * 3.2}>${w.leakGrams(amount(grams))}</text>
            <circle class="dot" cx=${side + em * 0.3} cy=${top + em * 4.4} r=${em * 0.24}></circle>
            <text x=${side + em * 0.9} y=${top + em * 4.7}>${w.leakDot(amount(gramsPerDot))}</text>`
      }
    </svg>`;
  }
}

/** Half of the width of the hanging water at a depth in it. */
function halfWidth(at: number, long: number, round: number, wide: number): number {
  const into = at - (long - round);
  if (into <= 0 || round <= 0) return wide / 2;
  return (wide / 2) * Math.sqrt(Math.max(0, 1 - (into / round) ** 2));
}

customElements.define("rl-leak-chart", LeakChart);
