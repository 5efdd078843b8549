import { line, max, scaleLinear, scalePoint } from "d3";
import { css, html, LitElement, nothing, svg, type TemplateResult } from "lit";
import { classWords } from "../text/class-words.js";
import { amount } from "../text/number-format.js";
import { SizeController } from "./size-controller.js";

/** One measure by point of the slider, a line per column. */
export interface SweepData {
  readonly measure: string;
  readonly unit: string;
  readonly points: readonly string[];
  readonly columns: readonly { readonly name: string; readonly values: readonly (number | undefined)[] }[];
}

const dashes = ["none", "8 4", "2 4", "12 3 2 3"];

/** How a measure answers to the slider: the knee, the class's guess and what was frozen. */
export class SweepChart extends LitElement {
  static override properties = {
    data: { attribute: false },
    at: { type: Number },
    guess: { type: Number },
    frozen: { type: Number },
  };
  declare data: SweepData | undefined;
  declare at: number;
  /** Point that the class guessed, and the one that was frozen; -1 for none. */
  declare guess: number;
  declare frozen: number;

  static override styles = css`
    :host { display: block; }
    svg { display: block; font-family: inherit; overflow: visible; }
    text { font-size: var(--size-small); fill: var(--ink-quiet); }
    .strong { fill: var(--ink); font-weight: 650; }
    .line { fill: none; stroke: var(--ink); stroke-width: 2; }
    .dot { fill: var(--ink); }
    .rule { stroke: var(--rule); }
    .guess { stroke: var(--ink); stroke-width: 2; stroke-dasharray: 2 3; }
    .frozen { fill: none; stroke: var(--ink); stroke-width: 2; }
    .now { fill: var(--paper); stroke: var(--ink); stroke-width: 2.4; }
    .halo { paint-order: stroke; stroke: var(--paper); stroke-width: 0.4em; }
  `;

  #size = new SizeController(this);

  constructor() {
    super();
    this.at = 0;
    this.guess = -1;
    this.frozen = -1;
  }

  override render(): TemplateResult | typeof nothing {
    const { width, em } = this.#size;
    const { data } = this;
    if (!data || width === 0) return nothing;
    const w = classWords();
    const left = em * 2.6;
    const longest = data.columns.length > 1 ? Math.max(...data.columns.map(({ name }) => name.length)) * em * 0.5 : 0;
    /** Names stand at the ends of their lines where there is room, else beneath. */
    const beside = longest > 0 && longest < width * 0.28;
    const right = width - (beside ? longest + em * 0.8 : em);
    const top = em * 1.6;
    const height = top + em * 7;
    const x = scalePoint(
      data.points.map((_, i) => String(i)),
      [left + em * 0.5, right - em * 0.5],
    );
    const most = max(data.columns.flatMap((c) => c.values.filter((v) => v !== undefined))) ?? 1;
    const y = scaleLinear([0, most > 0 ? most * 1.08 : 1], [height, top]);
    const place = (i: number): number => x(String(i)) ?? left;
    const labels = apart(
      data.columns.map((c) => y(c.values.filter((v) => v !== undefined).at(-1) ?? 0) + em * 0.28),
      em,
    );
    const widest = Math.max(...data.points.map((p) => p.length)) * em * 0.48 + em * 0.3;
    /** Every point has its name where there is room, else every second, third ... with the last one. */
    const step = Math.max(1, Math.ceil(widest / Math.max(1, place(1) - place(0))));
    const late = (i: number): boolean => place(i) > width * 0.8;
    const summary = data.columns
      .map((c) =>
        w.sweepSummary(
          c.name,
          data.points.map((p, i) => `${p}: ${c.values[i] === undefined ? "…" : amount(c.values[i])}`).join(", "),
        ),
      )
      .join(" ");
    return html`<svg width=${width} height=${height + em * (1.6 + (beside || data.columns.length < 2 ? 0 : data.columns.length * 1.15))} role="img" aria-label=${`${data.measure}, ${data.unit}. ${summary}`}>
      <text class="strong" x="0" y=${em * 0.8}>${data.measure}, ${data.unit}</text>
      ${y.ticks(4).map((v) => svg`<line class="rule" x1=${left} x2=${right} y1=${y(v)} y2=${y(v)}></line><text x=${left - em * 0.4} y=${y(v) + em * 0.28} text-anchor="end">${amount(v)}</text>`)}
      ${this.guess >= 0 ? svg`<line class="guess" x1=${place(this.guess)} x2=${place(this.guess)} y1=${top - em * 0.3} y2=${height}></line><text class="halo" x=${place(this.guess) + (late(this.guess) ? -em : em) * 0.3} y=${top + em * 0.1} text-anchor=${late(this.guess) ? "end" : "start"}>${w.guess}</text>` : nothing}
      ${data.columns.map((c, k) => {
        const known = c.values
          .map((v, i) => [i, v] as const)
          .filter((d): d is readonly [number, number] => d[1] !== undefined);
        const path =
          line<readonly [number, number]>(
            (d) => place(d[0]),
            (d) => y(d[1]),
          )(known) ?? "";
        return svg`<path class="line" stroke-dasharray=${dashes[k] ?? "none"} d=${path}></path>
          ${known.map(
            ([
              i,
              v,
            ]) => svg`<circle class=${i === this.at ? "now" : "dot"} cx=${place(i)} cy=${y(v)} r=${em * (i === this.at ? 0.32 : 0.18)}></circle>
            ${i === this.frozen ? svg`<rect class="frozen" x=${place(i) - em * 0.4} y=${y(v) - em * 0.4} width=${em * 0.8} height=${em * 0.8}></rect>` : nothing}`,
          )}
          ${beside ? svg`<text class="strong halo" x=${right} y=${labels[k]!}>${c.name}</text>` : nothing}
          ${data.columns.length > 1 && !beside ? svg`<line class="line" stroke-dasharray=${dashes[k] ?? "none"} x1=${left} x2=${left + em * 2} y1=${height + em * (2.1 + k * 1.15)} y2=${height + em * (2.1 + k * 1.15)}></line><text class="strong" x=${left + em * 2.5} y=${height + em * (2.4 + k * 1.15)}>${c.name}</text>` : nothing}`;
      })}
      ${data.points.map((p, i) => ((data.points.length - 1 - i) % step > 0 ? nothing : svg`<text x=${place(i)} y=${height + em * 1.1} text-anchor="middle">${p}</text>`))}
    </svg>`;
  }
}

/** Heights of labels moved so that none covers another, in the same order from top to bottom. */
function apart(heights: readonly number[], em: number): readonly number[] {
  const order = heights.map((_, i) => i).sort((a, b) => heights[a]! - heights[b]!);
  const out = [...heights];
  order.forEach((i, rank) => {
    const above = order[rank - 1];
    if (above !== undefined) out[i] = Math.max(out[i]!, out[above]! + em);
  });
  return out;
}

customElements.define("rl-sweep-chart", SweepChart);
