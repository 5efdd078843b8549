import { html, LitElement, nothing, type TemplateResult } from "lit";
import "../../fields/choice-field.js";
import type { DemoFile } from "../../state/demo.js";
import type { Scene } from "../../state/scene.js";
import { classWords } from "../../text/class-words.js";
import { words } from "../../text/words.js";
import { startWorker } from "../../worker/start-worker.js";
import { Sweep } from "../../worker/sweep.js";
import { pageStyles } from "../page-styles.js";
import { classStyles } from "./class-styles.js";
import { handout } from "./handout.js";
import { type Lesson, lessonText, readLesson } from "./lesson.js";
import { lessonFiles } from "./lesson-files.js";
import { lessonPictures } from "./lesson-pictures.js";
import { lessonSweep } from "./lesson-sweep.js";
import { ownLessons } from "./own-lessons.js";

/** Lessons for a class: predict, then reveal; one slider; freeze and compare; all of it by keyboard. */
export class ClassPage extends LitElement {
  static override properties = {
    file: { attribute: false },
    scene: { attribute: false },
    wall: { type: Boolean, reflect: true },
    revealed: { state: true },
    dug: { state: true },
    guess: { state: true },
    frozen: { state: true },
    votes: { state: true },
    added: { state: true },
    fileFaults: { state: true },
    paper: { state: true },
    withKey: { state: true },
  };
  declare file: DemoFile;
  declare scene: Scene;
  declare wall: boolean;
  declare revealed: boolean;
  /** The soil of a quiz is shown, its numbers not yet. */
  declare dug: boolean;
  /** Point of the slider that the class guessed, and the one that was frozen; -1 for none. */
  declare guess: number;
  declare frozen: number;
  declare votes: readonly number[];
  /** Lessons opened from files. */
  declare added: readonly Lesson[];
  declare fileFaults: readonly string[];
  declare paper: boolean;
  declare withKey: boolean;

  static override styles = [pageStyles, classStyles];

  readonly #own = ownLessons();
  readonly #sweep = new Sweep(startWorker);
  #asked: Lesson | undefined;

  constructor() {
    super();
    this.wall = false;
    this.added = [];
    this.fileFaults = [];
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
    this.#sweep.ask(lessonFiles(this.file, lesson));
  }

  override firstUpdated(): void {
    this.renderRoot.querySelector<HTMLElement>(".stage")?.focus();
  }

