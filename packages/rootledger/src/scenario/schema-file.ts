import { z } from "zod";
import { defaults } from "./defaults.js";
import type { EngineName, Season, Start } from "./scenario.js";
import { type BlockFile, blockSchema } from "./schema-block.js";
import { isoDate, named, orDefault, positive, whole } from "./schema-fields.js";
import { type ProgrammeFile, programmeSchema } from "./schema-programme.js";
import { type SiteFile, siteFields } from "./schema-site.js";
import { type SoilFile, soilSchema } from "./schema-soil.js";

export interface WeatherFile extends SiteFile {
  name: string;
  file: string;
  rainIntensityMmPerH?: number | undefined;
}

export interface StartFile {
  tensionKPa?: number | undefined;
  kind?: Start["kind"] | undefined;
}

interface CommonFile {
  $schema?: string | undefined;
  format: 1;
  name: string;
  season: Season;
  block: BlockFile;
  weather: WeatherFile;
  start?: StartFile | undefined;
  engine?: EngineName | undefined;
}

/** What a scenario file holds. */
export interface ScenarioFile extends CommonFile {
  soil: SoilFile;
  programme: ProgrammeFile;
}

/** What a comparison file holds: the same block and weather with several soils and programmes. */
export interface ComparisonFile extends CommonFile {
  remark?: string | undefined;
  soils: SoilFile[];
  programmes: ProgrammeFile[];
}

export const seasonSchema: z.ZodType<Season> = z.strictObject({
  startDate: isoDate("First day, YYYY-MM-DD."),
  days: whole(1, 20000, "Length in days."),
});

export const weatherSchema: z.ZodType<WeatherFile> = z.strictObject({
  name: named("Place or station."),
  file: named("Daily weather file, relative to this file."),
  ...siteFields,
  rainIntensityMmPerH: orDefault(
    positive(200, "Rate at which a day's rain falls, from midnight on, mm/h."),
    defaults.rainIntensityMmPerH,
  ),
});

const startSchema: z.ZodType<StartFile> = z.strictObject({
  tensionKPa: orDefault(positive(1500, "Tension of the whole profile at the start, kPa."), defaults.startTensionKPa),
  kind: orDefault<Start["kind"]>(
    z
      .enum(["same-state", "settled"])
      .describe(
        "same-state: from that tension at once. settled: the first days are repeated under the programme until storage changes by less than 1 % of the water applied.",
      ),
    defaults.startKind,
  ),
});

const common = {
  $schema: z.string().optional().describe("Address of this schema, for editors."),
  format: z.literal(1).describe("Version of this file format."),
  name: named("Name of the block or of the question."),
  season: seasonSchema,
  block: blockSchema,
  weather: weatherSchema,
  start: startSchema.optional(),
  engine: orDefault<EngineName>(
    z
      .enum(["bucket", "richards"])
      .describe("bucket: the fast engine. richards: the referee, on finer cells and far slower."),
    defaults.engine,
  ),
};

export const scenarioSchema: z.ZodType<ScenarioFile> = z.strictObject({
  ...common,
  soil: soilSchema,
  programme: programmeSchema,
});

export const comparisonSchema: z.ZodType<ComparisonFile> = z.strictObject({
  ...common,
  remark: z
    .string()
    .min(1)
    .max(600)
    .describe("Said beside every result, for instance that the place is invented.")
    .optional(),
  soils: z.array(soilSchema).min(1).max(4).describe("One to four soils."),
  programmes: z.array(programmeSchema).min(2).max(4).describe("Two to four programmes, compared in this order."),
});
