import { z } from "zod";
import type { Structure } from "../ground/structure.js";
import { textureClasses } from "../ground/texture.js";
import { defaults } from "./defaults.js";
import { between, named, openFraction, orDefault, positive } from "./schema-fields.js";

export interface VanGenuchtenFile {
  thetaResidual: number;
  thetaSaturated: number;
  alphaPerCm: number;
  n: number;
  kSatCmPerH: number;
}

export interface HorizonFile {
  toCm: number;
  texture?: string | undefined;
  vanGenuchten?: VanGenuchtenFile | undefined;
  structure?: Structure | undefined;
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
}

const bottomSchema = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("free-drainage") }),
  z.strictObject({ kind: z.literal("water-table") }),
  z.strictObject({
    kind: z.literal("impeding"),
    conductivityMmPerH: positive(1000, "Most that the layer below the profile lets through, mm/h."),
  }),
]);

const vanGenuchtenSchema = z.strictObject({
  thetaResidual: between(0, 0.5, "Water content at very high tension, m3/m3."),
  thetaSaturated: openFraction("Water content at saturation, m3/m3."),
  alphaPerCm: positive(1, "alpha of van Genuchten (1980), 1/cm."),
  n: z.number().gt(1).max(15).describe("n of van Genuchten (1980)."),
  kSatCmPerH: positive(500, "Conductivity at saturation, cm/h."),
});

/** Exactly one of the two ways to say what a horizon is made of; `parseScenario` reports it, the JSON Schema shows it. */
const oneMaterial = [{ required: ["texture"] }, { required: ["vanGenuchten"] }];

const horizonSchema: z.ZodType<HorizonFile> = z
  .strictObject({
    toCm: positive(500, "Depth of the lower end of the horizon, cm."),
    texture: z
      .string()
      .max(120)
      .optional()
      .describe(`Texture class: ${textureClasses.join(", ")}.`),
    vanGenuchten: vanGenuchtenSchema.optional().describe("Own curve instead of a texture class."),
    structure: orDefault<Structure>(
      z.enum(["tight", "ordinary", "crumbly"]).describe("Scales large pores and conductivity of a texture class."),
      defaults.structure,
    ),
  })
  .meta({ oneOf: oneMaterial });

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
});
