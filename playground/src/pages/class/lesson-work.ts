import type { Lesson } from "./lesson.js";
import type { LessonFault } from "./lesson-faults.js";
import { laidOver, switches } from "./lesson-files.js";

/** Most days that a lesson may have computed, all points, columns and the switch together: about half a minute. Our choice. */
const mostDays = 3000;
const daysWithoutSeason = 84;

/** What would keep the class waiting: too many days, or the slow engine. */
export function workFaults(lesson: Lesson): readonly LessonFault[] {
  const { scenario, columns, points } = lesson;
  const both = switches(lesson) ? [{}, lesson.switch?.change ?? {}] : [{}];
  let days = 0;
  for (const point of points) {
    for (const column of columns) {
      for (const change of both) {
        const file: { season?: { days?: unknown }; engine?: unknown } = [
          column.change ?? {},
          point.change ?? {},
          change,
        ].reduce<object>(laidOver, scenario);
        if (file.engine !== undefined && file.engine !== "bucket") {
          return [{ path: "engine", received: JSON.stringify(file.engine), rule: { code: "one-engine" } }];
        }
        const asked = file.season?.days;
        days += typeof asked === "number" ? asked : daysWithoutSeason;
      }
    }
  }
  if (days <= mostDays) return [];
  return [{ path: "points", received: String(days), rule: { code: "at-most", limit: mostDays, of: "days" } }];
}
