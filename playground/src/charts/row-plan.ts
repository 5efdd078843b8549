import { css, html, LitElement, nothing, svg, type TemplateResult } from "lit";
import type { EmitterPlace } from "rootledger/lines";
import { blockWords } from "../text/block-words.js";
import { SizeController } from "./size-controller.js";

/** What the plan of a row is drawn from. */
export interface RowPlanData {
  readonly emitters: readonly EmitterPlace[];
  readonly open: readonly boolean[];
  readonly treeSpacingM: number;
  readonly rowSpacingM: number;
  readonly canopyDiameterM: number;
  readonly offsetsM: readonly number[];
  readonly wettedRadiusM: number;
  /** Undefined for roots along the lines. */
  readonly rootRadiusM: number | undefined;
}

/** The row seen from above: emitters to open or plug, what they wet, and where roots are. */
export class RowPlan extends LitElement {
  static override properties = { data: { attribute: false }, still: { type: Boolean }, at: { state: true } };
  declare data: RowPlanData | undefined;
  /** A picture only: nothing to open or plug. */
  declare still: boolean;
  /** Emitter that the keyboard is on. */
  declare at: number;

  static override styles = css`
    :host { display: block; }
    svg { display: block; overflow: hidden; font-family: inherit; touch-action: manipulation; }
    text { font-size: var(--size-small); fill: var(--ink-quiet); }
    .ground { fill: var(--paper-lift); stroke: var(--rule-strong); }
    .row { stroke: var(--rule-strong); stroke-dasharray: 2 4; }
    .line { stroke: var(--ink); stroke-width: 1.6; }
    .canopy { fill: none; stroke: var(--rule-strong); stroke-width: 1.4; stroke-dasharray: 1 5; stroke-linecap: round; }
    .roots { fill: var(--fine); stroke: var(--ink-quiet); stroke-width: 0.8; opacity: 0.75; }
    .strands { stroke: var(--on-water-root); stroke-width: 0.9; fill: none; opacity: 0.6; }
    .wet { fill: var(--below); opacity: 0.28; }
    .trunk { fill: var(--ink-quiet); }
    .open { fill: var(--ink); stroke: var(--ink); stroke-width: 2; }
    .plugged { fill: var(--paper); stroke: var(--ink); stroke-width: 2; }
    .cross { stroke: var(--ink); stroke-width: 2; }
    .emitter { cursor: pointer; }
    .emitter:focus { outline: none; }
    .emitter:focus-visible .ring { stroke: var(--ink); stroke-width: 3; }
    .ring { fill: transparent; stroke: none; }
    .other { opacity: 0.4; }
  `;

  #size = new SizeController(this);

  constructor() {
    super();
    this.at = 0;
    this.still = false;
  }

  override render(): TemplateResult | typeof nothing {
    const { width, em } = this.#size;
    const { data } = this;
    if (!data || width === 0) return nothing;
    const trees = width > em * 40 ? 3 : 1;
    const shownM = trees * data.treeSpacingM;
    const scale = width / shownM;
    const tall =
      Math.min(
        data.rowSpacingM,
        Math.max(2.2, data.canopyDiameterM * 1.15, Math.abs(data.offsetsM[0] ?? 0) * 2 + 1.5),
      ) * scale;
    const x = (alongM: number): number => width / 2 + alongM * scale;
    const y = (acrossM: number): number => tall / 2 + acrossM * scale;
    const at = Array.from({ length: trees }, (_, i) => (i - (trees - 1) / 2) * data.treeSpacingM);
    const w = blockWords();
    return html`<svg width=${width} height=${tall + em * 1.8} role=${this.still ? "img" : "group"} aria-label=${this.still ? w.planLabel : `${w.planLabel}. ${w.planKeys}`} @keydown=${this.#key}>
      <rect class="ground" x="0.5" y="0.5" width=${width - 1} height=${tall - 1}></rect>
      <line class="row" x1="0" x2=${width} y1=${tall / 2} y2=${tall / 2}></line>
      ${at.map((m) => this.#ground(data, m, x, y, scale))}
      ${data.offsetsM.map((m) => svg`<line class="line" x1="0" x2=${width} y1=${y(m)} y2=${y(m)}></line>`)}
      ${at.map((m) => svg`<circle class="trunk" cx=${x(m)} cy=${y(0)} r=${Math.max(3, 0.09 * scale)}></circle>`)}
      ${at.map((m) => (m === 0 ? nothing : data.emitters.map((e, i) => this.#dot(x(m + e.alongM), y(e.acrossM), data.open[i]!, "other"))))}
      ${data.emitters.map((e, i) => (this.still ? this.#dot(x(e.alongM), y(e.acrossM), data.open[i]!, "") : this.#emitter(e, i, data.open[i]!, x, y)))}
      <line class="line" x1=${width - scale} x2=${width} y1=${tall + em * 0.6} y2=${tall + em * 0.6}></line>
      <text x=${width - scale - em * 0.4} y=${tall + em} text-anchor="end">1 m</text>
    </svg>`;
  }

