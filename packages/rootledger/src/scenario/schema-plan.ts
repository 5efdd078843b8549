import { z } from "zod";
import { between, named, positive, whole } from "./schema-fields.js";

/** What a plan file holds beside the need file in it. */
export interface PlanFile {
  $schema?: string | undefined;
  format: 1;
  name: string;
  agesYears: number[];
  canopy: { ageYears: number; diameterM: number }[];
  rootsPerCanopy?: number | undefined;
  offsetsM: number[];
  emitterSpacingM: number;
  emitterFlowLPerH: number;
  wettedRadiusM: number;
  pressureCompensating: boolean;
  sector?: { trees: number; smallestFlowLPerH: number } | undefined;
  nutrientsGPerMatureTree?: Record<string, number> | undefined;
  need: unknown;
}

export const planSchema: z.ZodType<PlanFile> = z.strictObject({
  $schema: z.string().optional().describe("Address of this schema, for editors."),
  format: z.literal(1).describe("Version of this file format."),
  name: named("Name of the block."),
  agesYears: z
    .array(between(0, 60, "Age, years since planting."))
    .min(1)
    .max(40)
    .describe("Ages that the plan shows, rising."),
  canopy: z
    .array(
      z.strictObject({
        ageYears: between(0, 60, "Age, years since planting."),
        diameterM: positive(30, "Diameter of the canopy at that age, m."),
      }),
    )
    .min(1)
    .max(40)
    .describe("Canopy by age, measured or expected; the last point is the mature tree."),
  rootsPerCanopy: between(0.2, 3, "Radius of the root disc over that of the canopy. Default 1.").optional(),
  offsetsM: z
    .array(between(-15, 15, "Distance of a dripline from the tree row, m."))
    .min(1)
    .max(6)
    .describe("All driplines, also those to be opened later."),
  emitterSpacingM: positive(10, "Distance between emitters along a line, m."),
  emitterFlowLPerH: positive(60, "Flow of one emitter, L/h."),
  wettedRadiusM: positive(5, "Radius of the ground that one emitter wets, dug or estimated, m."),
  pressureCompensating: z.boolean().describe("Whether the emitters keep their flow when others are plugged."),
  sector: z
    .strictObject({
      trees: whole(1, 1_000_000, "Trees on one valve."),
      smallestFlowLPerH: positive(10_000_000, "Smallest flow of pump and filter, L/h."),
    })
    .optional()
    .describe("The sector, for warnings of flow."),
  nutrientsGPerMatureTree: z
    .record(z.string().min(1).max(40), between(0, 5000, "g of the element for a mature tree in a year."))
    .optional()
    .describe("Fertiliser of a mature tree, g of each element in a year."),
  need: z.unknown().describe("A need file: spacing, reference, months, coefficients; its canopy is replaced."),
});
