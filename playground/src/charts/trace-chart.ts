import { line, scaleLinear, scaleLog } from "d3";
import { css, html, LitElement, nothing, svg, type TemplateResult } from "lit";
import { dayLabel } from "../text/number-format.js";
import { bare, tensionText, unitText } from "../text/quantity.js";
import { sectionWords } from "../text/section-words.js";
import { SizeController } from "./size-controller.js";

/** Tension by hour from the first day shown on, at one depth. */
export interface Trace {
  readonly depthCm: number;
  readonly kPa: Float64Array;
}

export interface TraceReading {
  readonly hour: number;
  readonly depthCm: number;
  readonly kPa: number;
}

const wettestKPa = 0.5;
const widths = [2.6, 1.6, 1, 0.8];

/** Tension at chosen depths between the two limits, wetter below, with own readings as dots. */
export class TraceChart extends LitElement {
  static override properties = {
    traces: { attribute: false },
    readings: { attribute: false },
    fileReadings: { attribute: false },
    hour: { type: Number },
    firstDay: { type: Number },
    days: { type: Number },
    airKPa: { type: Number },
    pullKPa: { type: Number },
    startDate: { type: String },
  };
  declare traces: readonly Trace[];
  declare readings: readonly TraceReading[];
  /** Readings of a logger: many, drawn as small dots without their depths. */
  declare fileReadings: readonly TraceReading[];
  declare hour: number;
  declare firstDay: number;
  declare days: number;
  declare airKPa: number;
  declare pullKPa: number;
  declare startDate: string;

  static override styles = css`
    :host { display: block; cursor: ew-resize; touch-action: pan-y; }
    svg { display: block; font-family: inherit; overflow: visible; }
    text { font-size: var(--size-small); fill: var(--ink-quiet); }
    .trace { fill: none; stroke: var(--ink); stroke-linejoin: round; }
    .limit { stroke: var(--ink); stroke-width: 1.3; }
    .air { stroke-dasharray: 7 4; }
    .pull { stroke-dasharray: 1.3 3.6; stroke-linecap: round; }
    .halo { paint-order: stroke; stroke: var(--paper); stroke-width: 0.45em; stroke-linejoin: round; }
    .strong { fill: var(--ink); }
    .name { fill: var(--ink); font-weight: 650; }
    .rule { stroke: var(--rule); stroke-width: 1; }
    .cursor { stroke: var(--ink); stroke-width: 1; }
    .logged { fill: none; stroke: var(--ink); stroke-linecap: round; }
    .reading { fill: var(--ink); stroke: var(--paper); stroke-width: 1.5; }
  `;

  #size = new SizeController(this);

  constructor() {
    super();
    this.fileReadings = [];
  }

  override render(): TemplateResult | typeof nothing {
    const { width, em } = this.#size;
    if (width === 0 || this.traces === undefined) return nothing;
    const w = sectionWords();
    const left = em * 2.4;
    const right = width - em * 3.4;
    const height = em * 13;
    const most = Math.max(
      100,
      this.pullKPa * 1.5,
      ...[this.readings, this.#shownOf(this.fileReadings)].flat().map(({ kPa }) => kPa),
    );
    const x = scaleLinear([this.firstDay * 24, (this.firstDay + this.days) * 24], [left, right]);
    const y = scaleLog([wettestKPa, most], [height, em]).clamp(true);
    const ticks = [0.5, 1, 2, 5, 10, 20, 50, 100].filter((kPa) => kPa <= most);
    const key = height + em * 2.3;
    return html`<svg width=${width} height=${height + em * 4.3} role="img" aria-label=${this.#summary()} @pointerdown=${(e: PointerEvent) => this.#point(e, x)} @pointermove=${(e: PointerEvent) => this.#point(e, x)}>
      ${ticks.map(
        (kPa) => svg`<line class="rule" x1=${left} x2=${right} y1=${y(kPa)} y2=${y(kPa)}></line>
        <text x=${left - em * 0.4} y=${y(kPa) + em * 0.28} text-anchor="end">${kPa === wettestKPa ? `≤ ${bare("tension", kPa)}` : bare("tension", kPa)}</text>`,
      )}
      <text x="0" y=${em * 0.5}>${unitText("tension")}</text>
      ${[
        ["air", this.airKPa],
        ["pull", this.pullKPa],
      ].map(
        ([kind, kPa]) =>
          svg`<line class="limit ${kind}" x1=${left} x2=${right} y1=${y(Number(kPa))} y2=${y(Number(kPa))}></line>`,
      )}
      ${this.traces.map((trace, i) => this.#trace(trace, i, x, y, right))}
      ${this.#days(x, height + em * 1.1, right)}
      ${this.#logged(x, y)}
      ${this.#shownOf(this.readings).map(
        ({
          hour,
          depthCm,
          kPa,
        }) => svg`<circle class="reading" cx=${x(hour)} cy=${y(Math.max(wettestKPa, kPa))} r=${em * 0.32}></circle>
            <text class="halo strong" x=${x(hour) + em * 0.45} y=${y(Math.max(wettestKPa, kPa)) - em * 0.3}>${depthCm}</text>`,
      )}
      <line class="cursor" x1=${x(this.hour)} x2=${x(this.hour)} y1=${em * 0.4} y2=${height}></line>
      <line class="limit air" x1=${left} x2=${left + em * 1.6} y1=${key - em * 0.28} y2=${key - em * 0.28}></line>
      <text class="strong" x=${left + em * 2} y=${key}>${w.airKey(tensionText(this.airKPa))}</text>
      <line class="limit pull" x1=${left} x2=${left + em * 1.6} y1=${key + em * 0.87} y2=${key + em * 0.87}></line>
      <text class="strong" x=${left + em * 2} y=${key + em * 1.15}>${w.pullKey(tensionText(this.pullKPa))}</text>
    </svg>`;
  }

  #logged(x: (h: number) => number, y: (kPa: number) => number): TemplateResult | typeof nothing {
    const shown = this.#shownOf(this.fileReadings);
    if (shown.length === 0) return nothing;
    const dots = shown.map(({ hour, kPa }) => `M${x(hour).toFixed(1)} ${y(Math.max(wettestKPa, kPa)).toFixed(1)}h0`);
    return svg`<path class="logged" stroke-width=${this.#size.em * 0.26} d=${dots.join("")}></path>`;
  }

