import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { column } from "rootledger";
import "../charts/time-scrubber.js";
import "../fields/choice-field.js";
import "../fields/litres-field.js";
import "../fields/programme-sentence.js";
import type { SeasonStrip } from "../charts/time-scrubber.js";
import { nextTurn } from "../charts/turn.js";
import type { DemoFile } from "../state/demo.js";
import { withSoil } from "../state/fields.js";
import { changedProgramme, lockedScene, type ProgrammePlan, unlockedScene } from "../state/programme-plan.js";
import { type ProgrammeScene, type Scene, type SoilScene, spanDays, spans } from "../state/scene.js";
import { amount } from "../text/number-format.js";
import { words } from "../text/words.js";
import type { Answer } from "../worker/protocol.js";
import { type ArmView, armViews } from "./arm-pictures.js";
import "./badge-line.js";
import { waterAxes, wettestDay } from "./findings.js";
import { pageStyles } from "./page-styles.js";
import "./soil-row.js";

const armLetters = ["A", "B", "C", "D"];

interface Scales {
  readonly axes: ReturnType<typeof waterAxes>;
  readonly mostBelowL: number;
  readonly mostRainMm: number;
}

/** The first page: programmes side by side on soils one under the other, one hand of time through all of it. */
export class ComparePage extends LitElement {
  static override properties = {
    demo: { attribute: false },
    scene: { attribute: false },
    plans: { attribute: false },
    season: { attribute: false },
    preview: { attribute: false },
    stale: { type: Boolean },
    wall: { type: Boolean, reflect: true },
    manyHours: { state: true },
  };
  declare demo: DemoFile;
  declare scene: Scene;
  declare plans: readonly ProgrammePlan[];
  declare season: Answer | undefined;
  declare preview: Answer | undefined;
  declare stale: boolean;
  /** Pictures, slider and one number only. */
  declare wall: boolean;
  declare manyHours: boolean;

  static override styles = [
    pageStyles,
    css`
      .intro { display: flex; flex-wrap: wrap; gap: 0.4rem 2.2rem; align-items: baseline; margin: 1rem 0 0.7rem; }
      .intro > div { min-height: 1.5em; }
      h1 { font-size: var(--size-large); line-height: 1.15; text-wrap: balance; }
      .heads { position: sticky; top: 0; z-index: 2; background: var(--paper); padding: 0.35rem 0; border-bottom: 1px solid var(--rule); }
      .heads b { display: inline-block; min-width: 1.2em; }
      .heads h2 { font-size: var(--size-body); margin: 0; font-weight: 650; }
      .sentences { padding: 0.4rem 0 0.9rem; }
      .shared div { display: grid; gap: 0.5rem; justify-items: start; padding-top: 0.25rem; }
      .shared summary { cursor: pointer; padding: 0.5rem 0; }
      .empty .with-rail { padding: 4rem 0 12rem; border-top: 1.5px solid var(--rule); }
      .empty .columns > div { height: 11rem; border: 1px solid var(--rule-strong); border-top: 1.5px solid var(--ink); }
      .tabs { border: 0; padding: 0; margin: 0 0 0.4rem; }
      .tabs legend { padding: 0; color: var(--ink-quiet); font-size: var(--size-small); }
      .tabs div { display: grid; grid-auto-flow: column; grid-auto-columns: 1fr; border: 1.5px solid var(--ink); border-radius: 1.4rem; overflow: hidden; }
      .tabs label { text-align: center; padding: 0.5rem 0.3rem; cursor: pointer; font-size: var(--size-small); line-height: 1.2; }
      .tabs b { display: block; }
      .tabs input { position: absolute; opacity: 0; pointer-events: none; }
      .tabs label:has(input:checked) { background: var(--ink); color: var(--paper); }
      .tabs label:has(input:focus-visible) { outline: 3px solid var(--ink); outline-offset: -6px; }
      footer { position: sticky; bottom: 0; z-index: 3; background: var(--paper); border-top: 1.5px solid var(--ink); padding: 0.55rem 0 max(0.55rem, env(safe-area-inset-bottom)); }
      .about { border-top: 1.5px solid var(--ink); padding: 1.2rem 0 2rem; display: grid; gap: 0.5rem; max-width: 46rem; }
      .about li { margin: 0.2rem 0; }
      .about summary { cursor: pointer; }
      .about summary:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
      @media (max-width: 700px) {
        .heads { position: static; }
        .heads { display: none; }
        h1 { font-size: 1.25rem; }
        .tabs legend { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
      }
      :host([wall]) :is(.intro > div, .sentences, .tabs) { display: none; }
      :host([wall]) .intro { position: absolute; width: 1px; height: 1px; margin: 0; overflow: hidden; clip-path: inset(50%); }
      :host([wall]) .with-rail { grid-template-columns: minmax(0, 1fr); }
      @media print {
        footer, .tabs { display: none; }
        .heads { position: static; }
      }
    `,
  ];

