import { line, scaleLinear, ticks } from "d3";
import { css, html, LitElement, nothing, type PropertyValues, svg, type TemplateResult } from "lit";
import { amount, dayLabel } from "../text/number-format.js";
import { depthText, shownIn, tensionText } from "../text/quantity.js";
import { words } from "../text/words.js";
import { type ArmPicture, rowOf } from "./arm-picture.js";
import { binMeans, daySums, keptExtremes } from "./geometry/hour-bins.js";
import { SizeController } from "./size-controller.js";

/** Root-zone water by hour from an hour of the season on, mm. */
export interface SecondTrace {
  readonly firstHour: number;
  readonly storageMm: Float64Array;
  readonly stale: boolean;
}

/** Root-zone water by hour between its two limits, with runs (ink) and rain (hollow) beneath. */
export class StorageChart extends LitElement {
  static override properties = {
    arm: { attribute: false },
    hour: { type: Number },
    firstDay: { type: Number },
    days: { type: Number },
    lowMm: { type: Number },
    highMm: { type: Number },
    mostRainMm: { type: Number },
    second: { attribute: false },
    tall: { type: Boolean },
  };
  declare arm: ArmPicture | undefined;
  declare hour: number;
  declare firstDay: number;
  declare days: number;
  /** Ends of the water axis, the same for a whole row. */
  declare lowMm: number;
  declare highMm: number;
  /** Rain of the day that fills the rain strip, the same for all. */
  declare mostRainMm: number;
  /** The same water by another engine, drawn as diamonds. */
  declare second: SecondTrace | undefined;
  /** More room for the water, where the chart stands alone. */
  declare tall: boolean;

  static override styles = css`
    :host { display: block; cursor: ew-resize; touch-action: pan-y; }
    svg { display: block; font-family: inherit; overflow: visible; }
    text { font-size: var(--size-small); fill: var(--ink-quiet); }
    .water { fill: none; stroke: var(--ink); stroke-width: 1.8; stroke-linejoin: round; }
    .limit { stroke: var(--ink); stroke-width: 1.3; }
    .air { stroke-dasharray: 7 4; }
    .pull { stroke-dasharray: 1.3 3.6; stroke-linecap: round; }
    .halo { paint-order: stroke; stroke: var(--paper); stroke-width: 0.45em; stroke-linejoin: round; }
    .limit-text { fill: var(--ink); }
    .rule { stroke: var(--rule); stroke-width: 1; }
    .run { fill: var(--ink); }
    .rain { fill: var(--paper); stroke: var(--ink); stroke-width: 1.1; }
    .second { fill: var(--paper); stroke: var(--ink); stroke-width: 1.1; }
    .second-stale { opacity: 0.45; stroke-dasharray: 2 2; }
    .cursor { stroke: var(--ink); stroke-width: 1; }
    .dot { fill: var(--paper); stroke: var(--ink); stroke-width: 1.8; }
    .value { fill: var(--ink); font-weight: 650; }
  `;

  #size = new SizeController(this);
  #x = scaleLinear();
  #y = scaleLinear();
  #still: TemplateResult | typeof nothing = nothing;
  #summary = "";

  override willUpdate(changed: PropertyValues<this>): void {
    const { width } = this.#size;
    const { arm } = this;
    if (!arm || width === 0 || (changed.size === 1 && changed.has("hour"))) return;
    this.#x = scaleLinear([this.firstDay * 24, (this.firstDay + this.days) * 24], [this.#left, width - 1]);
    this.#y = scaleLinear([this.lowMm, this.highMm], [this.#plotHeight, 4]);
    this.#still = this.#drawStill(arm, width);
  }

  override render(): TemplateResult | typeof nothing {
    const { width, em } = this.#size;
    const { arm } = this;
    if (!arm || width === 0) return nothing;
    const height = this.#stripsTop + em * 3.8;
    return html`
      <svg width=${width} height=${height} role="img" aria-label=${this.#summary} @pointerdown=${this.#point} @pointermove=${this.#point}>
        ${this.#still}${this.#drawCursor(arm)}
      </svg>
    `;
  }

