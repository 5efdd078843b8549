import { z } from "zod";
import { defaults } from "./defaults.js";
import type { SiteWeather } from "./scenario.js";
import { type CropFile, cropSchema } from "./schema-crop.js";
import { between, isoDate, named, orDefault, whole } from "./schema-fields.js";

/** A daily weather file with what a need by month asks beside it. */
export interface NeedWeatherFile {
  file: string;
  latitudeDeg: number;
  elevationM: number;
  windHeightM?: number | undefined;
  et0Method?: SiteWeather["et0Method"] | undefined;
  longestGapDays?: number | undefined;
  coefficient?: number | undefined;
  kc?: { date: string; kc: number }[] | undefined;
  crop?: CropFile | undefined;
}

const kc = (): z.ZodType<number> => between(0, 1.6, "Kc, over ET0.");

export const needWeatherSchema: z.ZodType<NeedWeatherFile> = z
  .strictObject({
    file: named("Daily weather file, relative to this file."),
    latitudeDeg: between(-66, 66, "Latitude, degrees, south negative."),
    elevationM: between(-430, 5000, "Height above the sea, m."),
    windHeightM: orDefault(between(0.5, 100, "Height at which wind was measured, m."), defaults.windHeightM),
    et0Method: orDefault<SiteWeather["et0Method"]>(
      z.enum(["penman-monteith", "hargreaves-samani", "given"]).describe("How ET0 is found; given: the file has it."),
      defaults.et0Method,
    ),
    longestGapDays: whole(
      1,
      31,
      "Missing temperatures are taken on a line across gaps up to this long. Default: none are.",
    ).optional(),
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
