import { type Lesson, readLesson } from "./lesson.js";

const files: Record<string, string> = import.meta.glob("../../../../data/lessons/*.json", {
  eager: true,
  query: "?raw",
  import: "default",
});

/** The lessons that come with the page, in order. @throws Error if one of them cannot be read */
export function ownLessons(): readonly Lesson[] {
  return Object.keys(files)
    .sort()
    .map((name) => {
      const read = readLesson(files[name]!);
      if (!read.ok) throw new Error(`${name}: ${read.faults.join("; ")}`);
      return read.lesson;
    });
}
