import { z } from "zod";
import { needDefaults } from "./need-defaults.js";
import { coverSchema, type NeedCoverFile } from "./schema-cover.js";
import { between, named, orDefault, positive, whole } from "./schema-fields.js";
import { type NeedWeatherFile, needWeatherSchema } from "./schema-need-weather.js";

export interface NeedPeriodFile {
  name: string;
  days: number;
  referenceMmPerDay: number;
  hotDayMmPerDay?: number | undefined;
  coefficient: number;
  usefulRainLPerTree?: number | undefined;
}

export interface PracticeFile {
  name: string;
  litresPerTreePerDay: number;
  period?: string | undefined;
  canopyDiameterM?: number | undefined;
  rootedShare?: number | undefined;
}

export type NeedReferenceFile = { kind: "et0" } | { kind: "pan"; panCoefficient: number } | { kind: "pan-factor" };

/** What a need file holds. */
export interface NeedFile {
  $schema?: string | undefined;
  format: 1;
  name: string;
  treeSpacingM?: number | undefined;
  rowSpacingM?: number | undefined;
  canopyDiameterM?: number | undefined;
  heightM?: number | undefined;
  reference: NeedReferenceFile;
  periods?: NeedPeriodFile[] | undefined;
  weather?: NeedWeatherFile | undefined;
  cover?: NeedCoverFile | undefined;
  hotDayRatio?: number | undefined;
  efficiencyFraction?: number | undefined;
  leachingFraction?: number | undefined;
  practice?: PracticeFile[] | undefined;
  scenario?: string | undefined;
}

const referenceSchema: z.ZodType<NeedReferenceFile> = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("et0") }),
  z.strictObject({
    kind: z.literal("pan"),
    panCoefficient: between(0.3, 1.2, "Kp: ET0 over the evaporation of a class A pan."),
  }),
  z.strictObject({ kind: z.literal("pan-factor") }),
]);

const periodSchema: z.ZodType<NeedPeriodFile> = z.strictObject({
  name: named("Name of the month or span."),
  days: whole(1, 366, "Days of the span."),
  referenceMmPerDay: between(0, 25, "Mean ET0, or pan evaporation, mm/day."),
  hotDayMmPerDay: between(0, 35, "The same on a hot day, mm/day. Default: the mean times hotDayRatio.").optional(),
  coefficient: between(0, 2.5, "Kc, or with kind pan-factor the crop factor of the pan."),
  usefulRainLPerTree: between(0, 100000, "Rain of the whole span that roots got, L per tree. Default 0.").optional(),
});

const practiceSchema: z.ZodType<PracticeFile> = z.strictObject({
  name: named("What it is, for instance: first year."),
  litresPerTreePerDay: positive(2000, "Water that a tree is given, L/day."),
  period: named("Span to compare with. Default: the one with the largest need.").optional(),
  canopyDiameterM: positive(30, "Canopy at that age, m. Default: that of the file.").optional(),
  rootedShare: between(0, 1, "Share of the water that falls where the tree has roots.").optional(),
});

export const needSchema: z.ZodType<NeedFile> = z.strictObject({
  $schema: z.string().optional().describe("Address of this schema, for editors."),
  format: z.literal(1).describe("Version of this file format."),
  name: named("Name of the block or of the question."),
  treeSpacingM: between(0.2, 30, "Distance between trees along the row, m.").optional(),
  rowSpacingM: between(0.5, 30, "Distance between rows, m.").optional(),
  canopyDiameterM: positive(30, "Diameter of the canopy, m.").optional(),
  heightM: between(0.1, 20, "Height of the trees, m; for the rules density and relative-density.").optional(),
  reference: referenceSchema,
  periods: z.array(periodSchema).min(1).max(400).optional().describe("Months, or other spans."),
  weather: needWeatherSchema
    .optional()
    .describe("A daily weather file in place of periods: ET0 by day, need by month of the year."),
  cover: coverSchema.optional().describe("Default: canopy-ground with a canopy diameter, else whole-ground."),
  hotDayRatio: orDefault(between(1, 3, "Hot day over the mean day."), needDefaults.hotDayRatio),
  efficiencyFraction: orDefault(
    between(0.3, 1, "Water used over water applied: spread between emitters, losses."),
    needDefaults.efficiencyFraction,
  ),
  leachingFraction: orDefault(
    between(0, 0.5, "Share of the water meant to leach salt."),
    needDefaults.leachingFraction,
  ),
  practice: z.array(practiceSchema).max(100).optional().describe("What is given now, or by age; compared, never used."),
  scenario: named(
    "A scenario file, relative to this file, in whose season each practice is run to see where its water goes.",
  ).optional(),
});
