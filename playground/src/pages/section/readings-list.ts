import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { type ArmPicture, rowOf } from "../../charts/arm-picture.js";
import "../../fields/choice-field.js";
import { limits } from "../../fields/limits.js";
import "../../fields/number-field.js";
import type { DemoSoil } from "../../state/demo.js";
import type { Reading } from "../../state/scene.js";
import { amount, dayLabel } from "../../text/number-format.js";
import { tensionText, unitText } from "../../text/quantity.js";
import { sectionWords } from "../../text/section-words.js";
import { words } from "../../text/words.js";
import { cellAt, tensionReader } from "./soil-tension.js";

/** Readings to type in, each held against what the model has at that hour and depth. */
export class ReadingsList extends LitElement {
  static override properties = {
    readings: { attribute: false },
    picture: { attribute: false },
    soil: { attribute: false },
    fromRowCm: { type: Number },
    hour: { type: Number },
    startDate: { type: String },
    seasonDays: { type: Number },
    depthCm: { state: true },
    kPa: { state: true },
  };
  declare readings: readonly Reading[];
  declare picture: ArmPicture;
  declare soil: DemoSoil;
  declare fromRowCm: number;
  /** The hour that the pictures show; a new reading is for it. */
  declare hour: number;
  declare startDate: string;
  declare seasonDays: number;
  declare depthCm: number;
  declare kPa: number;

  static override styles = css`
    :host { display: block; margin-top: 1rem; }
    h3 { font-size: var(--size-body); font-weight: 650; margin: 0 0 0.2rem; }
    p { margin: 0.2rem 0; }
    .small { font-size: var(--size-small); color: var(--ink-quiet); }
    form { display: flex; flex-wrap: wrap; gap: 0.4rem 1.2rem; align-items: baseline; margin: 0.5rem 0; }
    ul { margin: 0.4rem 0; padding: 0; list-style: none; display: grid; gap: 0.25rem; }
    button { font: inherit; color: var(--ink); background: var(--paper); border: 1.5px solid var(--ink); border-radius: 1.3em; min-height: 2.2rem; padding: 0.1em 0.9em; cursor: pointer; }
    li button { border: 0; border-bottom: 1.5px solid var(--ink); border-radius: 0; min-height: 0; padding: 0 0.1em; margin-left: 0.5em; }
    button:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
    .verdict { font-weight: 650; }
  `;

  constructor() {
    super();
    this.depthCm = 20;
    this.kPa = 10;
  }

  override render(): TemplateResult {
    const w = sectionWords();
    const rows = this.readings.map((reading) => ({ reading, model: this.#model(reading) }));
    const when = this.#when(this.hour);
    return html`<h3>${w.readings}</h3><p class="small">${w.readingsHint}</p>
      <form @submit=${this.#add}>
        <span>${when}</span>
        <rl-number-field named .label=${w.depth} .value=${this.depthCm} .limits=${[1, limits.sensorDepthCm - 1]} .decimals=${0} .step=${10} @number-changed=${(e: CustomEvent<number>) => (this.depthCm = Math.round(e.detail))}></rl-number-field>
        <rl-number-field named .label=${w.tension} .value=${this.kPa} .limits=${limits.readingKPa} .decimals=${1} .quantity=${"tension"} .unit=${unitText("tension")} @number-changed=${(e: CustomEvent<number>) => (this.kPa = e.detail)}></rl-number-field>
        <button type="submit">${w.add}</button>
      </form>
      ${rows.length === 0 ? nothing : html`<ul>${rows.map(({ reading, model }, i) => this.#row(reading, model, i))}</ul>`}
      <div role="status">${rows.length === 0 ? nothing : this.#verdict(rows)}</div>`;
  }

  #row({ hour, depthCm, kPa }: Reading, model: number | undefined, i: number): TemplateResult {
    const w = sectionWords();
    const when = this.#when(hour);
    const text =
      model === undefined
        ? w.outside(when, depthCm, tensionText(kPa))
        : w.against(when, depthCm, tensionText(kPa), tensionText(model));
    return html`<li>${text}<button type="button" aria-label=${w.remove(text)} @click=${() => this.#tell(this.readings.filter((_, k) => k !== i))}>×</button></li>`;
  }

  #verdict(rows: readonly { reading: Reading; model: number | undefined }[]): TemplateResult {
    const w = sectionWords();
    const { airReturnKPa, pullLimitKPa } = this.picture;
    const sides = new Set(
      rows.map(({ reading: { kPa } }) => (kPa < airReturnKPa ? "no-air" : kPa > pullLimitKPa ? "dry" : "between")),
    );
    const [only] = sides;
    const factors = rows
      .flatMap(({ reading, model }) => (model === undefined ? [] : [Math.max(0.5, model) / Math.max(0.5, reading.kPa)]))
      .map((ratio) => Math.max(ratio, 1 / ratio))
      .sort((a, b) => a - b);
    const middle = factors[Math.floor(factors.length / 2)];
    return html`<p class="verdict">${w.verdict[sides.size === 1 && only ? only : "mixed"]}</p>
      ${middle === undefined ? nothing : html`<p class="small">${w.miss(amount(middle, 2))}</p>`}`;
  }

  #model({ hour, depthCm }: Reading): number | undefined {
    const { section, theta } = this.picture;
    const cell = cellAt(section, depthCm, this.fromRowCm);
    const row = rowOf(this.picture, hour);
    if (cell === undefined || row === undefined) return undefined;
    return tensionReader(this.soil, depthCm)(theta[row * section.layers * section.lanes + cell]!);
  }

  #when(hour: number): string {
    return words.time.at(dayLabel(this.startDate, Math.floor(hour / 24)), Number(hour));
  }

  #add(event: Event): void {
    event.preventDefault();
    const { hour, depthCm, kPa } = this;
    const others = this.readings.filter((r) => r.hour !== hour || r.depthCm !== depthCm);
    this.#tell([...others, { hour, depthCm, kPa }].sort((a, b) => a.hour - b.hour || a.depthCm - b.depthCm));
  }

  #tell(detail: readonly Reading[]): void {
    this.dispatchEvent(new CustomEvent("readings-changed", { detail, bubbles: true, composed: true }));
  }
}

customElements.define("rl-readings-list", ReadingsList);
