import { z } from "zod";
import { defaults } from "./defaults.js";
import { type AmountFile, amountFields, oneAmount } from "./schema-amount.js";
import { offsetsSchema } from "./schema-block.js";
import { between, clockTime, named, orDefault, positive, whole } from "./schema-fields.js";
import { type PumpLimitsFile, pumpLimitsSchema, type RuleFile, ruleSchema } from "./schema-rule.js";
import { type NitrogenDosesFile, nitrogenDosesSchema } from "./schema-solutes.js";

export interface RunFile extends AmountFile {
  start: string;
  everyDays: number;
  firstDay?: number | undefined;
  pulses?: number | undefined;
  gapMinutes?: number | undefined;
}

export interface ProgrammeFile {
  name: string;
  emitterFlowLPerH?: number | undefined;
  lines?: { offsetsM: number[] } | undefined;
  runs?: RunFile[] | undefined;
  rule?: RuleFile | undefined;
  limits?: PumpLimitsFile | undefined;
  nitrogen?: NitrogenDosesFile | undefined;
}

const runSchema: z.ZodType<RunFile> = z
  .strictObject({
    start: clockTime("Clock time of the first opening, HH:MM, local standard time."),
    everyDays: whole(1, 365, "Days from one run to the next."),
    firstDay: orDefault(whole(0, 20000, "Days after the season's start of the first run."), defaults.firstDay),
    pulses: orDefault(whole(1, 24, "Parts into which the run is split."), defaults.pulses),
    gapMinutes: between(0, 1440, "Pause between two pulses, minutes; required with more than one pulse.").optional(),
    ...amountFields,
  })
  .meta({ oneOf: oneAmount });

export const programmeSchema: z.ZodType<ProgrammeFile> = z
  .strictObject({
    name: named("Name of the programme in tables."),
    emitterFlowLPerH: positive(60, "Replaces the block's emitter flow for this programme, L/h.").optional(),
    lines: z
      .strictObject({ offsetsM: offsetsSchema })
      .optional()
      .describe("Driplines of this programme in place of the block's, roots grown along them. Left out: the block's."),
    runs: z.array(runSchema).min(1).max(24).optional().describe("Runs of a calendar; or rule."),
    rule: ruleSchema.optional().describe("A rule that decides day by day from the state of the mean tree; or runs."),
    limits: pumpLimitsSchema
      .optional()
      .describe("What pump, tariff and water right allow: runs are cut to fit, and every cut is counted."),
    nitrogen: nitrogenDosesSchema.optional().describe("Nitrogen that the programme brings. Left out: none."),
  })
  .meta({ oneOf: [{ required: ["runs"] }, { required: ["rule"] }] });
