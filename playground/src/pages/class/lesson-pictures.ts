import { html, nothing, type TemplateResult } from "lit";
import { column, measure } from "rootledger";
import { emittersOfTree, openNearest } from "rootledger/lines";
import { airMemory } from "rootledger/water";
import { rowOf } from "../../charts/arm-picture.js";
import { rootedReachCm } from "../../charts/geometry/section-frame.js";
import "../../charts/leak-chart.js";
import "../../charts/pulse-air-chart.js";
import "../../charts/row-plan.js";
import "../../charts/section-chart.js";
import "../../charts/storage-chart.js";
import { treeFace } from "../../charts/tree-face.js";
import "../../charts/window-bar.js";
import type { DemoFile } from "../../state/demo.js";
import { classWords } from "../../text/class-words.js";
import { amount } from "../../text/number-format.js";
import { depthText, waterText } from "../../text/quantity.js";
import { words } from "../../text/words.js";
import type { ArmView } from "../arm-pictures.js";
import { waterAxes, wettestDay } from "../findings.js";
import { type Lesson, lessonText } from "./lesson.js";
import { lessonBlock } from "./lesson-block.js";
import { damagePicture } from "./lesson-damage.js";
import { lessonNumber, measureName, unitOfMeasure } from "./lesson-numbers.js";
import { instruments } from "./lesson-quiz.js";
import { type ShownLesson, viewAt, viewOfAnswer } from "./lesson-view.js";

/** The pictures of one point of the slider, column by column; before the reveal only what gives nothing away. */
export function lessonPictures(shown: ShownLesson): TemplateResult | typeof nothing {
  const { lesson, open } = shown;
  const columns = lesson.columns.map(({ name }, i) => ({ name: lessonText(name), i }));
  const face = lesson.pictures.includes("tree");
  if (open === "face" && !face) return nothing;
  const whole = open === "all" && lesson.pictures.includes("window");
  const damage = open === "all" && lesson.pictures.includes("damage");
  const perColumn = face || !(whole || damage) || lesson.pictures.length > 1;
  return html`<div class="sights" data-count=${columns.length} data-open=${open}>
    ${whole ? html`<div class="wide">${windowBar(shown)}</div>` : nothing}
    ${damage ? html`<div class="wide">${damagePicture(shown)}</div>` : nothing}
    ${
      perColumn
        ? columns.map(({ name, i }) => {
            const view = viewAt(shown, i);
            return html`<figure><h2>${name}</h2>
        ${face ? html`<div class="above">${treeFace(classWords().tree)}${(open === "tension" || open === "all") && view ? instruments(shown, view, i) : nothing}</div>` : nothing}
        ${open === "face" || !view ? nothing : oneColumn(shown, view, i)}</figure>`;
          })
        : nothing
    }
  </div>`;
}

/** One column: its number, its pictures, and the sentence beneath. */
function oneColumn(shown: ShownLesson, view: ArmView, i: number): TemplateResult {
  const { lesson, hour, open, wall } = shown;
  const pictures = wall && !lesson.pictures.includes("tree") ? lesson.pictures.slice(0, 1) : lesson.pictures;
  const has = (name: Lesson["pictures"][number]): boolean => pictures.includes(name);
  const { picture } = view;
  const at = Math.min(hour, picture.hours - 1);
  const row = rowOf(picture, at) ?? 0;
  return html`
    ${open === "all" && !has("tree") ? number(shown, i) : nothing}
    ${has("section") ? html`<rl-section-chart .arm=${picture} .hour=${at} .reachCm=${reachOf(shown)} axes ?compact=${wall}></rl-section-chart>` : nothing}
    ${has("section") && open === "all" ? html`<p>${words.section.title(lessonText(lesson.columns[i]!.name), words.time.at("", at).replace(/^, /, ""), [picture.airlessShare[row]!], [picture.thirstyShare[row]!])}</p>` : nothing}
    ${has("pulses") ? pulses(view, at) : nothing}
    ${has("storage") && open === "all" ? storage(shown, view, i, at) : nothing}
    ${has("leak") ? leak(shown, view) : nothing}
    ${has("plan") ? plan(shown, i) : nothing}`;
}

