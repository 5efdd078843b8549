import { type Lesson, readLesson } from "./lesson.js";

const key = "rootledger.lessons";

/** Lessons opened since the page was loaded; they outlive a change of page or language even where nothing may be stored. */
const opened = new Map<string, Lesson>();

/** What became of a lesson that was to be kept on this device. */
export type Keeping = "kept" | "full" | "forbidden";

/** The trainer's own lessons: those kept on this device and those opened just now. One that can no longer be read stays where it is. */
export function keptLessons(): readonly Lesson[] {
  const lessons = new Map<string, Lesson>();
  for (const text of Object.values(stored() ?? {})) {
    const read = readLesson(text);
    if (read.ok) lessons.set(read.lesson.id, read.lesson);
  }
  for (const [id, lesson] of opened) lessons.set(id, lesson);
  return [...lessons.values()];
}

export function keepLesson(lesson: Lesson): Keeping {
  opened.set(lesson.id, lesson);
  return write({ ...stored(), [lesson.id]: JSON.stringify(lesson) });
}

export function forgetLesson(id: string): void {
  opened.delete(id);
  const { [id]: _, ...others } = stored() ?? {};
  write(others);
}

/** Texts by id; undefined where nothing may be read. */
function stored(): Readonly<Record<string, string>> | undefined {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? "{}");
    if (typeof kept !== "object" || kept === null) return {};
    return Object.fromEntries(Object.entries(kept).filter(([, text]) => typeof text === "string"));
  } catch {
    return undefined;
  }
}

function write(lessons: Readonly<Record<string, string>>): Keeping {
  try {
    localStorage.setItem(key, JSON.stringify(lessons));
    return "kept";
  } catch (error) {
    return error instanceof DOMException && error.name === "QuotaExceededError" ? "full" : "forbidden";
  }
}
