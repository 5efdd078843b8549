import { css, html, LitElement, type TemplateResult } from "lit";
import { keyed } from "lit/directives/keyed.js";
import { nextTurn } from "./charts/turn.js";
import "./fields/choice-field.js";
import "./pages/compare-page.js";
import type { CheckView } from "./pages/check-view.js";
import "./pages/model-status.js";
import { comparisonFile, type Excerpt } from "./state/comparison-file.js";
import { demo, initialScene } from "./state/demo.js";
import { fieldsOf } from "./state/fields.js";
import { keepLanguage, keptLanguage } from "./state/kept-language.js";
import { plansOf } from "./state/programme-plan.js";
import { treeFlowLPerH } from "./state/same-litres.js";
import { type Scene, spanDays } from "./state/scene.js";
import { Store } from "./state/store.js";
import { type Language, languages } from "./text/locale.js";
import { setLanguage, words } from "./text/words.js";
import { Model } from "./worker/model.js";
import { PhysicsCheck } from "./worker/physics-check.js";
import { soilAt } from "./worker/soil-memory.js";
import { startWorker } from "./worker/start-worker.js";

const previewDays = 14;

/** The frame of every page: holds the scene and the model, and carries changes from one to the other. */
export class Shell extends LitElement {
  static override styles = css`
    :host { display: block; max-width: 116rem; margin: 0 auto; padding: 0 clamp(1rem, 2.4vw, 2.5rem); }
    .top { display: flex; flex-wrap: wrap; gap: 0.3rem 1.2rem; align-items: baseline; padding: 0.8rem 0 0.5rem; border-bottom: 1px solid var(--rule); }
    .top strong { font-weight: 650; }
    .top .tag { color: var(--ink-quiet); }
    .top .right { margin-left: auto; display: flex; gap: 1rem; align-items: baseline; flex-wrap: wrap; }
    button { font: inherit; color: var(--ink); background: none; border: 0; border-bottom: 1.5px solid var(--ink); padding: 0.1em 0.2em; cursor: pointer; }
    button:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
    .skip { position: absolute; left: -100vw; }
    .skip:focus { position: static; }
    @media (max-width: 700px) { .tag, .wall { display: none; } }
    .top[data-wall] { padding: 0.2rem 0; border: 0; font-size: var(--size-small); }
    .top[data-wall] :is(.tag, rl-choice-field) { display: none; }
    @media print { .right { display: none; } }
  `;

