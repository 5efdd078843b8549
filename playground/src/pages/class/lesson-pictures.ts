import { html, nothing, type TemplateResult } from "lit";
import { column } from "rootledger";
import { emittersOfTree, openNearest } from "rootledger/lines";
import { rowOf } from "../../charts/arm-picture.js";
import "../../charts/row-plan.js";
import "../../charts/section-chart.js";
import "../../charts/storage-chart.js";
import { treeFace } from "../../charts/tree-face.js";
import "../../charts/window-bar.js";
import type { DemoFile } from "../../state/demo.js";
import { classWords } from "../../text/class-words.js";
import { depthText, waterText } from "../../text/quantity.js";
import { words } from "../../text/words.js";
import type { SweepAnswer } from "../../worker/protocol.js";
import { type ArmView, viewOf } from "../arm-pictures.js";
import { waterAxes, wettestDay } from "../findings.js";
import { type Lesson, lessonText } from "./lesson.js";
import { lessonBlock } from "./lesson-block.js";

export interface ShownLesson {
  readonly lesson: Lesson;
  /** In the order of the lesson's files. */
  readonly answers: readonly SweepAnswer[];
  readonly file: DemoFile;
  readonly hour: number;
  readonly wall: boolean;
  readonly point: number;
  /** All, the soil without its numbers, or only what the road shows. */
  readonly open: "all" | "soil" | "face";
}

/** The pictures of one point of the slider, column by column; before the reveal only what gives nothing away. */
export function lessonPictures(shown: ShownLesson): TemplateResult | typeof nothing {
  const { lesson, open } = shown;
  const columns = lesson.columns.map(({ name }, i) => ({ name: lessonText(name), i }));
  const face = lesson.pictures.includes("tree");
  if (open === "face" && !face) return nothing;
  return html`<div class="columns" data-count=${columns.length}>
    ${lesson.pictures.includes("window") && open === "all" ? html`<div class="wide">${windowBar(shown)}</div>` : nothing}
    ${columns.map(({ name, i }) => {
      const view = viewAt(shown, i);
      return html`<figure><h2>${name}</h2>
        ${face ? treeFace(classWords().tree) : nothing}
        ${open === "face" || !view ? nothing : soil(shown, view, i)}</figure>`;
    })}
  </div>`;
}

function soil(
  { lesson, hour, open, wall, answers, file, point }: ShownLesson,
  view: ArmView,
  i: number,
): TemplateResult {
  const has = (name: Lesson["pictures"][number]): boolean => lesson.pictures.includes(name);
  const { picture } = view;
  const at = Math.min(hour, picture.hours - 1);
  const row = rowOf(picture, at) ?? 0;
  const days = picture.hours / 24;
  const all = answers.map((answer) => viewOfAnswer(answer, lesson, file));
  const axis = waterAxes([all.map((v) => v.picture)])[0]!;
  return html`
    ${has("section") ? html`<rl-section-chart .arm=${picture} .hour=${at} axes ?compact=${wall}></rl-section-chart>` : nothing}
    ${has("section") && open === "all" ? html`<p>${words.section.title(lessonText(lesson.columns[i]!.name), words.time.at("", at).replace(/^, /, ""), [picture.airlessShare[row]!], [picture.thirstyShare[row]!])}</p>` : nothing}
    ${has("storage") && open === "all" ? html`<rl-storage-chart .arm=${picture} .hour=${at} .firstDay=${0} .days=${days} .lowMm=${axis.lowMm} .highMm=${axis.highMm} .mostRainMm=${wettestDay(picture.rainMm)}></rl-storage-chart>` : nothing}
    ${has("plan") ? plan(lesson, point, i, file) : nothing}`;
}

function plan(lesson: Lesson, point: number, i: number, file: DemoFile): TemplateResult {
  const { layout, rootRadiusM, canopyDiameterM, wettedRadiusM, pluggedPerTree } = lessonBlock(file, lesson, point, i);
  const emitters = emittersOfTree(layout);
  const open = openNearest(emitters, Math.max(1, emitters.length - pluggedPerTree));
  const { offsetsM, treeSpacingM, rowSpacingM } = layout;
  return html`<rl-row-plan still .data=${{ emitters, open, treeSpacingM, rowSpacingM, canopyDiameterM, offsetsM, wettedRadiusM, rootRadiusM }}></rl-row-plan>`;
}

function windowBar(shown: ShownLesson): TemplateResult {
  const views = shown.lesson.columns.map((_, i) => viewAt(shown, i));
  if (views.some((v) => v === undefined)) return html``;
  const tubes = views.flatMap((view, i) => {
    if (!view) return [];
    const { window } = view.result;
    const lendsMm = window.waterAtAirReturnMm - window.waterAtPullLimitMm;
    const lendsText = `${depthText(lendsMm)}, ${waterText(window.litresPerTree)}`;
    return [
      { name: lessonText(shown.lesson.columns[i]!.name), lendsL: window.litresPerTree, lendsText, level: undefined },
    ];
  });
  const { days } = views[0]!.result;
  return html`<rl-window-bar .tubes=${tubes} .demandL=${column(days, "wanted").values[0] ?? 0}></rl-window-bar>`;
}

/** What one column shows at the point, once it has been computed. */
export function viewAt(
  { lesson, answers, file, point }: Pick<ShownLesson, "lesson" | "answers" | "file" | "point">,
  column: number,
): ArmView | undefined {
  const answer = answers.find(({ index }) => index === point * lesson.columns.length + column);
  return answer && viewOfAnswer(answer, lesson, file);
}

const made = new WeakMap<SweepAnswer, ArmView>();

function viewOfAnswer(answer: SweepAnswer, lesson: Lesson, file: DemoFile): ArmView {
  let view = made.get(answer);
  if (!view) {
    const { tree = "mean" } = lesson.columns[answer.index % lesson.columns.length]!;
    const facts = {
      letters: [],
      seasonStart: answer.result.startDate,
      canopyDiameterM: file.block.tree.canopyDiameterM,
    };
    view = viewOf(answer.result, tree, "", { ground: answer.ground, firstDay: 0 }, facts);
    made.set(answer, view);
  }
  return view;
}
