import { css, html, LitElement, nothing, svg, type TemplateResult } from "lit";
import type { CalendarDay } from "rootledger/programme";
import { dayLabel } from "../text/number-format.js";
import { soilMoreWords } from "../text/soil-more-words.js";
import { SizeController } from "./size-controller.js";

/** One square a day, filled from below as far as the valve was open that day; weeks go down, Monday first. */
export class SeasonCalendar extends LitElement {
  static override properties = {
    days: { attribute: false },
    programme: { type: String },
    mostMinutes: { type: Number },
    hour: { type: Number },
  };
  declare days: readonly CalendarDay[] | undefined;
  declare programme: string;
  /** Minutes that fill a square, the same for every programme. */
  declare mostMinutes: number;
  declare hour: number;

  static override styles = css`
    :host { display: block; }
    svg { display: block; font-family: inherit; overflow: visible; }
    text { font-size: var(--size-small); fill: var(--ink-quiet); }
    .square { fill: none; stroke: var(--rule-strong); }
    .open { fill: var(--ink); }
    .now { fill: var(--paper); stroke: var(--ink); stroke-width: 1.5; }
  `;

  #size = new SizeController(this);

  override render(): TemplateResult | typeof nothing {
    const { width, em } = this.#size;
    const { days } = this;
    if (!days || days.length === 0 || width === 0) return nothing;
    const first = days[0]!.date;
    // 1 January 1970 was a Thursday.
    const weekday = (((Date.parse(`${first}T00:00:00Z`) / 86_400_000 + 3) % 7) + 7) % 7;
    const weeks = Math.ceil((weekday + days.length) / 7);
    const left = em * 3.2;
    const cell = Math.min(em * 1.25, (width - left) / 7);
    const square = cell * 0.86;
    const starts = days.reduce((sum, day) => sum + day.starts, 0);
    const minutes = days.reduce((sum, day) => sum + day.minutes, 0);
    const wet = days.filter((day) => day.minutes > 0).length;
    const label = soilMoreWords().calendarSummary(this.programme, wet, days.length, starts, minutes / 60);
    const now = Math.floor(this.hour / 24);
    return html`<svg width=${left + cell * 7} height=${weeks * cell + em * 0.3} role="img" aria-label=${label}>
      ${Array.from({ length: weeks }, (_, week) =>
        week % 4 === 0
          ? svg`<text x="0" y=${week * cell + square * 0.85}>${dayLabel(first, Math.max(0, week * 7 - weekday))}</text>`
          : nothing,
      )}
      ${days.map((day, i) => {
        const at = weekday + i;
        const x = left + (at % 7) * cell;
        const y = Math.floor(at / 7) * cell;
        const full = this.mostMinutes > 0 ? Math.min(1, day.minutes / this.mostMinutes) : 0;
        return svg`<rect class="square" x=${x} y=${y} width=${square} height=${square}></rect>
          ${full > 0 ? svg`<rect class="open" x=${x} y=${y + square * (1 - full)} width=${square} height=${square * full}></rect>` : nothing}
          ${i === now ? svg`<circle class="now" cx=${x + square / 2} cy=${y + square / 2} r=${square * 0.26}></circle>` : nothing}`;
      })}
    </svg>`;
  }
}

customElements.define("rl-season-calendar", SeasonCalendar);
