import { css, html, LitElement, nothing, svg, type TemplateResult } from "lit";
import { words } from "../text/words.js";
import { SizeController } from "./size-controller.js";
import { halfAxis, type StripRow } from "./strip-row.js";

/** Below this width, in letters, a row's words take two lines. */
const narrowEm = 27;

/**
 * Paired differences, one line per measure, each on an axis of its own with zero in the middle: the band from 5 to 95 % as a bar,
 * the median as a point, the floor as two dashed posts. Filled: a clear difference; hollow: none.
 */
export class DifferenceStrip extends LitElement {
  static override properties = { rows: { attribute: false }, heading: { type: String } };
  declare rows: readonly StripRow[];
  declare heading: string;

  static override styles = css`
    :host { display: block; }
    svg { display: block; font-family: inherit; overflow: visible; }
    text { font-size: var(--size-small); fill: var(--ink); }
    .quiet { fill: var(--ink-quiet); }
    .zero { stroke: var(--ink); stroke-width: 1.5; }
    .axis { stroke: var(--rule-strong); stroke-width: 1; }
    .floor { stroke: var(--ink); stroke-width: 1.5; stroke-dasharray: 3 3; }
    .band { stroke: var(--ink); stroke-width: 1.5; }
    .clear { fill: var(--ink); }
    .unclear { fill: var(--paper); }
    .point { stroke: var(--ink); stroke-width: 2; }
    .clear.point { stroke: var(--paper); }
  `;

  #size = new SizeController(this);

  constructor() {
    super();
    this.rows = [];
    this.heading = "";
  }

  override render(): TemplateResult | typeof nothing {
    const { width, em } = this.#size;
    const { rows } = this;
    if (width === 0 || rows.length === 0) return nothing;
    const w = words.draws;
    const lines = width < em * narrowEm ? 2 : 1;
    const rowHeight = em * (1.9 + 1.2 * lines);
    const top = em * 1.4;
    const middle = width / 2;
    const label = `${this.heading}. ${rows.map((row) => w.rowSummary(row)).join(" ")}`;
    return html`<svg width=${width} height=${top + rows.length * rowHeight} role="img" aria-label=${label}>
      <text class="quiet" x="0" y=${em}>← ${w.less}</text>
      <text class="quiet" x=${middle} y=${em} text-anchor="middle">${w.zero}</text>
      <text class="quiet" x=${width} y=${em} text-anchor="end">${w.more} →</text>
      ${rows.map((row, i) => this.#row(row, top + i * rowHeight, width, em, lines))}
    </svg>`;
  }

  #row(row: StripRow, y: number, width: number, em: number, lines: number): TemplateResult {
    const half = halfAxis(row);
    const at = (value: number): number => (width / 2) * (1 + value / half);
    const line = y + em * (0.95 + 1.2 * lines);
    const upright = (kind: string, value: number, reach: number) =>
      svg`<line class=${kind} x1=${at(value)} x2=${at(value)} y1=${line - em * reach} y2=${line + em * reach}></line>`;
    const { band, verdict } = row;
    const [name, rest] = words.draws.rowLabel(row);
    const state = verdict === "no clear difference" ? "unclear" : "clear";
    return svg`
      <text x="0" y=${y + em}>${lines === 1 ? `${name}${rest}` : name}</text>
      ${lines === 2 ? svg`<text x="0" y=${y + em * 2.2}>${rest.replace(/^, | (?=\()/, "")}</text>` : nothing}
      <line class="axis" x1="0" x2=${width} y1=${line} y2=${line}></line>
      ${upright("floor", -row.floor, 0.62)}${upright("floor", row.floor, 0.62)}
      ${band ? svg`<rect class="band ${state}" x=${at(band.low)} width=${Math.max(1, at(band.high) - at(band.low))} y=${line - em * 0.28} height=${em * 0.56} rx=${em * 0.2}></rect>` : nothing}
      ${upright("zero", 0, 0.75)}
      <circle class="point ${state}" cx=${at(row.value)} cy=${line} r=${em * (band ? 0.34 : 0.4)}></circle>
    ` as unknown as TemplateResult;
  }
}

customElements.define("rl-difference-strip", DifferenceStrip);
