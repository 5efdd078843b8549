import type { DemoFile } from "../../state/demo.js";
import type { Lesson } from "./lesson.js";

/** Scenario files of a lesson, `files[point * columns + column]`, and the tree that each is about. */
export function lessonFiles(
  demo: DemoFile,
  lesson: Lesson,
): readonly { readonly file: object; readonly tree: "mean" | "under-fed" | "over-fed" }[] {
  const { season, block, weather, soils, programmes, start } = demo;
  const base = {
    format: 1,
    name: lesson.id,
    season,
    block,
    weather,
    soil: soils[0],
    programme: { name: programmes[0]!.name, runs: programmes[0]!.runs },
    start,
  };
  return lesson.points.flatMap((point) =>
    lesson.columns.map(({ change, tree = "mean" }) => ({
      file: [lesson.scenario, change, point.change].reduce<object>(laidOver, base),
      tree,
    })),
  );
}

const isPlain = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** An object with another's fields laid over it; lists and single values are replaced whole. @example laidOver({ a: { b: 1, c: 2 } }, { a: { b: 3 } }) // { a: { b: 3, c: 2 } } */
function laidOver(base: object, change: object): object {
  const out: Record<string, unknown> = { ...base };
  for (const [key, value] of Object.entries(change)) {
    const old = out[key];
    out[key] = isPlain(old) && isPlain(value) ? laidOver(old, value) : value;
  }
  return out;
}
