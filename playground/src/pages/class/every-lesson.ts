import { keptLessons } from "./kept-lessons.js";
import { type Lesson, readLesson } from "./lesson.js";

const files: Record<string, string> = import.meta.glob("../../../../data/lessons/*.json", {
  eager: true,
  query: "?raw",
  import: "default",
});

/** The lessons that come with the page, in order. @throws Error if one of them cannot be read */
function pageLessons(): readonly Lesson[] {
  return Object.keys(files)
    .sort()
    .map((name) => {
      const read = readLesson(files[name]!);
      if (read.ok) return read.lesson;
      throw new Error(`${name}: ${read.faults.map(({ path, received }) => `${path} ${received}`).join("; ")}`);
    });
}

let own: readonly Lesson[] | undefined;

/** Every lesson that can be chosen: a trainer's own one stands in for the page's of the same id, else behind them. */
export function everyLesson(): readonly Lesson[] {
  own ??= pageLessons();
  const kept = keptLessons();
  const known = own;
  return [
    ...known.map((lesson) => kept.find(({ id }) => id === lesson.id) ?? lesson),
    ...kept.filter(({ id }) => !known.some((lesson) => lesson.id === id)),
  ];
}
