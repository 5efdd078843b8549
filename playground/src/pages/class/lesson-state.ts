import { html, nothing, type TemplateResult } from "lit";
import { classWords } from "../../text/class-words.js";
import { words } from "../../text/words.js";
import type { Sweep } from "../../worker/sweep.js";
import { type Lesson, lessonText } from "./lesson.js";
import { lessonNumber } from "./lesson-numbers.js";
import type { LessonRuns } from "./lesson-view.js";

/** What stands between the buttons and the pictures: trouble, progress, the guess, or the answer. */
export function lessonState(
  shown: LessonRuns & { readonly revealed: boolean; readonly guess: number },
  sweep: Sweep,
): TemplateResult {
  const w = classWords();
  const { lesson, revealed, guess } = shown;
  const { trouble, answers, all, done } = sweep;
  if (trouble !== undefined) return failed(lesson, sweep);
  if (!revealed) {
    const said = lesson.predict.kind === "point" && guess >= 0 ? w.guessAt(lesson.points[guess]!.label) : "";
    return html`<p class="small">${said} ${w.hidden}</p>`;
  }
  const absent = done
    ? lesson.measures.filter((id) => Number.isNaN(lessonNumber(shown, id, 0))).map((id) => w.measures[id])
    : [];
  return html`${done ? nothing : html`<p class="small">${w.computing(answers.length, all)}</p>`}
    ${absent.length > 0 ? html`<p class="failed">${w.notReckoned(absent.join(", "))}</p>` : nothing}`;
}

function failed({ columns, points }: Lesson, sweep: Sweep): TemplateResult {
  const w = classWords();
  const { trouble } = sweep;
  if (trouble?.kind === "faults") {
    const at = trouble.index % (columns.length * points.length);
    const place = w.failedAt(
      lessonText(columns[at % columns.length]!.name),
      points[Math.floor(at / columns.length)]!.label,
    );
    return html`<div class="failed"><p><strong>${w.failed}.</strong> ${place}</p><ul>${trouble.faults.map((fault) => html`<li>${words.states.fault(fault)}</li>`)}</ul></div>`;
  }
  return html`<div class="failed"><p><strong>${w.failed}.</strong> ${trouble?.kind === "failed" ? html`<span lang="en">${trouble.message}</span>` : w.crashed}</p>
    <p><button type="button" @click=${() => sweep.again()}>${w.again}</button></p></div>`;
}