  #shownOf(readings: readonly TraceReading[]): readonly TraceReading[] {
    return readings.filter(({ hour }) => hour >= this.firstDay * 24 && hour < (this.firstDay + this.days) * 24);
  }

  #trace(
    { depthCm, kPa }: Trace,
    i: number,
    x: (h: number) => number,
    y: (kPa: number) => number,
    right: number,
  ): TemplateResult {
    const { em } = this.#size;
    const path = line<number>(
      (_, h) => x(this.firstDay * 24 + h + 1),
      (value) => y(Math.max(wettestKPa, value)),
    ).defined((value) => !Number.isNaN(value))(Array.from(kPa));
    const last = lastOf(kPa);
    const lasts = this.traces.map((trace) => y(Math.max(wettestKPa, lastOf(trace.kPa))));
    const crowded = lasts.some((other, k) => k < i && Math.abs(other - y(Math.max(wettestKPa, last))) < em * 1.1);
    return svg`<path class="trace" stroke-width=${widths[i] ?? 0.8} stroke-dasharray=${i === 2 ? "9 3" : "none"} d=${path ?? ""}></path>
      <text class="name" x=${right + em * 0.4} y=${y(Math.max(wettestKPa, last)) + em * (crowded ? 1.25 : 0.28)}>${depthCm} cm</text>`;
  }

  #days(x: (h: number) => number, y: number, right: number): TemplateResult[] {
    const fit = Math.max(2, Math.floor(right / (this.#size.em * 5.2)));
    const step = [1, 2, 3, 4, 7, 14, 28, 56].find((days) => this.days / days <= fit) ?? 90;
    const ticks: TemplateResult[] = [];
    for (let day = this.firstDay; day <= this.firstDay + this.days - step * 0.4; day += step) {
      ticks.push(
        svg`<text x=${x(day * 24)} y=${y} text-anchor=${day === this.firstDay ? "start" : "middle"}>${dayLabel(this.startDate, day)}</text>`,
      );
    }
    return ticks;
  }

  #summary(): string {
    return this.traces
      .map(({ depthCm, kPa }) => {
        const known = Array.from(kPa).filter((value) => !Number.isNaN(value));
        return sectionWords().traceSummary(depthCm, tensionText(Math.min(...known)), tensionText(Math.max(...known)));
      })
      .join(" ");
  }

  #point(event: PointerEvent, x: { invert: (px: number) => number }): void {
    if (event.type === "pointermove" && event.buttons === 0) return;
    const least = this.firstDay * 24;
    const detail = Math.min(Math.max(Math.floor(x.invert(event.offsetX)), least), least + this.days * 24 - 1);
    this.dispatchEvent(new CustomEvent("hour-picked", { detail, bubbles: true, composed: true }));
  }
}

/** The last value that is known. */
const lastOf = (kPa: Float64Array): number =>
  Array.from(kPa)
    .filter((value) => !Number.isNaN(value))
    .at(-1) ?? wettestKPa;

customElements.define("rl-trace-chart", TraceChart);
