import { z } from "zod";
import { defaults } from "./defaults.js";
import { ruleDefaults } from "./rule-defaults.js";
import { type AmountFile, type AmountUnit, amountFields, amountUnits, oneAmount } from "./schema-amount.js";
import { between, clockTime, orDefault, positive, whole } from "./schema-fields.js";

interface ClockFile {
  start: string;
  everyDays: number;
  firstDay?: number | undefined;
  pulses?: number | undefined;
  gapMinutes?: number | undefined;
}

export type RuleFile = ClockFile &
  (
    | { kind: "by-month"; unit: AmountUnit; per?: "day" | "month" | undefined; amounts: number[] }
    | { kind: "by-age"; unit: AmountUnit; ageYearsAtStart: number; amounts: { fromYears: number; amount: number }[] }
    | { kind: "replace-use"; factor?: number | undefined }
    | ({ kind: "depletion"; aboveFraction: number } & AmountFile)
    | ({ kind: "tension"; aboveKPa: number; depthCm: number; fromLineCm: number } & AmountFile)
  );

export interface PumpLimitsFile {
  pumpHoursPerDay?: number | undefined;
  sectors?: number | undefined;
  allowedFrom?: string | undefined;
  allowedTo?: string | undefined;
  shortestPulseMinutes?: number | undefined;
  longestRunMinutes?: number | undefined;
  allocationM3PerHa?: number | undefined;
  skipFromRainMm?: number | undefined;
}

const clock = {
  start: clockTime(
    "Clock time of the first opening, HH:MM, local standard time. The rule decides at the whole hour at or before it.",
  ),
  everyDays: whole(1, 365, "Days from one decision to the next."),
  firstDay: orDefault(whole(0, 20000, "Days after the season's start of the first decision."), defaults.firstDay),
  pulses: orDefault(whole(1, 24, "Parts into which a run is split."), defaults.pulses),
  gapMinutes: between(0, 1440, "Pause between two pulses, minutes; required with more than one pulse.").optional(),
};

const unit = z.enum(amountUnits).describe("Unit of the amounts.");
const amount = (what: string): z.ZodType<number> => between(0, 100000, what);

export const ruleSchema: z.ZodType<RuleFile> = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("by-month").describe("Amounts by month."),
    ...clock,
    unit,
    per: orDefault<"day" | "month">(
      z.enum(["day", "month"]).describe("What each amount is for; a run brings those of its everyDays days."),
      ruleDefaults.amountsPer,
    ),
    amounts: z.array(amount("Amount of one month.")).length(12).describe("Twelve amounts, January first."),
  }),
  z.strictObject({
    kind: z.literal("by-age").describe("Amounts a day by age of the tree."),
    ...clock,
    unit,
    ageYearsAtStart: between(0, 100, "Age of the trees on the season's first day, years."),
    amounts: z
      .array(
        z.strictObject({
          fromYears: between(0, 100, "Age from which the amount holds, years."),
          amount: amount("Amount a day; a run brings those of its everyDays days."),
        }),
      )
      .min(1)
      .max(100)
      .describe("Amounts by age, ages rising; each holds until the next one."),
  }),
  z.strictObject({
    kind: z
      .literal("replace-use")
      .describe("Gives back what left by leaves and soil surface since the last run, less rain on rooted ground."),
    ...clock,
    factor: orDefault(
      between(0.1, 3, "Times what was used; above 1 for leaching or uneven lines."),
      ruleDefaults.useFactor,
    ),
  }),
  z
    .strictObject({
      kind: z
        .literal("depletion")
        .describe("Runs when the root zone has lost more than a share of its available water, as FAO-56 defines it."),
      ...clock,
      aboveFraction: between(0, 1, "Depletion over total available water above which it runs."),
      ...amountFields,
    })
    .describe("Without an amount: what the rooted ground lacks of field capacity."),
  z
    .strictObject({
      kind: z.literal("tension").describe("Runs when a sensor is drier than a trigger."),
      ...clock,
      aboveKPa: positive(1500, "Tension above which it runs, kPa."),
      depthCm: between(1, 300, "Depth of the sensor, cm."),
      fromLineCm: between(0, 1500, "Distance of the sensor from the dripline, away from the tree row, cm."),
      ...amountFields,
    })
    .meta({ oneOf: oneAmount }),
]);

export const pumpLimitsSchema: z.ZodType<PumpLimitsFile> = z.strictObject({
  pumpHoursPerDay: between(0.1, 24, "Hours of one day, by the clock, in which the pump may run.").optional(),
  sectors: whole(1, 100, "Sectors that take turns on the pump, this one counted.").optional(),
  allowedFrom: clockTime("Begin of the hours in which the valve may be open, HH:MM; goes with allowedTo.").optional(),
  allowedTo: clockTime("End of those hours, HH:MM; it may lie past midnight.").optional(),
  shortestPulseMinutes: positive(
    1440,
    "No opening is shorter; pulses that would be are made fewer, minutes.",
  ).optional(),
  longestRunMinutes: positive(20000, "Longest run, all pulses together, minutes.").optional(),
  allocationM3PerHa: positive(100000, "Water of the whole season, m3 per hectare.").optional(),
  skipFromRainMm: positive(500, "No run where at least this much rain fell in the day before, mm.").optional(),
});
