import { column, measure } from "rootledger";
import { emittersOfTree, openNearest, plugPlan } from "rootledger/lines";
import { rootHours } from "rootledger/water";
import { classWords } from "../../text/class-words.js";
import { shownIn, unitText } from "../../text/quantity.js";
import type { ArmView } from "../arm-pictures.js";
import type { Lesson } from "./lesson.js";
import { lessonBlock } from "./lesson-block.js";
import { type LessonRuns, viewAt } from "./lesson-view.js";

export type LessonMeasure = Lesson["measures"][number];

const hourMeasures: readonly LessonMeasure[] = [
  "thirsty",
  "airless",
  "airless-at-20",
  "longest-airless",
  "salt-held-back",
];

/** Unit in which a number of a lesson is shown. */
export function unitOfMeasure(id: LessonMeasure): string {
  if (hourMeasures.includes(id)) return "h";
  if (id === "transpiration-share") return "%";
  if (id.startsWith("nitrogen")) return "g";
  return unitText(id === "root-ece-that-day" ? "salt" : "water");
}

const notSums: readonly LessonMeasure[] = [
  "longest-airless",
  "transpiration-share",
  "drunk-that-day",
  "window-litres",
  "on-roots",
  "on-nothing",
  "root-ece-that-day",
];

/** Name of a number, with the days that a sum is over. */
export function measureName(shown: LessonRuns, id: LessonMeasure): string {
  const w = classWords();
  const name = w.measures[id];
  const days = shown.answers[0]?.result.days.rows;
  return days === undefined || notSums.includes(id) ? name : w.inDays(name, days);
}

/** A number of one column at the point, in the unit that is shown; undefined until it has been computed, NaN where the scenario has no such thing. */
export function lessonNumber(shown: LessonRuns, id: LessonMeasure, at: number): number | undefined {
  const view = viewAt(shown, at);
  if (!view) return undefined;
  const value = id === "on-roots" || id === "on-nothing" ? landing(shown, id, at) : read(view, id, shown.lesson.hour);
  if (id === "transpiration-share") return value * 100;
  if (hourMeasures.includes(id) || id.startsWith("nitrogen")) return value;
  return shownIn(id === "root-ece-that-day" ? "salt" : "water", value);
}

function read({ result, tree }: ArmView, id: LessonMeasure, hour: number): number {
  const day = Math.min(Math.floor(hour / 24), result.days.rows - 1);
  const ofDay = (table: typeof result.days, name: string): number =>
    column(table, name).values[day * table.trees + tree]!;
  switch (id) {
    case "airless-at-20":
      return airlessAt20(result, tree);
    case "given":
      return measure(result, "applied").values[tree]!;
    case "transpiration-share":
      return measure(result, "transpiration-ratio").values[tree]!;
    case "drunk-that-day":
      return ofDay(result.days, "transpired");
    case "root-ece-that-day":
      return result.solutes?.salt === undefined ? Number.NaN : ofDay(result.solutes.days, "rootZoneEce");
    case "window-litres":
      return result.window.litresPerTree;
    default:
      return result.measures.find((m) => m.id === id)?.values[tree] ?? Number.NaN;
  }
}

/** Hours without air of the roots between 15 and 25 cm, which is where a shallow instrument stands. */
function airlessAt20(result: ArmView["result"], tree: number): number {
  const band = rootHours(result, { tree, depthsCm: [15, 25] })[1]!;
  const all = band.airless + band.thirsty + band.fine;
  return all > 0 ? (band.airless / all) * result.hours.rows : 0;
}

/** Litres a day on roots and on ground without them, from the plan of the row alone. */
function landing({ file, lesson, point, on }: LessonRuns, id: "on-roots" | "on-nothing", at: number): number {
  const block = lessonBlock(file, lesson, { point, column: at, on });
  const emitters = emittersOfTree(block.layout);
  const open = openNearest(emitters, Math.max(1, emitters.length - block.pluggedPerTree));
  const { usefulShare } = plugPlan({ ...block, open, pressureCompensating: true });
  return block.litresPerDay * (id === "on-roots" ? usefulShare : 1 - usefulShare);
}
