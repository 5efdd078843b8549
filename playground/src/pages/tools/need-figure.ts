import { css, html, LitElement, type TemplateResult } from "lit";
import { cropPresets, type NeedDay, waterNeed } from "rootledger/tree";
import "../../fields/choice-field.js";
import { limits } from "../../fields/limits.js";
import "../../fields/number-field.js";
import type { DemoFile } from "../../state/demo.js";
import type { ProgrammePlan } from "../../state/programme-plan.js";
import { cropNames, type NeedScene, type Scene } from "../../state/scene.js";
import { amount, dayLabel } from "../../text/number-format.js";
import { areaWaterText } from "../../text/quantity.js";
import { toolsWords } from "../../text/tools-words.js";
import { cropCoefficient } from "./crop-coefficient.js";

/** Within this much of the gross need the amount counts as right; a tenth is what ET0 and Kc are known to. Our choice. */
const rightWithin = 0.1;

/** What the tree needs on a day, net and gross, and what each programme brings beside it. */
export class NeedFigure extends LitElement {
  static override properties = {
    scene: { attribute: false },
    file: { attribute: false },
    plans: { attribute: false },
    dayEt0Mm: { type: Number },
  };
  declare scene: Scene;
  declare file: DemoFile;
  declare plans: readonly ProgrammePlan[];
  /** ET0 of the day shown, once the season is there. */
  declare dayEt0Mm: number | undefined;

  static override styles = css`
    :host { display: block; padding: 0.2rem 0 0.9rem; max-width: 46rem; }
    p, ul { margin: 0.35rem 0; }
    ul { padding-left: 1.1em; }
    .fields { display: flex; flex-wrap: wrap; gap: 0.4rem 1.4rem; align-items: baseline; }
    .sum { font-size: var(--size-large); font-weight: 650; line-height: 1.2; }
    .small { font-size: var(--size-small); color: var(--ink-quiet); }
  `;

  override render(): TemplateResult {
    const w = toolsWords();
    const { need, hour, programmes } = this.scene;
    const { startDate } = this.file.season;
    const day = dayLabel(startDate, Math.floor(hour / 24));
    const month = new Date(Date.parse(`${startDate}T00:00:00Z`) + Math.floor(hour / 24) * 86_400_000).getUTCMonth();
    const own = cropCoefficient(cropPresets[need.crop], month, this.file.weather.latitudeDeg < 0);
    const kc = need.kc > 0 ? need.kc : own.kc;
    const et0Mm = need.et0Mm > 0 ? need.et0Mm : (this.dayEt0Mm ?? 0);
    const found = this.#need(et0Mm, kc);
    const { treeSpacingM, rowSpacingM } = this.file.block;
    return html`
      <div class="fields">
        ${this.#number("et0Mm", w.et0, et0Mm, 1, 0.1)}
        <rl-choice-field .label=${`${w.crop}:`} .value=${need.crop} .choices=${cropNames.map((value) => ({ value, text: w.crops[value] }))}
          @choice-changed=${(e: CustomEvent<NeedScene["crop"]>) => this.#tell({ crop: e.detail, kc: 0 })}></rl-choice-field>
        ${this.#number("kc", w.kc, kc, 2, 0.05)}
        <rl-number-field named .label=${w.efficiency} .value=${need.efficiencyFraction * 100} .limits=${limits.efficiencyFraction.map((x) => x * 100)} .decimals=${0} .step=${5}
          @number-changed=${(e: CustomEvent<number>) => this.#tell({ efficiencyFraction: e.detail / 100 })}></rl-number-field>
      </div>
      <div role="status">
        <p class="sum">${w.net(found.netLPerTree, found.grossLPerTree, need.efficiencyFraction)}</p>
        <p>${w.needAlso(found.netLPerTree / (treeSpacingM * rowSpacingM), areaWaterText(found.grossM3PerHa ?? 0))}</p>
        <ul>${programmes.map((p, i) => html`<li>${p.rule === "calendar" ? this.#held("ABCD"[i]!, this.plans[i]!.litresPerDay, found.grossLPerTree) : w.decided("ABCD"[i]!)}</li>`)}</ul>
      </div>
      <p class="small">${need.et0Mm > 0 ? "" : `ET0 ${w.ofWeather(day)}. `}${need.kc > 0 ? w.kcTyped : html`<span lang="en">${w.kcFrom(own.source)}</span>`}. ${w.model(listedKcb(this.file))}</p>`;
  }

  #need(et0Mm: number, kc: number): NeedDay {
    const { treeSpacingM, rowSpacingM, tree } = this.file.block;
    const { heightM } = cropPresets[this.scene.need.crop];
    return waterNeed({
      tree: {
        spacing: { treeSpacingM, rowSpacingM },
        canopyDiameterM: tree.canopyDiameterM,
        heightM: heightM.value,
      },
      cover: tree.cover ?? { rule: "whole-ground" },
      reference: { kind: "et0" },
      periods: [{ name: "day", days: 1, referenceMmPerDay: et0Mm, coefficient: kc }],
      hotDayRatio: 1,
      efficiencyFraction: this.scene.need.efficiencyFraction,
      leachingFraction: 0,
    }).periods[0]!.meanDay;
  }

  #held(letter: string, litres: number, gross: number): string {
    const w = toolsWords();
    const share = gross > 0 ? litres / gross - 1 : 0;
    return Math.abs(share) <= rightWithin ? w.right(letter, litres) : w.off(letter, litres, share);
  }

  #number(key: "et0Mm" | "kc", label: string, value: number, decimals: number, step: number): TemplateResult {
    return html`<rl-number-field named .label=${label} .value=${value} .limits=${limits[key]} .decimals=${decimals} .step=${step}
      @number-changed=${(e: CustomEvent<number>) => this.#tell({ [key]: e.detail })}></rl-number-field>`;
  }

  #tell(change: Partial<NeedScene>): void {
    const detail = (scene: Scene): Scene => ({ ...scene, need: { ...scene.need, ...change } });
    this.dispatchEvent(new CustomEvent("scene-edited", { detail, bubbles: true, composed: true }));
  }
}

/** The file's basal coefficients from the least to the most. */
function listedKcb({ block }: DemoFile): string {
  const values = block.tree.kcb.map(({ kcb }) => kcb);
  return [...new Set([Math.min(...values), Math.max(...values)])].map((kcb) => amount(kcb, 2)).join("–");
}

customElements.define("rl-need-figure", NeedFigure);
