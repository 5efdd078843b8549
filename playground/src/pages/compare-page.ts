import { html, LitElement, nothing, type TemplateResult } from "lit";
import { column } from "rootledger";
import "../charts/time-scrubber.js";
import "../fields/choice-field.js";
import "../fields/litres-field.js";
import type { SecondTrace } from "../charts/storage-chart.js";
import { nextTurn } from "../charts/turn.js";
import type { DemoFile } from "../state/demo.js";
import { lockedScene, type ProgrammePlan, unlockedScene } from "../state/programme-plan.js";
import { type Scene, type SoilScene, spanDays, spans, treeChoices } from "../state/scene.js";
import { withSoil } from "../state/scene-edits.js";
import { dayLabel } from "../text/number-format.js";
import { words } from "../text/words.js";
import type { Answer } from "../worker/protocol.js";
import { aboutComparison } from "./about-comparison.js";
import { type ArmView, armViews } from "./arm-pictures.js";
import "./badge-line.js";
import "./check-control.js";
import type { CheckView } from "./check-view.js";
import { compareStyles } from "./compare-styles.js";
import { compareTools } from "./compare-tools.js";
import "./draws-control.js";
import type { DrawsView } from "./draws-view.js";
import { waterAxes, wettestDay } from "./findings.js";
import { pageStyles } from "./page-styles.js";
import { programmeColumn } from "./programme-column.js";
import { seasonStrip } from "./season-strip.js";
import "./soil-row.js";
import { whenNear } from "./when-near.js";

const armLetters = ["A", "B", "C", "D"];

const further = {
  "rl-window-figure": () => import("./more/window-figure.js"),
  "rl-trees-figure": () => import("./more/trees-figure.js"),
};

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
    check: { attribute: false },
    draws: { attribute: false },
    compared: { attribute: false },
    files: { attribute: false },
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
  /** The slow engine's answer, if it was asked. */
  declare check: CheckView;
  /** The draws of what is unknown, if they were asked for. */
  declare draws: DrawsView;
  /** The comparison file of the scene, and texts that the worker does not carry. */
  declare compared: () => object;
  declare files: Readonly<Record<string, string>>;
  declare manyHours: boolean;

  static override styles = [pageStyles, compareStyles];

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

  /** Figures across all soils come when they are near the window. */
  override updated(): void {
    for (const [name, load] of Object.entries(further)) {
      const place = this.renderRoot.querySelector(name);
      if (place === null || this.#watched.has(place)) continue;
      this.#watched.add(place);
      whenNear(place, load);
    }
  }

  readonly #watched = new WeakSet<Element>();

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
        ${scene.programmes.map((p, i) => html`<h2 ?data-shown=${i === scene.shown}><b>${armLetters[i]}</b> ${words.programmes.name(p)}</h2>`)}
      </div></div></div>
      <div class="sentences with-rail">
        <div class="columns">${scene.programmes.map((_, i) => programmeColumn({ scene, file: this.demo, plan: this.plans[i]!, i, change: (edit) => this.#change(edit) }))}</div>
        ${this.#shared()}
      </div>
      ${scene.wall ? nothing : compareTools({ scene, file: this.demo, plans: this.plans, season, stale: this.stale, compared: this.compared, files: this.files })}
      ${scene.wall ? nothing : this.#checkControl()}
      ${scene.wall ? nothing : html`<rl-draws-control .draws=${this.draws} .seasonReady=${season !== undefined && !this.stale}></rl-draws-control>`}
      ${season ? this.#rows(season) : this.#empty()}
      ${season && !scene.wall ? html`<rl-window-figure class=${this.stale ? "stale" : ""} .scene=${scene} .views=${this.#viewsOf(season)}></rl-window-figure>` : nothing}
      ${season && !scene.wall && scene.block.drains ? html`<rl-trees-figure .scene=${scene} .compared=${this.compared} .files=${this.files}></rl-trees-figure>` : nothing}
      ${season && !scene.wall ? aboutComparison(season) : nothing}
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
        @change=${() => this.#change((s) => ({ ...s, shown: i }))}><b>${armLetters[i]}</b> ${words.programmes.name(p)}</label>`,
      )}
    </div></fieldset>`;
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
        ${choice("tree", scene.block.drains ? treeChoices : ["mean", "under-fed"], words.tree)}
        <rl-choice-field .label=${`${words.span.label}:`} .value=${scene.span} .choices=${spans.map((value) => ({ value, text: words.span[value] }))}
          @choice-changed=${(e: CustomEvent<Scene["span"]>) => this.#change((s) => ({ ...s, span: e.detail }))}></rl-choice-field>
      </div>
    </details>`;
  }

  #checkControl(): TemplateResult {
    const { scene, demo } = this;
    const { firstDay, days } = spanDays(scene, demo.season.days);
    const label = (day: number): string => dayLabel(demo.season.startDate, day);
    const arms = scene.soils.flatMap((soil) =>
      scene.programmes.map((_, i) => ({
        soil: words.soil.name(soil.texture, soil.structure),
        letter: armLetters[i]!,
      })),
    );
    return html`<rl-check-control .check=${this.check} .seasonReady=${this.season !== undefined && !this.stale}
      .days=${`${label(firstDay)}–${label(firstDay + days - 1)}`} .arms=${arms}></rl-check-control>`;
  }

  #secondMade: { check: CheckView; rows: (SecondTrace | undefined)[] } | undefined;

  /** Traces of the slow engine, run by run; made once per answer. */
  #second(soil: number): readonly (SecondTrace | undefined)[] {
    const { check, scene } = this;
    const made = this.#secondMade;
    if (made === undefined || made.check.answer !== check.answer || made.check.stale !== check.stale) {
      const rows = (check.answer?.physics ?? []).map((result) =>
        result.status.kind === "finished"
          ? {
              firstHour: (check.subject?.firstDay ?? 0) * 24,
              storageMm: column(result.hours, "rootZoneWater").values,
              stale: check.stale,
            }
          : undefined,
      );
      this.#secondMade = { check, rows };
    }
    const count = scene.programmes.length;
    return (this.#secondMade?.rows ?? []).slice(soil * count, (soil + 1) * count);
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
          .result=${season.result} .stale=${this.stale} .picturesStale=${this.stale && shown === season} .manyHours=${this.manyHours} .wall=${scene.wall} .withKey=${i === 0} .index=${i} .check=${this.check} .draws=${this.draws} .second=${this.#second(i)}
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

  #footer(season: Answer): TemplateResult {
    const { scene } = this;
    const span = spanDays(scene, this.demo.season.days);
    return html`<footer><rl-time-scrubber .strip=${seasonStrip(season, this.demo.season.startDate)} .hour=${scene.hour} .firstDay=${span.firstDay} .shownDays=${span.days} .fourHours=${this.manyHours}></rl-time-scrubber></footer>`;
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