  readonly #narrow = matchMedia("(max-width: 700px)");
  #views: { answer: Answer; tree: string; views: ArmView[][] }[] = [];

  constructor() {
    super();
    this.stale = false;
    this.wall = false;
    this.manyHours = false;
    this.#narrow.addEventListener("change", () => this.requestUpdate());
    this.addEventListener("hour-picked", (event) => {
      const hour = (event as CustomEvent<number>).detail;
      this.#change((scene) => ({ ...scene, hour }));
    });
    this.addEventListener("four-hours-toggled", () => {
      this.manyHours = !this.manyHours;
    });
  }

  override willUpdate(): void {
    this.style.setProperty("--programmes", String(this.scene.programmes.length));
  }

  /** The first drawing is a task of its own, so that opening the page is not one long one. */
  protected override async scheduleUpdate(): Promise<void> {
    if (!this.hasUpdated) await nextTurn();
    super.scheduleUpdate();
  }

  override render(): TemplateResult {
    const { scene, season } = this;
    const holds = season?.result.badges.find((badge) => badge.id === "same-water")?.holds ?? scene.sameLitres;
    return html`
      <div class="intro">
        <h1>${words.headline(holds, scene.programmes.length)}</h1>
        <div>
          ${season && !this.stale ? html`<rl-badge-line .badges=${season.result.badges}></rl-badge-line>` : nothing}
          <slot name="status"></slot>
        </div>
      </div>
      ${this.#tabs()}
      <div class="heads"><div class="with-rail"><div class="columns">
        ${scene.programmes.map((p, i) => html`<h2 ?data-shown=${i === scene.shown}><b>${armLetters[i]}</b> ${words.programmes.name(p.everyDays, p.pulses)}</h2>`)}
      </div></div></div>
      <div class="sentences with-rail">
        <div class="columns">${scene.programmes.map((p, i) => this.#programme(p, i))}</div>
        ${this.#shared()}
      </div>
      ${season ? this.#rows(season) : this.#empty()}
      ${season && !scene.wall ? this.#about(season) : nothing}
      ${season ? this.#footer(season) : nothing}
    `;
  }

