import { z } from "zod";
import { defaults } from "./defaults.js";
import { between, named, orDefault, positive, whole } from "./schema-fields.js";
import { type NitrogenDosesFile, nitrogenDosesSchema } from "./schema-solutes.js";

export interface RunFile {
  start: string;
  everyDays: number;
  firstDay?: number | undefined;
  pulses?: number | undefined;
  gapMinutes?: number | undefined;
  minutes?: number | undefined;
  litresPerTree?: number | undefined;
}

export interface ProgrammeFile {
  name: string;
  emitterFlowLPerH?: number | undefined;
  runs: RunFile[];
  nitrogen?: NitrogenDosesFile | undefined;
}

const oneAmount = [{ required: ["minutes"] }, { required: ["litresPerTree"] }];

const runSchema: z.ZodType<RunFile> = z
  .strictObject({
    start: z.iso.time({ precision: -1 }).describe("Clock time of the first opening, HH:MM, local standard time."),
    everyDays: whole(1, 365, "Days from one run to the next."),
    firstDay: orDefault(whole(0, 20000, "Days after the season's start of the first run."), defaults.firstDay),
    pulses: orDefault(whole(1, 24, "Parts into which the run is split."), defaults.pulses),
    gapMinutes: between(0, 1440, "Pause between two pulses, minutes; required with more than one pulse.").optional(),
    minutes: positive(20000, "Length of all pulses together, minutes.").optional(),
    litresPerTree: positive(100000, "Water of all pulses together, L per tree.").optional(),
  })
  .meta({ oneOf: oneAmount });

export const programmeSchema: z.ZodType<ProgrammeFile> = z.strictObject({
  name: named("Name of the programme in tables."),
  emitterFlowLPerH: positive(60, "Replaces the block's emitter flow for this programme, L/h.").optional(),
  runs: z.array(runSchema).min(1).max(24).describe("Runs of the calendar."),
  nitrogen: nitrogenDosesSchema.optional().describe("Nitrogen that the programme brings. Left out: none."),
});
