import { curveStepAfter, line, max, scaleLinear } from "d3";
import { css, html, LitElement, nothing, type PropertyValues, svg, type TemplateResult } from "lit";
import { dayLabel, longDayLabel } from "../text/number-format.js";
import { words } from "../text/words.js";
import { SizeController } from "./size-controller.js";

/** What the strip behind the slider shows of the season. */
export interface SeasonStrip {
  readonly startDate: string;
  readonly days: number;
  readonly rainMm: Float64Array;
  readonly wantedL: Float64Array;
}

const frameMs = 90;

/** The one hand of time for every picture: a slider over the season, by thumb, by key or playing. */
export class TimeScrubber extends LitElement {
  static override properties = {
    strip: { attribute: false },
    hour: { type: Number },
    firstDay: { type: Number },
    shownDays: { type: Number },
    fourHours: { type: Boolean },
    playing: { state: true },
  };
  declare strip: SeasonStrip | undefined;
  declare hour: number;
  declare firstDay: number;
  declare shownDays: number;
  /** Pictures show four hours of the day side by side. */
  declare fourHours: boolean;
  declare playing: boolean;

  static override styles = css`
    :host { display: grid; grid-template-columns: auto minmax(9.5em, auto) 1fr; align-items: center; gap: 0.4rem 1rem; }
    button {
      font: inherit; color: var(--paper); background: var(--ink); border: 1px solid var(--ink); border-radius: 1.4em;
      min-height: 2.75rem; padding: 0 1.1em; cursor: pointer; min-width: 6em;
    }
    button:focus-visible, input:focus-visible { outline: 3px solid var(--ink); outline-offset: 3px; }
    output { font-weight: 650; white-space: nowrap; }
    .track { position: relative; height: 3.1rem; }
    svg { position: absolute; inset: 0; overflow: visible; pointer-events: none; font-family: inherit; }
    text { font-size: var(--size-small); fill: var(--ink-quiet); }
    .wanted { fill: none; stroke: var(--ink-quiet); stroke-width: 1.3; }
    .rain { fill: none; stroke: var(--ink); stroke-width: 1; }
    .shown { fill: none; stroke: var(--rule-strong); stroke-width: 1; }
    .base { stroke: var(--rule-strong); }
    input { position: absolute; inset: 0; width: 100%; height: 100%; margin: 0; background: transparent; appearance: none; cursor: ew-resize; }
    input::-webkit-slider-runnable-track { background: transparent; height: 100%; }
    input::-moz-range-track { background: transparent; height: 100%; }
    input::-webkit-slider-thumb {
      appearance: none; width: 1.15rem; height: 3.1rem; border: 2px solid var(--ink); border-radius: 0.6rem;
      background: color-mix(in oklab, var(--paper) 55%, transparent);
    }
    input::-moz-range-thumb {
      width: 1rem; height: 2.9rem; border: 2px solid var(--ink); border-radius: 0.6rem;
      background: color-mix(in oklab, var(--paper) 55%, transparent);
    }
    @media (max-width: 700px) {
      :host { grid-template-columns: auto 1fr; }
      .track { grid-column: 1 / -1; }
    }
  `;

  #size = new SizeController(this);
  #timer = 0;
  #stillMotion = matchMedia("(prefers-reduced-motion: reduce)");
  #drawn: TemplateResult | typeof nothing = nothing;

