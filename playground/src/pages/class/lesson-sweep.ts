import { html, type TemplateResult } from "lit";
import { measure } from "rootledger";
import { emittersOfTree, openNearest, plugPlan } from "rootledger/lines";
import type { TableData } from "../../charts/number-table.js";
import "../../charts/number-table.js";
import "../../charts/sweep-chart.js";
import type { SweepData } from "../../charts/sweep-chart.js";
import { classWords } from "../../text/class-words.js";
import { amount } from "../../text/number-format.js";
import { measured, measuredUnit } from "../../text/quantity.js";
import type { Lesson } from "./lesson.js";
import { lessonText } from "./lesson.js";
import { lessonBlock } from "./lesson-block.js";
import { type ShownLesson, viewAt } from "./lesson-pictures.js";

type Swept = Pick<ShownLesson, "lesson" | "answers" | "file">;

/** How the lesson's measures answer to its slider, one chart each, and their numbers. */
export function lessonSweep(
  shown: Swept & { readonly at: number; readonly guess: number; readonly frozen: number },
): TemplateResult {
  const { lesson, at, guess, frozen } = shown;
  const charts = lesson.measures.map((id) => sweepData(shown, id));
  return html`<div class="sweeps">${
    lesson.points.length > 1
      ? charts.map(
          (data) => html`<rl-sweep-chart .data=${data} .at=${at} .guess=${guess} .frozen=${frozen}></rl-sweep-chart>`,
        )
      : ""
  }</div><rl-number-table .data=${() => table(charts)}></rl-number-table>`;
}

function sweepData(shown: Swept, id: Lesson["measures"][number]): SweepData {
  const { lesson } = shown;
  const unit = id === "thirsty" || id === "airless" ? "h" : "L";
  return {
    measure: classWords().measures[id],
    unit: measuredUnit(unit, {}),
    points: lesson.points.map(({ label }) => label),
    columns: lesson.columns.map(({ name }, column) => ({
      name: lessonText(name),
      values: lesson.points.map((_, point) => {
        const value = valueAt(shown, id, point, column);
        return value === undefined ? undefined : measured(value, unit);
      }),
    })),
  };
}

function valueAt(shown: Swept, id: Lesson["measures"][number], point: number, column: number): number | undefined {
  if (id === "on-roots" || id === "on-nothing") return onRoots(shown, id, point, column);
  const view = viewAt({ ...shown, point }, column);
  if (!view) return undefined;
  return id === "window-litres" ? view.result.window.litresPerTree : measure(view.result, id).values[view.tree];
}

function onRoots({ file, lesson }: Swept, id: "on-roots" | "on-nothing", point: number, column: number): number {
  const block = lessonBlock(file, lesson, point, column);
  const emitters = emittersOfTree(block.layout);
  const open = openNearest(emitters, Math.max(1, emitters.length - block.pluggedPerTree));
  const { usefulShare } = plugPlan({ ...block, open, pressureCompensating: true });
  return block.litresPerDay * (id === "on-roots" ? usefulShare : 1 - usefulShare);
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
