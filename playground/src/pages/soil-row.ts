import { css, html, LitElement, type TemplateResult } from "lit";
import type { ComparisonResult } from "rootledger/compare";
import type { SecondTrace } from "../charts/storage-chart.js";
import { nextTurn } from "../charts/turn.js";
import "../fields/choice-field.js";
import type { Scene, SoilScene } from "../state/scene.js";
import { structureWords, textures } from "../state/soil-words.js";
import { words } from "../text/words.js";
import type { ArmView } from "./arm-pictures.js";
import type { CheckView } from "./check-view.js";
import type { DrawsView } from "./draws-view.js";
import { pageStyles } from "./page-styles.js";
import { hoursFigure, type RowFrame, sectionFigure, storageFigure } from "./row-figures.js";
import "./season-ledger.js";
import "./verdict-brief.js";
import "./verdict-list.js";
import { whenNear } from "./when-near.js";

/** One soil under every programme: section, falls, storage, root-hours, and the ledger beside them. */
export class SoilRow extends LitElement {
  static override properties = {
    scene: { attribute: false },
    soil: { attribute: false },
    season: { attribute: false },
    pictures: { attribute: false },
    frame: { attribute: false },
    result: { attribute: false },
    stale: { type: Boolean },
    picturesStale: { type: Boolean },
    manyHours: { type: Boolean },
    withKey: { type: Boolean },
    wall: { type: Boolean, reflect: true },
    check: { attribute: false },
    second: { attribute: false },
    draws: { attribute: false },
    index: { type: Number },
  };
  declare scene: Scene;
  declare soil: SoilScene;
  /** The newest complete season. */
  declare season: readonly ArmView[];
  /** What section and storage show: the season, or a preview of a few days. */
  declare pictures: readonly ArmView[];
  declare frame: RowFrame;
  declare result: ComparisonResult;
  declare stale: boolean;
  declare picturesStale: boolean;
  declare manyHours: boolean;
  /** The first row explains how the soil is drawn. */
  declare withKey: boolean;
  declare wall: boolean;
  declare check: CheckView;
  declare draws: DrawsView;
  declare second: readonly (SecondTrace | undefined)[];
  /** Place of the soil in the comparison. */
  declare index: number;

  static override styles = [
    pageStyles,
    css`
      :host { border-top: 1.5px solid var(--ink); padding: 1.1rem 0 2.2rem; }
      header { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0.2rem 1rem; margin-bottom: 0.5rem; }
      h2 { font-size: var(--size-large); line-height: 1.15; }
      .ear { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
      rl-verdict-brief { margin-bottom: 1rem; max-width: 62rem; }
      h3 { font-size: var(--size-body); font-weight: 650; line-height: 1.35; text-wrap: balance; margin-bottom: 0.35rem; }
      figure { margin-bottom: 1.3rem; }
      rl-difference-figure, rl-soil-more { display: block; min-height: 1px; }
      .further summary { cursor: pointer; padding: 0.5rem 0; text-decoration: underline; text-underline-offset: 0.2em; text-decoration-color: var(--rule-strong); }
      .further summary:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
      /* Room before the charts are drawn. */
      .section { min-height: 24rem; }
      .storage { min-height: 18rem; }
      .hours { min-height: 5rem; }
      .below { margin-top: 0.5rem; }
      rl-soil-key { margin: 0.6rem 0 0.2rem; }
      .window { color: var(--ink-quiet); margin-bottom: 0.5rem; }
      .four { display: grid; grid-template-columns: 1fr 1fr; gap: 0.4rem 0.6rem; }
      .letter { display: none; }
      .rail h3 { margin-bottom: 0.6rem; }
      .rail rl-verdict-list { margin-top: 0.4rem; }
      @media (max-width: 1120px) {
        .rail { display: grid; grid-template-columns: 1fr 1fr; column-gap: 2.25rem; }
        .rail h3 { grid-column: 1 / -1; }
      }
      @media (max-width: 700px) {
        .rail { display: block; }
        h2 { font-size: 1.25rem; }
        .letter { display: block; font-weight: 650; font-size: var(--size-small); }
      }
      :host([wall]) :is(.storage, .hours, .rail, rl-check-figure, rl-difference-figure, rl-soil-more, rl-verdict-brief, h3, rl-number-table) { display: none; }
      :host([wall]) { padding: 0.3rem 0 0; border-top-width: 1px; }
      :host([wall]) :is(header, figure) { margin: 0; min-height: 0; }
      :host([wall]) :is(header .small) { display: none; }
      :host([wall]) h2 { font-size: var(--size-body); }
      :host([wall]) .with-rail { grid-template-columns: minmax(0, 1fr); }
      @media print {
        :host { break-inside: avoid; }
      }
    `,
  ];

