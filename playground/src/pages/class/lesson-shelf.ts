import { html, LitElement, nothing, type TemplateResult } from "lit";
import "../../fields/choice-field.js";
import "../../fields/file-field.js";
import { classWords } from "../../text/class-words.js";
import { takeAway } from "../section/take-away.js";
import { classStyles } from "./class-styles.js";
import { forgetLesson, type Keeping, keepLesson, keptLessons } from "./kept-lessons.js";
import { type Lesson, lessonMeasures, lessonText, readLesson } from "./lesson.js";
import { faultTable } from "./lesson-fault-table.js";
import type { LessonFault } from "./lesson-faults.js";

/** A lesson is some kB; more than this is another kind of file. */
const mostKB = 200;

/** Where lessons are chosen, opened from a file, and learnt to be written. */
export class LessonShelf extends LitElement {
  static override properties = {
    lessons: { attribute: false },
    current: { type: String },
    wall: { type: Boolean },
    faults: { state: true },
    keeping: { state: true },
    helping: { state: true },
  };
  declare lessons: readonly Lesson[];
  /** Id of the lesson on screen. */
  declare current: string;
  declare wall: boolean;
  declare faults: readonly LessonFault[];
  declare keeping: Keeping;
  declare helping: boolean;

  static override styles = classStyles;

  constructor() {
    super();
    this.lessons = [];
    this.current = "";
    this.wall = false;
    this.faults = [];
    this.keeping = "kept";
    this.helping = false;
  }

  override render(): TemplateResult {
    const w = classWords();
    return html`<div class="choose">
      <rl-choice-field .label=${`${w.lesson}:`} .value=${this.current} .choices=${this.lessons.map(({ id, title }) => ({ value: id, text: lessonText(title) }))}
        @choice-changed=${(e: CustomEvent<string>) => this.#say("lesson-chosen", e.detail)}></rl-choice-field>
      <slot></slot>
      ${this.wall ? nothing : this.#files()}
    </div>`;
  }

  #files(): TemplateResult {
    const w = classWords();
    const own = keptLessons().find(({ id }) => id === this.current);
    return html`<p class="small">${w.keys}</p>
      <rl-file-field .label=${w.open} accept=".json,application/json" @file-chosen=${this.#open}></rl-file-field>
      <p class="small">${w.openHint}</p>
      <div class="buttons"><button type="button" @click=${this.#template}>${w.template}</button>
      ${own === undefined ? nothing : html`<button type="button" @click=${() => this.#forget(own.id)}>${w.forget(lessonText(own.title))}</button>`}</div>
      <div role="status">${this.faults.length > 0 ? faultTable(this.faults) : nothing}${this.keeping === "kept" ? nothing : html`<p class="failed">${w.notKept[this.keeping]}</p>`}</div>
      <details @toggle=${(e: Event) => (this.helping = (e.target as HTMLDetailsElement).open)}><summary>${w.help}</summary>${this.helping ? this.#help() : nothing}</details>`;
  }

  #help(): TemplateResult {
    const w = classWords();
    return html`<p>${w.helpText}</p>
      <dl>${w.helpRows.map(([name, text]) => html`<dt lang="en"><code>${name}</code></dt><dd>${text}</dd>`)}</dl>
      <ul class="measures">${lessonMeasures.map((id) => html`<li><code lang="en">${id}</code> ${w.measures[id]}</li>`)}</ul>`;
  }

  async #open({ detail: file }: CustomEvent<File>): Promise<void> {
    this.keeping = "kept";
    if (file.size > mostKB * 1000) {
      const received = classWords().tooLarge(Math.round(file.size / 1000));
      this.faults = [{ path: "", received, rule: { code: "at-most", limit: mostKB, of: "file" } }];
      return;
    }
    const read = readLesson(await file.text());
    this.faults = read.ok ? [] : read.faults;
    if (!read.ok) return;
    this.keeping = keepLesson(read.lesson);
    this.#say("lesson-opened", read.lesson.id);
  }

  #forget(id: string): void {
    forgetLesson(id);
    this.#say("lesson-opened", this.lessons[0]?.id ?? "");
  }

  async #template(): Promise<void> {
    const { default: text } = await import("../../../../data/lessons/template/my-lesson.json?raw");
    takeAway("my-lesson.json", new Blob([text], { type: "application/json" }));
  }

  #say(name: string, detail: string): void {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}

customElements.define("rl-lesson-shelf", LessonShelf);
