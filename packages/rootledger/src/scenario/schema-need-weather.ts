import { z } from "zod";
import { needDefaults } from "./need-defaults.js";
import { type CropFile, cropSchema } from "./schema-crop.js";
import { between, isoDate, named, orDefault, positive, whole } from "./schema-fields.js";
import { type SiteFile, siteFields } from "./schema-site.js";

/** A daily weather file with what a need by month asks beside it. */
export interface NeedWeatherFile extends SiteFile {
  file: string;
  longestGapDays?: number | undefined;
  usefulRain?: { rootedGroundM2: number; roomMm: number; countsAboveMm?: number | undefined } | undefined;
  coefficient?: number | undefined;
  kc?: { date: string; kc: number }[] | undefined;
  crop?: CropFile | undefined;
}

const kc = (): z.ZodType<number> => between(0, 1.6, "Kc, over ET0.");

export const needWeatherSchema: z.ZodType<NeedWeatherFile> = z
  .strictObject({
    file: named("Daily weather file, relative to this file."),
    ...siteFields,
    longestGapDays: whole(
      1,
      31,
      "Missing temperatures are taken on a line across gaps up to this long. Default: none are.",
    ).optional(),
    usefulRain: z
      .strictObject({
        rootedGroundM2: positive(900, "Ground of one tree with roots under it, m2."),
        roomMm: positive(300, "What the rooted soil can take of one day's rain, mm."),
        countsAboveMm: orDefault(between(0, 50, "Rain of a day that counts at all, mm."), needDefaults.countsAboveMm),
      })
      .optional()
      .describe("Takes the file's rain off the need, on rooted ground only. Default: rain counts as nothing."),
    coefficient: kc().optional().describe("One coefficient for all days."),
    kc: z
      .array(z.strictObject({ date: isoDate("Day."), kc: kc() }))
      .min(1)
      .max(400)
      .optional()
      .describe("Coefficient by date, linear between the dates, the first and last hold beyond them."),
    crop: cropSchema.optional().describe("A preset or own stages."),
  })
  .meta({ oneOf: [{ required: ["coefficient"] }, { required: ["kc"] }, { required: ["crop"] }] });
