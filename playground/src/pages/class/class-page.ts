import { html, LitElement, nothing, type TemplateResult } from "lit";
import type { DemoFile } from "../../state/demo.js";
import type { Scene } from "../../state/scene.js";
import { classWords } from "../../text/class-words.js";
import { startWorker } from "../../worker/start-worker.js";
import { Sweep } from "../../worker/sweep.js";
import { pageStyles } from "../page-styles.js";
import { classStyles } from "./class-styles.js";
import { everyLesson } from "./every-lesson.js";
import { handoutPage } from "./handout-page.js";
import { type Lesson, lessonText } from "./lesson.js";
import { lessonFiles } from "./lesson-files.js";
import { lessonKey } from "./lesson-keys.js";
import { lessonPictures } from "./lesson-pictures.js";
import "./lesson-shelf.js";
import { lessonState } from "./lesson-state.js";
import { lessonSweep, lessonTable } from "./lesson-sweep.js";
import type { ShownLesson } from "./lesson-view.js";

/** Lessons for a class: predict, then reveal; one slider; freeze and compare; all of it by keyboard. */
export class ClassPage extends LitElement {
  static override properties = {
    file: { attribute: false },
    scene: { attribute: false },
    wall: { type: Boolean, reflect: true },
    lessons: { state: true },
    revealed: { state: true },
    dug: { state: true },
    measured: { state: true },
    on: { state: true },
    hour: { state: true },
    guess: { state: true },
    frozen: { state: true },
    votes: { state: true },
    paper: { state: true },
    withKey: { state: true },
  };
  declare file: DemoFile;
  declare scene: Scene;
  declare wall: boolean;
  declare lessons: readonly Lesson[];
  declare revealed: boolean;
  /** The soil of a quiz is shown, its numbers not yet; then the tensiometer's reading. */
  declare dug: boolean;
  declare measured: boolean;
  /** The lesson's switch. */
  declare on: boolean;
  /** Hour after the start that pictures show; -1 for the lesson's own. */
  declare hour: number;
  /** Point of the slider that the class guessed, and the one that was frozen; -1 for none. */
  declare guess: number;
  declare frozen: number;
  declare votes: readonly number[];
  declare paper: boolean;
  declare withKey: boolean;

  static override styles = [pageStyles, classStyles];

  readonly #sweep = new Sweep(startWorker);
  #asked: Lesson | undefined;

  constructor() {
    super();
    this.wall = false;
    this.lessons = everyLesson();
    this.paper = false;
    this.withKey = false;
    this.#begin();
    this.#sweep.addEventListener("sweep-changed", () => this.requestUpdate());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#sweep.end();
    this.#asked = undefined;
  }

  override willUpdate(): void {
    const lesson = this.#lesson;
    if (lesson === this.#asked) return;
    this.#asked = lesson;
    this.#begin();
    this.#sweep.ask(lesson, lessonFiles(this.file, lesson));
  }

  override firstUpdated(): void {
    this.renderRoot.querySelector<HTMLElement>(".stage")?.focus();
  }

  override render(): TemplateResult {
    if (this.paper) return this.#paper();
    const w = classWords();
    const lesson = this.#lesson;
    const shown = this.#shown(lesson);
    return html`
      <h1>${lessonText(lesson.title)}</h1>
      <slot name="status"></slot>
      ${lesson.id === this.scene.lesson ? nothing : html`<p class="failed">${w.lost(this.scene.lesson)}</p>`}
      <section class="stage" tabindex="0" aria-label=${w.stage(lessonText(lesson.title))} @keydown=${this.#key} @hour-picked=${(e: CustomEvent<number>) => (this.hour = e.detail)}>
        <p class="question">${lessonText(lesson.question)}</p>
        <div class="controls">${this.#votes(lesson)}${this.#slider(lesson)}${this.#buttons(lesson)}</div>
        <div role="status">${lessonState({ ...shown, revealed: this.revealed, guess: this.guess }, this.#sweep)}</div>
        ${this.#results(shown)}
      </section>
      <rl-lesson-shelf .lessons=${this.lessons} .current=${lesson.id} .wall=${this.wall}
        @lesson-chosen=${(e: CustomEvent<string>) => this.#go(e.detail)} @lesson-opened=${(e: CustomEvent<string>) => this.#opened(e.detail)}>
        <button type="button" @click=${() => (this.paper = true)}>${w.handout}</button>
      </rl-lesson-shelf>
    `;
  }

  get #lesson(): Lesson {
    return this.lessons.find(({ id }) => id === this.scene?.lesson) ?? this.lessons[0]!;
  }