  #ground(
    data: RowPlanData,
    treeM: number,
    x: (m: number) => number,
    y: (m: number) => number,
    scale: number,
  ): TemplateResult {
    const disc = data.rootRadiusM;
    const strip = Math.max(...data.offsetsM.map(Math.abs)) + data.wettedRadiusM;
    const strands = Array.from({ length: 22 }, (_, i) => {
      const turn = i * 2.399963;
      const reach = (disc ?? 0) * (0.55 + 0.42 * ((i * 0.618) % 1));
      return `M${x(treeM + Math.cos(turn) * reach * 0.25)} ${y(Math.sin(turn) * reach * 0.25)}L${x(treeM + Math.cos(turn) * reach)} ${y(Math.sin(turn) * reach)}`;
    }).join("");
    return svg`
      ${
        disc === undefined
          ? svg`<rect class="roots" x=${x(treeM - data.treeSpacingM / 2)} y=${y(-strip)} width=${data.treeSpacingM * scale} height=${2 * strip * scale}></rect>`
          : svg`<circle class="roots" cx=${x(treeM)} cy=${y(0)} r=${disc * scale}></circle><path class="strands" d=${strands}></path>`
      }
      ${data.emitters.map((e, i) => (data.open[i] ? svg`<circle class="wet" cx=${x(treeM + e.alongM)} cy=${y(e.acrossM)} r=${data.wettedRadiusM * scale}></circle>` : nothing))}
      <circle class="canopy" cx=${x(treeM)} cy=${y(0)} r=${(data.canopyDiameterM / 2) * scale}></circle>
    `;
  }

  #emitter(
    e: EmitterPlace,
    i: number,
    open: boolean,
    x: (m: number) => number,
    y: (m: number) => number,
  ): TemplateResult {
    const { em } = this.#size;
    return svg`<g class="emitter" role="switch" aria-checked=${open ? "true" : "false"} aria-label=${blockWords().emitter(e.alongM, e.acrossM, open)}
      tabindex=${i === this.at ? 0 : -1} data-at=${i} @click=${() => this.#toggle(i)} @focus=${() => (this.at = i)}>
      <circle class="ring" cx=${x(e.alongM)} cy=${y(e.acrossM)} r=${em * 0.75}></circle>${this.#dot(x(e.alongM), y(e.acrossM), open, "")}</g>`;
  }

  #dot(cx: number, cy: number, open: boolean, kind: string): TemplateResult {
    const r = this.#size.em * 0.36;
    return svg`<g class=${kind}><circle class=${open ? "open" : "plugged"} cx=${cx} cy=${cy} r=${r}></circle>${
      open
        ? nothing
        : svg`<path class="cross" d="M${cx - r * 0.6} ${cy - r * 0.6}l${r * 1.2} ${r * 1.2}m0 ${-r * 1.2}l${-r * 1.2} ${r * 1.2}"></path>`
    }</g>`;
  }

  #key(event: KeyboardEvent): void {
    const { data } = this;
    if (!data) return;
    if (event.key === " " || event.key === "Enter") {
      event.preventDefault();
      this.#toggle(this.at);
      return;
    }
    const perLine = data.emitters.length / data.offsetsM.length;
    const step = { ArrowRight: 1, ArrowLeft: -1, ArrowDown: perLine, ArrowUp: -perLine }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const next = this.at + step;
    if (next < 0 || next >= data.emitters.length) return;
    this.at = next;
    this.renderRoot.querySelector<SVGElement>(`[data-at="${next}"]`)?.focus();
  }

  #toggle(i: number): void {
    if (this.still) return;
    this.at = i;
    this.dispatchEvent(new CustomEvent("emitter-toggled", { detail: i, bubbles: true, composed: true }));
  }
}

customElements.define("rl-row-plan", RowPlan);
