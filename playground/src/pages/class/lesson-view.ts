import type { DemoFile } from "../../state/demo.js";
import type { SweepAnswer } from "../../worker/protocol.js";
import { type ArmView, viewOf } from "../arm-pictures.js";
import type { Lesson } from "./lesson.js";
import { runIndex } from "./lesson-files.js";

/** What the pictures and numbers of a lesson are drawn from. */
export interface ShownLesson {
  readonly lesson: Lesson;
  /** In the order of the lesson's files. */
  readonly answers: readonly SweepAnswer[];
  readonly file: DemoFile;
  /** Hour after the start that the pictures show. */
  readonly hour: number;
  readonly wall: boolean;
  readonly point: number;
  /** The switch is on. */
  readonly on: boolean;
  /** All; the soil as the spade shows it; the same with the instrument's reading; or only what the road shows. */
  readonly open: "all" | "tension" | "soil" | "face";
}

export type LessonRuns = Pick<ShownLesson, "lesson" | "answers" | "file" | "point" | "on">;

/** What one column shows at the point, once it has been computed. */
export function viewAt({ lesson, answers, file, point, on }: LessonRuns, column: number): ArmView | undefined {
  const answer = answers[runIndex(lesson, { point, column, on })];
  return answer && viewOfAnswer(answer, lesson, file);
}

const made = new WeakMap<SweepAnswer, ArmView>();

export function viewOfAnswer(answer: SweepAnswer, lesson: Lesson, file: DemoFile): ArmView {
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
