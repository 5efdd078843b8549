import { z } from "zod";
import { locale } from "../../text/locale.js";
import { type LessonFault, lessonFaults } from "./lesson-faults.js";
import { workFaults } from "./lesson-work.js";

const text = z.union([
  z.string().min(1).max(900),
  z.strictObject({ en: z.string().min(1).max(900), es: z.string().min(1).max(900) }),
]);
const change = z.record(z.string(), z.unknown());
/** Fields laid over the programme's first run; one amount takes the place of another. */
const run = change.optional();
/** Days of the demo's record on which another amount of rain falls, mm. */
const rain = z.record(z.iso.date(), z.number().min(0).max(200)).optional();

/** Numbers that a lesson may show by point of its slider. Some are measures of a run, the others are read from it. */
export const lessonMeasures = [
  "thirsty",
  "airless",
  "airless-at-20",
  "longest-airless",
  "given",
  "below-roots",
  "transpiration",
  "transpiration-share",
  "drunk-that-day",
  "evaporation",
  "runoff",
  "window-litres",
  "on-roots",
  "on-nothing",
  "nitrogen-given",
  "nitrogen-taken-up",
  "nitrogen-below-roots",
  "nitrogen-rootless-ground",
  "root-ece-that-day",
  "salt-held-back",
] as const;

const lessonPictures = ["tree", "section", "storage", "window", "plan", "pulses", "leak", "damage"] as const;

/** A lesson file. Changes are laid over the demo's scenario: the lesson's own, the column's, the point's, last the switch's. */
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
  run,
  /** Side by side, each under the same question. */
  columns: z
    .array(
      z.strictObject({
        name: text,
        change: change.optional(),
        run,
        rain,
        tree: z.enum(["mean", "under-fed", "over-fed"]).optional(),
      }),
    )
    .min(1)
    .max(4),
  /** What the slider moves through; one point: no slider. */
  slider: text.optional(),
  points: z
    .array(z.strictObject({ label: z.string().max(20), change: change.optional(), run, rain }))
    .min(1)
    .max(16),
  /** One thing to switch on; with root rot only the damage band moves. */
  switch: z.strictObject({ label: text, change: change.optional(), run, rootRot: z.boolean().optional() }).optional(),
  /** For the damage band: temperature of the soil. */
  soilTemperatureC: z.number().min(-5).max(50).optional(),
  pictures: z.array(z.enum(lessonPictures)).min(1),
  measures: z.array(z.enum(lessonMeasures)).min(1).max(3),
  /** Hour after the start that the pictures show at first. */
  hour: z.number().int().min(0).max(2400),
  /** Days that the storage picture covers; all of them where left out. */
  view: z.strictObject({ firstDay: z.number().int().min(0), days: z.number().int().min(1) }).optional(),
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
  | { readonly ok: false; readonly faults: readonly LessonFault[] };

/** A lesson from the text of a file; every fault with its place, what stood there and the rule. */
export function readLesson(file: string): ReadLesson {
  let json: unknown;
  try {
    json = JSON.parse(file);
  } catch (error) {
    const said = error instanceof Error ? error.message : String(error);
    return { ok: false, faults: [{ path: "", received: said, rule: { code: "not-json" } }] };
  }
  const read = lessonSchema.safeParse(json);
  if (!read.success) return { ok: false, faults: lessonFaults(read.error.issues, json) };
  const faults = workFaults(read.data);
  return faults.length > 0 ? { ok: false, faults } : { ok: true, lesson: read.data };
}