/** The first measure of the lesson, large enough for the last row of the room. */
function number(shown: ShownLesson, i: number): TemplateResult | typeof nothing {
  const id = shown.lesson.measures[0]!;
  const value = lessonNumber(shown, id, i);
  if (value === undefined || Number.isNaN(value)) return nothing;
  return html`<p class="number"><strong>${amount(value, value < 100 ? 2 : 3)} ${unitOfMeasure(id)}</strong> <span>${measureName(shown, id)}</span></p>`;
}

/** Half-width that the sections of all columns share, so that a metre is the same length in each. */
const reachOf = (shown: ShownLesson): number =>
  Math.max(
    ...shown.lesson.columns.map((_, i) => {
      const view = viewAt(shown, i);
      return view ? rootedReachCm(view.picture.section) : 0;
    }),
  );

function storage(shown: ShownLesson, { picture }: ArmView, i: number, at: number): TemplateResult {
  const { lesson } = shown;
  const axis = axisOf(shown, i);
  const all = Math.ceil(picture.hours / 24);
  const { firstDay, days } = lesson.view ?? { firstDay: 0, days: all };
  const first = Math.min(firstDay, all - 1);
  return html`<rl-storage-chart .arm=${picture} .hour=${at} .firstDay=${first} .days=${Math.min(days, all - first)} .lowMm=${axis.lowMm} .highMm=${axis.highMm} .mostRainMm=${wettestDay(picture.rainMm)}></rl-storage-chart>`;
}

type Axis = ReturnType<typeof waterAxes>[number];
let kept: { readonly answers: unknown; readonly on: boolean; readonly axes: readonly Axis[] } | undefined;

/** Axis of a column over all points of the slider, the same mm per height in all columns; found anew only when another answer has come. */
function axisOf({ lesson, answers, file, on }: ShownLesson, i: number): Axis {
  if (kept?.answers !== answers || kept?.on !== on) {
    const pictures = lesson.columns.map((_, column) =>
      lesson.points.flatMap((_, point) => viewAt({ lesson, answers, file, on, point }, column)?.picture ?? []),
    );
    kept = { answers, on, axes: waterAxes(pictures) };
  }
  return kept.axes[i]!;
}

function pulses({ result, tree, picture }: ArmView, at: number): TemplateResult {
  const fromH = Math.floor(at / 24) * 24;
  const day = airMemory(result, { tree })
    .filter(({ opensH }) => opensH >= fromH && opensH < fromH + 24)
    .map(({ opensH, closesH, before }) => ({
      opensH: opensH - fromH,
      closesH: Math.min(24, closesH - fromH),
      before,
    }));
  const airlessShare = picture.airlessShare.slice(fromH, fromH + 24);
  return html`<rl-pulse-air-chart .day=${{ airlessShare, pulses: day }}></rl-pulse-air-chart>`;
}

function leak(shown: ShownLesson, { result, tree }: ArmView): TemplateResult {
  const litres = (of: ArmView): number => measure(of.result, "below-roots").values[of.tree]!;
  const all = shown.answers.map((answer) => viewOfAnswer(answer, shown.lesson, shown.file));
  const nitrogenG = result.measures.find(({ id }) => id === "nitrogen-below-roots")?.values[tree];
  const leaked = {
    litres: litres({ result, tree } as ArmView),
    mostLitres: Math.max(1, ...all.map(litres)),
    nitrogenG,
  };
  return html`<rl-leak-chart .leak=${leaked}></rl-leak-chart>`;
}

function plan({ lesson, point, file, on }: ShownLesson, i: number): TemplateResult {
  return html`<rl-row-plan still .data=${planData(lesson, point, i, file, on)}></rl-row-plan>`;
}

function planData(lesson: Lesson, point: number, i: number, file: DemoFile, on: boolean): object {
  const block = lessonBlock(file, lesson, { point, column: i, on });
  const { layout, rootRadiusM, canopyDiameterM, wettedRadiusM, pluggedPerTree } = block;
  const emitters = emittersOfTree(layout);
  const open = openNearest(emitters, Math.max(1, emitters.length - pluggedPerTree));
  const { offsetsM, treeSpacingM, rowSpacingM } = layout;
  return { emitters, open, treeSpacingM, rowSpacingM, canopyDiameterM, offsetsM, wettedRadiusM, rootRadiusM };
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