  override render(): TemplateResult {
    const w = classWords();
    if (this.paper) return this.#paper();
    const lesson = this.#lesson;
    return html`
      <h1>${lessonText(lesson.title)}</h1>
      <slot name="status"></slot>
      <section class="stage" tabindex="0" aria-label=${w.stage(lessonText(lesson.title))} @keydown=${this.#key}>
        <p class="question">${lessonText(lesson.question)}</p>
        ${this.#predict(lesson)}${this.#slider(lesson)}
        <div class="buttons">
          ${this.revealed ? nothing : html`<button type="button" class="strong" @click=${this.#reveal}>${w.reveal}</button>`}
          ${!this.revealed && !this.dug && lesson.pictures.includes("tree") ? html`<button type="button" @click=${() => (this.dug = true)}>${w.spade}</button>` : nothing}
          ${this.revealed && lesson.points.length > 1 ? html`<button type="button" aria-pressed=${this.frozen >= 0} @click=${this.#freeze}>${this.frozen >= 0 ? w.thaw : w.freeze}</button>` : nothing}
          <button type="button" @click=${() => this.#begin()}>${w.reset}</button>
        </div>
        <div role="status">${this.#state(lesson)}</div>
        ${this.#results(lesson)}
      </section>
      ${this.#choose()}
    `;
  }

  get #lessons(): readonly Lesson[] {
    return [...this.#own, ...this.added];
  }

  get #lesson(): Lesson {
    return this.#lessons.find(({ id }) => id === this.scene?.lesson) ?? this.#lessons[0]!;
  }

  get #at(): number {
    return Math.min(this.scene.point, this.#lesson.points.length - 1);
  }

  #begin(): void {
    this.revealed = false;
    this.dug = false;
    this.guess = -1;
    this.frozen = -1;
    this.votes = [];
  }

  #predict({ predict }: Lesson): TemplateResult | typeof nothing {
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

  #state(lesson: Lesson): TemplateResult | typeof nothing {
    const w = classWords();
    const { faults, message, answers, all, done } = this.#sweep;
    if (faults.length > 0 || message !== "") {
      return html`<p class="failed"><strong>${w.failed}.</strong> ${faults.map((fault) => words.states.fault(fault))} ${message}</p>`;
    }
    if (this.revealed && !done) return html`<p class="small">${w.computing(answers.length, all)}</p>`;
    if (!this.revealed) {
      const said =
        lesson.predict.kind === "point" && this.guess >= 0 ? w.guessAt(lesson.points[this.guess]!.label) : "";
      return html`<p class="small">${said} ${w.hidden}</p>`;
    }
    return html`<p class="answer">${lessonText(lesson.reveal)}</p>`;
  }

  #results(lesson: Lesson): TemplateResult {
    const { answers } = this.#sweep;
    const shown = { lesson, answers, file: this.file, hour: lesson.hour, wall: this.wall };
    const open = this.revealed ? "all" : this.dug ? "soil" : "face";
    const compared = this.revealed && this.frozen >= 0 && this.frozen !== this.#at;
    const w = classWords();
    return html`
      ${compared ? html`<h2>${w.frozenAt(lesson.points[this.frozen]!.label)}</h2>${lessonPictures({ ...shown, point: this.frozen, open })}<h2>${w.nowAt(lesson.points[this.#at]!.label)}</h2>` : nothing}
      ${lessonPictures({ ...shown, point: this.#at, open })}
      ${this.revealed ? lessonSweep({ ...shown, at: this.#at, guess: this.guess, frozen: this.frozen }) : nothing}
    `;
  }

  #choose(): TemplateResult {
    const w = classWords();
    return html`<div class="choose">
      <rl-choice-field .label=${`${w.lesson}:`} .value=${this.#lesson.id} .choices=${this.#lessons.map(({ id, title }) => ({ value: id, text: lessonText(title) }))}
        @choice-changed=${(e: CustomEvent<string>) => this.#go(e.detail)}></rl-choice-field>
      <button type="button" @click=${() => (this.paper = true)}>${w.handout}</button>
      <p class="small">${w.keys}</p>
      <label class="file">${w.open} <input type="file" accept=".json,application/json" @change=${this.#open}></label>
      <p class="small">${w.openHint}</p>
      <div role="status">${this.fileFaults.length > 0 ? html`<p class="failed">${w.faults}</p><ul lang="en">${this.fileFaults.map((fault) => html`<li>${fault}</li>`)}</ul>` : nothing}</div>
    </div>`;
  }

  #paper(): TemplateResult {
    const w = classWords();
    return html`<div class="buttons no-print">
        <button type="button" @click=${() => (this.paper = false)}>${w.closeHandout}</button>
        <button type="button" class="strong" @click=${() => window.print()}>${w.print}</button>
        <label><input type="checkbox" .checked=${this.withKey} @change=${(e: Event) => (this.withKey = (e.target as HTMLInputElement).checked)}> ${w.withKey}</label>
      </div>${handout(this.#lessons, this.withKey)}`;
  }

  #key(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const inside = event.composedPath()[0];
    const onControl = inside instanceof HTMLButtonElement || inside instanceof HTMLInputElement;
    const key = event.key.toLowerCase();
    const lesson = this.#lesson;
    const does: Readonly<Record<string, (() => void) | undefined>> = {
      arrowright: onControl ? undefined : () => this.#move(this.#at + 1),
      arrowleft: onControl ? undefined : () => this.#move(this.#at - 1),
      " ": onControl ? undefined : () => this.#reveal(),
      f: () => this.revealed && this.#freeze(),
      r: () => this.#begin(),
      n: () => this.#step(1),
      p: () => this.#step(-1),
    };
    const vote = Number(key) - 1;
    const options = lesson.predict.kind === "choice" ? lesson.predict.options.length : 0;
    const act = vote >= 0 && vote < options ? () => this.#vote(vote) : does[key];
    if (act === undefined) return;
    event.preventDefault();
    act();
  }

  #vote(i: number): void {
    const votes = [...this.votes];
    votes[i] = (votes[i] ?? 0) + 1;
    this.votes = votes;
  }

  #move(point: number): void {
    const last = this.#lesson.points.length - 1;
    const at = Math.max(0, Math.min(last, point));
    if (!this.revealed) this.guess = at;
    this.#change((s) => ({ ...s, point: at }));
  }

  #reveal(): void {
    this.revealed = true;
  }

  #freeze(): void {
    this.frozen = this.frozen >= 0 ? -1 : this.#at;
  }

  #step(by: number): void {
    const all = this.#lessons;
    const next = all[(all.indexOf(this.#lesson) + by + all.length) % all.length]!;
    this.#go(next.id);
  }

  #go(lesson: string): void {
    this.#begin();
    this.#change((s) => ({ ...s, lesson, point: 0 }));
  }

  async #open(event: Event): Promise<void> {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    if (!file) return;
    const read = readLesson(await file.text());
    input.value = "";
    this.fileFaults = read.ok ? [] : read.faults;
    if (!read.ok) return;
    this.added = [...this.added.filter(({ id }) => id !== read.lesson.id), read.lesson];
    this.#go(read.lesson.id);
  }

  #change(edit: (scene: Scene) => Scene): void {
    this.dispatchEvent(new CustomEvent("scene-edited", { detail: edit, bubbles: true, composed: true }));
  }
}

customElements.define("rl-class-page", ClassPage);
