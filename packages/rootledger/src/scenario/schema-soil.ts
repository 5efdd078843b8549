import { z } from "zod";
import { between, named, positive } from "./schema-fields.js";
import { type MaterialFile, materialFields, materialWords } from "./schema-material.js";

export interface HorizonFile extends MaterialFile {
  toCm: number;
}

export type BottomFile =
  | { kind: "free-drainage" }
  | { kind: "water-table" }
  | { kind: "impeding"; conductivityMmPerH: number };

export interface SoilFile {
  name: string;
  horizons: HorizonFile[];
  bottom?: BottomFile | undefined;
  cracks?: { fraction: number; toDepthCm: number } | undefined;
  trappedAirFraction?: number | undefined;
  readilyEvaporableMm?: number | undefined;
}

const bottomSchema = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("free-drainage") }),
  z.strictObject({ kind: z.literal("water-table") }),
  z.strictObject({
    kind: z.literal("impeding"),
    conductivityMmPerH: positive(1000, "Most that the layer below the profile lets through, mm/h."),
  }),
]);

const horizonSchema: z.ZodType<HorizonFile> = z
  .strictObject({
    toCm: positive(500, "Depth of the lower end of the horizon, cm."),
    ...materialFields,
  })
  .meta({ oneOf: materialWords.map((word) => ({ required: [word] })) });

export const soilSchema: z.ZodType<SoilFile> = z.strictObject({
  name: named("Name of the soil in tables."),
  horizons: z
    .array(horizonSchema)
    .min(1)
    .max(12)
    .describe("From the surface down; `bottom` says what lies below the last one."),
  bottom: bottomSchema
    .optional()
    .describe(
      "Below the last horizon: free drainage, a water table at its lower end, or a layer that lets little through.",
    ),
  cracks: z
    .strictObject({
      fraction: between(0, 1, "Share of the water entering the surface that cracks carry straight down."),
      toDepthCm: positive(500, "Depth that the cracks reach, cm."),
    })
    .optional()
    .describe("Sensitivity, off unless given."),
  trappedAirFraction: between(
    0,
    0.4,
    "Sensitivity, off unless given: share of the pores that keep their air when wetted.",
  ).optional(),
  readilyEvaporableMm: positive(
    20,
    "REW, water that the surface loses at full rate, mm; with two-stage evaporation. Default: middle of FAO-56 table 19 for the top texture.",
  ).optional(),
});
