import { html, nothing, type TemplateResult } from "lit";
import { classWords } from "../../text/class-words.js";
import { locale } from "../../text/locale.js";
import { takeAway } from "../section/take-away.js";
import { handoutSums } from "./handout-sums.js";
import { type Lesson, lessonText } from "./lesson.js";

interface HandoutActs {
  readonly close: () => void;
  readonly setKey: (withKey: boolean) => void;
}

/** A sheet of blanks for the class, black on white; with the key, the trainer's copy. Printed, or kept as a file. */
export function handoutPage(lessons: readonly Lesson[], withKey: boolean, acts: HandoutActs): TemplateResult {
  const w = classWords();
  return html`<div class="buttons no-print">
      <button type="button" @click=${acts.close}>${w.closeHandout}</button>
      <button type="button" class="strong" @click=${() => window.print()}>${w.print}</button>
      <button type="button" @click=${save}>${w.saveHandout}</button>
      <label><input type="checkbox" .checked=${withKey} @change=${(e: Event) => acts.setKey((e.target as HTMLInputElement).checked)}> ${w.withKey}</label>
    </div>
    <article class="handout">
      <h1>${w.handoutTitle}</h1>
      ${withKey ? nothing : html`<p class="line">${w.name}</p>`}
      <ol>${lessons.map((lesson) => item(lesson, withKey))}</ol>
      ${handoutSums(withKey)}
      <h2>${w.questionsHeading}</h2>
      <ol>${w.questions.map(([question, answer]) => html`<li><p>${question}</p>${withKey ? html`<p class="key">${answer}</p>` : html`<p class="line"></p><p class="line"></p>`}</li>`)}</ol>
    </article>`;
}

function item(lesson: Lesson, withKey: boolean): TemplateResult {
  const w = classWords();
  const { predict, points } = lesson;
  const choices = predict.kind === "choice" ? predict.options.map(lessonText) : points.map(({ label }) => label);
  return html`<li><h2>${lessonText(lesson.title)}</h2><p>${lessonText(lesson.question)}</p>
    <p>${w.ourGuess} ${choices.map((choice) => html`<span class="box">${choice}</span> `)}</p>
    ${withKey ? html`<p class="key">${w.key}: ${lessonText(lesson.key)}</p>` : html`<p class="line">${w.seen}</p>`}</li>`;
}

const fileStyles =
  "body{font:16px/1.45 Verdana,sans-serif;max-width:46rem;margin:2rem auto;padding:0 1rem}.line{border-bottom:1px solid;min-height:1.9em}.box{border:1px solid;padding:0 .5em}.blank{display:inline-block;min-width:6em;border-bottom:1px solid}.key{font-weight:bold}li{margin-bottom:.8rem}table{border-collapse:collapse}th,td{text-align:left;padding:.2em 1em .2em 0;border-bottom:1px solid}";

/** The sheet as it stands, as one file that opens and prints without this page. */
function save(event: Event): void {
  const root = (event.currentTarget as HTMLElement).getRootNode() as ShadowRoot;
  const sheet = (root.querySelector("article")?.outerHTML ?? "").replace(/<!--.*?-->/g, "");
  const w = classWords();
  const language = locale.slice(0, 2);
  const text = `<!doctype html><html lang="${language}"><meta charset="utf-8"><title>${w.handoutTitle}</title><style>${fileStyles}</style>${sheet}</html>`;
  takeAway(w.handoutFile, new Blob([text], { type: "text/html" }));
}