  get #plotHeight(): number {
    return this.#size.em * (this.tall ? 15 : 9);
  }

  /** Where runs and rain begin. */
  get #stripsTop(): number {
    return this.#plotHeight + this.#size.em * (this.#keyed ? 3.1 : 0.7);
  }

  get #left(): number {
    return this.#size.em * 1.9;
  }

  #drawStill(arm: ArmPicture, width: number): TemplateResult {
    const { em } = this.#size;
    const from = Math.max(0, this.firstDay * 24 - arm.firstHour);
    const to = Math.min(arm.hours, (this.firstDay + this.days) * 24 - arm.firstHour);
    const points = keptExtremes(arm.storageMm, from, to, width);
    const x = (row: number): number => this.#x(row + arm.firstHour);
    const path =
      line<[number, number]>(
        (d) => x(d[0] + 1),
        (d) => this.#y(d[1]),
      )(points) ?? "";
    const shown = points.map((d) => d[1]);
    this.#summary = words.storage.summary(
      arm.programme,
      Math.min(...shown),
      Math.max(...shown),
      arm.airLineMm,
      arm.pullLineMm,
    );
    const { second } = this;
    if (second && second.storageMm.length > 0) {
      this.#summary += words.check.summary(Math.min(...second.storageMm), Math.max(...second.storageMm));
    }
    const runsTop = this.#stripsTop;
    const runsHeight = em * 0.8;
    const rainTop = runsTop + runsHeight + em * 0.35;
    const rainHeight = em * 1.1;
    const perBin = Math.max(1, Math.ceil((to - from) / width));
    const barWidth = Math.max(1, this.#x(perBin) - this.#x(0));
    const rain = daySums(arm.rainMm, from, to).filter((d) => d.sum > 0.05);
    const dayWidth = this.#x(24) - this.#x(0);
    const wettest = rain.reduce((most, d) => Math.max(most, d.sum), 0);
    return svg`
      ${ticks(shownIn("depth", this.lowMm), shownIn("depth", this.highMm), 4).map((shown) => {
        const y = this.#y(shown / shownIn("depth", 1));
        return svg`<line class="rule" x1=${this.#left} x2=${width} y1=${y} y2=${y}></line>
          <text x=${this.#left - em * 0.3} y=${y + em * 0.28} text-anchor="end">${amount(shown)}</text>`;
      })}
      <path class="water" d=${path}></path>
      ${this.second ? this.#drawSecond(this.second, width) : nothing}
      ${this.#limits(arm, points, width)}
      ${binMeans(arm.valveOpen, from, to, perBin).map((bin) =>
        bin.mean > 0
          ? svg`<rect class="run" x=${x(bin.row)} width=${barWidth} y=${runsTop + runsHeight * (1 - bin.mean)} height=${runsHeight * bin.mean}></rect>`
          : nothing,
      )}
      <line class="rule" x1=${this.#left} x2=${width} y1=${runsTop + runsHeight} y2=${runsTop + runsHeight}></line>
      <text x="0" y=${runsTop + runsHeight - 1}>${words.storage.runs}</text>
      ${rain.map((d) => {
        const height = Math.max(2, rainHeight * Math.min(1, d.sum / this.mostRainMm));
        const w = Math.max(2, Math.min(dayWidth * 0.6, em * 0.7));
        const middle = x(d.day * 24 + 12);
        return svg`<rect class="rain" x=${middle - w / 2} width=${w} y=${rainTop + rainHeight - height} height=${height}></rect>
          ${d.sum === wettest ? svg`<text class="halo" x=${middle + w / 2 + 3} y=${rainTop + rainHeight - 1}>${depthText(d.sum, 2)}</text>` : nothing}`;
      })}
      <line class="rule" x1=${this.#left} x2=${width} y1=${rainTop + rainHeight} y2=${rainTop + rainHeight}></line>
      <text x="0" y=${rainTop + rainHeight - 1}>${words.storage.rain}</text>
      ${rain.length === 0 ? svg`<text x=${this.#left + em * 0.3} y=${rainTop + rainHeight - 2}>${words.storage.noRain}</text>` : nothing}
      ${this.#dayTicks(width).map(
        ({ day, anchor }) =>
          svg`<text x=${this.#x(day * 24)} y=${rainTop + rainHeight + em * 1.05} text-anchor=${anchor}>${dayLabel(arm.startDate, day)}</text>`,
      )}
    `;
  }

  /** Hollow diamonds, every few letter widths, beside the line of the fast engine. */
  #drawSecond({ firstHour, storageMm, stale }: SecondTrace, width: number): TemplateResult {
    const { em } = this.#size;
    const step = Math.max(1, Math.round(this.#x.invert(this.#left + em * 0.7) - this.#x.invert(this.#left)));
    const half = (em * 0.2).toFixed(1);
    let path = "";
    for (let row = 0; row < storageMm.length; row += step) {
      const px = this.#x(firstHour + row + 1);
      if (px < this.#left || px > width) continue;
      path += `M${px.toFixed(1)} ${(this.#y(storageMm[row]!) - em * 0.2).toFixed(1)}l${half} ${half}l-${half} ${half}l-${half} -${half}Z`;
    }
    if (path === "") return svg``;
    const key = stale ? words.check.staleKey : words.check.key;
    return svg`
      <path class="second ${stale ? "second-stale" : ""}" d=${path}></path>
      <text class="halo" x=${this.#left + 2} y=${this.#plotHeight - em * 0.2}>${key}</text>
    `;
  }

  /** Labels stand on their limits where there is room beside the water line, else in rows beneath the plot. */
  get #keyed(): boolean {
    const { width, em } = this.#size;
    const longest = Math.max(words.storage.air.length, words.storage.pull.length) * em * 0.43;
    return longest > (width - this.#left) * 0.36;
  }

  #limits(arm: ArmPicture, points: readonly (readonly [number, number])[], width: number): TemplateResult {
    const { em } = this.#size;
    const all = [
      { kind: "air", mm: arm.airLineMm, text: words.storage.air, kPa: arm.airReturnKPa, row: 0 },
      { kind: "pull", mm: arm.pullLineMm, text: words.storage.pull, kPa: arm.pullLimitKPa, row: 1 },
    ];
    return svg`${all.map(({ kind, mm, text, kPa, row }) => {
      const y = this.#y(mm);
      const line = svg`<line class="limit ${kind}" x1=${this.#left} x2=${width} y1=${y} y2=${y}></line>`;
      if (this.#keyed) {
        const base = this.#plotHeight + em * (1.15 + row * 1.15);
        return svg`${line}<line class="limit ${kind}" x1=${this.#left} x2=${this.#left + em * 1.6} y1=${base - em * 0.28} y2=${base - em * 0.28}></line>
          <text class="limit-text" x=${this.#left + em * 2} y=${base}>${text}</text>`;
      }
      const label = `${text}, ${tensionText(kPa)}`;
      const place = this.#emptiest(label.length * em * 0.4, y, points, width);
      return svg`${line}<text class="halo limit-text" x=${place.x} y=${place.y}>${label}</text>`;
    })}`;
  }

  /** Where beside a limit a label hides least of the water line, from left to right, above or below. */
  #emptiest(
    labelWidth: number,
    y: number,
    points: readonly (readonly [number, number])[],
    width: number,
  ): { x: number; y: number } {
    const { em } = this.#size;
    const firstHour = this.arm?.firstHour ?? 0;
    const room = width - this.#left - labelWidth;
    const places = [1, 0, 0.5, 0.25, 0.75, 0.125, 0.875, 0.375, 0.625].flatMap((at) =>
      [y - em * 0.4, y + em * 1.05].map((baseline) => ({ x: this.#left + 2 + (room - 2) * at, y: baseline })),
    );
    const hidden = places.map((place) => {
      if (place.y < em * 1.2 || place.y > this.#plotHeight) return Number.POSITIVE_INFINITY;
      return points.filter(([row, mm]) => {
        const px = this.#x(row + firstHour + 1);
        const py = this.#y(mm);
        return px > place.x && px < place.x + labelWidth && py > place.y - em * 0.85 && py < place.y + em * 0.25;
      }).length;
    });
    return places[hidden.indexOf(Math.min(...hidden))]!;
  }

  /** About one label per six letter widths, always at midnight. */
  #dayTicks(width: number): { day: number; anchor: string }[] {
    const fit = Math.max(2, Math.floor(width / (this.#size.em * 5.2)));
    const step = [1, 2, 3, 4, 7, 14, 28, 56].find((days) => this.days / days <= fit) ?? 90;
    const ticks: { day: number; anchor: string }[] = [];
    for (let day = this.firstDay; day <= this.firstDay + this.days - step * 0.4; day += step) {
      ticks.push({ day, anchor: day === this.firstDay ? "start" : "middle" });
    }
    return ticks;
  }

  #drawCursor(arm: ArmPicture): TemplateResult | typeof nothing {
    const row = rowOf(arm, this.hour);
    const { width, em } = this.#size;
    const x = this.#x(this.hour + 1);
    if (row === undefined || x < this.#left || x > width) return nothing;
    const mm = arm.storageMm[row]!;
    const late = x > width * 0.7;
    const y = this.#y(mm);
    return svg`
      <line class="cursor" x1=${x} x2=${x} y1="0" y2=${this.#plotHeight}></line>
      <circle class="dot" cx=${x} cy=${y} r=${em * 0.24}></circle>
      <text class="value halo" x=${x + (late ? -em : em) * 0.45} y=${em * 0.8} text-anchor=${late ? "end" : "start"}>${depthText(mm)}</text>
    `;
  }

  #point(event: PointerEvent): void {
    if (event.type === "pointermove" && event.buttons === 0) return;
    const hour = Math.floor(this.#x.invert(event.offsetX));
    const least = this.firstDay * 24;
    const picked = Math.min(Math.max(hour, least), least + this.days * 24 - 1);
    this.dispatchEvent(new CustomEvent("hour-picked", { detail: picked, bubbles: true, composed: true }));
  }
}

customElements.define("rl-storage-chart", StorageChart);
