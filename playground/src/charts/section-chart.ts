import { css, html, LitElement, nothing, type PropertyValues, svg, type TemplateResult } from "lit";
import { words } from "../text/words.js";
import { type ArmPicture, cellState, rowOf } from "./arm-picture.js";
import { type SectionFrame, sectionFrame } from "./geometry/section-frame.js";
import { sectionScenery } from "./section-scenery.js";
import { SizeController } from "./size-controller.js";
import { SoilPainter } from "./soil-painter.js";
import { onColoursChanged, soilColours } from "./theme-colours.js";

/** Room for the numbers of the depth axis, in letter heights; the same as in the storage chart below it. */
const gutterEm = 1.9;

/** The row seen from its end at one hour: trunk, lines, roots, water and where roots lack water or air. */
export class SectionChart extends LitElement {
  static override properties = {
    arm: { attribute: false },
    hour: { type: Number },
    axes: { type: Boolean },
    compact: { type: Boolean },
    caption: { type: String },
    reachCm: { type: Number },
  };
  declare arm: ArmPicture | undefined;
  declare hour: number;
  /** Depth and distance are written beside the picture. */
  declare axes: boolean;
  declare compact: boolean;
  /** Short text in the sky, for instance a time of day. */
  declare caption: string;
  /** Half-width that pictures side by side share, cm. */
  declare reachCm: number;

  static override styles = css`
    :host { display: block; position: relative; }
    canvas { position: absolute; display: block; }
    svg { position: relative; display: block; overflow: visible; font-family: inherit; }
    text { font-size: var(--size-small); fill: var(--ink-quiet); }
    .on-soil { paint-order: stroke; stroke: var(--on-water-halo); stroke-width: 0.2em; stroke-opacity: 0.85; fill: #23211c; }
    .outline { fill: none; stroke: var(--rule-strong); stroke-width: 1.2; }
    .leaf { fill: var(--paper); stroke: var(--rule-strong); stroke-width: 1.2; }
    .ground { stroke: var(--ink); stroke-width: 1.4; }
    .rooted { stroke: var(--on-water-halo); stroke-width: 1; stroke-opacity: 0.8; }
    .tick { stroke: var(--on-water-halo); }
    .frame { fill: none; stroke: var(--rule-strong); stroke-width: 1; }
    .line-open { fill: var(--ink); stroke: var(--ink); stroke-width: 1.4; }
    .line-shut { fill: var(--paper); stroke: var(--ink); stroke-width: 1.4; }
    .rain { fill: none; stroke: var(--ink); stroke-width: 1.1; }
  `;

  #size = new SizeController(this);
  #painter: SoilPainter | undefined;
  #frame: SectionFrame | undefined;
  #madeFor: unknown[] = [];
  #stopListening = (): void => {};

  constructor() {
    super();
    this.hour = 0;
    this.axes = false;
    this.compact = false;
    this.caption = "";
    this.reachCm = 0;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#stopListening = onColoursChanged(() => {
      this.#painter = undefined;
      this.requestUpdate();
    });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stopListening();
  }

  override willUpdate(): void {
    const { width, em } = this.#size;
    if (!this.arm || width === 0) return;
    const key = [this.arm, width, em, this.axes, this.compact, this.reachCm];
    if (this.#painter && key.every((part, i) => part === this.#madeFor[i])) return;
    this.#madeFor = key;
    this.#frame = sectionFrame(this.arm.section, {
      width,
      left: this.axes ? em * gutterEm : 0,
      em,
      compact: this.compact,
      reachCm: this.reachCm,
    });
    this.#painter = new SoilPainter(this.arm, this.#frame, soilColours(), em);
  }

  override render(): TemplateResult | typeof nothing {
    const { arm } = this;
    const frame = this.#frame;
    const row = arm ? rowOf(arm, this.hour) : undefined;
    if (!arm || !frame || row === undefined) return nothing;
    const height = frame.skyHeight + frame.soilHeight;
    return html`
      <canvas></canvas>
      <svg width=${frame.left + frame.width} height=${height} role="img" aria-label=${this.#summary(arm, row)}>
        ${sectionScenery(arm, frame, row, this.#size.em)}
        <rect class="frame" x=${frame.left + 0.5} y=${frame.skyHeight} width=${frame.width - 1} height=${frame.soilHeight}></rect>
        <line class="ground" x1=${frame.left} x2=${frame.left + frame.width} y1=${frame.skyHeight} y2=${frame.skyHeight}></line>
        ${this.axes ? this.#axes(arm, frame) : nothing}
        ${this.caption === "" ? nothing : svg`<text x="0" y=${this.#size.em}>${this.caption}</text>`}
      </svg>
    `;
  }

  override updated(_: PropertyValues): void {
    const canvas = this.renderRoot.querySelector("canvas");
    const row = this.arm ? rowOf(this.arm, this.hour) : undefined;
    const frame = this.#frame;
    if (!canvas || !frame || row === undefined) return;
    this.#painter?.paint(canvas, row, Math.min(2, devicePixelRatio));
    Object.assign(canvas.style, {
      left: `${frame.left}px`,
      top: `${frame.skyHeight}px`,
      width: `${frame.width}px`,
      height: `${frame.soilHeight}px`,
    });
  }

  #axes(arm: ArmPicture, frame: SectionFrame): TemplateResult {
    const { em } = this.#size;
    const bottom = frame.skyHeight + frame.soilHeight;
    const rooted = frame.y(arm.rootDepthCm);
    const right = frame.left + frame.width;
    return svg`
      ${[0, 20, 40, 60, 80].filter((cm) => cm < frame.depthCm - 5).map((cm) => svg`<text x=${frame.left - em * 0.35} y=${frame.y(cm) + em * 0.28} text-anchor="end">${cm}</text>`)}
      <text x=${frame.left - em * 0.35} y=${bottom} text-anchor="end">cm</text>
      <line class="rooted" x1=${frame.left} x2=${right} y1=${rooted} y2=${rooted}></line>
      <text class="on-soil" text-anchor="end" x=${right - em * 0.35} y=${rooted + em * 0.95}>${words.section.rootsTo(arm.rootDepthCm)}</text>
      ${[-100, 100].map(
        (cm) => svg`<line class="tick" x1=${frame.x(cm)} x2=${frame.x(cm)} y1=${bottom - em * 0.4} y2=${bottom}></line>
        <text class="on-soil" x=${frame.x(cm)} y=${bottom - em * 0.55} text-anchor="middle">1 m</text>`,
      )}
    `;
  }

  #summary(arm: ArmPicture, row: number): string {
    const cells = arm.section.layers * arm.section.lanes;
    let airless = 0;
    let thirsty = 0;
    let wettest = 0;
    let driest = 1;
    for (let cell = 0; cell < cells; cell++) {
      const theta = arm.theta[row * cells + cell]!;
      const state = cellState(arm, cell, theta);
      if (state === "airless") airless += arm.section.rootShare[cell]!;
      if (state === "thirsty") thirsty += arm.section.rootShare[cell]!;
      wettest = Math.max(wettest, theta);
      driest = Math.min(driest, theta);
    }
    return words.section.summary(arm.programme, airless, thirsty, wettest, driest);
  }
}

customElements.define("rl-section-chart", SectionChart);
