import type { DemoFile } from "../../state/demo.js";
import type { Lesson } from "./lesson.js";
import { type LessonPlace, lessonFiles, runIndex } from "./lesson-files.js";

interface LessonBlock {
  readonly layout: {
    readonly offsetsM: readonly number[];
    readonly treeSpacingM: number;
    readonly rowSpacingM: number;
    readonly emitterSpacingM: number;
  };
  readonly emitterFlowLPerH: number;
  readonly pluggedPerTree: number;
  readonly canopyDiameterM: number;
  readonly rootRadiusM: number;
  readonly wettedRadiusM: number;
  readonly litresPerDay: number;
}

/** Radius that an emitter wets in the plan of a lesson, m; a guess for the picture, no source. */
const wettedRadiusM = 0.2;

/** The block of one point and column as the plan of the row needs it; of a file that has been read without a fault. */
export function lessonBlock(demo: DemoFile, lesson: Lesson, place: LessonPlace): LessonBlock {
  const { file } = lessonFiles(demo, lesson)[runIndex(lesson, place)]!;
  const { block, programme } = file as {
    block: DemoFile["block"] & { tree: { roots?: { lateral?: { radiusCm?: number } } } };
    programme: Partial<DemoFile["programmes"][number]>;
  };
  const { lines, treeSpacingM, rowSpacingM, tree } = block;
  const run = programme.runs?.[0];
  return {
    layout: { offsetsM: lines.offsetsM, treeSpacingM, rowSpacingM, emitterSpacingM: lines.emitterSpacingM },
    emitterFlowLPerH: lines.emitterFlowLPerH,
    pluggedPerTree: lines.pluggedPerTree ?? 0,
    canopyDiameterM: tree.canopyDiameterM,
    rootRadiusM: (tree.roots?.lateral?.radiusCm ?? 100) / 100,
    wettedRadiusM,
    litresPerDay: run === undefined ? 0 : (run.litresPerTree ?? 0) / run.everyDays,
  };
}
