import { css, html, LitElement, nothing, svg, type TemplateResult } from "lit";
import { type ArmPicture, rowOf } from "./arm-picture.js";
import { SizeController } from "./size-controller.js";

/** The day of the picture from midnight to midnight: its runs, and a hand at the hour. */
export class DayStrip extends LitElement {
  static override properties = { arm: { attribute: false }, hour: { type: Number } };
  declare arm: ArmPicture | undefined;
  declare hour: number;

  static override styles = css`
    :host { display: block; }
    svg { display: block; font-family: inherit; overflow: visible; }
    text { font-size: var(--size-small); fill: var(--ink-quiet); }
    .track { stroke: var(--rule-strong); stroke-width: 1; }
    .run { fill: var(--ink); }
    .hand { fill: var(--paper); stroke: var(--ink); stroke-width: 1.6; }
  `;

  #size = new SizeController(this);

  constructor() {
    super();
    this.hour = 0;
  }

  override render(): TemplateResult | typeof nothing {
    const { width, em } = this.#size;
    const { arm } = this;
    const row = arm ? rowOf(arm, this.hour) : undefined;
    if (!arm || row === undefined || width === 0) return nothing;
    const dayRow = row - (this.hour % 24);
    const left = em * 1.9;
    const span = width - left - em * 0.5;
    const x = (hour: number): number => left + (span * hour) / 24;
    const y = em * 0.85;
    const hours = Array.from({ length: 24 }, (_, h) => h);
    return html`
      <svg width=${width} height=${em * 2.2} aria-hidden="true">
        ${hours.map((h) => {
          const share = arm.valveOpen[dayRow + h] ?? 0;
          if (!(share > 0)) return nothing;
          return svg`<rect class="run" x=${x(h)} y=${y - em * 0.3} width=${Math.max(1, (span / 24) * share)} height=${em * 0.3}></rect>`;
        })}
        <line class="track" x1=${x(0)} x2=${x(24)} y1=${y} y2=${y}></line>
        ${[0, 6, 12, 18, 24].map(
          (h) => svg`
            <line class="track" x1=${x(h)} x2=${x(h)} y1=${y} y2=${y + em * 0.2}></line>
            <text x=${x(h)} y=${y + em * 1.1} text-anchor=${h === 0 ? "start" : h === 24 ? "end" : "middle"}>${h === 0 ? "0 h" : h}</text>
          `,
        )}
        <path class="hand" d="M${x((this.hour % 24) + 1)} ${y + em * 0.02}l${em * 0.28} ${em * 0.42}h${-em * 0.56}Z"></path>
      </svg>
    `;
  }
}

customElements.define("rl-day-strip", DayStrip);
