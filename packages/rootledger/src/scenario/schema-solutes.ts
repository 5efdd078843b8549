import { z } from "zod";
import type { HandDose } from "../programme/injection.js";
import { maasHoffmanTable } from "../tree/salinity-table.js";
import type { Salt } from "./scenario.js";
import { between, isoDate, orDefault, positive } from "./schema-fields.js";
import { solutesDefaults } from "./solutes-defaults.js";

export interface SaltFile {
  waterEcDsPerM: number;
  chlorideMgPerL?: number | undefined;
  startEceDsPerM?: number | undefined;
  response?: Salt["response"]["kind"] | undefined;
  crop?: string | undefined;
  thresholdDsPerM?: number | undefined;
  slopePerDsPerM?: number | undefined;
}

export interface SoilNitrogenFile {
  waterMgPerL?: number | undefined;
  startKgPerHa?: number | undefined;
  mostUptakeGPerTreeDay?: number | undefined;
}

export interface InjectionFile {
  afterMinutes?: number | undefined;
  injectMinutes?: number | undefined;
  mgPerL?: number | undefined;
  gPerTreePerRun?: number | undefined;
  kgPerHaByMonth?: number[] | undefined;
}

export interface NitrogenDosesFile {
  throughWater?: InjectionFile | undefined;
  byHand?: { date: string; gPerTree: number; ground?: HandDose["ground"] | undefined }[] | undefined;
}

export const saltSchema: z.ZodType<SaltFile> = z.strictObject({
  waterEcDsPerM: between(0, 15, "EC of the irrigation water, dS/m."),
  chlorideMgPerL: between(
    0,
    20_000,
    "Chloride of the irrigation water, mg/L: held against published limits in the notes, not moved.",
  ).optional(),
  startEceDsPerM: between(
    0,
    40,
    "EC of the saturation extract of the whole profile at the start, dS/m. Default 1.5 times that of the water (FAO-29, 15-20 % leached).",
  ).optional(),
  response: orDefault<Salt["response"]["kind"]>(
    z
      .enum(["threshold-slope", "osmotic-head", "none"])
      .describe(
        "How salt holds uptake back in each cell. osmotic-head adds it to the matric head, severe where the pull limit is meant for matric tension alone.",
      ),
    solutesDefaults.response,
  ),
  crop: orDefault<string>(
    z
      .enum(Object.keys(maasHoffmanTable) as [string, ...string[]])
      .describe("Row of the table of tolerances, for threshold-slope."),
    solutesDefaults.crop,
  ),
  thresholdDsPerM: between(
    0,
    20,
    "Own threshold in place of a crop's: ECe up to which nothing is held back.",
  ).optional(),
  slopePerDsPerM: positive(1, "Own slope: fraction held back for each dS/m beyond the threshold.").optional(),
});

export const soilNitrogenSchema: z.ZodType<SoilNitrogenFile> = z.strictObject({
  waterMgPerL: orDefault(
    between(0, 200, "Nitrate nitrogen in the irrigation water itself, mg N/L."),
    solutesDefaults.waterMgPerL,
  ),
  startKgPerHa: orDefault(
    between(0, 1000, "Nitrate nitrogen in the rooted depth at the start, kg N/ha, even over ground and depth."),
    solutesDefaults.startKgPerHa,
  ),
  mostUptakeGPerTreeDay: positive(
    1000,
    "Most nitrogen that the tree takes in a day, g. Left out: all that comes with the water it draws.",
  ).optional(),
});

const oneAmount = ["mgPerL", "gPerTreePerRun", "kgPerHaByMonth"].map((key) => ({ required: [key] }));

const injectionSchema: z.ZodType<InjectionFile> = z
  .strictObject({
    afterMinutes: orDefault(
      between(0, 1440, "Open minutes of each run before injected water reaches the emitters."),
      solutesDefaults.afterMinutes,
    ),
    injectMinutes: orDefault(
      positive(1440, "Open minutes of each run for which injected water leaves the emitters."),
      solutesDefaults.injectMinutes,
    ),
    mgPerL: positive(5000, "Nitrogen in the emitters' water during injection, mg N/L.").optional(),
    gPerTreePerRun: positive(500, "Nitrogen of the mean tree in each run, g.").optional(),
    kgPerHaByMonth: z
      .array(between(0, 300, "Nitrogen of the month, kg N/ha."))
      .length(12)
      .optional()
      .describe("Nitrogen by calendar month from January, kg N/ha, shared by the runs of the month."),
  })
  .meta({ oneOf: oneAmount });

export const nitrogenDosesSchema: z.ZodType<NitrogenDosesFile> = z.strictObject({
  throughWater: injectionSchema
    .optional()
    .describe("Injection in every run. Protect the water source against backflow first and follow local rules."),
  byHand: z
    .array(
      z.strictObject({
        date: isoDate("Day on which it is spread, YYYY-MM-DD."),
        gPerTree: positive(5000, "Nitrogen spread, g per tree."),
        ground: orDefault<HandDose["ground"]>(
          z.enum(["under-canopy", "rooted-ground", "all-ground"]).describe("Ground it is spread over evenly."),
          solutesDefaults.ground,
        ),
      }),
    )
    .min(1)
    .max(100)
    .optional()
    .describe("Doses spread by hand; they lie on the ground until water dissolves them."),
});