  constructor() {
    super();
    this.hour = 0;
    this.firstDay = 0;
    this.shownDays = 14;
    this.fourHours = false;
    this.playing = false;
    this.#stillMotion.addEventListener("change", () => {
      this.#stop();
      this.requestUpdate();
    });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop();
  }

  override focus(): void {
    this.renderRoot.querySelector("input")?.focus();
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (!(changed.size === 1 && changed.has("hour"))) this.#drawn = this.#drawStrip();
  }

  override render(): TemplateResult | typeof nothing {
    const { strip } = this;
    if (!strip) return nothing;
    const at = words.time.at(longDayLabel(strip.startDate, Math.floor(this.hour / 24)), this.hour);
    return html`
      ${this.#button()}
      <output>${at}</output>
      <div class="track">
        ${this.#drawn}
        <input type="range" min="0" max=${strip.days * 24 - 1} step="1" .value=${String(this.hour)}
          aria-label=${words.time.label} aria-valuetext=${at} title=${words.time.keys}
          @input=${(e: Event) => this.#pick(Number((e.target as HTMLInputElement).value))} @keydown=${this.#key}>
      </div>
    `;
  }

  #button(): TemplateResult {
    if (this.#stillMotion.matches) {
      return html`<button type="button" aria-pressed=${this.fourHours} @click=${this.#toggleFour}>${this.fourHours ? words.time.oneHour : words.time.fourHours}</button>`;
    }
    return html`<button type="button" @click=${this.#toggle}>${this.playing ? words.time.pause : words.time.play}</button>`;
  }

  #drawStrip(): TemplateResult | typeof nothing {
    const { strip } = this;
    const track = this.renderRoot.querySelector<HTMLElement>(".track");
    const width = track?.clientWidth ?? 0;
    if (!strip || width === 0) {
      if (strip) requestAnimationFrame(() => this.requestUpdate("strip"));
      return nothing;
    }
    const { em } = this.#size;
    const height = em * 3.1;
    const thumb = em * 1.15;
    const x = scaleLinear([0, strip.days], [thumb / 2, width - thumb / 2]);
    const base = height - em * 1.15;
    const wanted = scaleLinear([0, max(strip.wantedL) ?? 1], [base, em * 0.2]);
    const rain = scaleLinear([0, Math.max(5, max(strip.rainMm) ?? 5)], [0, base - em * 0.2]);
    const barWidth = Math.max(1.5, (x(1) - x(0)) * 0.7);
    const wantedPath =
      line<number>(
        (_, i) => x(i),
        (d) => wanted(d),
      ).curve(curveStepAfter)(Array.from(strip.wantedL)) ?? "";
    const rainPath = Array.from(strip.rainMm, (mm, day) =>
      mm > 0.2 ? `M${x(day + 0.5) - barWidth / 2} ${base}v${-rain(mm)}h${barWidth}v${rain(mm)}` : "",
    ).join("");
    const months = Array.from({ length: strip.days }, (_, day) => day).filter(
      (day) => dayLabel(strip.startDate, day).startsWith("1 ") || day === 0,
    );
    const legendFrom = width > em * 34 ? width - em * 17 : width;
    const labels = months.filter((day, i) => x(day) < legendFrom && (i === 0 || x(day) - x(months[0]!) > em * 3));
    return svg`
      <svg width=${width} height=${height} aria-hidden="true">
        <rect class="shown" x=${x(this.firstDay)} width=${x(this.firstDay + this.shownDays) - x(this.firstDay)} y="0.5" height=${base - 0.5}></rect>
        <path class="rain" d=${rainPath}></path>
        <path class="wanted" d=${wantedPath}></path>
        <line class="base" x1=${x(0)} x2=${x(strip.days)} y1=${base} y2=${base}></line>
        ${width > em * 34 ? svg`<text x=${x(strip.days)} y=${height - 1} text-anchor="end">${words.time.wanted}</text>` : nothing}
        ${labels.map((day) => svg`<text x=${x(day)} y=${height - 1}>${dayLabel(strip.startDate, day)}</text>`)}
      </svg>
    `;
  }

  #key(event: KeyboardEvent): void {
    const step = { PageUp: -24, PageDown: 24 }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    this.#pick(this.hour + step);
  }

  #pick(hour: number): void {
    const last = (this.strip?.days ?? 1) * 24 - 1;
    const picked = Math.min(Math.max(0, hour), last);
    this.dispatchEvent(new CustomEvent("hour-picked", { detail: picked, bubbles: true, composed: true }));
  }

  #toggle(): void {
    if (this.playing) this.#stop();
    else {
      this.playing = true;
      this.#timer = window.setInterval(() => {
        const last = (this.strip?.days ?? 1) * 24 - 1;
        if (this.hour >= last) this.#stop();
        else this.#pick(this.hour + 1);
      }, frameMs);
    }
  }

  #stop(): void {
    clearInterval(this.#timer);
    this.playing = false;
  }

  #toggleFour(): void {
    this.dispatchEvent(new CustomEvent("four-hours-toggled", { bubbles: true, composed: true }));
  }
}

customElements.define("rl-time-scrubber", TimeScrubber);
