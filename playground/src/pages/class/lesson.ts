import { z } from "zod";
import { locale } from "../../text/locale.js";

const text = z.union([
  z.string().min(1).max(600),
  z.strictObject({ en: z.string().min(1).max(600), es: z.string().min(1).max(600) }),
]);
const change = z.record(z.string(), z.unknown());

/** Numbers that a lesson may show by point of its slider; the last three are not measures of a run. */
const lessonMeasures = [
  "thirsty",
  "airless",
  "below-roots",
  "transpiration",
  "evaporation",
  "runoff",
  "window-litres",
  "on-roots",
  "on-nothing",
] as const;

/** A lesson file. Changes are laid over the demo's scenario: the lesson's own, then the column's, then the point's. */
const lessonSchema = z.strictObject({
  format: z.literal(1),
  id: z.string().regex(/^[a-z0-9-]{1,40}$/),
  title: text,
  question: text,
  predict: z.discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("point") }),
    z.strictObject({ kind: z.literal("choice"), options: z.array(text).min(2).max(6) }),
  ]),
  scenario: change,
  /** Side by side, each under the same question. */
  columns: z
    .array(z.strictObject({ name: text, change, tree: z.enum(["mean", "under-fed", "over-fed"]).optional() }))
    .min(1)
    .max(4),
  /** What the slider moves through; one point: no slider. */
  slider: text.optional(),
  points: z
    .array(z.strictObject({ label: z.string().max(20), change }))
    .min(1)
    .max(16),
  pictures: z.array(z.enum(["tree", "section", "storage", "window", "plan"])).min(1),
  measures: z.array(z.enum(lessonMeasures)).min(1).max(3),
  /** Hour after the start that the pictures show. */
  hour: z.number().int().min(0).max(2000),
  reveal: text,
  key: text,
});

export type Lesson = z.infer<typeof lessonSchema>;
type LessonText = z.infer<typeof text>;

/** A lesson's words in the page's language, or as they are where it has one language only. */
export const lessonText = (of: LessonText): string =>
  typeof of === "string" ? of : locale.startsWith("es") ? of.es : of.en;

export type ReadLesson =
  | { readonly ok: true; readonly lesson: Lesson }
  | { readonly ok: false; readonly faults: readonly string[] };

/** A lesson from the text of a file; every fault with its place. */
export function readLesson(file: string): ReadLesson {
  let json: unknown;
  try {
    json = JSON.parse(file);
  } catch (error) {
    return { ok: false, faults: [`JSON: ${error instanceof Error ? error.message : String(error)}`] };
  }
  const read = lessonSchema.safeParse(json);
  return read.success
    ? { ok: true, lesson: read.data }
    : { ok: false, faults: read.error.issues.map(({ path, message }) => `${path.join(".") || "file"}: ${message}`) };
}
