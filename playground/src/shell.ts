import { html, LitElement, nothing, type TemplateResult } from "lit";
import { keyed } from "lit/directives/keyed.js";
import { defaults } from "rootledger/scenario";
import { nextTurn } from "./charts/turn.js";
import "./fields/choice-field.js";
import "./fields/units-choice.js";
import "./pages/compare-page.js";
import type { CheckSubject, CheckView } from "./pages/check-view.js";
import type { DrawsView } from "./pages/draws-view.js";
import "./pages/model-status.js";
import { PageLoader } from "./pages/page-loader.js";
import { shellStyles } from "./shell-styles.js";
import { fileUnder } from "./state/base-file.js";
import { blockFile } from "./state/block-file.js";
import { comparisonFile, type Excerpt, soilFile } from "./state/comparison-file.js";
import { type DemoFile, demo, initialScene } from "./state/demo.js";
import { fieldsOf } from "./state/fields.js";
import { keepLanguage, keptLanguage } from "./state/kept-language.js";
import { keptWork } from "./state/kept-work.js";
import { keptWeather, ownWeatherFile } from "./state/own-weather.js";
import { plansOf } from "./state/programme-plan.js";
import { treeFlowLPerH } from "./state/same-litres.js";
import { type PageName, pageNames, type Scene, spanDays } from "./state/scene.js";
import { Store } from "./state/store.js";
import { weatherField } from "./state/weather-field.js";
import { type Language, languages, locale } from "./text/locale.js";
import { unitsChosen } from "./text/units-shown.js";
import { fetchLanguage, languageIsHere, setLanguage, words } from "./text/words.js";
import { Model } from "./worker/model.js";
import { helpersHere, OwnWorker } from "./worker/own-worker.js";
import { soilAt } from "./worker/soil-memory.js";
import { startWorker } from "./worker/start-worker.js";

const previewDays = 14;
/** Draws that a page asks for. Our choice: a band end rests on five of them. */
const drawsAsked = 100;

/** The frame of every page: holds the scene and the model, and carries changes from one to the other. */
export class Shell extends LitElement {
  static override styles = shellStyles;

