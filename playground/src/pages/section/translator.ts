import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { type WaterReading, type WaterTranslator, waterTranslator } from "rootledger/ground";
import "../../fields/choice-field.js";
import "../../fields/number-field.js";
import type { DemoSoil } from "../../state/demo.js";
import { percent } from "../../text/number-format.js";
import { depthText, tensionText, unitText } from "../../text/quantity.js";
import { sectionWords } from "../../text/section-words.js";
import { layersOf } from "./soil-tension.js";

/** Tensions that different people call full. */
const fulls = [8, 10, 33];
/** Depletion that field rules often name; common practice, no source. */
const rulePercent = 50;

/** One state of the root zone in percent, tension, depth and litres: whichever is typed, the others follow. */
export class Translator extends LitElement {
  static override properties = {
    soil: { attribute: false },
    depthCm: { type: Number },
    areaM2: { type: Number },
    pullKPa: { type: Number },
    kPa: { state: true },
    fullKPa: { state: true },
    impossible: { state: true },
  };
  declare soil: DemoSoil;
  declare depthCm: number;
  declare areaM2: number;
  declare pullKPa: number;
  declare kPa: number;
  declare fullKPa: number;
  declare impossible: boolean;

  static override styles = css`
    :host { display: block; border-top: 1px solid var(--rule); padding-top: 0.8rem; }
    h2 { font-size: var(--size-body); font-weight: 650; margin: 0 0 0.4rem; }
    .row { display: flex; flex-wrap: wrap; gap: 0.5rem 1rem; align-items: baseline; }
    p { margin: 0.5rem 0 0; }
    .small { font-size: var(--size-small); color: var(--ink-quiet); }
  `;

  constructor() {
    super();
    this.kPa = 20;
    this.fullKPa = 10;
    this.impossible = false;
  }

  override render(): TemplateResult {
    const w = sectionWords();
    const zone = waterTranslator({
      layers: layersOf(this.soil, 0, this.depthCm),
      full: { tensionKPa: this.fullKPa },
      areaM2: this.areaM2,
    });
    const now = zone.fromTension(this.kPa);
    const field = (
      label: string,
      value: number,
      unit: string,
      quantity: string | undefined,
      to: (z: WaterTranslator, v: number) => WaterReading,
    ) =>
      html`<rl-number-field .label=${label} .value=${value} .limits=${[-1e6, 1e6]} .decimals=${1} .quantity=${quantity} .unit=${unit}
        @number-changed=${(e: CustomEvent<number>) => this.#set(() => to(zone, e.detail).tensionKPa)}></rl-number-field>`;
    const depletion = (kPa: number): string => percent(zone.fromTension(kPa).depletionFraction);
    const half = zone.fromDepletionFraction(rulePercent / 100).tensionKPa;
    return html`<h2>${w.translator(this.depthCm)}</h2>
      <div class="row">
        ${field(w.depleted, now.depletionFraction * 100, `% ${w.depleted}`, undefined, (z, v) => z.fromDepletionFraction(v / 100))}
        ${field(unitText("tension"), now.tensionKPa, unitText("tension"), "tension", (z, v) => z.fromTension(v))}
        ${field(`${unitText("depth")} ${w.missing}`, now.depletionMm, `${unitText("depth")} ${w.missing}`, "depth", (z, v) => z.fromDepletionMm(v))}
        ${field(`${unitText("water")} ${w.perTree}`, now.depletionL ?? 0, `${unitText("water")} ${w.perTree}`, "water", (z, v) => z.fromDepletionL(v))}
      </div>
      <div role="status">${this.impossible ? html`<p>${w.impossible}</p>` : nothing}</div>
      <p>${w.rule(tensionText(half), percent(rulePercent / 100))} ${w.pullRule(tensionText(this.pullKPa), depletion(this.pullKPa))}</p>
      <p class="small"><rl-choice-field .label=${w.full} .value=${String(this.fullKPa)} .choices=${fulls.map((kPa) => ({ value: String(kPa), text: tensionText(kPa) }))}
        @choice-changed=${(e: CustomEvent<string>) => (this.fullKPa = Number(e.detail))}></rl-choice-field>
        ${w.translatorNote(tensionText(this.fullKPa), depthText(zone.availableMm))}</p>`;
  }

  #set(read: () => number): void {
    try {
      this.kPa = read();
      this.impossible = false;
    } catch {
      this.impossible = true;
      this.requestUpdate();
    }
  }
}

customElements.define("rl-water-translator", Translator);
