import { html, nothing, type TemplateResult } from "lit";
import type { TableData } from "../../charts/number-table.js";
import "../../charts/number-table.js";
import "../../charts/sweep-chart.js";
import type { SweepData } from "../../charts/sweep-chart.js";
import { classWords } from "../../text/class-words.js";
import { amount } from "../../text/number-format.js";
import { lessonText } from "./lesson.js";
import { type LessonMeasure, lessonNumber, measureName, unitOfMeasure } from "./lesson-numbers.js";
import type { LessonRuns } from "./lesson-view.js";

/** How the lesson's measures answer to its slider, one chart each; on a wall the first alone. */
export function lessonSweep(
  shown: LessonRuns & {
    readonly at: number;
    readonly guess: number;
    readonly frozen: number;
    readonly wall: boolean;
  },
): TemplateResult | typeof nothing {
  const { lesson, at, guess, frozen, wall } = shown;
  if (lesson.points.length < 2) return nothing;
  const charts = lesson.measures.slice(0, wall ? 1 : 3).map((id) => sweepData(shown, id));
  return html`<div class="sweeps">${charts.map(
    (data) => html`<rl-sweep-chart .data=${data} .at=${at} .guess=${guess} .frozen=${frozen}></rl-sweep-chart>`,
  )}</div>`;
}

/** The same numbers as a table. */
export const lessonTable = (shown: LessonRuns): TemplateResult =>
  html`<rl-number-table .data=${() => table(shown.lesson.measures.map((id) => sweepData(shown, id)))}></rl-number-table>`;

let drawn: { readonly of: readonly unknown[]; readonly data: Map<LessonMeasure, SweepData> } | undefined;

/** The same object while nothing but the slider has moved, so that only marks are drawn anew. */
function sweepData(shown: LessonRuns, id: LessonMeasure): SweepData {
  const of = [shown.answers, shown.lesson, shown.on];
  if (!drawn || drawn.of.some((value, i) => value !== of[i])) drawn = { of, data: new Map() };
  let data = drawn.data.get(id);
  if (!data) {
    data = made(shown, id);
    drawn.data.set(id, data);
  }
  return data;
}

function made(shown: LessonRuns, id: LessonMeasure): SweepData {
  const { lesson } = shown;
  return {
    measure: measureName(shown, id),
    unit: unitOfMeasure(id),
    points: lesson.points.map(({ label }) => label),
    columns: lesson.columns.map(({ name }, column) => ({
      name: lessonText(name),
      values: lesson.points.map((_, point) => {
        const value = lessonNumber({ ...shown, point }, id, column);
        return value === undefined || Number.isNaN(value) ? undefined : value;
      }),
    })),
  };
}

function table(charts: readonly SweepData[]): TableData {
  const w = classWords();
  return {
    caption: w.table,
    head: [w.lesson, ...charts.flatMap((c) => c.columns.map(({ name }) => `${c.measure}, ${c.unit}, ${name}`))],
    rows: (charts[0]?.points ?? []).map((point, i) => [
      point === "" ? "·" : point,
      ...charts.flatMap((c) => c.columns.map(({ values }) => (values[i] === undefined ? "…" : amount(values[i])))),
    ]),
  };
}
