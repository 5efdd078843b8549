import { css, html, LitElement, nothing, svg, type TemplateResult } from "lit";
import { amount, dayLabel } from "../text/number-format.js";
import { shownIn, unitText } from "../text/quantity.js";
import { SizeController } from "./size-controller.js";

/** Salt of the root zone by day, one line a programme, named at its end. */
export class SaltLines extends LitElement {
  static override properties = {
    lines: { attribute: false },
    startDate: { type: String },
    summary: { type: String },
  };
  declare lines: readonly { readonly letter: string; readonly eceDsPerM: Float64Array }[] | undefined;
  declare startDate: string;
  declare summary: string;

  static override styles = css`
    :host { display: block; max-width: 44rem; }
    svg { display: block; font-family: inherit; overflow: visible; }
    text { font-size: var(--size-small); fill: var(--ink-quiet); }
    .letter { fill: var(--ink); font-weight: 650; }
    .line { fill: none; stroke: var(--ink); stroke-width: 1.8; }
    .rule { stroke: var(--rule); stroke-width: 1; }
  `;

  #size = new SizeController(this);

  override render(): TemplateResult | typeof nothing {
    const { width, em } = this.#size;
    const { lines } = this;
    if (!lines || lines.length === 0 || width === 0) return nothing;
    const days = lines[0]!.eceDsPerM.length;
    const most = Math.max(...lines.flatMap(({ eceDsPerM }) => [...eceDsPerM])) * 1.08;
    const left = em * 2.6;
    const right = em * 1.4 * lines.length;
    const tall = em * 7;
    const top = em * 1.4;
    const x = (day: number): number => left + ((width - left - right) * day) / Math.max(1, days - 1);
    const y = (ece: number): number => top + tall - (ece / most) * tall;
    return html`<svg width=${width} height=${top + tall + em * 1.4} role="img" aria-label=${this.summary}>
      <text x="0" y=${em * 0.9}>${unitText("salt")}</text>
      ${[0, 0.5, 1].map((share) => {
        const at = y((most / 1.08) * share);
        return svg`<line class="rule" x1=${left} x2=${width - right} y1=${at} y2=${at}></line>
          <text x=${left - em * 0.3} y=${at + em * 0.3} text-anchor="end">${amount(shownIn("salt", (most / 1.08) * share), 2)}</text>`;
      })}
      ${lines.map(({ letter, eceDsPerM }, i) => {
        const path = Array.from(
          eceDsPerM,
          (ece, day) => `${day === 0 ? "M" : "L"}${x(day).toFixed(1)} ${y(ece).toFixed(1)}`,
        );
        return svg`<path class="line" d=${path.join("")} stroke-dasharray=${["none", "7 3", "2 3", "10 3 2 3"][i] ?? "none"}></path>
          <text class="letter" x=${width - right + em * (0.3 + 1.3 * i)} y=${y(eceDsPerM.at(-1)!) + em * 0.3}>${letter}</text>`;
      })}
      <text x=${left} y=${top + tall + em * 1.2}>${dayLabel(this.startDate, 0)}</text>
      <text x=${width - right} y=${top + tall + em * 1.2} text-anchor="end">${dayLabel(this.startDate, days - 1)}</text>
    </svg>`;
  }
}

customElements.define("rl-salt-lines", SaltLines);
