import { z } from "zod";
import { cropDefaults, type PresetName, presetNames } from "./crop-defaults.js";
import { coverSchema, type NeedCoverFile } from "./schema-cover.js";
import { between, isoDate, named, orDefault, positive, whole } from "./schema-fields.js";

export interface StageFile {
  name: string;
  starts: string;
  from: number;
  to?: number | undefined;
}

export interface CropFile {
  preset?: PresetName | undefined;
  stages?: StageFile[] | undefined;
  coefficient?: "dual" | "single" | undefined;
  hemisphere?: "north" | "south" | undefined;
  phenology?: Record<string, string> | undefined;
}

export interface GrowthFile {
  ageYears: number;
  canopy?: { ageYears: number; diameterM: number }[] | undefined;
}

export interface ModifiersFile {
  leafLoss?:
    | { date: string; leavesLeftFraction: number; leafAreaIndex?: number | undefined; recoveredBy?: string | undefined }
    | undefined;
  heat?: { limitC?: number | undefined; closedC?: number | undefined; closedFraction?: number | undefined } | undefined;
  flowering?: { starts?: string | undefined; days: number; increaseFraction: number } | undefined;
}

/** What a tree file says about the crop's demand, beside or in place of Kcb by date. */
export interface TreeDemandFile {
  crop?: CropFile | undefined;
  heightM?: number | undefined;
  cover?: NeedCoverFile | undefined;
  growth?: GrowthFile | undefined;
  climateAdjustment?: "none" | "evaporation" | "full" | undefined;
  modifiers?: ModifiersFile | undefined;
}

const coefficient = (what: string): z.ZodType<number> => between(0, 1.6, what);

const stageSchema: z.ZodType<StageFile> = z.strictObject({
  name: named("Name of the stage."),
  starts: named("First day: YYYY-MM-DD; MM-DD every year; day N of the season, as in day 0; or an event of phenology."),
  from: coefficient("Coefficient on the first day of the stage."),
  to: coefficient("Coefficient that it reaches by the next stage. Default: the same.").optional(),
});

export const cropSchema: z.ZodType<CropFile> = z
  .strictObject({
    preset: z
      .enum(presetNames as [PresetName, ...PresetName[]])
      .optional()
      .describe("A crop with its coefficients, days, roots and limits, each with its source."),
    stages: z.array(stageSchema).min(1).max(24).optional().describe("Own stages in place of a preset."),
    coefficient: orDefault<"dual" | "single">(
      z
        .enum(["dual", "single"])
        .describe(
          "dual: transpiration by Kcb, the soil evaporates by itself. single: Kc holds both, the soil loses none.",
        ),
      cropDefaults.coefficient,
    ),
    hemisphere: z
      .enum(["north", "south"])
      .optional()
      .describe("For the preset's days of the year. Default: that of the latitude."),
    phenology: z
      .record(z.string().min(1).max(40), z.string().max(10))
      .optional()
      .describe("Days of events as seen on the block, MM-DD or YYYY-MM-DD; they replace the preset's."),
  })
  .meta({ oneOf: [{ required: ["preset"] }, { required: ["stages"] }] });

const growthSchema: z.ZodType<GrowthFile> = z.strictObject({
  ageYears: between(0, 60, "Age of the trees at the start of the season, years."),
  canopy: z
    .array(
      z.strictObject({
        ageYears: between(0, 60, "Age, years."),
        diameterM: positive(30, "Canopy diameter at that age, m."),
      }),
    )
    .min(2)
    .max(60)
    .optional()
    .describe("Canopy by age. Default: that of the crop's preset."),
});

const modifiersSchema: z.ZodType<ModifiersFile> = z.strictObject({
  leafLoss: z
    .strictObject({
      date: isoDate("Day on which leaves were lost."),
      leavesLeftFraction: between(0, 1, "Share of the leaves that is left."),
      leafAreaIndex: orDefault(between(0.1, 12, "Leaf area index before the loss."), cropDefaults.leafAreaIndex),
      recoveredBy: isoDate("Day by which the leaves are back. Default: not in this season.").optional(),
    })
    .optional()
    .describe("Leaves lost to hail, salt or pests: FAO-56 eq. 97."),
  heat: z
    .strictObject({
      limitC: orDefault(between(20, 45, "Air temperature above which stomata close, C."), cropDefaults.heatLimitC),
      closedC: orDefault(
        between(25, 55, "Temperature at which they are as closed as they get, C."),
        cropDefaults.heatClosedC,
      ),
      closedFraction: orDefault(
        between(0, 1, "Share of the demand that is then left."),
        cropDefaults.heatClosedFraction,
      ),
    })
    .optional()
    .describe("Stomata that close on hot hours."),
  flowering: z
    .strictObject({
      starts: named("First day, MM-DD or YYYY-MM-DD. Default: bloom of the preset.").optional(),
      days: whole(1, 200, "Days in flower."),
      increaseFraction: between(0, 0.9, "What flowers add to transpiration, as a share of it; no published value."),
    })
    .optional()
    .describe("Flowers that transpire."),
});

/** Fields of the tree that this adds to its schema. */
export const treeDemandFields: { [Field in keyof TreeDemandFile]-?: z.ZodType<TreeDemandFile[Field]> } = {
  crop: cropSchema.optional().describe("A preset or own stages, in place of kcb."),
  heightM: between(0.1, 10, "Height of the trees, m. Default: that of the preset, else 3.").optional(),
  cover: coverSchema
    .optional()
    .describe("On how much ground the coefficient counts. Default: relative-density with a preset, else whole-ground."),
  growth: growthSchema.optional().describe("A canopy that grows from canopyDiameterM on, as the canopy by age does."),
  climateAdjustment: z
    .enum(["none", "evaporation", "full"])
    .optional()
    .describe(
      "Wind and RHmin act on: nothing; Kc max only; Kc max and the preset's coefficients. Default: full with a preset, else none.",
    ),
  modifiers: modifiersSchema.optional().describe("What moves transpiration off its coefficient. Off unless given."),
};
