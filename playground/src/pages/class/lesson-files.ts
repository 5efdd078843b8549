import type { DemoFile } from "../../state/demo.js";
import type { SweepRequest } from "../../worker/protocol.js";
import type { Lesson } from "./lesson.js";

/** Where one run of a lesson stands: a point of the slider, a column, and whether the switch is on. */
export interface LessonPlace {
  readonly point: number;
  readonly column: number;
  readonly on: boolean;
}

/** Place of a run in `lessonFiles`. A switch that changes nothing but a picture has no runs of its own. */
export function runIndex(lesson: Lesson, { point, column, on }: LessonPlace): number {
  const { columns, points } = lesson;
  const first = on && switches(lesson) ? points.length * columns.length : 0;
  return first + point * columns.length + column;
}

/** Whether the lesson's switch makes other runs. */
export const switches = (lesson: Lesson): boolean =>
  lesson.switch?.change !== undefined || lesson.switch?.run !== undefined;

/** Every run that a lesson may show. */
export function lessonFiles(demo: DemoFile, lesson: Lesson): SweepRequest["runs"] {
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
  return (switches(lesson) ? [undefined, lesson.switch] : [undefined]).flatMap((on) =>
    lesson.points.flatMap((point) =>
      lesson.columns.map((column) => {
        const changes = [lesson.scenario, column.change, point.change, on?.change].map((change) => change ?? {});
        const runs = [lesson.run, column.run, point.run, on?.run].filter((run) => run !== undefined);
        const file = withRun(changes.reduce<object>(laidOver, base), runs);
        return {
          file,
          tree: treeOf(column.tree ?? "mean", file),
          rainMm: { ...column.rain, ...point.rain },
        };
      }),
    ),
  );
}

/** Lines that stay full have no over-fed tree: every tree is then like the mean one. */
function treeOf(tree: SweepRequest["runs"][number]["tree"], file: object): typeof tree {
  const { block } = file as { block?: { lines?: { drainOut?: unknown } } };
  return tree === "over-fed" && block?.lines?.drainOut === undefined ? "mean" : tree;
}

const amounts = ["litresPerTree", "mm", "minutes", "m3PerHa"];

/** A file with fields laid over the first run of its programme. */
function withRun(file: object, changes: readonly object[]): object {
  if (changes.length === 0) return file;
  const { programme = {} } = file as { programme?: object };
  const { runs } = programme as { runs?: unknown };
  const [first, ...others]: unknown[] = Array.isArray(runs) ? runs : [];
  const run = changes.reduce<object>(
    (before, change) => {
      const kept = amounts.some((name) => name in change)
        ? Object.fromEntries(Object.entries(before).filter(([name]) => !amounts.includes(name)))
        : before;
      return laidOver(kept, change);
    },
    isPlain(first) ? first : {},
  );
  return { ...file, programme: { ...programme, runs: [run, ...others] } };
}

const isPlain = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** An object with another's fields laid over it; lists and single values are replaced whole. @example laidOver({ a: { b: 1, c: 2 } }, { a: { b: 3 } }) // { a: { b: 3, c: 2 } } */
export function laidOver(base: object, change: object): object {
  const out: Record<string, unknown> = { ...base };
  for (const [key, value] of Object.entries(change)) {
    const old = out[key];
    out[key] = isPlain(old) && isPlain(value) ? laidOver(old, value) : value;
  }
  return out;
}
