import { scaleLinear } from "d3";
import { css, html, LitElement, nothing, svg, type TemplateResult } from "lit";
import { words } from "../text/words.js";
import { SizeController } from "./size-controller.js";

/** Litres below the roots, hanging out of the bottom of the section: what has gone so far, and the season's whole. */
export class FallsChart extends LitElement {
  static override properties = {
    sofarL: { type: Number },
    totalL: { type: Number },
    mostL: { type: Number },
    text: { type: String },
    compact: { type: Boolean },
  };
  declare sofarL: number;
  /** Undefined while only a few days are known. */
  declare totalL: number | undefined;
  /** The largest total of all pictures, which fills the height. */
  declare mostL: number;
  /** What the litres so far are called. */
  declare text: string;
  /** One number, in body size. */
  declare compact: boolean;

  static override styles = css`
    :host { display: block; }
    svg { display: block; font-family: inherit; overflow: visible; }
    text { font-size: var(--size-small); fill: var(--ink); }
    .large { font-size: var(--size-body); font-weight: 650; }
    [hidden] { display: none; }
    .quiet { fill: var(--ink-quiet); }
    .whole { fill: none; stroke: var(--below); stroke-width: 1.2; stroke-dasharray: 3 3; }
    .gone { fill: var(--below); }
    .strand { stroke: var(--paper); stroke-width: 1.2; opacity: 0.55; }
  `;

  #size = new SizeController(this);

  constructor() {
    super();
    this.sofarL = 0;
    this.mostL = 1;
    this.text = "";
    this.compact = false;
  }

  override render(): TemplateResult | typeof nothing {
    const { width, em } = this.#size;
    if (width === 0) return nothing;
    const height = em * (this.compact ? 3 : 4.6);
    const scale = scaleLinear([0, Math.max(1, this.mostL)], [0, height - em * 0.4]);
    const total = this.totalL === undefined ? 0 : scale(this.totalL);
    const gone = Math.min(scale(this.sofarL), height);
    const half = em * 1.6;
    const x = em * 1.9 + half + em * 0.6;
    const end = this.totalL === undefined ? "" : this.totalL < 0.5 ? words.below.none : words.below.total(this.totalL);
    const label = end === "" ? this.text : `${this.text}; ${end}`;
    return html`
      <svg width=${width} height=${height} role="img" aria-label=${label}>
        ${total > 1 ? svg`<path class="whole" d=${tongue(x, half, total)}></path>` : nothing}
        ${gone > 0.5 ? svg`<path class="gone" d=${tongue(x, half, gone)}></path>` : nothing}
        ${gone > em ? [-0.5, 0, 0.5].map((at) => svg`<line class="strand" x1=${x + at * half} x2=${x + at * half} y1="0" y2=${gone - em * 0.5}></line>`) : nothing}
        <text class=${this.compact ? "large" : ""} x=${x + half + em * 0.9} y=${em * 1.35}>${this.text}</text>
        <text class="quiet" ?hidden=${this.compact} x=${x + half + em * 0.9} y=${em * 2.5}>
          ${end}
        </text>
      </svg>
    `;
  }
}

/** A hanging body of water with a rounded lower end. */
function tongue(x: number, half: number, length: number): string {
  const round = Math.min(half, length);
  return `M${x - half} 0V${length - round}A${half} ${round} 0 0 0 ${x + half} ${length - round}V0`;
}

customElements.define("rl-falls-chart", FallsChart);