  /** Weather that this device keeps; with it the season is another one. */
  readonly #weather = keptWeather();
  readonly #demo = fileUnder(demo, this.#weather);
  readonly #initial: Scene = {
    ...initialScene(this.#demo, (flow) => treeFlowLPerH(demo.block, flow), {
      rootRadiusM: 0.3,
      rootDepthCm: defaults.rootDepthCm.value,
    }),
    language: keptLanguage(),
  };
  readonly #store = new Store(this.#initial, [
    ...fieldsOf(this.#initial, this.#demo.season.days),
    weatherField(this.#initial, this.#weather),
  ]);
  readonly #model = new Model(startWorker);
  readonly #check = new OwnWorker<"check", CheckSubject>(startWorker, "check");
  /** About the tree and comparison of its subject. */
  readonly #draws = new OwnWorker<"draws", string>(startWorker, "draws");
  readonly #loader = new PageLoader();
  /** What was set here before, offered where the page is opened without a link. */
  #before = location.hash === "" ? keptWork() : undefined;
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
    this.#check.addEventListener("work-changed", () => this.requestUpdate());
    this.#draws.addEventListener("work-changed", () => this.requestUpdate());
    this.#loader.addEventListener("page-changed", () => this.requestUpdate());
    this.#sceneChanged();
  }

  /** The first drawing is a task of its own, so that opening the page is not one long one. */
  protected override async scheduleUpdate(): Promise<void> {
    if (!this.hasUpdated) await Promise.all([nextTurn(), fetchLanguage(this.#store.scene.language)]);
    super.scheduleUpdate();
  }

  override render(): TemplateResult {
    const { scene } = this.#store;
    return html`${keyed(`${locale} ${Object.values(unitsChosen).join(" ")}`, this.#frame(scene))}`;
  }

  /** Drawn anew as a whole when the language changes. */
  #frame(scene: Scene): TemplateResult {
    return html`
      <header class="top" ?data-wall=${scene.wall}>
        <button type="button" class="skip" @click=${this.#skip}>${scene.page === "compare" ? words.skipToPictures : words.pages.skip}</button>
        <strong>${words.appName}</strong>
        <nav aria-label=${words.pages.label}>${pageNames.map((page) => this.#pageLink(page, scene))}</nav>
        <span class="right">
          <button type="button" class="wall" @click=${() => this.#edit((s) => ({ ...s, wall: !s.wall }))}>${scene.wall ? words.wall.off : words.wall.on}</button>
          <rl-choice-field .label=${words.language.label} .value=${scene.language} .choices=${languages.map((value) => ({ value, text: words.language[value] }))}
            @choice-changed=${(e: CustomEvent<Language>) => this.#speak(e.detail)}></rl-choice-field>
          <rl-units-choice @units-changed=${() => this.requestUpdate()}></rl-units-choice>
          <rl-choice-field .label=${words.theme.label} .value=${scene.theme}
            .choices=${(["auto", "light", "dark"] as const).map((value) => ({ value, text: words.theme[value] }))}
            @choice-changed=${(e: CustomEvent<Scene["theme"]>) => this.#edit((s) => ({ ...s, theme: e.detail }))}></rl-choice-field>
        </span>
      </header>
      ${this.#before === undefined ? nothing : this.#resume(this.#before)}
      <main tabindex="-1" @scene-edited=${(e: CustomEvent<(scene: Scene) => Scene>) => this.#edit(e.detail)}>${this.#page(scene)}</main>
    `;
  }

  #resume(link: string): TemplateResult {
    const shut = (): void => {
      this.#before = undefined;
      this.requestUpdate();
    };
    return html`<p class="resume"><a href=${link} @click=${shut}>${words.pages.resume}</a> <button type="button" @click=${shut}>${words.states.dismiss}</button></p>`;
  }

  #pageLink(page: PageName, scene: Scene): TemplateResult {
    const open = (event: MouseEvent): void => {
      if (event.ctrlKey || event.metaKey || event.shiftKey) return;
      event.preventDefault();
      if (page !== scene.page) this.#store.go((s) => ({ ...s, page }));
      scrollTo(0, 0);
    };
    const address = this.#store.linkTo({ ...scene, page });
    return html`<a href=${address === "" ? "./" : address} aria-current=${page === scene.page ? "page" : nothing} @click=${open}>${words.pages.names[page]}</a>`;
  }

  #page(scene: Scene): TemplateResult {
    const { page } = scene;
    const state = this.#loader.stateOf(page);
    if (state === "fetching") return html`<p class="fetching" role="status">${words.pages.fetching(page)}</p>`;
    if (state === "missing") {
      return html`<div class="fetching" role="status"><p>${words.pages.missing}</p>
        <button type="button" @click=${() => this.#loader.retry(page)}>${words.pages.again}</button></div>`;
    }
    switch (page) {
      case "block":
        return html`<rl-block-page .file=${this.#base(scene)} .ownWeather=${this.#weather !== undefined} @weather-changed=${() => this.#store.reloadWithout("weather")} .scene=${scene} .plans=${plansOf(scene, this.#base(scene))}>${this.#status(scene)}</rl-block-page>`;
      case "sheet":
        return html`<rl-sheet-page .scene=${scene} .compared=${this.#file()} .files=${this.#files} .startDate=${this.#demo.season.startDate}>${this.#status(scene)}</rl-sheet-page>`;
      case "class":
        return html`<rl-class-page .file=${demo} .scene=${scene} .wall=${scene.wall}>${this.#linkFaults()}</rl-class-page>`;
      case "truth":
        return html`<rl-truth-page>${this.#linkFaults()}</rl-truth-page>`;
      case "section":
        return html`<rl-section-page .link=${() => location.href} .compared=${this.#compared} .file=${this.#soilFile(scene)} .scene=${scene} .season=${this.#model.season} .stale=${this.#model.stale} .wall=${scene.wall}>${this.#status(scene)}</rl-section-page>`;
      default:
        return this.#comparePage(scene);
    }
  }

  #comparePage(scene: Scene): TemplateResult {
    const model = this.#model;
    const file = this.#base(scene);
    return html`<rl-compare-page .demo=${file} .scene=${scene} .plans=${plansOf(scene, file)} .season=${model.season} .preview=${model.preview} .stale=${model.stale} .wall=${scene.wall} .compared=${this.#compared} .files=${this.#files} .check=${this.#checkView()} .draws=${this.#drawsView()}
      @draws-asked=${() => this.#askDraws()} @draws-stopped=${() => this.#draws.stop()}
      @check-asked=${() => this.#askCheck()} @check-stopped=${() => this.#check.stop()}>${this.#status(scene)}</rl-compare-page>`;
  }

  #status(scene: Scene): TemplateResult {
    const model = this.#model;
    return html`<rl-model-status slot="status" .state=${model.state} .faults=${this.#store.faults} .stale=${model.stale} .previewDays=${model.preview ? previewDays : 0}
      .days=${this.#demo.season.days} .arms=${scene.programmes.length * scene.soils.length} .canUndo=${this.#lastGood !== undefined}
      @undo=${() => this.#edit((s) => ({ ...(this.#lastGood ?? this.#initial), page: s.page }))} @retry=${() => this.#ask()} @dismiss=${() => this.#store.forgetFaults()}></rl-model-status>`;
  }

  /** Only what a link held that could not be used, for pages that do not wait for the season. */
  #linkFaults(): TemplateResult {
    return html`<rl-model-status slot="status" .state=${{ kind: "ready" }} .faults=${this.#store.faults} @dismiss=${() => this.#store.forgetFaults()}></rl-model-status>`;
  }

  /** The demo with the block as it is set. */
  #base(scene: Scene): DemoFile {
    return { ...this.#demo, block: blockFile(this.#demo.block, this.#initial.block, scene.block) };
  }

  /** The same with soils as they are set. */
  #soilFile(scene: Scene): DemoFile {
    const base = this.#base(scene);
    return { ...base, soils: scene.soils.map((soil, i) => soilFile(base.soils[i]!, soil, base.soils[i]!.name)) };
  }

  /** Texts that the worker does not carry. */
  get #files(): Readonly<Record<string, string>> {
    return this.#weather === undefined ? {} : { [ownWeatherFile]: this.#weather.text };
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
    if (!languageIsHere(scene.language)) {
      void fetchLanguage(scene.language).then(() => this.#sceneChanged());
      return;
    }
    const root = document.documentElement;
    if (root.lang !== scene.language || this.#asked === "") setLanguage(scene.language);
    root.lang = scene.language;
    document.title = `${words.appName}: ${words.pages.titles[scene.page]}`;
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
    const tree = this.#treeOf(scene);
    const asked = `${tree} ${key}`;
    if (asked === this.#asked && when === "only if needed") return;
    this.#asked = asked;
    if (this.#check.subject?.key !== key) this.#check.stop();
    if (this.#draws.subject !== asked) this.#draws.stop();
    const { firstDay } = spanDays(
      { hour: scene.hour, span: String(previewDays) as Scene["span"] },
      this.#demo.season.days,
    );
    const excerpt = { firstDay, days: Math.min(previewDays, this.#demo.season.days) };
    this.#model.ask({ file, tree, files: this.#files, preview: { file: this.#file(excerpt), firstDay } });
  }

  readonly #compared = (): object => this.#file();

  #file(excerpt?: Excerpt): object {
    const { scene } = this.#store;
    const names = {
      programmes: scene.programmes.map((p, i) => `${"ABCD"[i]}: ${words.programmes.name(p)}`),
      soils: scene.soils.map((soil, i) => `${i + 1}: ${words.soil.name(soil.texture, soil.structure)}`),
    };
    return comparisonFile(this.#base(scene), scene, names, excerpt);
  }

  /** The days in view by the slow engine, from the soil as the season has it on the first of them. */
  #askCheck(): void {
    void import("./pages/check-figure.js");
    const { season, stale } = this.#model;
    if (!season || stale) return;
    const excerpt = spanDays(this.#store.scene, this.#demo.season.days);
    const starts = season.result.arms.map(({ result }) => soilAt(result, excerpt.firstDay));
    this.#check.ask(
      { kind: "check", file: this.#file(excerpt), starts, files: this.#files },
      { key: JSON.stringify(this.#file()), ...excerpt },
      starts.length,
    );
  }

  #checkView(): CheckView {
    const { state, answer, subject } = this.#check;
    return { state, answer, subject, stale: subject !== undefined && !this.#asked.endsWith(subject.key) };
  }

  #treeOf({ tree, block }: Scene): Scene["tree"] {
    return tree === "over-fed" && !block.drains ? "mean" : tree;
  }

  #askDraws(): void {
    void import("./pages/difference-figure.js");
    if (!this.#model.season || this.#model.stale) return;
    const tree = this.#treeOf(this.#store.scene);
    const asked = {
      kind: "draws",
      file: this.#file(),
      files: this.#files,
      tree,
      members: drawsAsked,
      helpers: helpersHere(),
    } as const;
    this.#draws.ask(asked, this.#asked, drawsAsked);
  }

  #drawsView(): DrawsView {
    const { state, answer, subject } = this.#draws;
    return { state, answer, stale: subject !== undefined && subject !== this.#asked };
  }

  #skip(): void {
    const page = this.renderRoot.querySelector("rl-compare-page");
    const hand = page?.shadowRoot?.querySelector<LitElement>("rl-time-scrubber");
    (hand ?? this.renderRoot.querySelector("main"))?.focus();
  }
}

customElements.define("rl-shell", Shell);