  get #at(): number {
    return Math.min(this.scene.point, this.#lesson.points.length - 1);
  }

  #shown(lesson: Lesson): ShownLesson {
    const hour = this.hour < 0 ? lesson.hour : this.hour;
    const open = this.revealed ? "all" : this.measured ? "tension" : this.dug ? "soil" : "face";
    const { answers } = this.#sweep;
    return { lesson, answers, file: this.file, hour, wall: this.wall, point: this.#at, on: this.on, open };
  }

  #begin(): void {
    this.revealed = false;
    this.dug = false;
    this.measured = false;
    this.on = false;
    this.hour = -1;
    this.guess = -1;
    this.frozen = -1;
    this.votes = [];
  }

  #votes({ predict }: Lesson): TemplateResult | typeof nothing {
    const w = classWords();
    if (predict.kind === "point") return nothing;
    return html`<div class="votes" role="group" aria-label=${w.votes}>${predict.options.map(
      (option, i) =>
        html`<button type="button" @click=${() => this.#vote(i)}><kbd aria-hidden="true">${i + 1}</kbd> ${w.vote(lessonText(option), this.votes[i] ?? 0)}</button>`,
    )}</div>`;
  }

  #slider({ slider, points }: Lesson): TemplateResult | typeof nothing {
    if (points.length < 2) return nothing;
    const label = slider === undefined ? classWords().lesson : lessonText(slider);
    const at = this.#at;
    return html`<label class="slider"><span>${label}: <output>${points[at]!.label}</output></span>
      <input type="range" min="0" max=${points.length - 1} step="1" .value=${String(at)} aria-valuetext=${points[at]!.label} @input=${(e: Event) => this.#move(Number((e.target as HTMLInputElement).value))}></label>`;
  }

  #buttons(lesson: Lesson): TemplateResult {
    const w = classWords();
    const quiz = lesson.pictures.includes("tree") && !this.revealed;
    const { dug, measured, revealed, frozen } = this;
    return html`<div class="buttons">
      ${quiz && !dug ? html`<button type="button" ?disabled=${!this.#voted} @click=${() => this.#dig()}>${this.#voted ? w.spade : w.spadeLocked}</button>` : nothing}
      ${quiz && !measured ? html`<button type="button" ?disabled=${!dug} @click=${() => this.#measure()}>${dug ? w.tensiometer : w.tensiometerLocked}</button>` : nothing}
      ${revealed ? nothing : html`<button type="button" class="strong" @click=${() => this.#reveal()}>${w.reveal}</button>`}
      ${lesson.switch === undefined || !revealed ? nothing : html`<button type="button" class="switch" role="switch" aria-checked=${this.on} @click=${() => this.#flip()}>${lessonText(lesson.switch.label)}</button>`}
      ${revealed && lesson.points.length > 1 ? html`<button type="button" aria-pressed=${frozen >= 0} @click=${() => this.#freeze()}>${frozen >= 0 ? w.thaw : w.freeze}</button>` : nothing}
      <button type="button" @click=${() => this.#startAgain()}>${w.reset}</button>
    </div>`;
  }

  #results(shown: ShownLesson): TemplateResult {
    const { lesson, point } = shown;
    const compared = this.revealed && this.frozen >= 0 && this.frozen !== point;
    const w = classWords();
    return html`
      ${compared ? html`<h2>${w.frozenAt(lesson.points[this.frozen]!.label)}</h2>${lessonPictures({ ...shown, point: this.frozen })}<h2>${w.nowAt(lesson.points[point]!.label)}</h2>` : nothing}
      ${
        this.revealed
          ? html`<div class="told">${lessonSweep({ ...shown, at: point, guess: this.guess, frozen: this.frozen })}
        <p class=${this.#sweep.done ? "answer" : "answer early"}>${lessonText(lesson.reveal)}</p></div>`
          : nothing
      }
      ${lessonPictures(shown)}
      ${this.revealed ? lessonTable(shown) : nothing}
    `;
  }

  #paper(): TemplateResult {
    return handoutPage(this.lessons, this.withKey, {
      close: () => (this.paper = false),
      setKey: (withKey) => (this.withKey = withKey),
    });
  }

  #key(event: KeyboardEvent): void {
    const { predict } = this.#lesson;
    lessonKey(event, predict.kind === "choice" ? predict.options.length : 0, {
      move: (by) => this.#move(this.#at + by),
      reveal: () => this.#reveal(),
      dig: () => this.#dig(),
      readTension: () => this.#measure(),
      flip: () => this.#flip(),
      freeze: () => this.#freeze(),
      startAgain: () => this.#startAgain(),
      step: (by) => this.#step(by),
      moveHour: (by) => this.#moveHour(by),
      vote: (i) => this.#vote(i),
    });
  }

  get #voted(): boolean {
    return this.#lesson.predict.kind === "point" || this.votes.some((count) => count > 0);
  }

  #vote(i: number): void {
    const votes = [...this.votes];
    votes[i] = (votes[i] ?? 0) + 1;
    this.votes = votes;
  }

  #dig(): void {
    if (this.#voted && this.#lesson.pictures.includes("tree")) this.dug = true;
  }

  #measure(): void {
    if (this.dug) this.measured = true;
  }

  #move(point: number): void {
    const last = this.#lesson.points.length - 1;
    const at = Math.max(0, Math.min(last, point));
    if (!this.revealed && this.#lesson.predict.kind === "point") this.guess = at;
    this.#change((s) => ({ ...s, point: at }));
  }

  #moveHour(by: number): void {
    if (!this.revealed && !this.dug) return;
    const hours = this.#sweep.answers[0]?.result.hours.rows ?? 1;
    this.hour = Math.max(0, Math.min(hours - 1, (this.hour < 0 ? this.#lesson.hour : this.hour) + by));
  }

  #reveal(): void {
    this.revealed = true;
  }

  #flip(): void {
    if (this.revealed && this.#lesson.switch !== undefined) this.on = !this.on;
  }

  #freeze(): void {
    if (this.revealed && this.#lesson.points.length > 1) this.frozen = this.frozen >= 0 ? -1 : this.#at;
  }

  /** Everything of the lesson as it was when it was opened, the slider too. */
  #startAgain(): void {
    this.#begin();
    this.#change((s) => ({ ...s, point: 0 }));
  }

  /** From the newest scene: keys may come faster than the page is drawn. */
  #step(by: number): void {
    const all = this.lessons;
    this.#begin();
    this.#change((s) => {
      const at = Math.max(
        0,
        all.findIndex(({ id }) => id === s.lesson),
      );
      return { ...s, lesson: all[(at + by + all.length) % all.length]!.id, point: 0 };
    });
  }

  #go(lesson: string): void {
    this.#begin();
    this.#change((s) => ({ ...s, lesson, point: 0 }));
  }

  #opened(lesson: string): void {
    this.lessons = everyLesson();
    this.#go(lesson);
  }

  #change(edit: (scene: Scene) => Scene): void {
    this.dispatchEvent(new CustomEvent("scene-edited", { detail: edit, bubbles: true, composed: true }));
  }
}

customElements.define("rl-class-page", ClassPage);
