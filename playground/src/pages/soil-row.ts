import { css, html, LitElement, type TemplateResult } from "lit";
import type { ComparisonResult } from "rootledger/compare";
import "../charts/day-strip.js";
import "../charts/falls-chart.js";
import "../charts/hours-chart.js";
import "../charts/number-table.js";
import "../charts/section-chart.js";
import "../charts/storage-chart.js";
import { rowOf } from "../charts/arm-picture.js";
import "../fields/choice-field.js";
import type { Scene, SoilScene } from "../state/scene.js";
import { structureWords, textures } from "../state/soil-words.js";
import { clock, longDayLabel } from "../text/number-format.js";
import { words } from "../text/words.js";
import type { ArmView } from "./arm-pictures.js";
import { outsideLimits } from "./findings.js";
import { pageStyles } from "./page-styles.js";
import "./season-ledger.js";
import { belowTable, hoursTable, sectionTable, storageTable } from "./table-twins.js";
import "./verdict-list.js";

/** How the pictures of a row are placed in time and drawn to scale with the other rows. */
export interface RowFrame {
  readonly firstDay: number;
  readonly days: number;
  readonly lowMm: number;
  readonly highMm: number;
  readonly mostRainMm: number;
  readonly mostBelowL: number;
  readonly seasonDays: number;
}

const fourHours = [3, 9, 15, 21];
const briefMeasures = ["thirsty", "airless", "transpiration", "below-roots"];

/** One soil under every programme: section, falls, storage, root-hours, and the ledger beside them. */
export class SoilRow extends LitElement {
  static override properties = {
    scene: { attribute: false },
    soil: { attribute: false },
    index: { type: Number },
    season: { attribute: false },
    pictures: { attribute: false },
    frame: { attribute: false },
    result: { attribute: false },
    stale: { type: Boolean },
    picturesStale: { type: Boolean },
    manyHours: { type: Boolean },
    wall: { type: Boolean, reflect: true },
  };
  declare scene: Scene;
  declare soil: SoilScene;
  declare index: number;
  /** The newest complete season. */
  declare season: readonly ArmView[];
  /** What section and storage show: the season, or a preview of a few days. */
  declare pictures: readonly ArmView[];
  declare frame: RowFrame;
  declare result: ComparisonResult;
  declare stale: boolean;
  declare picturesStale: boolean;
  declare manyHours: boolean;
  declare wall: boolean;

  static override styles = [
    pageStyles,
    css`
      :host { border-top: 1.5px solid var(--ink); padding: 1.1rem 0 2.2rem; }
      header { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0.2rem 1rem; margin-bottom: 0.5rem; }
      h2 { font-size: var(--size-large); line-height: 1.15; }
      .ear { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
      header p { color: var(--ink-quiet); }
      .brief { margin-bottom: 1rem; max-width: 62rem; }
      .brief span { margin-right: 0.8em; }
      h3 { font-size: var(--size-body); font-weight: 650; line-height: 1.35; text-wrap: balance; margin-bottom: 0.35rem; }
      figure { margin-bottom: 1.3rem; }
      .below { margin-top: 0.5rem; }
      .four { display: grid; grid-template-columns: 1fr 1fr; gap: 0.4rem 0.6rem; }
      .letter { display: none; }
      aside h3 { margin-bottom: 0.6rem; }
      aside rl-verdict-list { margin-top: 0.4rem; }
      @media (max-width: 1120px) {
        aside { display: grid; grid-template-columns: 1fr 1fr; column-gap: 2.25rem; }
        aside h3 { grid-column: 1 / -1; }
      }
      @media (max-width: 700px) {
        aside { display: block; }
        .letter { display: block; font-weight: 650; font-size: var(--size-small); }
      }
      :host([wall]) :is(.storage, .hours, aside, header p, .brief, h3, rl-number-table) { display: none; }
      :host([wall]) .with-rail { grid-template-columns: minmax(0, 1fr); }
      @media print {
        :host { break-inside: avoid; }
      }
    `,
  ];

  override render(): TemplateResult {
    const { scene } = this;
    const name = words.soil.name(this.soil.texture, this.soil.structure);
    const { window } = this.season[0]!.result;
    const w = words.soil;
    return html`
      <header>
        <h2><span class="ear">${name}</span>
          <rl-choice-field label=${w.textureLabel} hiddenLabel .value=${this.soil.texture} .choices=${textures.map((value) => ({ value, text: w.name(value, "ordinary") }))}
            @choice-changed=${(e: CustomEvent<string>) => this.#tell({ texture: e.detail })}></rl-choice-field>
        </h2>
        <span class="small"><rl-choice-field label=${w.structureLabel} .value=${this.soil.structure} .choices=${structureWords.map((value) => ({ value, text: w.structures[value] }))}
          @choice-changed=${(e: CustomEvent<SoilScene["structure"]>) => this.#tell({ structure: e.detail })}></rl-choice-field></span>
        <p>${w.window(window.waterAtAirReturnMm - window.waterAtPullLimitMm, window.litresPerTree, window.airReturnKPa, window.pullLimitKPa)}</p>
      </header>
      <p class="brief ${this.stale ? "stale" : ""}">${this.#brief()}</p>
      <div class="with-rail">
        <div>
          ${this.#section(name)}${this.#storage(name)}${this.#hours()}
        </div>
        <aside class=${this.stale ? "stale" : ""}>
          <h3>${words.ledger.heading(name)}</h3>
          <rl-season-ledger .views=${this.season}></rl-season-ledger>
          <rl-verdict-list .result=${this.result} .soil=${this.season[0]!.picture.soil} .tree=${scene.tree} .letters=${this.season.map((v) => v.picture.letter)}></rl-verdict-list>
        </aside>
      </div>
    `;
  }