  /** Frames of the pictures to come. */
  #empty(): TemplateResult {
    const { soils, programmes } = this.scene;
    return html`<div class="empty" aria-hidden="true">
      ${soils.map(() => html`<div class="with-rail"><div class="columns">${programmes.map((_, i) => html`<div ?data-shown=${i === this.scene.shown}></div>`)}</div></div>`)}
    </div>`;
  }

  #tabs(): TemplateResult {
    const { scene } = this;
    return html`<fieldset class="tabs only-phone"><legend>${words.programmes.show}</legend><div>
      ${scene.programmes.map(
        (p, i) => html`<label><input type="radio" name="shown" .checked=${i === scene.shown}
        @change=${() => this.#change((s) => ({ ...s, shown: i }))}><b>${armLetters[i]}</b> ${words.programmes.name(p.everyDays, p.pulses)}</label>`,
      )}
    </div></fieldset>`;
  }

  #programme(p: ProgrammeScene, i: number): TemplateResult {
    const plan = this.plans[i]!;
    return html`<div ?data-shown=${i === this.scene.shown}>
      <rl-programme-sentence .programme=${p} .pulseMinutes=${plan.pulseMinutes} .letter=${armLetters[i]}
        @programme-changed=${(e: CustomEvent<Partial<ProgrammeScene>>) => this.#change((s) => changedProgramme(s, i, e.detail, this.demo))}></rl-programme-sentence>
      <p class="small">${words.programmes.brings(plan.runLitres, plan.openHours, plan.litresPerDay)}</p>
    </div>`;
  }

  #shared(): TemplateResult {
    const { scene } = this;
    const choice = (key: "start" | "tree", options: readonly string[], texts: Readonly<Record<string, string>>) =>
      html`<rl-choice-field .label=${`${texts.label}:`} .value=${scene[key]} .choices=${options.map((value) => ({ value, text: texts[value] ?? value }))}
        @choice-changed=${(e: CustomEvent<never>) => this.#change((s) => ({ ...s, [key]: e.detail }))}></rl-choice-field>`;
    return html`<details class="shared" ?open=${!this.#narrow.matches}>
      <summary class="only-phone">${words.shared(scene.sameLitres, scene.litresPerDay, words.tree[scene.tree])}</summary>
      <div>
        <rl-litres-field .locked=${scene.sameLitres} .litresPerDay=${scene.litresPerDay}
          @lock-changed=${(e: CustomEvent<boolean>) => this.#change((s) => (e.detail ? lockedScene(s, this.demo) : unlockedScene(s, this.demo)))}
          @litres-changed=${(e: CustomEvent<number>) => this.#change((s) => ({ ...s, litresPerDay: e.detail }))}></rl-litres-field>
        ${choice("start", ["settled", "same-state"], words.start)}
        ${choice("tree", ["mean", "under-fed"], words.tree)}
        <rl-choice-field .label=${`${words.span.label}:`} .value=${scene.span} .choices=${spans.map((value) => ({ value, text: words.span[value] }))}
          @choice-changed=${(e: CustomEvent<Scene["span"]>) => this.#change((s) => ({ ...s, span: e.detail }))}></rl-choice-field>
      </div>
    </details>`;
  }

  /** What the pictures show: the season, or a preview where it is newer and reaches the hour. */
  #picturesAnswer(season: Answer): Answer {
    const { preview, scene } = this;
    if (!preview || scene.span === "season") return season;
    const from = preview.firstDay * 24;
    const { rows } = preview.result.arms[0]!.result.hours;
    return scene.hour < from || scene.hour >= from + rows ? season : preview;
  }

  #rows(season: Answer): TemplateResult {
    const { scene } = this;
    const shown = this.#picturesAnswer(season);
    const pictures = this.#viewsOf(shown);
    const seasonViews = this.#viewsOf(season);
    const { axes, mostBelowL, mostRainMm } = this.#scales(seasonViews);
    const span = spanDays(scene, this.demo.season.days);
    return html`
      ${scene.soils.map((soil, i) => {
        const frame = { ...span, ...axes[i]!, mostRainMm, mostBelowL, seasonDays: this.demo.season.days };
        return html`<rl-soil-row .scene=${scene} .soil=${soil} .season=${seasonViews[i]!} .pictures=${pictures[i]!} .frame=${frame}
          .result=${season.result} .stale=${this.stale} .picturesStale=${this.stale && shown === season} .manyHours=${this.manyHours} .wall=${scene.wall} .withKey=${i === 0}
          @soil-changed=${(e: CustomEvent<Partial<SoilScene>>) => this.#change((s) => withSoil(s, i, e.detail))}></rl-soil-row>`;
      })}
    `;
  }

  #scalesMade: { views: ArmView[][]; scales: Scales } | undefined;

  /** Scales that every picture shares; of the season where there is one, so that a preview does not make them jump. */
  #scales(views: ArmView[][]): Scales {
    if (this.#scalesMade?.views !== views) {
      const scales = {
        axes: waterAxes(views.map((row) => row.map((v) => v.picture))),
        mostBelowL: Math.max(...views.flat().map((v) => v.season.belowL)),
        mostRainMm: wettestDay(views[0]![0]!.picture.rainMm),
      };
      this.#scalesMade = { views, scales };
    }
    return this.#scalesMade.scales;
  }

  #about(season: Answer): TemplateResult {
    const { result } = season;
    return html`<section class="about small">
      <p>${result.remark}</p>
      <p>${words.about.never} ${words.section.smoothed} ${words.tree.sectionIsMean}</p>
      ${[...new Set(result.arms.flatMap((arm) => arm.result.notes))].map((note) => html`<p>${words.about.note} ${note}.</p>`)}
      <p>${words.about.computedHere(result.version, season.tookMs / 1000)}</p>
      <details><summary>${words.about.defaults} (${amount(result.defaultsUsed.length)})</summary>
        <ul>${result.defaultsUsed.map((d) => html`<li>${d.path}: ${d.value}. ${d.source}</li>`)}</ul></details>
    </section>`;
  }

  #footer(season: Answer): TemplateResult {
    const { scene } = this;
    const span = spanDays(scene, this.demo.season.days);
    return html`<footer><rl-time-scrubber .strip=${this.#strip(season)} .hour=${scene.hour} .firstDay=${span.firstDay} .shownDays=${span.days} .fourHours=${this.manyHours}></rl-time-scrubber></footer>`;
  }

  #stripMade: { season: Answer; strip: SeasonStrip } | undefined;

  #strip(season: Answer): SeasonStrip {
    if (this.#stripMade?.season !== season) {
      const { days } = season.result.arms[0]!.result;
      const one = (name: string): Float64Array =>
        column(days, name).values.filter((_, i) => i % days.trees === days.trees - 1);
      const { startDate } = this.demo.season;
      const strip = {
        startDate,
        days: this.demo.season.days,
        rainMm: one("rain"),
        wantedL: one("wanted"),
      };
      this.#stripMade = { season, strip };
    }
    return this.#stripMade.strip;
  }

  /** Views are made once per answer and tree, so that charts see unchanged pictures as unchanged. */
  #viewsOf(answer: Answer): ArmView[][] {
    const { tree } = this.scene;
    const made = this.#views.find((entry) => entry.answer === answer && entry.tree === tree);
    if (made) return made.views;
    const { season, block } = this.demo;
    const views = armViews(answer, tree, {
      letters: armLetters,
      seasonStart: season.startDate,
      canopyDiameterM: block.tree.canopyDiameterM,
    });
    this.#views = [...this.#views.slice(-3), { answer, tree, views }];
    return views;
  }

  #change(edit: (scene: Scene) => Scene): void {
    this.dispatchEvent(new CustomEvent("scene-edited", { detail: edit, bubbles: true, composed: true }));
  }
}

customElements.define("rl-compare-page", ComparePage);