  readonly #initial: Scene = {
    ...initialScene(demo, (flow) => treeFlowLPerH(demo.block, flow)),
    language: keptLanguage(),
  };
  readonly #store = new Store(this.#initial, fieldsOf(this.#initial, demo.season.days));
  readonly #model = new Model(startWorker);
  readonly #check = new PhysicsCheck(startWorker);
  #asked = "";
  /** The scene of the newest season that was computed, to go back to. */
  #lastGood: Scene | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.#store.addEventListener("scene-changed", () => this.#sceneChanged());
    this.#model.addEventListener("model-changed", () => {
      if (this.#model.state.kind === "ready") this.#lastGood = this.#store.scene;
      this.requestUpdate();
    });
    this.#check.addEventListener("check-changed", () => this.requestUpdate());
    this.#sceneChanged();
  }

  /** The first drawing is a task of its own, so that opening the page is not one long one. */
  protected override async scheduleUpdate(): Promise<void> {
    if (!this.hasUpdated) await nextTurn();
    super.scheduleUpdate();
  }

  override render(): TemplateResult {
    const { scene } = this.#store;
    return html`${keyed(scene.language, this.#frame(scene))}`;
  }

  /** Drawn anew as a whole when the language changes. */
  #frame(scene: Scene): TemplateResult {
    const model = this.#model;
    return html`
      <header class="top" ?data-wall=${scene.wall}>
        <button type="button" class="skip" @click=${this.#skip}>${words.skipToPictures}</button>
        <strong>${words.appName}</strong><span class="tag">${words.tagline}</span>
        <span class="right">
          <button type="button" class="wall" @click=${() => this.#edit((s) => ({ ...s, wall: !s.wall }))}>${scene.wall ? words.wall.off : words.wall.on}</button>
          <rl-choice-field .label=${words.language.label} .value=${scene.language} .choices=${languages.map((value) => ({ value, text: words.language[value] }))}
            @choice-changed=${(e: CustomEvent<Language>) => this.#speak(e.detail)}></rl-choice-field>
          <rl-choice-field .label=${words.theme.label} .value=${scene.theme}
            .choices=${(["auto", "light", "dark"] as const).map((value) => ({ value, text: words.theme[value] }))}
            @choice-changed=${(e: CustomEvent<Scene["theme"]>) => this.#edit((s) => ({ ...s, theme: e.detail }))}></rl-choice-field>
        </span>
      </header>
      <main>
        <rl-compare-page .demo=${demo} .scene=${scene} .plans=${plansOf(scene, demo)} .season=${model.season} .preview=${model.preview} .stale=${model.stale} .wall=${scene.wall} .check=${this.#checkView()}
          @check-asked=${() => this.#askCheck()} @check-stopped=${() => this.#check.stop()}
          @scene-edited=${(e: CustomEvent<(scene: Scene) => Scene>) => this.#edit(e.detail)}>
          <rl-model-status slot="status" .state=${model.state} .faults=${this.#store.faults} .stale=${model.stale} .previewDays=${model.preview ? previewDays : 0}
            .days=${demo.season.days} .arms=${scene.programmes.length * scene.soils.length} .canUndo=${this.#lastGood !== undefined}
            @undo=${() => this.#edit(() => this.#lastGood ?? this.#initial)} @retry=${() => this.#ask()} @dismiss=${() => this.#store.forgetFaults()}></rl-model-status>
        </rl-compare-page>
      </main>
    `;
  }

  #speak(language: Language): void {
    keepLanguage(language);
    this.#edit((scene) => ({ ...scene, language }));
  }

  #edit(change: (scene: Scene) => Scene): void {
    this.#store.change(change);
  }

  #sceneChanged(): void {
    const { scene } = this.#store;
    const root = document.documentElement;
    if (root.lang !== scene.language || this.#asked === "") setLanguage(scene.language);
    root.lang = scene.language;
    document.title = words.pageTitle;
    if (scene.theme === "auto") root.removeAttribute("data-theme");
    else root.dataset.theme = scene.theme;
    root.toggleAttribute("data-wall", scene.wall);
    this.#ask("only if needed");
    this.requestUpdate();
  }

  /** Asks the model for the scene, unless all that changed is how it is looked at. */
  #ask(when: "always" | "only if needed" = "always"): void {
    const { scene } = this.#store;
    const file = this.#file();
    const key = JSON.stringify(file);
    const asked = `${scene.tree} ${key}`;
    if (asked === this.#asked && when === "only if needed") return;
    this.#asked = asked;
    if (this.#check.subject?.key !== key) this.#check.stop();
    const { firstDay } = spanDays({ hour: scene.hour, span: String(previewDays) as Scene["span"] }, demo.season.days);
    const excerpt = { firstDay, days: Math.min(previewDays, demo.season.days) };
    this.#model.ask({ file, tree: scene.tree, preview: { file: this.#file(excerpt), firstDay } });
  }

  #file(excerpt?: Excerpt): object {
    const { scene } = this.#store;
    const names = {
      programmes: scene.programmes.map((p, i) => `${"ABCD"[i]}: ${words.programmes.name(p.everyDays, p.pulses)}`),
      soils: scene.soils.map((soil, i) => `${i + 1}: ${words.soil.name(soil.texture, soil.structure)}`),
    };
    return comparisonFile(demo, scene, names, excerpt);
  }

  /** The days in view by the slow engine, from the soil as the season has it on the first of them. */
  #askCheck(): void {
    const { season, stale } = this.#model;
    if (!season || stale) return;
    const excerpt = spanDays(this.#store.scene, demo.season.days);
    const starts = season.result.arms.map(({ result }) => soilAt(result, excerpt.firstDay));
    this.#check.ask({ file: this.#file(excerpt), starts }, { key: JSON.stringify(this.#file()), ...excerpt });
  }

  #checkView(): CheckView {
    const { state, answer, subject } = this.#check;
    return { state, answer, subject, stale: subject !== undefined && !this.#asked.endsWith(subject.key) };
  }

  #skip(): void {
    const page = this.renderRoot.querySelector("rl-compare-page");
    page?.shadowRoot?.querySelector<LitElement>("rl-time-scrubber")?.focus();
  }
}

customElements.define("rl-shell", Shell);
