import { html, nothing, type TemplateResult } from "lit";
import { classWords } from "../../text/class-words.js";
import { type Lesson, lessonText } from "./lesson.js";

/** A sheet of blanks for the class, black on white; with the key, the trainer's copy. */
export function handout(lessons: readonly Lesson[], withKey: boolean): TemplateResult {
  const w = classWords();
  return html`<article class="handout">
    <h1>${w.handoutTitle}</h1>
    <p class="line">${w.name}</p>
    <ol>${lessons.map((lesson) => item(lesson, withKey))}</ol>
    <h2>${w.questionsHeading}</h2>
    <ol>${w.questions.map(([question, answer]) => html`<li><p>${question}</p>${withKey ? html`<p class="key">${answer}</p>` : html`<p class="line"></p><p class="line"></p>`}</li>`)}</ol>
    ${withKey ? html`<h2>${w.known}</h2><ul>${w.knownItems.map((known) => html`<li>${known}</li>`)}</ul>` : nothing}
  </article>`;
}

function item(lesson: Lesson, withKey: boolean): TemplateResult {
  const w = classWords();
  const { predict, points } = lesson;
  const choices = predict.kind === "choice" ? predict.options.map(lessonText) : points.map(({ label }) => label);
  return html`<li><h2>${lessonText(lesson.title)}</h2><p>${lessonText(lesson.question)}</p>
    <p>${w.ourGuess} ${choices.map((choice) => html`<span class="box">${choice}</span>`)}</p>
    <p class="line">${w.seen}</p>
    ${withKey ? html`<p class="key">${w.key}: ${lessonText(lesson.key)}</p>` : nothing}</li>`;
}