  /** The neighbouring programmes held against each other in one line. */
  #brief(): TemplateResult[] {
    const { changes, differences } = this.result;
    const names = this.season.map((v) => v.picture.programme);
    return changes
      .filter((c) => names.indexOf(c.to) === names.indexOf(c.from) + 1)
      .map(({ from, to, questions }) => {
        const clear = briefMeasures.flatMap((id) =>
          differences.filter(
            (d) =>
              d.measureId === id &&
              d.soil === this.season[0]!.picture.soil &&
              d.tree === this.scene.tree &&
              d.from === from &&
              d.to === to &&
              d.verdict !== "no clear difference",
          ),
        );
        const letter = (programme: string): string =>
          this.season[names.indexOf(programme)]?.picture.letter ?? programme;
        const items = clear.map((d) => ({ id: d.measureId, unit: d.unit, difference: d.difference }));
        return html`<span>${words.verdict.brief(letter(from), letter(to), questions, items)}</span> `;
      });
  }

  #section(name: string): TemplateResult {
    const { scene, pictures, season } = this;
    const { hour } = scene;
    const share = (of: "airlessShare" | "thirstyShare") =>
      pictures.map(({ picture }) => picture[of][rowOf(picture, hour) ?? -1] ?? 0);
    const start = pictures[0]!.picture.startDate;
    const when = words.time.at(longDayLabel(start, Math.floor(hour / 24)), hour);
    return html`
      <figure class="section ${this.picturesStale ? "stale" : ""}" aria-label=${words.key.label}>
        <h3>${words.section.title(name, when, share("airlessShare"), share("thirstyShare"))}</h3>
        <div class="columns">
          ${pictures.map(
            (v, i) => html`<div ?data-shown=${i === scene.shown}>${this.#soils(v, i)}
            <rl-day-strip .arm=${v.picture} .hour=${hour}></rl-day-strip></div>`,
          )}
        </div>
        <rl-number-table .data=${() => sectionTable(pictures, hour)}></rl-number-table>
        <h3 class="below">${words.below.title(
          season.map((v) => v.season.belowL),
          season.map((v) => v.season.belowShare),
        )}</h3>
        <rl-number-table .data=${() => belowTable(season, hour)}></rl-number-table>
      </figure>
    `;
  }

  #soils(v: ArmView, i: number): TemplateResult {
    const { hour } = this.scene;
    const dayStart = hour - (hour % 24);
    const row = rowOf(v.picture, hour) ?? 0;
    const season = this.season[i]!.season;
    const whole = this.pictures === this.season;
    const sofar = v.picture.belowSinceStartL[row] ?? 0;
    const label = `${words.below.sofar(sofar)}; ${words.below.total(season.belowL)}`;
    return html`
      ${
        this.manyHours
          ? html`<div class="four">${fourHours.map((h) => html`<rl-section-chart .arm=${v.picture} .hour=${dayStart + h} .caption=${clock(h)}></rl-section-chart>`)}</div>`
          : html`<rl-section-chart .arm=${v.picture} .hour=${hour} axes></rl-section-chart>`
      }
      <rl-falls-chart .sofarL=${sofar} .totalL=${whole ? season.belowL : undefined} .mostL=${this.frame.mostBelowL} .label=${label}></rl-falls-chart>
    `;
  }

  #storage(name: string): TemplateResult {
    const { scene, pictures, frame } = this;
    const outside = this.season.map((v) => outsideLimits(v.picture));
    return html`
      <figure class="storage ${this.picturesStale ? "stale" : ""}">
        <h3>${words.storage.title(
          name,
          outside.map((o) => o.above),
          outside.map((o) => o.beneath),
        )}</h3>
        <div class="columns">
          ${pictures.map(
            (
              v,
              i,
            ) => html`<rl-storage-chart ?data-shown=${i === scene.shown} .arm=${v.picture} .hour=${scene.hour} .firstDay=${frame.firstDay} .days=${frame.days}
            .lowMm=${frame.lowMm} .highMm=${frame.highMm} .mostRainMm=${frame.mostRainMm}></rl-storage-chart>`,
          )}
        </div>
        <rl-number-table .data=${() => storageTable(pictures, frame.firstDay, frame.days)}></rl-number-table>
      </figure>
    `;
  }

  #hours(): TemplateResult {
    const { season } = this;
    return html`
      <figure class="hours ${this.stale ? "stale" : ""}">
        <h3>${words.hours.title(
          this.frame.seasonDays * 24,
          season.map((v) => v.season.thirstyH),
          season.map((v) => v.season.airlessH),
        )}</h3>
        <div class="columns all">
          ${season.map((v) => html`<div><span class="letter">${v.picture.letter}: ${v.picture.programme}</span><rl-hours-chart .season=${v.season}></rl-hours-chart></div>`)}
        </div>
        <rl-number-table .data=${() => hoursTable(season)}></rl-number-table>
      </figure>
    `;
  }

  #tell(detail: Partial<SoilScene>): void {
    this.dispatchEvent(new CustomEvent("soil-changed", { detail, bubbles: true, composed: true }));
  }
}

customElements.define("rl-soil-row", SoilRow);