  readonly #narrow = matchMedia("(max-width: 700px)");

  /** Rows are drawn in tasks of their own. */
  protected override async scheduleUpdate(): Promise<void> {
    await nextTurn();
    super.scheduleUpdate();
  }

  /** The code of what stands further down is loaded when its place comes near the window. */
  protected override firstUpdated(): void {
    whenNear(this.renderRoot.querySelector("rl-difference-figure"), () => import("./difference-figure.js"));
    whenNear(this.renderRoot.querySelector("rl-soil-more"), () => import("./more/soil-more.js"));
  }

  override render(): TemplateResult {
    const { scene, season, result, pictures, frame, manyHours, wall, withKey } = this;
    const name = words.soil.name(this.soil.texture, this.soil.structure);
    const { soil } = pictures[0]!.picture;
    const letters = pictures.map((v) => v.picture.letter);
    const dimmed = this.stale ? "stale" : "";
    const row = {
      name,
      hour: scene.hour,
      shown: scene.shown,
      pictures,
      season,
      frame,
      manyHours,
      wall,
      withKey,
      second: this.second,
      dimmedSeason: dimmed,
      dimmedPictures: this.picturesStale ? "stale" : "",
    };
    return html`
      ${this.#header(name)}
      <rl-verdict-brief class=${dimmed} .result=${result} .draws=${this.draws} .soil=${soil} .tree=${scene.tree} .letters=${letters}></rl-verdict-brief>
      <div class="with-rail">
        <div>
          ${sectionFigure(row)}${storageFigure(row)}${hoursFigure(row)}
          <rl-difference-figure class=${dimmed} .result=${result} .draws=${this.draws} .soil=${soil} .name=${name} .tree=${scene.tree} .letters=${letters}></rl-difference-figure>
          <details class="further" ?open=${!this.#narrow.matches}><summary class="only-phone">${words.tools.further(name)}</summary>
            <rl-soil-more class=${dimmed} .scene=${scene} .season=${season} .name=${name} .firstDay=${frame.firstDay} .days=${frame.days}></rl-soil-more></details>
          <rl-check-figure .check=${this.check} .soil=${soil} .soilIndex=${this.index} .name=${name} .letters=${letters} .startDate=${pictures[0]!.picture.startDate}></rl-check-figure>
        </div>
        <div class="rail ${dimmed}">
          <h3>${words.ledger.heading(name)}</h3>
          <rl-season-ledger .views=${season}></rl-season-ledger>
          <rl-verdict-list .result=${result} .draws=${this.draws} .soil=${soil} .tree=${scene.tree} .letters=${letters}></rl-verdict-list>
        </div>
      </div>
    `;
  }

  #header(name: string): TemplateResult {
    const w = words.soil;
    return html`<header>
      <h2><span class="ear">${name}</span>
        <rl-choice-field label=${w.textureLabel} hiddenLabel .value=${this.soil.texture} .choices=${textures.map((value) => ({ value, text: w.name(value, "ordinary") }))}
          @choice-changed=${(e: CustomEvent<string>) => this.#tell({ texture: e.detail })}></rl-choice-field>
      </h2>
      <span class="small"><rl-choice-field label=${w.structureLabel} .value=${this.soil.structure} .choices=${structureWords.map((value) => ({ value, text: w.structures[value] }))}
        @choice-changed=${(e: CustomEvent<SoilScene["structure"]>) => this.#tell({ structure: e.detail })}></rl-choice-field></span>
    </header>`;
  }

  #tell(detail: Partial<SoilScene>): void {
    this.dispatchEvent(new CustomEvent("soil-changed", { detail, bubbles: true, composed: true }));
  }
}

customElements.define("rl-soil-row", SoilRow);
